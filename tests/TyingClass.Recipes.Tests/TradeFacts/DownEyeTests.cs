using TyingClass.Recipes.Model;
using Xunit;

namespace TyingClass.Recipes.Tests.TradeFacts;

/// <summary>
/// Fact 2 (common practice, no source): point down, an unweighted streamer on a down eye tows nose up, on a straight eye less so, on an up eye less still.
/// </summary>
public sealed class DownEyeTests
{
    private static readonly double[] SpeedsMS = [0.2, 0.4, 0.8, 1.2];

    private static readonly Lazy<Towed[]> All = new(() =>
    [
        .. from streamer in Families.Streamers
           from speed in SpeedsMS
           select new Towed(streamer.Name, speed, Trim.Of(streamer.On(EyeKind.Down), speed), Trim.Of(streamer.On(EyeKind.Straight), speed),
           Trim.Of(streamer.On(EyeKind.Up), speed)),
    ]);

    private sealed record Towed(string Name, double SpeedMS, Trim Down, Trim Straight, Trim Up);

    internal static Share Share => Share.Of(All.Value, Obeys);

    internal static string Table => Figures.Table(
        "speed, m/s | obey | nose up on a down eye, ° | straight eye less by, ° | up eye less again by, °",
        All.Value.GroupBy(t => t.SpeedMS).Select(g =>
            $"{g.Key:F1} | {g.Count(Obeys)} of {g.Count()} | {Figures.Range(g.Select(t => t.Down.PitchDeg), "F1")} "
            + $"| {Figures.Range(g.Select(t => t.Down.PitchDeg - t.Straight.PitchDeg), "F1")} "
            + $"| {Figures.Range(g.Select(t => t.Straight.PitchDeg - t.Up.PitchDeg), "F1")}"));

    [Fact]
    public void Tow_UnweightedStreamers_AllNoseUpTheMoreTheLowerTheEye()
    {
        Assert.Equal(144, All.Value.Length);
        Assert.All(All.Value, t => Assert.True(Obeys(t), t.Name));
        // They do swim that way up, but for eleven at the highest speed: the fact is no statement about an attitude no fly takes.
        Towed[] over = [.. All.Value.Where(t => Math.Min(t.Down.KeelMm, Math.Min(t.Straight.KeelMm, t.Up.KeelMm)) <= (t.SpeedMS > 1 ? 0 : 0.2))];
        Assert.True(over.Length <= 11);
        Assert.All(over, t => Assert.True(t.SpeedMS > 1, t.Name));
    }

    // Why: slow, the weight of the bend drops the tail; fast, the drag of what lies above and below the eye is all that is left.
    [Fact]
    public void Tow_Faster_NoseFallsOnEveryEyeAndTheEyeMattersMore()
    {
        foreach (IGrouping<string, Towed> streamer in All.Value.GroupBy(t => t.Name))
        {
            Towed[] bySpeed = [.. streamer.OrderBy(t => t.SpeedMS)];
            Assert.All(bySpeed.Zip(bySpeed.Skip(1)), pair => Assert.True(pair.Second.Down.PitchDeg < pair.First.Down.PitchDeg));
            Assert.True(Share(bySpeed[^1]) > 2 * Share(bySpeed[0]), streamer.Key);
        }

        static double Share(Towed t) => (t.Down.PitchDeg - t.Up.PitchDeg) / t.Down.PitchDeg;
    }

    private static bool Obeys(Towed t) =>
        t.Down.PitchDeg > 0 && t.Down.PitchDeg > t.Straight.PitchDeg && t.Straight.PitchDeg > t.Up.PitchDeg;
}
