using Xunit;

namespace TyingClass.Recipes.Tests.TradeFacts;

/// <summary>
/// Fact 3 (common practice, no source): jig hook, heavy dumbbell eyes and a buoyant fur wing on the point side ride point up, nose steeply down on a slack line
/// and a loop knot.
/// </summary>
public sealed class JigStreamerTests
{
    /// <summary>Settled on before measuring.</summary>
    private const double SteeplyDeg = -30;

    private static readonly Lazy<Ride[]> All = new(() => [.. Families.JigStreamers.Select(Ride.Of)]);

    internal static Share Share => Share.Of(All.Value, Obeys);

    internal static string Table => Figures.Table(
        "jig eye | obey | keel height at 0.4 m/s, mm | towed at 0.4 m/s, nose up, ° | sinking, nose down, ° | sinks at, m/s",
        All.Value.GroupBy(r => r.Recipe.Name.Split(' ')[2].TrimEnd(',')).Select(g =>
            $"{g.Key} | {g.Count(Obeys)} of {g.Count()} | {Figures.Range(g.Select(r => r.KeelMm), "F1")} "
            + $"| {Figures.Range(g.Select(r => r.PitchDeg), "F1")} | {Figures.Range(g.Select(r => -r.State.Sink!.PitchDeg), "F1")} "
            + $"| {Figures.Range(g.Select(r => r.State.Sink!.RateMS), "F2")}"));

    [Fact]
    public void Solve_JigsWithHeavyEyes_AllRidePointUpNoseDownAndThreeInFourSteeply()
    {
        Assert.Equal(90, All.Value.Length);
        Assert.All(All.Value, r => Assert.True(
            r.IsReliable && r.State.Sink is { PitchDeg: < -20, LeanDeg: < 30 },
            $"{r.Recipe.Name}: {r.Kind}, sinks at {r.State.Sink?.PitchDeg}°, lean {r.State.Sink?.LeanDeg}°"));
        Assert.InRange(All.Value.Count(Obeys) / 90.0, 0.7, 0.8);
        // Those that do not are fur strips: a flat thing holds the nose up.
        Assert.All(All.Value.Where(r => !Obeys(r)), r => Assert.Contains("fur strip", r.Recipe.Name));
    }

    // The nose drops only when the line goes slack: on a tight line the fly hangs back from its eye, weight aft, nose up.
    [Fact]
    public void Solve_JigsWithHeavyEyes_TowNoseUpOnATightLine() =>
        Assert.All(All.Value, r => Assert.True(r.PitchDeg > 20, r.Recipe.Name));

    private static bool Obeys(Ride ride) => ride.IsReliable && ride.State.Sink is { } sink && sink.PitchDeg <= SteeplyDeg && sink.LeanDeg < 30;
}
