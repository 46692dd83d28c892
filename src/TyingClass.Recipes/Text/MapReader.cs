using TyingClass.Recipes.Text.Yaml;
using TyingClass.Recipes.Yaml;

namespace TyingClass.Recipes.Text;

/// <summary>Reads one group of the text key by key, complaining at the right place under the right name.</summary>
/// <param name="path">"" for the whole, "hook", "parts[0]".</param>
/// <param name="label">As a sentence begins: "Hook", "Part 1 (bead)"; "" for the whole.</param>
/// <param name="complete">False when the text could not be read to its end: then nothing is called missing.</param>
internal sealed class MapReader(YamlMap map, string path, string label, bool complete, ErrorList errors)
{
    // What keys that are not known were meant to be.
    private readonly HashSet<string> _meant = new(StringComparer.Ordinal);

    public YamlMap Map => map;

    public string Path => path;

    public bool Complete => complete;

    public ErrorList Errors => errors;

    public string PathOf(string key) => path.Length == 0 ? key : $"{path}.{key}";

    public bool Has(string key) => map.Find(key) is not null;

    public void Complain(string key, string text) =>
        errors.Add(map.Find(key) ?? map, PathOf(key), Sentence(key, text));

    public void ComplainAtKey(YamlEntry entry, string text) =>
        errors.Add(entry.Line, entry.Column, PathFor(entry.Key), Sentence(null, text));

    /// <summary>What stands there misspelled is told of that and is not missing besides.</summary>
    public void Missing(string key, string advice)
    {
        if (complete && !Has(key) && !_meant.Contains(key)) errors.Add(map, PathOf(key), Sentence(null, $"“{key}” is missing. {advice}"));
    }

    /// <summary>The text of a field, or null when it is not there or is no text, which is complained about.</summary>
    public string? Text(string key, string example)
    {
        switch (map.Find(key))
        {
            case YamlText { Value: var value } when !string.IsNullOrWhiteSpace(value):
                return value;
            case YamlText { Remark: not null }:
                Complain(key, $"Nothing is written here: what stands behind “#” is a remark and is not read. Write a value before it, such as {example}.");
                return null;
            case YamlText:
                Complain(key, $"Nothing is written here. Write a value, such as {example}, or delete the line.");
                return null;
            case YamlList:
                Complain(key, $"A list stands here, but one value is needed, such as {example}.");
                return null;
            case YamlMap:
                Complain(key, $"A group of keys stands here, but one value is needed, such as {example}.");
                return null;
            default:
                return null;
        }
    }

    public double? Quantity(string key, Limit limit)
    {
        if (Text(key, limit.Example) is not { } text) return null;
        if (limit.TryRead(text, out double si) is not { } error) return si;
        Complain(key, error);
        return null;
    }

    public T? Choice<T>(string key, Choices<T> choices)
        where T : struct
    {
        if (Text(key, $"“{choices.Example}”") is not { } text) return null;
        if (choices.TryGet(text, out T choice)) return choice;
        Complain(key, $"{WordList.Quote(text)} is not a word used here.{Nearest.Hint(text, choices.Words)} Write {WordList.Or(choices.Words)}.");
        return null;
    }

    /// <summary>The group under a key; complains when something else stands there.</summary>
    public MapReader? Group(string key, string groupLabel, string advice)
    {
        switch (map.Find(key))
        {
            case YamlMap group:
                return new MapReader(group, PathOf(key), groupLabel, complete, errors);
            case null or YamlSpoiled:
                return null;
            default:
                Complain(key, advice);
                return null;
        }
    }

    /// <summary>Complains about doubled keys, and about keys not in the list by way of <paramref name="explain"/>.</summary>
    public void CheckKeys(IReadOnlyCollection<string> known, Func<string, string> explain)
    {
        HashSet<string> seen = new(StringComparer.Ordinal);
        foreach (YamlEntry entry in map.Entries)
        {
            if (!seen.Add(entry.Key)) ComplainAtKey(entry, $"{WordList.Quote(entry.Key)} is written twice. Keep one of the two lines.");
            else if (!known.Contains(entry.Key)) ComplainAtKey(entry, explain(entry.Key));
            else continue;
            if (Nearest.Find(entry.Key, known) is { } meant) _meant.Add(meant);
        }
    }

    // A key with path signs in it has no path of its own.
    private string? PathFor(string key) =>
        DraftPath.IsKey(key) ? PathOf(key) : path.Length == 0 ? null : path;

    private string Sentence(string? key, string text) => (label, key) switch
    {
        ("", null) => text,
        ("", _) => $"{Capital(key)}: {text}",
        (_, null) => $"{label}: {text}",
        _ => $"{label}, {key}: {text}",
    };

    private static string Capital(string key) => char.ToUpperInvariant(key[0]) + key[1..];
}
