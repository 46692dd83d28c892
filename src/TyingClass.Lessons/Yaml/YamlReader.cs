using TyingClass.Recipes.Text.Yaml;

namespace TyingClass.Lessons.Yaml;

/// <summary>A piece of a lesson file into a tree, its faults said in an author's words.</summary>
internal static class YamlReader
{
    private const int DeepestLevel = 12;

    private const string General =
        "The layout cannot be followed from here on. Write one “key: value” to a line, keys of one group straight below each other, and a “- ” before each "
        + "item of a list.";

    /// <summary>Reads a piece of a file; the positions are those of the file.</summary>
    /// <param name="firstLine">Line of the file on which <paramref name="text"/> begins, from 1.</param>
    public static YamlMap? ReadMap(string text, int firstLine, AuthorErrors errors, string what)
    {
        // Empty lines in front make every position of the library a position in the file.
        string padded = new string('\n', firstLine - 1) + text;
        string[] lines = padded.ReplaceLineEndings("\n").Split('\n');
        (YamlNode? root, bool complete) = YamlTree.Read(padded, DeepestLevel, fault => Tell(fault, firstLine, errors, what, lines));
        YamlNode? once = root is null ? null : Once(root, errors);
        if (!complete) return null;
        if (once is YamlMap map) return map;
        if (once is null) errors.Add(firstLine, 1, $"{what} is empty.");
        else errors.Add(once, $"{what} needs keys, each with a colon and a value, such as “title: The hang test”.");
        return null;
    }

    private static void Tell(YamlFault fault, int firstLine, AuthorErrors errors, string what, string[] lines)
    {
        if (fault.Kind == YamlFaultKind.Layout)
        {
            (int line, int column, string advice) = LayoutAdvice.For(fault.Detail, (Math.Clamp(fault.Line, 1, lines.Length), fault.Column), lines);
            errors.Add(Math.Max(firstLine, line), column, advice == LayoutAdvice.General ? General : advice);
            return;
        }

        string? text = fault.Kind switch
        {
            YamlFaultKind.TooDeep => "Lists and groups are nested too deep here. Take a level out.",
            YamlFaultKind.MissingValue => "A value is missing here. Write it, or take the key out.",
            YamlFaultKind.LibraryFault => LayoutAdvice.Brackets,
            YamlFaultKind.SecondDocument => $"A second document begins here; {what.ToLowerInvariant()} is one.",
            YamlFaultKind.Alias => $"“*{fault.Detail}” refers to another place (an alias). Write the value out.",
            YamlFaultKind.Anchor => $"“&{fault.Detail}” names this place for later (an anchor). Delete it and write values out where they are used.",
            YamlFaultKind.Tag => $"“{fault.Detail}” is a tag, which has no use here. Delete it.",
            YamlFaultKind.KeyIsNoText => "A key must be a word or two, not a list or a group.",
            _ => null,
        };
        if (text is not null) errors.Add(Math.Max(firstLine, fault.Line), fault.Column, text);
    }

    // The first of two entries with one key is kept.
    private static YamlNode Once(YamlNode node, AuthorErrors errors)
    {
        switch (node)
        {
            case YamlList list:
                return list with { Items = [.. list.Items.Select(i => Once(i, errors))] };
            case YamlMap map:
                HashSet<string> seen = new(StringComparer.Ordinal);
                foreach (YamlEntry entry in map.Entries)
                {
                    if (seen.Add(entry.Key)) continue;
                    errors.Add(entry.Line, entry.Column, $"“{entry.Key}” is written twice. Keep one of the two.");
                }

                return map with { Entries = [.. map.Entries.DistinctBy(e => e.Key).Select(e => e with { Value = Once(e.Value, errors) })] };
            default:
                return node;
        }
    }
}
