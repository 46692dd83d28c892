using System.Collections.Immutable;

namespace TyingClass.Lessons.Yaml;

/// <summary>A node and where it stands in the lesson file, counted from 1.</summary>
internal abstract record YamlNode(int Line, int Column);

/// <param name="IsBlock">Written with | or >: its text begins on the next line.</param>
/// <param name="IsQuoted">Written in quotes: its text begins one column further on.</param>
internal sealed record YamlText(string Value, bool IsBlock, bool IsQuoted, int Line, int Column) : YamlNode(Line, Column);

/// <summary>Something stands here that was complained about already.</summary>
internal sealed record YamlSpoiled(int Line, int Column) : YamlNode(Line, Column);

internal sealed record YamlList(ImmutableArray<YamlNode> Items, int Line, int Column) : YamlNode(Line, Column);

/// <param name="EndLine">The line on which whatever follows the map begins.</param>
internal sealed record YamlMap(ImmutableArray<YamlEntry> Entries, int EndLine, int Line, int Column) : YamlNode(Line, Column)
{
    public YamlNode? Find(string key) => Entries.FirstOrDefault(e => e.Key == key)?.Value;
}

internal sealed record YamlEntry(string Key, YamlNode Value, int Line, int Column);
