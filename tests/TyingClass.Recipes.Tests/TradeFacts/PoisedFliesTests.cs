using TyingClass.Balance.Reports;
using TyingClass.Balance.Tying;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using Xunit;

namespace TyingClass.Recipes.Tests.TradeFacts;

/// <summary>
/// Fact 10 (common practice, no source): when balance point and hinge line nearly coincide, small tying errors decide, and tolerance falls toward a coin toss.
/// </summary>
public sealed class PoisedFliesTests
{
    private const double SpeedMS = 0.4;
    private const int Flies = 100;

    private static readonly Lazy<Poised[]> All =
        new(() => [.. Families.PoisedFlies.Select(fly => new Poised(fly.Name, Tie(fly.Weighing, 0), Tie(fly.Weighing, 0.2), Tie(fly.Weighing, 0.4)))]);

    /// <param name="AtNone">Weighted to no keel height, or as little as it has with hardly any weight at all.</param>
    private sealed record Poised(string Name, Tied AtNone, Tied AtFifth, Tied AtTwoFifths)
    {
        public bool CanBePoised => AtNone.KeelMm < 0.05;
    }

    private sealed record Tied(double KeelMm, double AsIntended, double Leaning, double Flipped);

    internal static Share Share => Share.Of(All.Value, p => p.AtNone.AsIntended < 0.75);

    internal static string Table => Figures.Table(
        "keel height set to, mm | flies | of 100 tied alike by a practiced hand, ride as intended: median, % | range, % | lean: median, % | flip: median, %",
        new (string Name, IEnumerable<Tied> Flies)[]
        {
            ("0", All.Value.Where(p => p.CanBePoised).Select(p => p.AtNone)),
            ("0.2", All.Value.Where(p => p.AtNone.KeelMm < 0.2).Select(p => p.AtFifth)),
            ("0.4", All.Value.Select(p => p.AtTwoFifths)),
        }.Select(g =>
            $"{g.Name} | {g.Flies.Count()} | {100 * Figures.Median(g.Flies.Select(t => t.AsIntended)):F0} "
            + $"| {Figures.Range(g.Flies.Select(t => 100 * t.AsIntended), "F0")} | {100 * Figures.Median(g.Flies.Select(t => t.Leaning)):F0} "
            + $"| {100 * Figures.Median(g.Flies.Select(t => t.Flipped)):F0}"));

    [Fact]
    public void LeansRad_FliesWithNoKeelHeight_TyingErrorsDecide()
    {
        Assert.Equal(72, All.Value.Length);
        Poised[] obey = [.. All.Value.Where(p => p.AtNone.AsIntended < 0.75)];
        Assert.True(obey.Length / 72.0 >= 0.92, $"{obey.Length}");
        // The rest were never poised: light as a bead can be, their wing alone holds them up.
        Assert.All(All.Value.Except(obey), p => Assert.True(p.AtNone.KeelMm > 0.2, $"{p.Name} {p.AtNone}"));
        // Poised at nothing it is worse than a coin toss: hardly one rides level, and which way it goes is all that is tossed for.
        Assert.All(All.Value.Where(p => p.CanBePoised), p => Assert.True(p.AtNone.AsIntended <= 0.25, $"{p.Name} {p.AtNone}"));
    }

    [Fact]
    public void LeansRad_KeelHeightOfTwoFifths_BetterThanPoisedForAllButOne()
    {
        Poised[] poised = [.. All.Value.Where(p => p.CanBePoised)];
        Assert.All(poised, p => Assert.True(p.AtTwoFifths.AsIntended >= p.AtNone.AsIntended, p.Name));
        Assert.True(poised.Count(p => p.AtFifth.AsIntended > p.AtNone.AsIntended && p.AtTwoFifths.AsIntended > p.AtNone.AsIntended + 0.3) >= poised.Length - 1);
    }

    private static Tied Tie(Func<double, Recipe> weighing, double keelMm)
    {
        double massKg = Trim.Least(1e-7, 20e-3, m => Trim.Of(weighing(m), SpeedMS).KeelMm > keelMm);
        BuiltFly built = FlyBuilder.Build(weighing(massKg));
        Trim trim = Trim.Of(built.Body, built.Conditions, SpeedMS);
        ThousandFlies sampler = new(built.Body, built.Conditions, double.PositiveInfinity, TyingSpread.Of(TyingAccuracy.Practiced));
        double[] leansDeg =
            [.. sampler.LeansRad(trim.Attitude, SpeedMS, ThousandFlies.Deviates(built.Body, Flies, 20260101)).Select(rad => rad / Bench.Degree)];
        double asIntended = leansDeg.Count(lean => lean <= 30), flipped = leansDeg.Count(lean => lean > 120);
        return new Tied(trim.KeelMm, asIntended / Flies, (Flies - asIntended - flipped) / Flies, flipped / Flies);
    }
}
