using TyingClass.Balance.Reports;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Reports;
using Xunit;

namespace TyingClass.Recipes.Tests.TradeFacts;

/// <summary>
/// Fact 5 (common practice, no source): long shank, small gape, down eye, heavy cone, meant point down: on its side or undecided. A lighter cone, a straight
/// eye or a wider gape each raise its keel height.
/// </summary>
public sealed class NarrowGapeTests
{
    private static readonly double[] SpeedsMS = [0.2, 0.4, 0.8, 1.2];

    private static readonly Lazy<Ride[]> AsTied = new(() => [.. Families.ConeStreamers.Select(f => Ride.Of(f.With("tungsten", 1, EyeKind.Down)))]);

    private static readonly Lazy<Changed[]> All = new(() => Change(Trim.Of)), WithSolidCones = new(() => Change(Families.WithSolidCone));

    private sealed record Changed(string Name, double SpeedMS, Trim Tied, Trim Lighter, Trim StraightEye, Trim WiderGape)
    {
        public bool HasHugeCone => Name.EndsWith("cone 0.95 gapes", StringComparison.Ordinal);

        public double GapeGainMm => WiderGape.KeelMm - Tied.KeelMm;
    }

    internal static Share Unreliable => Share.Of(AsTied.Value, r => !r.IsReliable);

    internal static Share ByLighterCone => Share.Of(All.Value, c => c.Lighter.KeelMm > c.Tied.KeelMm);

    internal static Share ByStraightEye => Share.Of(All.Value, c => c.StraightEye.KeelMm > c.Tied.KeelMm);

    internal static Share ByWiderGape => Share.Of(All.Value, c => c.GapeGainMm > 0);

    internal static Share ByWiderGapeUnderLesserCone => Share.Of(All.Value.Where(c => !c.HasHugeCone), c => c.GapeGainMm > 0);

    internal static string Table => Figures.Table(
        "speed, m/s | pitch as tied, ° | keel height as tied, mm | brass cone raises it | by, mm (median) | straight eye raises it | by, mm (median) | "
            + "wider gape raises it | by, mm",
        All.Value.GroupBy(c => c.SpeedMS).Select(g =>
            $"{g.Key:F1} | {Figures.Range(g.Select(c => c.Tied.PitchDeg), "F1")} | {Figures.Range(g.Select(c => c.Tied.KeelMm), "F2")} "
            + $"| {g.Count(c => c.Lighter.KeelMm > c.Tied.KeelMm)} of {g.Count()} | {Figures.Median(g.Select(c => c.Lighter.KeelMm - c.Tied.KeelMm)):F2} "
            + $"| {g.Count(c => c.StraightEye.KeelMm > c.Tied.KeelMm)} of {g.Count()} "
            + $"| {Figures.Median(g.Select(c => c.StraightEye.KeelMm - c.Tied.KeelMm)):F2} | {g.Count(c => c.GapeGainMm > 0)} of {g.Count()} "
            + $"| {Figures.Range(g.Select(c => c.GapeGainMm), "F2")}"));

    internal static string GapeTable => Figures.Table(
        "cone | dressing | wider gape raises the keel height, of 8 flies at 0.2, 0.4, 0.8, 1.2 m/s | balance point sinks by, mm | line of resistance sinks "
            + "under it by, mm",
        All.Value.GroupBy(c => (Cone: c.Name.Split(", ")[2], Dressing: c.Name.Split(", ")[1])).OrderBy(g => g.Key.Cone, StringComparer.Ordinal)
            .Select(g =>
            $"{g.Key.Cone} | {g.Key.Dressing} | {string.Join(", ", SpeedsMS.Select(v => g.Count(c => c.SpeedMS == v && c.GapeGainMm > 0)))} "
            + $"| {Figures.Range(Trolled(g).Select(c => c.WiderGape.BelowLevelMm - c.Tied.BelowLevelMm), "F2")} "
            + $"| {Figures.Range(Trolled(g).Select(c => c.WiderGape.LineDropMm - c.Tied.LineDropMm), "F2")}"));

    internal static string VerdictTable => Figures.Table(
        "verdict at 0.4 m/s | flies | of 60 tied alike, ride as intended",
        AsTied.Value.GroupBy(r => r.IsReliable ? "reliably point down" : r.Kind == VerdictKind.Flips ? "flips" : "not to be relied on")
            .OrderBy(g => g.Key, StringComparer.Ordinal).Select(g =>
            $"{g.Key} | {g.Count()} | {Figures.Range(g.Select(r => 100 * r.AsIntended), "F0")} %"));

    [Fact]
    public void Solve_HeavyConeOnANarrowGape_HardlyOneRidesReliablyPointDown()
    {
        Assert.Equal(48, AsTied.Value.Length);
        Ride[] exceptions = [.. AsTied.Value.Where(r => r.IsReliable)];
        Assert.True(exceptions.Length <= 4);
        Assert.All(exceptions, r => Assert.True(r.Recipe.Name.StartsWith("#8", StringComparison.Ordinal) && r.AsIntended < 0.8, r.Recipe.Name));
    }

    [Fact]
    public void Tow_LighterConeOrStraightEye_AlwaysRaisesTheKeelHeight()
    {
        Assert.Equal(192, All.Value.Length);
        Assert.All(All.Value, c => Assert.True(c.Lighter.KeelMm > c.Tied.KeelMm, c.Name));
        Assert.All(All.Value, c => Assert.True(c.StraightEye.KeelMm > c.Tied.KeelMm, c.Name));
    }

    [Fact]
    public void LevelLine_WiderGape_AlwaysRaisesIt() =>
        Assert.All(Families.ConeStreamers,
        f => Assert.True(LevelLineMm(f.With("tungsten", 1.25, EyeKind.Down)) > LevelLineMm(f.With("tungsten", 1, EyeKind.Down)), f.Name));

    // Here rule of thumb and physics part: see docs/trade-facts.md.
    [Fact]
    public void Tow_WiderGape_RaisesTheKeelHeightOnlyUnderTheLesserCone()
    {
        Changed[] obey = [.. All.Value.Where(c => c.GapeGainMm > 0)];
        Assert.InRange(obey.Length / 192.0, 0.44, 0.51);
        // Under the huge cone the gain is nowhere worth having.
        Assert.All(All.Value.Where(c => c.HasHugeCone), c => Assert.True(c.GapeGainMm < 0.05, $"{c.Name}: {c.GapeGainMm}"));
        // Under the lesser cone the exceptions are all at trolling speed, nearly all with the stiff bucktail wing.
        Changed[] exceptions = [.. All.Value.Where(c => !c.HasHugeCone && c.GapeGainMm <= 0)];
        Assert.All(exceptions, c => Assert.True(c.SpeedMS >= 0.8 && c.GapeGainMm > -0.13, c.Name));
        Assert.True(exceptions.Count(c => !c.Name.Contains("bucktail", StringComparison.Ordinal)) <= 2);
    }

    // The hole in a cone's rear leaves the fly lighter and the bend a greater share of it, so that the same widening lowers the balance point farther.
    [Fact]
    public void Tow_WiderGape_SinksTheBalancePointFartherUnderAHollowCone() =>
        Assert.All(All.Value.Zip(WithSolidCones.Value), pair =>
            Assert.True(pair.First.WiderGape.BelowLevelMm - pair.First.Tied.BelowLevelMm > pair.Second.WiderGape.BelowLevelMm - pair.Second.Tied.BelowLevelMm,
                $"{pair.First.Name} {pair.First.SpeedMS}"));

    // The cause: the bend's weight does sink, everywhere, but its drag takes the line of resistance down with it.
    [Fact]
    public void Tow_WiderGape_BalancePointAlwaysSinksAndTheLineOfResistanceDecides() =>
        Assert.All(All.Value, c =>
        {
            double sinks = c.WiderGape.BelowLevelMm - c.Tied.BelowLevelMm, line = c.WiderGape.LineDropMm - c.Tied.LineDropMm;
            Assert.True(sinks > 0 && line > 0, c.Name);
            Assert.Equal(c.GapeGainMm, sinks - line, 1e-6);
        });

    private static Changed[] Change(Func<Recipe, double, Trim> trim) =>
    [
        .. from fly in Families.ConeStreamers
           from speed in SpeedsMS
           select new Changed(
               fly.Name, speed, trim(fly.With("tungsten", 1, EyeKind.Down), speed), trim(fly.With("brass", 1, EyeKind.Down), speed),
               trim(fly.With("tungsten", 1, EyeKind.Straight), speed), trim(fly.With("tungsten", 1.25, EyeKind.Down), speed)),
    ];

    private static IEnumerable<Changed> Trolled(IEnumerable<Changed> flies) => flies.Where(c => c.SpeedMS == 0.8);

    private static double LevelLineMm(Recipe recipe) =>
        SolvedFly.Solve(recipe, new ReportOptions { Flies = 1, SpeedsMS = [0.4] }).Report.LevelLineKeelMm!.Value.PointDown;
}
