using TyingClass.Recipes.Model;
using Xunit;

namespace TyingClass.Recipes.Tests.TradeFacts;

/// <summary>
/// Fact 7 (common practice, no source): light eyes suffice on a small fine hook when all hair sits on the point side. Fact 8 (common practice, no source): a
/// cone, half a shank of lead wraps, a down eye and a buoyant wing on the point side ride point up with no dumbbell eyes.
/// </summary>
public sealed class PointSideHairTests
{
    private static readonly Lazy<Tried[]> Small =
        new(() => [.. Families.SmallHairFlies.Select(r => new Tried(Ride.Of(r), Ride.Of(HairOnTop(r)), Ride.Of(r with { Parts = r.Parts.RemoveAt(0) })))]);

    private static readonly Lazy<Tried[]> Wrapped = new(() => [.. Families.WrappedFlies.Select(r => new Tried(Ride.Of(r), Ride.Of(HairOnTop(r)), null))]);

    private sealed record Tried(Ride Tied, Ride OnTop, Ride? NoEyes);

    internal static Share SmallShare => Share.Of(Small.Value, t => t.Tied.IsReliable);

    internal static Share WrappedShare => Share.Of(Wrapped.Value, t => t.Tied.IsReliable);

    internal static string SmallTable => Figures.Table(
        "tied | reliably point up | keel height, mm | of 60 tied alike, ride as intended, %",
        new[] { ("light eyes, hair on the point side", Small.Value.Select(t => t.Tied)), ("light eyes, the same hair on top", Small.Value.Select(t => t.OnTop)),
            ("no eyes, hair on the point side", Small.Value.Select(t => t.NoEyes!)) }
            .Select(g => Row(g.Item1, [.. g.Item2])));

    internal static string WrappedTable => Figures.Table(
        "tied | reliably point up | keel height, mm | of 60 tied alike, ride as intended, %",
        new[] { ("wing on the point side", Wrapped.Value.Select(t => t.Tied)), ("the same wing on top", Wrapped.Value.Select(t => t.OnTop)) }
            .Select(g => Row(g.Item1, [.. g.Item2])));

    [Fact]
    public void Solve_SmallFineHooksHairOnThePointSide_AllRideReliablyPointUp()
    {
        Assert.Equal(48, Small.Value.Length);
        Assert.All(Small.Value, t => Assert.True(t.Tied.IsReliable, t.Tied.Recipe.Name));
    }

    // It takes both: the hair where it is, and the eyes, light as they are.
    [Fact]
    public void Solve_SmallFineHooks_NoneIsReliableWithHairOnTopOrWithoutEyes()
    {
        Assert.All(Small.Value, t => Assert.False(t.OnTop.IsReliable, t.OnTop.Recipe.Name));
        Assert.All(Small.Value, t => Assert.False(t.NoEyes!.IsReliable, t.NoEyes.Recipe.Name));
        Assert.True(Small.Value.Count(t => t.NoEyes!.KeelMm > 0) >= 24);
        Assert.All(Small.Value, t => Assert.True(t.Tied.KeelMm > t.OnTop.KeelMm && t.Tied.KeelMm > t.NoEyes!.KeelMm, t.Tied.Recipe.Name));
    }

    [Fact]
    public void Solve_ConeAndWraps_AllRidePointUpButTheOneThatHangs()
    {
        Assert.Equal(48, Wrapped.Value.Length);
        Assert.True(Wrapped.Value.Count(t => t.Tied.IsReliable) / 48.0 >= 0.97);
        // The exception is no failure of balance: heaviest head, shortest shank, so steep that riding means nothing.
        Assert.All(Wrapped.Value, t => Assert.Equal(t.Tied.PitchDeg > 60, !t.Tied.IsReliable));
        Assert.All(Wrapped.Value, t => Assert.True(t.Tied.State.AtFishingSpeed.LeanDeg < 1, t.Tied.Recipe.Name));
    }

    [Fact]
    public void Solve_ConeAndWraps_WingOnTopLosesMostOfTheKeelHeight() =>
        Assert.All(Wrapped.Value.Where(t => !double.IsNaN(t.Tied.KeelMm) && !double.IsNaN(t.OnTop.KeelMm)),
        t => Assert.True(t.Tied.KeelMm > t.OnTop.KeelMm + 0.3, $"{t.Tied.Recipe.Name} {t.Tied.KeelMm} {t.OnTop.KeelMm}"));

    private static string Row(string name, Ride[] rides) =>
        $"{name} | {rides.Count(r => r.IsReliable)} of {rides.Length} "
        + $"| {Figures.Range(rides.Where(r => !double.IsNaN(r.KeelMm)).Select(r => r.KeelMm), "F2")} "
        + $"| {Figures.Range(rides.Select(r => 100 * r.AsIntended), "F0")}";

    private static Recipe HairOnTop(Recipe recipe) =>
        recipe with { Parts = [.. recipe.Parts.Select(part => part.Kind == PartKind.Wing ? part with { Side = Side.Top } : part)] };
}
