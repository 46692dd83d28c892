using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Telling.Sentences;

/// <summary>A finding as a reader sees it.</summary>
public sealed record SaidFinding(string Code, string Text);

/// <summary>What is worth telling about a fly, one sentence or two a finding.</summary>
public static class FindingSentence
{
    public static SaidFinding Say(Finding finding, BalanceReport report, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return new SaidFinding(finding.Code, Of(finding, report, units));
    }

    public static string Of(Finding finding, BalanceReport report, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(finding);
        ArgumentNullException.ThrowIfNull(report);
        return finding switch
        {
            VerdictFinding => VerdictSentence.Of(report, units),
            KnotFinding knot => Knot(knot),
            SinkWaysFinding sinks => SinkWays(sinks, units),
            NoSinkFinding sink => NoSink(sink, units),
            BendFinding bend => Bend(bend, report.Intent, units),
            RuleOfThumbFinding rule => RuleOfThumb(rule, units),
            LiftFinding lift => Lift(lift.LiftMN, units),
            _ => Plain(finding.Kind, FlyWords.Way(report.Intent)),
        };
    }

    private static string Plain(FindingKind kind, string meant) => kind switch
    {
        FindingKind.OnlyWhileDry => $"Fresh from the cast it rides {meant}, but once its air is gone it does not: what held it up was trapped air.",
        FindingKind.OnlyWhenSoaked => $"It rides {meant} only once it has soaked; fresh from the cast, the air in it says otherwise.",
        FindingKind.Spins => "It never comes to rest at this speed: something on one side keeps turning it. Look for a part tied off center.",
        FindingKind.TwoWaysUp => "It has more than one way to ride and keeps the one it lands in.",
        FindingKind.Hovers => "On a slack line it hangs where it is: it weighs almost exactly as much as the water it pushes aside.",
        FindingKind.SpeedDecides => "Which way up it rides changes with speed: see the curve of keel height against speed.",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "This finding has figures to tell."),
    };

    private static string Knot(KnotFinding knot) =>
        $"Cinched, the leader holds the shank at most {FlyWords.Degrees(Math.Abs(knot.LiftsDeg))} {(knot.LiftsDeg > 0 ? "above" : "below")} where a loop "
        + "knot would let it ride.";

    private static string SinkWays(SinkWaysFinding sinks, UnitSystem units)
    {
        IEnumerable<string> ways = sinks.Ways.Select(w =>
            $"at {Magnitudes.SinkRate.Say(Math.Abs(w.RateMS), units)}, {FlyWords.Nose(w.PitchDeg)} ({Numbers.Write(100 * w.Share, 0)} of 100 releases)");
        return $"On a slack line it has more than one way to sink and keeps the one it falls into: {string.Join(", or ", ways)}.";
    }

    private static string NoSink(NoSinkFinding sink, UnitSystem units)
    {
        string way = sink.Rises ? "rise" : "sink";
        return sink.RateMS is { } rate
            ? $"On a slack line nothing turns it one way or the other, so it can {way} in any attitude, at {Magnitudes.SinkRate.Say(rate, units)}."
            : $"On a slack line it finds no attitude to {way} in: it keeps turning over. "
                + "A fly whose weight sits to one end, or that is tied the same on both sides, falls straighter.";
    }

    private static string Bend(BendFinding bend, Intent intent, UnitSystem units)
    {
        string names = string.Join(" and ", bend.Weights), bends = Magnitudes.KeelMoment.Say(Si.Gmm(Math.Abs(bend.BendGmm)), units);
        string turns = $"The bend turns it away from {FlyWords.Way(intent)} with {bends}";
        return bend.WeightsGmm > 0
            ? $"{turns} and the {names} can set only {Magnitudes.KeelMoment.Say(Si.Gmm(bend.WeightsGmm), units)} against it."
            : $"{turns} and the {names} {(bend.Weights.Length > 1 || names.StartsWith("dumbbell", StringComparison.Ordinal) ? "do" : "does")} nothing "
            + "against it.";
    }

    private static string RuleOfThumb(RuleOfThumbFinding rule, UnitSystem units) =>
        "By the rule of thumb the weight "
        + $"lies {Magnitudes.LevelLineKeel.Say(Si.Mm(Math.Abs(rule.LevelLineMm)), units)} {(rule.LevelLineMm > 0 ? "below" : "above")} "
        + $"a level line through the eye, yet the keel height is {Magnitudes.KeelHeight.Say(Si.Mm(rule.KeelHeightMm), units)}: "
        + "the water tilts the fly, and with it the hinge line.";

    private static string Lift(double liftMN, UnitSystem units)
    {
        // A pull this small means something as what it would lift.
        double liftsKg = Si.MN(Math.Abs(liftMN)) / Units.ToSi(1, Dimension.Force, "kg");
        string force = units == UnitSystem.Imperial
            ? $"the weight of {Magnitudes.PartMass.Say(liftsKg, units)}"
            : $"{Magnitudes.Lift.Say(Si.MN(Math.Abs(liftMN)), units)} (the weight of {Magnitudes.PartMass.Say(liftsKg, units)})";
        return liftMN < 0
            ? $"The water pushes it down with {force}: it digs for depth without more weight."
            : $"The water lifts it with {force}: it climbs when pulled and needs more weight for the same depth.";
    }
}
