using System.Collections.Immutable;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Telling.Sentences;

/// <summary>What differs between two recipes, in the words of the bench.</summary>
public static class ChangeWords
{
    public static string NewPart(string part) => $"a new part, {part}";

    public static string Part(string part) => $"the {part}";

    /// <summary>"the size of the cone: 4.8 mm → 5.6 mm"; "taken out" and "put in" of a whole part, which is named beside.</summary>
    /// <param name="said">"the size of the cone".</param>
    /// <param name="before">As the recipe stated it; null when it did not.</param>
    public static string Line(string said, string? before, string? after, bool wholePart, UnitSystem units)
    {
        if (wholePart) return after is null ? "taken out" : "put in";
        (string was, string now) = WrittenFigures.Apart(before ?? "", after ?? "", units);
        return (before, after) switch
        {
            (null, _) => $"{said}: now {now}; before, it was left open",
            (_, null) => $"{said}: was {was}; now it is left open",
            _ => $"{said}: {was} → {now}",
        };
    }

    /// <summary>What a question changes: "Now the knot changes, from “loop” to “cinched”."</summary>
    /// <param name="lines">Each said, before and after; null where the recipe does not state it.</param>
    public static string Now(IEnumerable<(string Said, string? Before, string? After)> lines) =>
        $"Now {Grammar.And(lines.Select(l => $"{l.Said} changes, {(l.Before is null ? "" : $"from “{l.Before}” ")}to “{l.After ?? "none"}”"))}.";

    /// <summary>"Before that, its wet weight is 0.048 g."</summary>
    public static string Before(string phrase, string figure) => $"Before that, its {phrase} is {figure}.";

    /// <summary>What was changed from one recipe to another, in the units typed, each in a few words.</summary>
    /// <param name="kindsBefore">The kinds of its parts, in tying order.</param>
    public static IEnumerable<string> Between(
        IReadOnlyDictionary<string, string> before, ImmutableArray<string> kindsBefore, IReadOnlyDictionary<string, string> after,
        ImmutableArray<string> kindsAfter)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        bool sameParts = kindsBefore.SequenceEqual(kindsAfter);
        foreach (string kind in sameParts ? [] : Without(kindsBefore, kindsAfter)) yield return $"{kind} taken out";
        foreach (string kind in sameParts ? [] : Without(kindsAfter, kindsBefore)) yield return $"{kind} put in";
        if (!sameParts && kindsBefore.Order().SequenceEqual(kindsAfter.Order())) yield return "the parts in another order";
        foreach (string path in before.Keys.Union(after.Keys).Where(p => sameParts || !p.StartsWith("parts[", StringComparison.Ordinal)))
        {
            string? was = before.GetValueOrDefault(path), now = after.GetValueOrDefault(path);
            if (was != now) yield return Line(PathWords.Say(path, kindsBefore), was, now, wholePart: false, UnitSystem.Metric);
        }

        static IEnumerable<string> Without(ImmutableArray<string> some, ImmutableArray<string> others)
        {
            List<string> left = [.. others];
            return some.Where(k => !left.Remove(k));
        }
    }
}
