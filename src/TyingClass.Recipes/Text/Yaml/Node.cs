using System.Collections.Immutable;

namespace TyingClass.Recipes.Text.Yaml;

/// <summary>A piece of the text with the place it begins; lines and columns count from 1.</summary>
internal abstract record Node(int Line, int Column);

internal sealed record ScalarNode(string Value, int Line = 1, int Column = 1) : Node(Line, Column);

/// <summary>A place already complained about: present, but without a value.</summary>
internal sealed record SpoiledNode(int Line, int Column) : Node(Line, Column);

internal sealed record ListNode(ImmutableArray<Node> Items, int Line = 1, int Column = 1) : Node(Line, Column);

internal sealed record MapNode(ImmutableArray<MapEntry> Entries, int Line = 1, int Column = 1) : Node(Line, Column)
{
    public MapEntry? Find(string key) => Entries.FirstOrDefault(e => e.Key == key);
}

/// <summary>A key and its value; a key may stand twice, which the reader of the tree complains about.</summary>
internal sealed record MapEntry(string Key, Node Value, int Line = 1, int Column = 1);
