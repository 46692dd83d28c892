using TyingClass.Balance.Reports;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Reasons;
using TyingClass.Telling.Sentences;

namespace TyingClass.Telling.Replies;

/// <summary>On a prediction: what the fly does. Whether that was said stands beside it.</summary>
public static class VoteReply
{
    // So large a share is all of them.
    private const double PracticallyAll = 0.995;

    // Of one mind in each of several ways up: as the verdict has it.
    private const double OfOneMind = 0.75;

    /// <summary>"It rides point up: 97 of 100 flies tied like it do."</summary>
    public static string OfWay(BalanceReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        ToleranceReport flies = report.Soaked.Tolerance;
        string meant = FlyWords.Way(report.Intent), other = FlyWords.Way(FlyWords.Other(report.Intent));
        return report.Verdict.Kind switch
        {
            VerdictKind.RidesAsIntended or VerdictKind.Tilts => Rides(meant, flies.TheRightWayUp),
            VerdictKind.Flips => Rides(other, flies.Flipped),
            VerdictKind.Leans => $"It rides leaning, {FlyWords.Degrees(Math.Abs(report.Soaked.AtFishingSpeed.LeanDeg))} over.",
            VerdictKind.RidesOnItsSide => "It rides on its side.",
            _ => NoTelling(report.Soaked, meant, other),
        };
    }

    private static string Rides(string way, double share) =>
        share >= PracticallyAll ? $"It rides {way}." : $"It rides {way}: {Hundred(share)} of 100 flies tied like it do.";

    private static string NoTelling(StateReport state, string meant, string other)
    {
        const string head = "There is no telling which way up";
        if (!state.AtFishingSpeed.Settles) return $"{head}: it keeps turning on the line.";
        ToleranceReport flies = state.Tolerance;
        (double share, string does) = new[] { (flies.AsIntended, $"ride {meant}"), (flies.Flipped, $"ride {other}"), (flies.Leaning, "lean") }
            .MaxBy(g => g.Item1);
        return share >= OfOneMind ? $"{head}: it can settle more than one way, and the cast decides." : $"{head}: of 100 flies, {Hundred(share)} {does}.";
    }

    /// <summary>"Its nose points up, 23°, when it is towed."</summary>
    public static string OfNose(double pitchRad)
    {
        double degrees = pitchRad * 180 / Math.PI;
        string said = FlyWords.Degrees(Math.Abs(degrees));
        return Math.Abs(degrees) <= FlyWords.LevelDeg ? $"Its nose stays level when it is towed{(said == "0°" ? "" : $", to {said}")}."
            : $"Its nose points {(degrees > 0 ? "up" : "down")}, {said}, when it is towed.";
    }

    /// <summary>"It gets smaller: 0.4 mm → 0.1 mm."</summary>
    /// <param name="does">As the choice says it.</param>
    public static string OfChange(string does, string was, string now) =>
        Reply.Fit($"{Grammar.Capital(does)}: {(was == now ? now : $"{was} → {now}")}.", $"{Grammar.Capital(does)}.");

    /// <summary>"Big tungsten sinks faster than Bare floss: 0.3 m/s against 0.1 m/s."</summary>
    public static string OfMore(string quantity, (string Name, string Said) more, (string Name, string Said) less)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        string does = quantity.StartsWith("pitch", StringComparison.Ordinal) ? "carries its nose higher" : DegreeWords.Of(quantity).Say(larger: true);
        string than = does.StartsWith("has the ", StringComparison.Ordinal) ? "" : $" than {less.Name}";
        return Reply.Fit($"{more.Name} {does}{than}: {more.Said} against {less.Said}.", $"{more.Name} {does}{than}.", $"{more.Name} {does}.");
    }

    public static string OfSame(string phrase, string one, string other) => Reply.Fit(
        $"Their {phrase} is much the same: {(one == other ? $"{one} in both" : $"{one} against {other}")}.", "The two are much the same.");

    /// <summary>The author's own choices: the one that holds, in its words, and its figure where there is just one.</summary>
    /// <param name="figure">What the choices turn on, as "the pitch is 5°"; null where that is no one figure.</param>
    public static string OfOwn(string key, string said, string? figure)
    {
        string holds = Grammar.WithoutStop(key), chosen = Grammar.WithoutStop(said);
        if (key == said)
            return Reply.Fit(figure is null ? $"Yes, “{holds}”." : $"Yes, “{holds}”: {figure}.", $"Yes, “{holds}”.");
        return Reply.Fit(
            figure is null ? $"Right would be “{holds}”, not “{chosen}”." : $"Right would be “{holds}”: {figure}.",
            $"Right would be “{holds}”, not “{chosen}”.",
            $"Right would be “{holds}”.");
    }

    /// <summary>A fresh fly, and the reason for the first one.</summary>
    public static string WithReason(string ofTheFresh, bool reasonHolds) =>
        Reply.Fit($"{ofTheFresh} Your reason {(reasonHolds ? "holds" : "does not hold")}.", ofTheFresh);

    private static string Hundred(double share) => Numbers.Write(100 * share, 0);
}
