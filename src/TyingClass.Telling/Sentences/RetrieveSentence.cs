using TyingClass.Balance.Retrieving;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Telling.Sentences;

/// <summary>What a fly does over a whole retrieve, in sentences.</summary>
public static class RetrieveSentence
{
    private const double SameDepthM = 0.02;

    /// <summary>Everything told of it, one sentence a line, the most telling first.</summary>
    public static IEnumerable<string> Of(RetrieveReport report, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(report);
        if (Refusal(report, units) is { } refusal) return [refusal];
        return new[] { Depths(report, units), Nose(report, units), Ride(report), Bottom(report, units), LineIn(report, units) }.OfType<string>();
    }

    /// <summary>Why there is nothing to tell; null where there is.</summary>
    public static string? Refusal(RetrieveReport report, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(report);
        return report.Limit switch
        {
            RetrieveLimit.NothingToStrip =>
                $"There is not enough line out for one round: {Far(report.Plan.LineOutM, units)} with {Far(report.Plan.LeaderM, units)} of leader. "
                    + "Let more line out, or strip less.",
            RetrieveLimit.TooLong =>
                $"This retrieve takes over {Stated.Say(RetrieveEngine.LongestS, Dimension.Duration, units)}, which is not followed. "
                    + "Count less, pause less, or repeat it less often.",
            RetrieveLimit.NotFollowed => "The motion is too wild to be followed. Try a slower strip or a heavier leader.",
            _ when report.Strips.IsEmpty => "There is no strip in it: the fly only sinks. Its depth against time is told with the pause.",
            _ => null,
        };
    }

    /// <summary>How deep it fishes and how far a strip lifts it.</summary>
    public static string Depths(RetrieveReport report, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(report);
        if (report.StaysOnTop) return "It stays on top all the while: there is nothing for a pause to do.";
        string counted = report.Plan.CountDownS > 0
            ? $"Counted down for {Beat(report.Plan.CountDownS, units)} it is {Deep(report.CountedDepthM, units)} deep. "
            : "";
        string hop = report.HopM < 0.005 ? "The strips hardly lift it" : $"A strip lifts it by {Magnitudes.Hop.Say(report.HopM, units)}";
        string drift = report.DriftM switch
        {
            > SameDepthM => $"; it still gets {Magnitudes.Hop.Say(report.DriftM.Value, units)} deeper from round to round",
            < -SameDepthM => $"; it still gets {Magnitudes.Hop.Say(-report.DriftM.Value, units)} shallower from round to round",
            _ => "",
        };
        return $"{counted}{hop}, and in the end it fishes between {Deep(report.ShallowestM, units)} and {Deep(report.DeepestM, units)}{drift}.";
    }

    /// <summary>Where the nose points in the pause, and how long a pause it needs to point down.</summary>
    public static string? Nose(RetrieveReport report, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(report);
        if (report.StaysOnTop) return null;
        string steepest = report.DivePitchDeg is not { } pitch ? "There is no pause in it"
            : pitch <= RetrieveReport.DownDeg ? $"In the pause the nose goes down to {FlyWords.Degrees(Math.Abs(pitch))}"
            : $"In the pause the nose never points clearly down: at its lowest, {FlyWords.Pitch(pitch)}";
        return report.SettleS switch
        {
            null => $"{steepest}; a pause of {Beat(RetrieveReport.LongestPauseS, units)} would not turn it down either.",
            < 0.1 => $"{steepest}; it points down as soon as the strip ends.",
            { } settle => $"{steepest}; a pause must be {Beat(settle, units)} long for the nose to point down.",
        };
    }

    public static string Ride(RetrieveReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        RideShares ride = report.Ride;
        string slack = report.Path.Count(p => p.IsSlack) is > 0 and var points
            ? $" The line is slack {Share(points / (double)report.Path.Length)} of the time."
            : " The line is never quite slack.";
        string upright = ride.Upright > 0.995 ? "It rides the right way up all the time."
            : ride.Over > 0.995 ? "It rides over all the time."
            : $"Of the time it rides the right way up {Share(ride.Upright)}, leans {Share(ride.Leaning)} and is over {Share(ride.Over)}.";
        return upright + slack;
    }

    public static string? Bottom(RetrieveReport report, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(report);
        if (report.Plan.BottomM is not { } depthM) return null;
        return report.TouchesBottom is { } touch
            ? $"It first touches bottom, {Deep(depthM, units)} down, {Beat(touch.TimeS, units)} after it lands and "
                + $"{Far(Math.Max(0, touch.AlongM), units)} nearer."
            : $"It never touches bottom, {Deep(depthM, units)} down.";
    }

    /// <summary>How far the model's own guesses leave hop and nose open; null where there is nothing to doubt.</summary>
    public static string? Doubt(RetrieveDoubt doubt, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(doubt);
        string[] ranges =
        [
            .. Range("the hop", Magnitudes.Hop, doubt.HopM, 1, units),
            .. Range("the nose in the pause", Magnitudes.DivePitch, doubt.DivePitchDeg, Math.PI / 180, units),
        ];
        return ranges.Length == 0 ? null
            : $"The model’s own guesses leave open: {Grammar.And(ranges)}, in nine draws of ten. How the line runs and your hand come on top.";
    }

    private static IEnumerable<string> Range(string name, Magnitude what, Balance.Doubting.Interval? interval, double si, UnitSystem units) =>
        interval is not { } range ? []
        : what.Say(si * range.Low, units) is var low && what.Say(si * range.High, units) is var high && low == high ? [$"{name} hardly, at {low}"]
        : [$"{name} from {low} to {high}"];

    private static string? LineIn(RetrieveReport report, UnitSystem units) => report.Limit == RetrieveLimit.LineIsIn
        ? $"The line is in after {report.Strips.Length} {(report.Strips.Length == 1 ? "strip" : "strips")}; "
            + $"of {Far(report.Plan.LineOutM, units)} no more can be stripped."
        : null;

    private static string Beat(double seconds, UnitSystem units) => Magnitudes.PointDownTime.Say(seconds, units);

    private static string Deep(double depthM, UnitSystem units) => Magnitudes.Deepest.Say(depthM, units);

    private static string Far(double m, UnitSystem units) => Magnitudes.Depth.SayStated(m, units);

    private static string Share(double share) => Numbers.Percent(share);
}
