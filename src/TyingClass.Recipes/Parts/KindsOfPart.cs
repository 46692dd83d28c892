using System.Collections.Frozen;
using System.Collections.Immutable;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;

namespace TyingClass.Recipes.Parts;

/// <summary>Every kind of part, found by its line of the catalogue or by its word.</summary>
public static class KindsOfPart
{
    private static readonly FrozenDictionary<PartKind, KindOfPart> ByKind = typeof(KindOfPart).Assembly.GetTypes()
        .Where(t => t.IsSubclassOf(typeof(KindOfPart)) && !t.IsAbstract)
        .Select(t => (KindOfPart)Activator.CreateInstance(t, nonPublic: true)!)
        .ToFrozenDictionary(k => k.Kind);

    private static readonly FrozenDictionary<string, KindOfPart> ByWord =
        ByKind.Values.ToFrozenDictionary(k => k.Word, StringComparer.OrdinalIgnoreCase);

    /// <summary>In the order of the catalogue.</summary>
    public static ImmutableArray<KindOfPart> All { get; } = [.. ByKind.Values.OrderBy(k => k.Kind)];

    /// <summary>"bead", "cone", … in the order of the catalogue.</summary>
    public static ImmutableArray<string> Words { get; } = [.. All.Select(k => k.Word)];

    public static KindOfPart Of(PartKind kind) => ByKind.TryGetValue(kind, out KindOfPart? found)
        ? found
        : throw new ArgumentOutOfRangeException(nameof(kind), kind, $"Write src/TyingClass.Recipes/Parts/{kind}.cs: nothing is known of this kind of part.");

    public static KindOfPart Of(PartSpec part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return Of(part.Kind);
    }

    /// <summary>Null for a word that is none; outer spaces and case do not matter.</summary>
    public static KindOfPart? Find(string? word) => word is not null && ByWord.TryGetValue(word.Trim(), out KindOfPart? found) ? found : null;

    /// <summary>The kind meant by a word that is none: " Did you mean “dumbbell eyes”?", or nothing.</summary>
    internal static string Hint(string typed)
    {
        string plain = WordList.Plain(typed);
        string? meant = All.FirstOrDefault(k => k.OtherNames.Contains(plain))?.Word ?? Nearest.Find(typed, Words)
            ?? All.FirstOrDefault(k => Nearest.Find(typed, k.OtherNames) is not null)?.Word;
        return meant is null ? "" : $" Did you mean “{meant}”?";
    }

    /// <summary>The kind of a part by its name in a body: "wing 2" is a wing.</summary>
    public static KindOfPart? FindByName(string? name) => Find(name?.TrimEnd(' ', '0', '1', '2', '3', '4', '5', '6', '7', '8', '9'));
}
