using System.Collections.Immutable;
using System.Text.RegularExpressions;
using TyingClass.Recipes.Parts;

namespace TyingClass.Telling.Reasons;

/// <summary>What an explanation can speak of, in a tyer's words.</summary>
internal static class ExplainWords
{
    private static readonly ImmutableArray<string> All =
    [
        .. KindsOfPart.Words, "mass center", "balance point", "line of pull", "keel height", "gape", "wire", "shank", "bend", "eye", "ring", "leader", "knot",
        "water", "air", "hook", "hands", "drag", "speed",
    ];

    /// <summary>Those a text speaks of, the oftenest first.</summary>
    public static IEnumerable<string> In(string text) => All
        .Select(word => (Word: word, Count: Regex.Count(text, $@"(?<!\p{{L}}){Regex.Escape(word)}s?(?!\p{{L}})", RegexOptions.IgnoreCase)))
        .Where(w => w.Count > 0).OrderByDescending(w => w.Count).Select(w => w.Word);
}
