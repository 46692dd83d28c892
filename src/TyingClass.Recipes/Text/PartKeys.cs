using System.Collections.Frozen;
using System.Collections.Immutable;

namespace TyingClass.Recipes.Text;

/// <summary>The keys of parts, in the order they are written.</summary>
public static class PartKeys
{
    /// <summary>Every key any part takes.</summary>
    public static ImmutableArray<string> All { get; } =
        ["part", "material", "density", "size", "diameter", "turns", "balls", "loops", "length", "mass", "at", "to", "side", "tied", "side offset", "clocked"];

    // What tyers call them, on cards and in forms.
    private static readonly FrozenDictionary<string, string> OtherWords = new Dictionary<string, string>
    {
        ["wire"] = "diameter",
        ["line"] = "diameter",
        ["thickness"] = "diameter",
        ["gauge"] = "diameter",
        ["width"] = "diameter",
        ["weight"] = "mass",
        ["from"] = "at",
        ["place"] = "at",
        ["position"] = "at",
        ["start"] = "at",
        ["until"] = "to",
        ["end"] = "to",
        ["wraps"] = "turns",
        ["count"] = "turns",
        ["on"] = "side",
        ["kind"] = "part",
        ["name"] = "part",
    }.ToFrozenDictionary();

    /// <summary>The key of a kind that is meant by another word: " Did you mean “diameter”?", or nothing.</summary>
    internal static string Hint(string typed, IReadOnlyCollection<string> keys) =>
        OtherWords.TryGetValue(WordList.Plain(typed), out string? meant) && keys.Contains(meant) ? $" Did you mean “{meant}”?" : Nearest.Hint(typed, keys);

    /// <summary>A kind's own keys together with those of every part.</summary>
    internal static ImmutableArray<string> Sorted(ImmutableArray<string> own) =>
        [.. All.Where(k => k is "part" or "material" or "density" or "at" or "side offset" or "clocked" || own.Contains(k))];
}
