using System.Collections.Immutable;

namespace TyingClass.Recipes.Yaml;

/// <summary>A piece of a text with the place it begins; lines and columns count from 1.</summary>
public abstract record YamlNode(int Line, int Column);

/// <param name="Value">"" for a value left out, be it by “~”.</param>
/// <param name="IsBlock">Written with | or >: its text begins on the next line.</param>
/// <param name="Remark">What stands behind “#” where nothing else was written; null where something was, or nothing at all.</param>
/// <param name="IsQuoted">Written in quotes: its text begins one column further on.</param>
public sealed record YamlText(string Value, int Line = 1, int Column = 1, bool IsBlock = false, bool IsQuoted = false, string? Remark = null)
    : YamlNode(Line, Column);

/// <summary>A place already complained about: present, but without a value.</summary>
public sealed record YamlSpoiled(int Line, int Column) : YamlNode(Line, Column);

public sealed record YamlList(ImmutableArray<YamlNode> Items, int Line = 1, int Column = 1) : YamlNode(Line, Column);

/// <param name="EndLine">The line on which whatever follows the map begins.</param>
public sealed record YamlMap(ImmutableArray<YamlEntry> Entries, int Line = 1, int Column = 1, int EndLine = 1) : YamlNode(Line, Column)
{
    public YamlNode? Find(string key) => Entry(key)?.Value;

    public YamlEntry? Entry(string key) => Entries.FirstOrDefault(e => e.Key == key);
}

/// <summary>A key and its value; a key may stand twice, about which the reader of the tree complains.</summary>
public sealed record YamlEntry(string Key, YamlNode Value, int Line = 1, int Column = 1);
