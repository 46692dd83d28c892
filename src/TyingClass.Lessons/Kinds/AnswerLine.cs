using System.Collections.Immutable;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Kinds;

/// <summary>An answer in one line. Nothing is parsed to a fly or solved for it: it stands in lists.</summary>
internal static class AnswerLine
{
    private const int MostSigns = 140;
    private const int MostChanges = 4;

    public static string Of(string answer, string between = "; ") =>
        Cut(string.Join(between, answer.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)));

    /// <summary>What one fly has that another has not; of a fly alone, what is tied on it.</summary>
    /// <param name="earlierText">Null where there is none to compare with.</param>
    public static string OfFly(string? earlierText, string text)
    {
        if (RecipeDraft.Parse(text).Value is not { } after) return "";
        if (earlierText is null || RecipeDraft.Parse(earlierText).Value is not { } before) return Cut(Parts(after));
        string[] changes = [.. ChangeWords.Between(Fields(before), Kinds(before), Fields(after), Kinds(after))];
        return changes.Length == 0 ? "The same fly again"
            : Cut(string.Join("; ", changes.Take(MostChanges)) + (changes.Length > MostChanges ? $"; and {changes.Length - MostChanges} more changes" : ""));
    }

    private static string Parts(RecipeDraft fly) => fly.PartCount == 0 ? "A bare hook"
        : string.Join("; ", Enumerable.Range(0, fly.PartCount).Select(i => fly.Fields($"parts[{i}]"))
            .Select(f => string.Join(" ", f.Where(v => v.Key is "part" or "material" or "size" or "mass").Select(v => v.Value))));

    private static ImmutableArray<string> Kinds(RecipeDraft fly) =>
        [.. Enumerable.Range(0, fly.PartCount).Select(i => fly.Get($"parts[{i}].part") ?? "")];

    // Its name and its tying notes do not swim.
    private static Dictionary<string, string> Fields(RecipeDraft fly) => fly.Values
        .Where(v => v.Key != "recipe" && !v.Key.StartsWith("steps[", StringComparison.Ordinal))
        .DistinctBy(v => v.Key).ToDictionary(v => v.Key, v => v.Value);

    private static string Cut(string text) =>
        text.Length <= MostSigns ? text : text[..(text.LastIndexOf(' ', MostSigns) is > 0 and var end ? end : MostSigns)] + " …";
}
