using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;
using TyingClass.Telling;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Grading;

/// <summary>Figures of a report as sentences for a student, in the units the student reads.</summary>
internal static class Said
{
    public static string Name(Intent intent) => FlyWords.Way(intent);

    public static Intent Other(Intent intent) => FlyWords.Other(intent);

    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    public static string List(IEnumerable<string> items) => Grammar.And(items);

    /// <summary>What the fly would do, soaked, at its own speed and on its own knot.</summary>
    public static string Verdict(BalanceReport report, UnitSystem units) => VerdictSentence.Of(report, units);

    /// <summary>The two or three parts with the most say in which way up it rides.</summary>
    public static string Ledger(BalanceReport report, UnitSystem units) => CauseSentence.Of(report, units);

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
            .Select(p => $"the {p.Name}, {Magnitudes.PartMass.Say(p.MassKg, units)} at {Magnitudes.Place.Say(p.MomentX / p.MassKg, units)}")];
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

        string Sit(BodyPart p) => $"{Magnitudes.PartMass.Say(Mass(p), units)} at {Magnitudes.Place.Say(Place(p), units)}";
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
        GoalBound.AtLeast => $"{query.Phrase}: at least {query.SayStated(goal.LowSi, units)}",
        GoalBound.AtMost => $"{query.Phrase}: at most {query.SayStated(goal.HighSi, units)}",
        _ => $"{query.Phrase}: between {query.SayStated(goal.LowSi, units)} and {query.SayStated(goal.HighSi, units)}",
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
        string bound = query.SayStated(boundSi, units);
        for (int digits = 3; digits <= 9 && said == bound; digits++)
        {
            (said, bound) = (Units.Format(value, dimension, units, digits), Units.Format(boundSi, dimension, units, digits));
        }

        return said;
    }
}
