using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Text.RegularExpressions;
using TyingClass.Recipes.Model;

namespace TyingClass.Web.Editing;

/// <summary>The kinds of part as recipes write them.</summary>
internal static partial class PartWords
{
    private static readonly FrozenDictionary<string, PartKind> ByWord =
        Enum.GetValues<PartKind>().ToFrozenDictionary(Word, StringComparer.OrdinalIgnoreCase);

    public static ImmutableArray<string> Kinds { get; } = [.. Enum.GetValues<PartKind>().Select(Word)];

    public static bool IsKind(string? word) => word is not null && ByWord.ContainsKey(word.Trim());

    public static PartKind? Find(string? word) => word is not null && ByWord.TryGetValue(word.Trim(), out PartKind kind) ? kind : null;

    private static string Word(PartKind kind) => Capitals().Replace(kind.ToString(), " $0").Trim().ToLowerInvariant();

    [GeneratedRegex("[A-Z]")]
    private static partial Regex Capitals();
}
