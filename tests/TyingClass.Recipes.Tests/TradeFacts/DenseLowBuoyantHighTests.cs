using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Model;
using Xunit;

namespace TyingClass.Recipes.Tests.TradeFacts;

/// <summary>Fact 9 (common practice, no source): dense material low and buoyant material high raises keel height, for either intent.</summary>
public sealed class DenseLowBuoyantHighTests
{
    private static readonly double[] SpeedsMS = [0.2, 0.4, 0.8];

    private static readonly Lazy<Moved[]> All = new(() =>
    [
        .. from fly in Families.TwoSidedFlies
           let low = fly.Intent == Intent.PointDown ? Side.Under : Side.Top
           let high = fly.Intent == Intent.PointDown ? Side.Top : Side.Under
           from speed in SpeedsMS
           let best = KeelMm(fly.With(low, high), speed)
           let eyesHigh = KeelMm(fly.With(high, high), speed)
           let wingLow = KeelMm(fly.With(low, low), speed)
           let worst = KeelMm(fly.With(high, low), speed)
           from gain in new[] { ("eyes low", best - eyesHigh), ("eyes low", wingLow - worst), ("wing high", best - wingLow), ("wing high", eyesHigh - worst) }
           select new Moved(fly.Name, fly.Intent, gain.Item1, speed, gain.Item2),
    ]);

    private sealed record Moved(string Name, Intent Intent, string Move, double SpeedMS, double GainMm);

    internal static Share Share => Share.Of(All.Value, m => m.GainMm > 0);

    internal static string Table => Figures.Table(
        "move | intent | speed, m/s | raises the keel height | by, mm",
        All.Value.GroupBy(m => (m.Move, m.Intent, m.SpeedMS)).OrderBy(g => g.Key.Move, StringComparer.Ordinal).ThenBy(g => g.Key.Intent)
            .ThenBy(g => g.Key.SpeedMS).Select(g =>
            $"{g.Key.Move} | {(g.Key.Intent == Intent.PointDown ? "point down" : "point up")} | {g.Key.SpeedMS:F1} | {g.Count(m => m.GainMm > 0)} "
            + $"of {g.Count()} | {Figures.Range(g.Select(m => m.GainMm), "F2")}"));

    [Fact]
    public void Tow_DenseMovedLowOrBuoyantMovedHigh_AlwaysRaisesTheKeelHeight()
    {
        Assert.Equal(36 * 3 * 4, All.Value.Length);
        Assert.All(All.Value, m => Assert.True(m.GainMm > 0, $"{m.Name} {m.Move} {m.SpeedMS}: {m.GainMm}"));
    }

    private static double KeelMm(Recipe recipe, double speedMS) => Trim.Of(recipe, speedMS).KeelMm;
}
