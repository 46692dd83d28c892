using System.Collections.Frozen;
using System.Collections.Immutable;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Yaml;

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

    // Of those, the ones that can mean nothing else on a part that has such a key.
    private static readonly FrozenSet<string> Sure = ["wire", "line", "weight", "from", "place", "position", "until", "wraps"];

    /// <summary>The parts' keys as recipes write them, for those a tyer wrote in the trade's words: "wire: .015" is the diameter of wraps.</summary>
    internal static YamlNode? Translated(YamlNode? root)
    {
        if (root is not YamlMap map || map.Entry("parts") is not { Value: YamlList list } parts) return root;
        YamlList translated = list with { Items = [.. list.Items.Select(item => item is YamlMap part ? Translated(part) : item)] };
        return map with { Entries = map.Entries.Replace(parts, parts with { Value = translated }) };
    }

    private static YamlMap Translated(YamlMap part)
    {
        if (part.Find("part") is not YamlText { Value: var word } || KindsOfPart.Find(word) is not { } kind) return part;
        return part with { Entries = [.. part.Entries.Select(e => KeyMeant(e.Key, kind) is { } key && part.Find(key) is null ? e with { Key = key } : e)] };
    }

    private static string? KeyMeant(string typed, KindOfPart kind)
    {
        string plain = WordList.Plain(typed);
        return Sure.Contains(plain) && OtherWords[plain] is var key && kind.Keys.Contains(key) && !(plain is "wire" or "line" && !kind.IsInInches(key, ".015"))
            ? key : null;
    }

    /// <summary>The key of a kind that is meant by another word: " Did you mean “diameter”?", or nothing.</summary>
    internal static string Hint(string typed, IReadOnlyCollection<string> keys) =>
        OtherWords.TryGetValue(WordList.Plain(typed), out string? meant) && keys.Contains(meant) ? $" Did you mean “{meant}”?" : Nearest.Hint(typed, keys);

    /// <summary>A kind's own keys together with those of every part.</summary>
    internal static ImmutableArray<string> Sorted(ImmutableArray<string> own) =>
        [.. All.Where(k => k is "part" or "material" or "density" or "at" or "side offset" or "clocked" || own.Contains(k))];
}
