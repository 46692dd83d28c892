namespace TyingClass.Lessons.Yaml;

/// <summary>A piece of a lesson file into a tree, its faults said in an author's words.</summary>
internal static class YamlReader
{
    private const int DeepestLevel = 12;

    /// <summary>Reads a piece of a file; the positions are those of the file.</summary>
    /// <param name="firstLine">Line of the file on which <paramref name="text"/> begins, from 1.</param>
    public static YamlMap? ReadMap(string text, int firstLine, AuthorErrors errors, string what)
    {
        // Empty lines in front make every position of the library a position in the file.
        (YamlNode? root, bool complete) = YamlTree.Read(new string('\n', firstLine - 1) + text, DeepestLevel, fault => Tell(fault, firstLine, errors, what));
        YamlNode? once = root is null ? null : Once(root, errors);
        if (!complete) return null;
        if (once is YamlMap map) return map;
        if (once is null) errors.Add(firstLine, 1, $"{what} is empty.");
        else errors.Add(once, $"{what} needs keys, each with a colon and a value, such as “title: The hang test”.");
        return null;
    }

    private static void Tell(YamlFault fault, int firstLine, AuthorErrors errors, string what)
    {
        string? text = fault.Kind switch
        {
            YamlFaultKind.Layout => Unreadable(fault.Detail.Split("): ", 2)[^1].TrimEnd('.')),
            YamlFaultKind.TooDeep => Unreadable("lists and groups are nested too deep"),
            YamlFaultKind.MissingValue => Unreadable("a value is missing"),
            YamlFaultKind.LibraryFault => "This cannot be read as YAML. Check the indentation, the brackets and the quotes.",
            YamlFaultKind.SecondDocument => $"A second document begins here; {what.ToLowerInvariant()} is one.",
            YamlFaultKind.Alias => $"“*{fault.Detail}” refers to another place (an alias). Write the value out.",
            YamlFaultKind.Anchor => $"“&{fault.Detail}” names this place for later (an anchor). Delete it and write values out where they are used.",
            YamlFaultKind.Tag => $"“{fault.Detail}” is a tag, which has no use here. Delete it.",
            YamlFaultKind.KeyIsNoText => "A key must be a word or two, not a list or a group.",
            _ => null,
        };
        if (text is not null) errors.Add(Math.Max(firstLine, fault.Line), fault.Column, text);
    }

    private static string Unreadable(string complaint) =>
        $"This cannot be read as YAML: {complaint}. Check the indentation, the colons and the quotes near here.";

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
