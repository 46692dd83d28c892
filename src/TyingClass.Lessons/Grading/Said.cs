using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Kinds.Predict;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Grading;

/// <summary>Figures of a report as sentences for a student, in the units the student reads.</summary>
internal static class Said
{
    public static string Name(Intent intent) => intent == Intent.PointDown ? "point down" : "point up";

    public static Intent Other(Intent intent) => intent == Intent.PointDown ? Intent.PointUp : Intent.PointDown;

    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    public static string List(IEnumerable<string> items)
    {
        string[] all = [.. items];
        return all.Length < 2 ? string.Concat(all) : string.Join(", ", all[..^1]) + " and " + all[^1];
    }

    /// <summary>What the fly would do, soaked, at its own speed and on its own knot.</summary>
    public static string Verdict(BalanceReport report, UnitSystem units) => Verdict(report.Intent, report.Soaked, units);

    /// <summary>What the fly would do in one state of its dressing.</summary>
    public static string Verdict(Intent intent, StateReport state, UnitSystem units)
    {
        TowReport tow = state.AtFishingSpeed;
        string meant = Name(intent), other = Name(Other(intent));
        string where = $"{Wet(state.SoakS)} and pulled at {Units.Tell(tow.SpeedMS, Dimension.Speed, units)} on a {(state.Verdict.Knot == Knot.Loop ? "loop" : "cinched")} knot";
        return state.Verdict.Kind switch
        {
            VerdictKind.RidesAsIntended => $"{where}, it rides {meant} as you meant it, {Nose(tow.PitchDeg)}. {Keel(tow, intent, units)} {(state.Tolerance.AsIntended >= 0.995 ? "Practically every fly tied like it would ride the same way." : $"Of 100 flies tied like it, about {Hundred(state.Tolerance.AsIntended)} would ride the same way.")}",
            VerdictKind.Leans => $"{where}, it leans over by {Degrees(tow.LeanDeg)}. {Keel(tow, intent, units)}",
            VerdictKind.RidesOnItsSide => $"{where}, it rides on its side, {Degrees(tow.LeanDeg)} from {meant}. {Keel(tow, intent, units)}",
            VerdictKind.Flips => $"{where}, it does not stay {meant}. {Keel(tow, intent, units)} Expect it to flip and ride {other}.",
            VerdictKind.Hangs => $"{where}, it hangs rather than rides: the shank points {Degrees(Math.Abs(tow.PitchDeg))} {(tow.PitchDeg > 0 ? "nose up" : "nose down")}, too steep for which way up to mean much.",
            VerdictKind.Floats => $"It floats: it weighs {Units.Tell(1e-3 * Math.Abs(state.WetWeightG), Dimension.Mass, units)} less than the water it pushes aside.",
            _ when !tow.Settles => $"{where}, it never comes to rest but keeps turning on the line.",
            _ when Agreeing(state.Tolerance) >= OfOneMind && Ways(state) is { } ways => $"{where}, there is no telling which way up it rides: it can settle {ways} from {meant}, and the cast decides which. {Keel(tow, intent, units)}",
            _ => $"{where}, there is no telling which way up it rides. {Keel(tow, intent, units)} Of 100 flies tied like it, about {Hundred(state.Tolerance.AsIntended)} would ride {meant}, {Hundred(state.Tolerance.Leaning)} would lean and {Hundred(state.Tolerance.Flipped)} would flip.",
        };
    }

    // Where tied flies agree and it is undecided all the same, one fly has more than one way to ride.
    private const double OfOneMind = 0.75;

    private static double Agreeing(ToleranceReport flies) => Math.Max(flies.AsIntended, Math.Max(flies.Leaning, flies.Flipped));

    private static string? Ways(StateReport state) =>
        state.Attitudes.OrderByDescending(a => a.Share).Select(a => Degrees(a.LeanDeg)).Distinct().Take(3).ToArray() is { Length: > 1 } ways ? string.Join(" or ", ways) : null;

    private static string Wet(double? soakS) => soakS switch
    {
        0 => "Fresh from the cast",
        null => "Soaked",
        { } s => $"{Math.Round(s)} s in the water",
    };

    public static string Nose(double pitchDeg) => Math.Abs(pitchDeg) <= WhereTheNosePoints.LevelDeg
        ? "with its nose about level"
        : $"nose {(pitchDeg > 0 ? "up" : "down")} by {Degrees(Math.Abs(pitchDeg))}";

    /// <summary>The two or three parts with the most say in which way up it rides.</summary>
    public static string Ledger(BalanceReport report, UnitSystem units) => Ledger(report.Intent, report.Soaked, units);

    public static string Ledger(Intent intent, StateReport state, UnitSystem units)
    {
        LedgerEntry[] top = [.. state.Ledger.OrderByDescending(e => Math.Abs(e.KeelMomentGmm)).Take(3).Where(e => Math.Abs(e.KeelMomentGmm) >= 0.005)];
        if (top.Length == 0) return "At this attitude no part has a clear say in which way up it rides.";
        string meant = Name(intent);
        string[] helps = [.. top.Where(e => e.KeelMomentGmm > 0).Select(Term)], hinders = [.. top.Where(e => e.KeelMomentGmm < 0).Select(Term)];
        double total = state.Ledger.Sum(e => e.KeelMomentGmm);
        string sides = (helps.Length, hinders.Length) switch
        {
            (0, _) => $"What turns it away from {meant}: {List(hinders)}.",
            (_, 0) => $"What holds it {meant}: {List(helps)}.",
            _ => $"What holds it {meant}: {List(helps)}. What turns it over: {List(hinders)}.",
        };
        return $"{sides} All parts together: {Moment(total)}.";

        string Term(LedgerEntry e) => $"{(e.Part == "bend" ? QuantityQuery.BendWords : e.Part)} {Moment(e.KeelMomentGmm)}";
        string Moment(double gmm) => (gmm > 0 ? "+" : "") + Units.Tell(1e-6 * gmm, Dimension.Moment, units);
    }

    /// <summary>Where the mass sits: the heaviest parts and how far each lies from the eye.</summary>
    /// <param name="except">A part whose mass is asked for and not to be told yet.</param>
    public static string Masses(FlyFigures fly, UnitSystem units, string? except = null)
    {
        ImmutableArray<string> terms = [.. fly.Body.Parts
            .Where(p => p.Name != except)
            .Select(p => (p.Name, MassKg: p.Masses.Sum(m => m.MassKg), MomentX: p.Masses.Sum(m => m.MassKg * m.PositionM.X)))
            .Where(p => p.MassKg > 0)
            .OrderByDescending(p => p.MassKg)
            .Take(3)
            .Select(p => $"the {p.Name}, {Units.Tell(p.MassKg, Dimension.Mass, units)} at {Units.Tell(p.MomentX / p.MassKg, Dimension.Length, units)}")];
        return $"{(except is null ? "Most of the mass" : "The other masses")}, and how far behind the front of the shank it sits: {string.Join("; ", terms)}.";
    }

    /// <summary>What mass was changed, part by part.</summary>
    public static string MassChange(FlyFigures before, FlyFigures after, UnitSystem units)
    {
        string[] changes =
        [
            .. after.Body.Parts.Select(now => (now, was: before.Body.Parts.FirstOrDefault(p => p.Name == now.Name)))
                .Where(p => p.was is null || Math.Abs(Mass(p.now) - Mass(p.was)) > 1e-9 || Math.Abs(Place(p.now) - Place(p.was)) > 1e-5)
                .Select(p => p.was is null
                    ? $"the {p.now.Name} is new: {Sit(p.now)}"
                    : $"the {p.now.Name}, from {Sit(p.was)} to {Sit(p.now)}"),
            .. before.Body.Parts.Where(was => !after.Body.Parts.Any(p => p.Name == was.Name)).Select(was => $"the {was.Name}, {Sit(was)}, is gone"),
        ];
        return changes.Length == 0
            ? "No part changes its mass or its place along the shank."
            : $"What changes, with the mass of each part and the place of its own mass center: {string.Join("; ", changes)}.";

        string Sit(BodyPart p) => $"{Units.Tell(Mass(p), Dimension.Mass, units)} at {Units.Tell(Place(p), Dimension.Length, units)}";
        static double Mass(BodyPart p) => p.Masses.Sum(m => m.MassKg);
        static double Place(BodyPart p) => Mass(p) == 0 ? 0 : p.Masses.Sum(m => m.MassKg * m.PositionM.X) / Mass(p);
    }

    /// <summary>"its pitch while sinking is -89°".</summary>
    public static string Figures(FlyFigures fly, IEnumerable<QuantityQuery> queries, UnitSystem units) =>
        Capital(List(queries.DistinctBy(q => q.Name).Select(q => $"the {q.Phrase} is {q.Say(q.Of(fly), units)}"))) + ".";

    /// <summary>The ledger for which way up, the masses for what mass decides; both where both are asked.</summary>
    /// <param name="withheld">A part whose mass is asked for and not to be told yet.</param>
    public static string Why(FlyFigures fly, IReadOnlyCollection<QuantityQuery> asked, UnitSystem units, string? withheld = null)
    {
        bool ledger = asked.Count == 0 || !asked.All(MassDecides);
        return $"{(ledger ? Ledger(fly.Report, units) : "")} {(asked.Any(MassDecides) ? Masses(fly, units, withheld) : "")}".Trim();
    }

    /// <summary>The ledger, and the masses too when a goal that mass decides is missed.</summary>
    public static string WhyOfRecipe(FlyFigures fly, IEnumerable<QuantityQuery> missed, UnitSystem units) =>
        missed.Any(MassDecides) ? $"{Ledger(fly.Report, units)} {Masses(fly, units)}" : Ledger(fly.Report, units);

    private static bool MassDecides(QuantityQuery query) =>
        query.Quantity.IsOfMass || query.Quantity.Name is "sink rate" or "depth" or "pitch while sinking" or "lean while sinking";

    public static string Goal(Goal goal, QuantityQuery query, UnitSystem units) => goal.Bound switch
    {
        GoalBound.AtLeast => $"{query.Phrase}: at least {query.Say(goal.LowSi, units)}",
        GoalBound.AtMost => $"{query.Phrase}: at most {query.Say(goal.HighSi, units)}",
        _ => $"{query.Phrase}: between {query.Say(goal.LowSi, units)} and {query.Say(goal.HighSi, units)}",
    };

    /// <summary>The figure reached, with as many digits as it takes to tell it from the bound it misses.</summary>
    public static string Reached(Goal goal, QuantityQuery query, double? si, VerdictKind verdict, UnitSystem units)
    {
        if (si is not { } value)
        {
            return verdict switch
            {
                VerdictKind.Hangs => "cannot be told, because it hangs rather than rides",
                VerdictKind.Floats => "cannot be told, because it floats",
                _ when query is { Part: { } part, Quantity.Name: "mass of" } => $"none: there is no {part} on this fly",
                _ => "cannot be told for this fly",
            };
        }

        string said = query.Say(value, units);
        double boundSi = value < goal.LowSi ? goal.LowSi : goal.HighSi;
        if (query.Quantity.Dimension is not { } dimension || (value >= goal.LowSi && value <= goal.HighSi)) return said;
        string bound = query.Say(boundSi, units);
        for (int digits = 3; digits <= 9 && said == bound; digits++)
        {
            (said, bound) = (Units.Format(value, dimension, units, digits), Units.Format(boundSi, dimension, units, digits));
        }

        return said;
    }

    private static string Keel(TowReport tow, Intent intent, UnitSystem units) => tow.KeelHeightMm.For(intent) is not { } keelMm
        ? ""
        : Math.Abs(keelMm) < 0.005
            ? $"In the {Name(intent).Replace(' ', '-')} attitude its weight acts right on the line of pull, so nothing holds it there."
            : $"In the {Name(intent).Replace(' ', '-')} attitude its weight acts {Units.Tell(1e-3 * Math.Abs(keelMm), Dimension.Length, units)} {(keelMm > 0 ? "below" : "above")} the line of pull (keel height {Units.Tell(1e-3 * keelMm, Dimension.Length, units)}).";

    private static string Degrees(double degrees) => $"{Math.Round(degrees)}°";

    private static string Hundred(double share) => $"{Math.Round(100 * share)}";
}
