using System.Collections.Immutable;
using System.Globalization;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Yaml;

/// <summary>Reads the keys of one map and complains at the right place.</summary>
/// <param name="what">As a sentence names it: "an exercise", "the front matter".</param>
internal sealed class FieldReader(YamlMap map, string what, AuthorErrors errors)
{
    // Keys that were meant, by the way they were typed: said once, then read as meant, so that one slip makes one error.
    private readonly Dictionary<string, string> _meant = new(StringComparer.Ordinal);

    public YamlMap Map => map;

    public AuthorErrors Errors => errors;

    public bool Has(string key) => Node(key) is not null;

    public YamlNode? Node(string key) => map.Find(key) ?? (_meant.TryGetValue(key, out string? typed) ? map.Find(typed) : null);

    /// <summary>The place of a key's value, or of the whole map.</summary>
    public YamlNode At(string key) => Node(key) ?? map;

    public void CheckKeys(params ReadOnlySpan<string> known)
    {
        foreach (YamlEntry entry in map.Entries)
        {
            if (known.Contains(entry.Key)) continue;
            if (Nearest.Find(entry.Key, known.ToArray()) is { } near) _meant.TryAdd(near, entry.Key);
            errors.Add(entry.Line, entry.Column,
                $"“{Clip(entry.Key)}” is not a key of {what}.{Nearest.Hint(entry.Key, known.ToArray())} It takes {string.Join(", ", known.ToArray())}.");
        }
    }

    /// <summary>Takes a key that is typed wrong as meant, where it is not yet known which others there may be; <see cref="CheckKeys"/> says so.</summary>
    /// <param name="known">Keys that are right as they are.</param>
    public void Suppose(string key, params ReadOnlySpan<string> known)
    {
        if (map.Find(key) is not null) return;
        foreach (YamlEntry entry in map.Entries)
        {
            if (!known.Contains(entry.Key) && Nearest.Find(entry.Key, [key]) is not null) _meant.TryAdd(key, entry.Key);
        }
    }

    public string? Text(string key)
    {
        switch (Node(key))
        {
            case YamlText { Value: var value } when !string.IsNullOrWhiteSpace(value):
                return value.Trim();
            case null or YamlSpoiled:
                return null;
            case YamlText node:
                errors.Add(node, $"“{key}” has no value.");
                return null;
            case var node:
                errors.Add(node, $"“{key}” must be one piece of text, not a list or a group.");
                return null;
        }
    }

    /// <summary>Complains that a key is not there.</summary>
    /// <param name="advice">What to write, after a colon.</param>
    public void Missing(string key, string advice) => errors.Add(map, $"“{key}” is missing: {advice}");

    public string? RequiredText(string key, string example)
    {
        if (!Has(key)) errors.Add(map, $"“{key}” is missing from {what}. Write it as in “{key}: {example}”.");
        return Text(key);
    }

    public int? WholeNumber(string key, int low, int high)
    {
        if (Text(key) is not { } text) return null;
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number >= low && number <= high) return number;
        errors.Add(At(key), $"“{key}” must be a whole number from {low} to {high}, not “{Clip(text)}”.");
        return null;
    }

    public YamlMap? Group(string key)
    {
        if (Node(key) is null or YamlMap) return Node(key) as YamlMap;
        errors.Add(At(key), $"“{key}” must be a group of keys.");
        return null;
    }

    /// <summary>The items of a list; one value stands for a list of one.</summary>
    public ImmutableArray<YamlNode> Items(string key) => Node(key) switch
    {
        null or YamlSpoiled => [],
        YamlList list => [.. list.Items.Where(i => i is not YamlSpoiled)],
        var one => [one],
    };

    public ImmutableArray<string> TextItems(string key) => [.. TextNodes(key).Select(t => t.Value.Trim())];

    public ImmutableArray<YamlText> TextNodes(string key)
    {
        ImmutableArray<YamlText>.Builder texts = ImmutableArray.CreateBuilder<YamlText>();
        foreach (YamlNode item in Items(key))
        {
            if (item is YamlText { Value: var value } text && !string.IsNullOrWhiteSpace(value)) texts.Add(text);
            else errors.Add(item, $"Each item of “{key}” must be a piece of text. Put it in quotes if it holds a colon.");
        }

        return texts.ToImmutable();
    }

    /// <summary>A list of single pairs ("- keel height: at least 0.4 mm") or a map of the same; an item may be a bare name, its value then null.</summary>
    public ImmutableArray<(YamlNode Place, string Key, YamlNode? Value)> Pairs(string key)
    {
        ImmutableArray<(YamlNode, string, YamlNode?)>.Builder pairs = ImmutableArray.CreateBuilder<(YamlNode, string, YamlNode?)>();
        foreach (YamlNode item in Items(key))
        {
            switch (item)
            {
                case YamlText text:
                    pairs.Add((text, text.Value.Trim(), null));
                    break;
                case YamlMap group:
                    foreach (YamlEntry entry in group.Entries) pairs.Add((new YamlText(entry.Key, entry.Line, entry.Column), entry.Key, entry.Value));
                    break;
                default:
                    errors.Add(item, $"Each item of “{key}” must be a name, or a name, a colon and a value.");
                    break;
            }
        }

        return pairs.ToImmutable();
    }

    internal static string Clip(string text) => text.Length <= 60 ? text : text[..60] + "…";
}
