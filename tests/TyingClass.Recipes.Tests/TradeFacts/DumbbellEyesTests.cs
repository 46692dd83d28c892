using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using Xunit;

namespace TyingClass.Recipes.Tests.TradeFacts;

/// <summary>
/// Fact 6 (common practice, no source): dumbbell eyes must grow with the hook; the lightest that keep it point up get heavier as wire and gape grow.
/// </summary>
public sealed class DumbbellEyesTests
{
    private const double SpeedMS = 0.4;

    private static readonly Lazy<Needed[]> All = new(() =>
    [
        .. Families.DumbbellFlies.Select(fly => new Needed(
            fly.Name, fly.Kin, fly.Size, LeastMg(fly.With, fly.Size, 0, 1), LeastMg(fly.With, fly.Size, -2, 1), LeastMg(fly.With, fly.Size, 2, 1),
            LeastMg(fly.With, fly.Size, 0, 1.25))),
    ]);

    /// <summary>Least mass of lead eyes for a positive keel height, mg; 0 when it rides point up without.</summary>
    private sealed record Needed(string Name, string Kin, int Size, double UsualMg, double FineMg, double HeavyMg, double WideMg);

    private sealed record Step(string Name, double LesserMg, double GreaterMg)
    {
        public bool Obeys => GreaterMg > LesserMg;
    }

    private static IEnumerable<Step> Steps =>
        All.Value.GroupBy(n => n.Kin).SelectMany(kin => kin.OrderByDescending(n => n.Size).Zip(kin.OrderByDescending(n => n.Size).Skip(1)))
            .Select(pair => new Step($"size: {pair.First.Name}", pair.First.UsualMg, pair.Second.UsualMg))
            .Concat(All.Value.Select(n => new Step($"wire: {n.Name}", n.FineMg, n.UsualMg)))
            .Concat(All.Value.Select(n => new Step($"wire: {n.Name}", n.UsualMg, n.HeavyMg)))
            .Concat(All.Value.Select(n => new Step($"gape: {n.Name}", n.UsualMg, n.WideMg)));

    internal static Share Share => Share.Of(Steps, s => s.Obeys);

    internal static string Table => Figures.Table(
        "hook | least lead eyes, mg, bucktail above and below | fur strip on the point side | synthetic hair on the point side | bucktail, two steps finer "
            + "wire | two steps heavier | gape a quarter wider",
        All.Value.Where(n => n.Kin.StartsWith("Straight", StringComparison.Ordinal)).GroupBy(n => n.Size).Select(g =>
            $"{new HookSize(g.Key)} straight eye | {string.Join(" | ", g.Select(n => Figures.Number(n.UsualMg, "F1")))} | {g.First().FineMg:F1} "
            + $"| {g.First().HeavyMg:F1} | {g.First().WideMg:F1}"));

    internal static string StepTable => Figures.Table(
        "step | obey | neither needs eyes at all",
        Steps.GroupBy(s => s.Name.Split(':')[0])
            .Select(g => $"{g.Key} | {g.Count(s => s.Obeys)} of {g.Count()} | {g.Count(s => s.GreaterMg == 0)}"));

    [Fact]
    public void Tow_DumbbellFlies_EyesGrowWithSizeWireAndGapeUnlessNoneAreNeeded()
    {
        Step[] steps = [.. Steps];
        Assert.Equal(30 + 36 + 36 + 36, steps.Length);
        Assert.True(steps.Count(s => s.Obeys) / (double)steps.Length >= 0.92);
        Assert.All(steps.Where(s => !s.Obeys), s =>
        {
            Assert.Equal(0, s.LesserMg);
            Assert.Equal(0, s.GreaterMg);
            Assert.Contains("fur strip", s.Name, StringComparison.Ordinal);
        });
    }

    // What is commonly tied on such hooks (from memory: about 1.2 g on a 2, 0.6 g on a 6) is two to four and a half times the least.
    [Fact]
    public void Tow_BucktailAboveAndBelow_LeastIsAFairShareOfWhatIsTied()
    {
        Assert.InRange(1200 / All.Value.Single(n => n.Name == "2 Straight, bucktail above and below").UsualMg, 2, 4.5);
        Assert.InRange(600 / All.Value.Single(n => n.Name == "6 Straight, bucktail above and below").UsualMg, 2, 4.5);
    }

    private static double LeastMg(Func<int, int, double, double, Recipe> with, int size, int wire, double gape)
    {
        double gapeM = Bench.Gape(Bench.Hook(size)), lowM = 0.02 * gapeM;
        double eyesM = Trim.Least(lowM, 1.5 * gapeM, m => Trim.Of(with(size, wire, gape, m), SpeedMS).KeelMm > 0);
        return eyesM == lowM ? 0
            : 1e6 * FlyBuilder.Build(with(size, wire, gape, eyesM)).Body.Parts.Single(p => p.Name == "dumbbell eyes").Masses.Sum(e => e.MassKg);
    }
}
