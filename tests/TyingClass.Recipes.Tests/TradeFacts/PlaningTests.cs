using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using Xunit;

namespace TyingClass.Recipes.Tests.TradeFacts;

/// <summary>
/// Fact 12 (common practice, no source): a fly that planes down through its hook and balance needs less weight for the same depth. Depth on a given line goes
/// by the angle at which the line leaves the eye.
/// </summary>
public sealed class PlaningTests
{
    private static readonly double[] SpeedsMS = [0.4, 0.8, 1.2];

    private static readonly Lazy<Tried[]> All = new(() =>
    [
        .. from lever in new[] { (Name: "lead at the nose", Nose: true, Eye: false), (Name: "eye above the shank", Nose: false, Eye: true),
            (Name: "both", Nose: true, Eye: true) }
           from speed in SpeedsMS
           from fly in Families.PlaningFlies
           let plain = Trim.Of(fly.With(false, false, 1), speed)
           select new Tried(fly.Name, lever.Name, speed, plain, Trim.Of(fly.With(lever.Nose, lever.Eye, 1), speed),
               Trim.Least(0.01, 4, layers => Trim.Of(fly.With(lever.Nose, lever.Eye, layers), speed).LineAngleDeg >= plain.LineAngleDeg)),
    ]);

    /// <param name="Lowered">Nose lowered, the same lead.</param>
    /// <param name="Needs">Lead it then needs for the plain fly's line angle, as a share of the plain fly's.</param>
    private sealed record Tried(string Name, string Lever, double SpeedMS, Trim Plain, Trim Lowered, double Needs)
    {
        public bool Obeys => Needs < 1;
    }

    internal static Share ByAny => Share.Of(All.Value, t => t.Obeys);

    internal static Share ByBalance => Share.Of(All.Value.Where(t => t.Lever == "lead at the nose"), t => t.Obeys);

    internal static Share ByHook => Share.Of(All.Value.Where(t => t.Lever == "eye above the shank"), t => t.Obeys);

    internal static Share ByBoth => Share.Of(All.Value.Where(t => t.Lever == "both"), t => t.Obeys);

    internal static Share PushedDown => Share.Of(Jigs.Value, t => t.Lowered.LiftMN < 0);

    internal static Share ByJigEye => Share.Of(Jigs.Value, t => t.Obeys);

    internal static string Table => Figures.Table(
        "nose lowered by | speed, m/s | obey | nose lower by, ° (median) | lift changes by, mN | drag changes by, mN | lead needed, % of the plain fly's",
        All.Value.GroupBy(t => (t.Lever, t.SpeedMS)).Select(g =>
            $"{g.Key.Lever} | {g.Key.SpeedMS:F1} | {g.Count(t => t.Obeys)} of {g.Count()} "
            + $"| {Figures.Median(g.Select(t => t.Plain.PitchDeg - t.Lowered.PitchDeg)):F1} "
            + $"| {Figures.Range(g.Select(t => t.Lowered.LiftMN - t.Plain.LiftMN), "F2")} "
            + $"| {Figures.Range(g.Select(t => t.Lowered.DragMN - t.Plain.DragMN), "F2")} | {Figures.Range(g.Select(t => 100 * t.Needs), "F0")}"));

    private static readonly Lazy<Tried[]> Jigs = new(() =>
    [
        .. from pair in Families.JigNymphs.Where(n => n.Name.Contains("90°", StringComparison.Ordinal))
           let other = Families.JigNymphs.Single(n => n.Name == pair.Name.Replace("90°", "45°", StringComparison.Ordinal))
           let bead = FlyBuilder.Build(pair.With("brass", 0.4)).Body.Parts.Single(p => p.Name == "bead").Masses.Sum(e => e.MassKg)
           from speed in new[] { 0.8, 1.2 }
           let plain = Trim.Of(other.With("brass", 0.4), speed)
           select new Tried(pair.Name, "90° jig eye for 45°", speed, plain, Trim.Of(pair.With("brass", 0.4), speed),
               Trim.Least(0.05, 4, share => Trim.Of(pair.With("brass", 0.4).Weighing(PartKind.Bead, share * bead), speed).LineAngleDeg >= plain.LineAngleDeg)),
    ]);

    internal static string JigTable => Figures.Table(
        "size | obey, at 0.8 and 1.2 m/s | nose up on the 45° eye, ° | on the 90° eye, ° | lift on the 45° eye, mN | on the 90° eye, mN | bead needed, % "
            + "of the other's (5 is the least tried)",
        Jigs.Value.GroupBy(t => t.Name.Split(' ')[0]).Select(g =>
            $"{g.Key} | {g.Count(t => t.Obeys)} of {g.Count()} | {Figures.Range(g.Select(t => t.Plain.PitchDeg), "F1")} "
            + $"| {Figures.Range(g.Select(t => t.Lowered.PitchDeg), "F1")} | {Figures.Range(g.Select(t => t.Plain.LiftMN), "F2")} "
            + $"| {Figures.Range(g.Select(t => t.Lowered.LiftMN), "F2")} | {Figures.Range(g.Select(t => 100 * t.Needs), "F0")}"));

    [Fact]
    public void Tow_SteeperJigEye_AlwaysTrimsLowerAndNeedsALighterBead()
    {
        Assert.Equal(40, Jigs.Value.Length);
        Assert.All(Jigs.Value, t => Assert.True(t.Lowered.PitchDeg < t.Plain.PitchDeg, t.Name));
        Assert.All(Jigs.Value, t => Assert.True(t.Needs < 0.6, $"{t.Name} {t.SpeedMS}: {t.Needs}"));
    }

    // On a tight line weight aft of the eye keeps the nose up: what is gained by streamers is less lift, no push down. The side force of a jig nymph's body
    // does
    // push it down on the steeper eye.
    [Fact]
    public void Tow_OutrightPushDown_NoStreamerAndMostJigNymphs()
    {
        Assert.All(All.Value, t => Assert.True(t.Plain.LiftMN > 0 && t.Lowered.LiftMN > 0, t.Name));
        Assert.Equal(36, Jigs.Value.Count(t => t.Lowered.LiftMN < 0));
        Assert.All(Jigs.Value, t => Assert.True(t.Lowered.LiftMN > -1 && t.Lowered.LiftMN < t.Plain.LiftMN, t.Name));
    }

    [Fact]
    public void Tow_NoseLowered_AlwaysTrimsLowerAndSwimsTheSameWayUp()
    {
        Assert.Equal(3 * 3 * 36, All.Value.Length);
        Assert.All(All.Value, t => Assert.True(t.Lowered.PitchDeg < t.Plain.PitchDeg, t.Name));
        // Two thin flies at 1.2 m/s have hardly any keel left on the high eye.
        Assert.True(All.Value.Count(t => t.Lowered.KeelMm > 0.2 && t.Plain.KeelMm > 0.2) >= All.Value.Length - 2);
    }

    [Fact]
    public void Tow_LeadMovedToTheNose_AlwaysNeedsLessOfIt() =>
        Assert.All(All.Value.Where(t => t.Lever == "lead at the nose"), t => Assert.True(t.Needs < 0.85, $"{t.Name} {t.SpeedMS}: {t.Needs}"));

    // Where the eye does it, the fact fails at speed on thin flies: there the eye itself, tilted up into the flow, lifts and drags.
    [Fact]
    public void Tow_EyeAboveTheShank_FailsOnlyAtSpeedOnThinWings()
    {
        Assert.True(All.Value.Count(t => t.Obeys) / (double)All.Value.Length >= 0.95);
        Tried[] exceptions = [.. All.Value.Where(t => !t.Obeys)];
        Assert.All(
            exceptions, t =>
                Assert.True(t.Lever != "lead at the nose" && t.SpeedMS >= 0.8 && !t.Name.Contains("fur strip", StringComparison.Ordinal),
                    $"{t.Name} {t.Lever} {t.SpeedMS}"));
    }

    // The proof of that cause: the same flies pulled from the same high point, but by a ring that still lies flat, all need less.
    [Fact]
    public void Tow_PulledFromTheHighEyesPlaceOnAFlatRing_AlwaysNeedsLess()
    {
        foreach (double speed in SpeedsMS)
        {
            Assert.All(Families.PlaningFlies, fly =>
            {
                double plainDeg = Trim.Of(fly.With(false, false, 1), speed).LineAngleDeg;
                double needs =
                    Trim.Least(0.01, 4, layers => FlatRing(fly.With(false, false, layers), fly.With(false, true, layers), speed).LineAngleDeg >= plainDeg);
                Assert.True(needs < 1, $"{fly.Name} {speed}: {needs}");
            });
        }
    }

    private static Trim FlatRing(Recipe straight, Recipe high, double speedMS)
    {
        BuiltFly built = FlyBuilder.Build(straight);
        FlyBody body = built.Body with { TowPointM = FlyBuilder.Build(high).Body.TowPointM };
        return Trim.Of(body, built.Conditions, speedMS);
    }
}
