using System.Collections.Immutable;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace TyingClass.Recipes.Yaml;

/// <summary>
/// YAML 1.2 text into a tree that knows where everything stands, for recipes and lessons alike. Only plain lists, maps and text are taken: no anchors, aliases,
/// tags or second document. When the layout breaks down half way, what was read until then is still handed back.
/// </summary>
public sealed class YamlTree
{
    private readonly string[] _lines;
    private readonly Parser _parser;
    private readonly int _deepestLevel;
    private readonly Action<YamlFault> _tell;
    private bool _broken;

    private YamlTree(string text, int deepestLevel, Action<YamlFault> tell)
    {
        _lines = TextLines.Of(text);
        _parser = new Parser(new Scanner(new StringReader(text), skipComments: true));
        _deepestLevel = deepestLevel;
        _tell = tell;
    }

    private ParsingEvent Current => _parser.Current!;

    /// <summary>The tree, null for an empty text, and whether the text was read to its end: if not, what is missing may only be unread.</summary>
    public static (YamlNode? Root, bool Complete) Read(string text, int deepestLevel, Action<YamlFault> tell)
    {
        YamlTree tree = new(text, deepestLevel, tell);
        YamlNode? root = tree.ReadDocument();
        return (root, !tree._broken);
    }

    private YamlNode? ReadDocument()
    {
        YamlNode? root = null;
        if (Next() && Next() && Current is DocumentStart start)
        {
            CheckDirectives(start);
            if (Next()) root = ReadNode(1);
            while (!_broken && Current is not (DocumentStart or StreamEnd) && Next()) continue;
            if (!_broken && Current is DocumentStart second) Tell(YamlFaultKind.SecondDocument, Place(second.Start));
        }

        return root;
    }

    private void CheckDirectives(DocumentStart start)
    {
        if (start.Version is { } version && version.Version is not { Major: 1, Minor: 2 }) Tell(YamlFaultKind.Version, Place(start.Start));
        if (start.Tags is { } tags
            && tags.Any(t => t.Handle is not ("!" or "!!") || !t.Prefix.StartsWith(t.Handle == "!" ? "!" : "tag:yaml.org,2002:", StringComparison.Ordinal)))
            Tell(YamlFaultKind.TagDirective, Place(start.Start));
    }

    // Called with Current on the first event of the node; leaves Current on the one after it.
    private YamlNode? ReadNode(int level)
    {
        (int Line, int Column) place = Place(Current.Start);
        if (level > _deepestLevel) return Break(YamlFaultKind.TooDeep, place);
        if (Current is AnchorAlias alias)
        {
            Tell(YamlFaultKind.Alias, place, alias.Value.Value);
            Next();
            return new YamlSpoiled(place.Line, place.Column);
        }

        // The library loses its place after a key left empty.
        if (Current is not NodeEvent node) return Break(YamlFaultKind.MissingValue, place);
        if (!node.Anchor.IsEmpty) Tell(YamlFaultKind.Anchor, place, node.Anchor.Value);
        if (!node.Tag.IsEmpty) Tell(YamlFaultKind.Tag, place, node.Tag.Value);
        return Current switch
        {
            Scalar scalar => ReadScalar(scalar, place),
            SequenceStart => ReadList(level, place),
            MappingStart => ReadMap(level, place),
            _ => Break(YamlFaultKind.MissingValue, place),
        };
    }

    private YamlText ReadScalar(Scalar scalar, (int Line, int Column) place)
    {
        bool isNull = scalar.Style == ScalarStyle.Plain && scalar.Value is "~";
        Next();
        return new YamlText(
            isNull ? "" : scalar.Value, place.Line, place.Column,
            scalar.Style is ScalarStyle.Literal or ScalarStyle.Folded, scalar.Style is ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted,
            scalar is { Style: ScalarStyle.Plain, Value.Length: 0 } ? RemarkAt(place) : null);
    }

    private string? RemarkAt((int Line, int Column) place) =>
        _lines[place.Line - 1][(place.Column - 1)..].TrimStart() is ['#', .. string remark] ? remark : null;

    private YamlList ReadList(int level, (int Line, int Column) place)
    {
        ImmutableArray<YamlNode>.Builder items = ImmutableArray.CreateBuilder<YamlNode>();
        Next();
        while (!_broken && Current is not SequenceEnd)
        {
            if (ReadNode(level + 1) is { } item) items.Add(item);
        }

        if (!_broken) Next();
        return new YamlList(items.ToImmutable(), place.Line, place.Column);
    }

    private YamlMap ReadMap(int level, (int Line, int Column) place)
    {
        ImmutableArray<YamlEntry>.Builder entries = ImmutableArray.CreateBuilder<YamlEntry>();
        Next();
        while (!_broken && Current is not MappingEnd)
        {
            (int Line, int Column) keyPlace = Place(Current.Start);
            YamlNode? key = ReadNode(level + 1);
            if (_broken) break;
            YamlNode? value = ReadNode(level + 1);
            if (key is YamlText { Value: var name })
            {
                if (value is not null) entries.Add(new YamlEntry(name, value, keyPlace.Line, keyPlace.Column));
            }
            else if (key is YamlList or YamlMap)
            {
                Tell(YamlFaultKind.KeyIsNoText, keyPlace);
            }
        }

        int endLine = (int)Current.Start.Line;
        if (!_broken) Next();
        return new YamlMap(entries.ToImmutable(), place.Line, place.Column, endLine);
    }

    private bool Next()
    {
        if (_broken) return false;
        try
        {
            return _parser.MoveNext();
        }
        catch (YamlException e)
        {
            Break(YamlFaultKind.Layout, Place(e.Start), e.Message);
        }
        catch (Exception e) when (e is InvalidOperationException or ArgumentException or FormatException or OverflowException or IndexOutOfRangeException)
        {
            // The library's own slips on broken text, such as a brace that is never closed: still the text's fault.
            Break(YamlFaultKind.LibraryFault, Place(_parser.Current?.End ?? Mark.Empty));
        }

        return false;
    }

    private YamlNode? Break(YamlFaultKind kind, (int Line, int Column) place, string detail = "")
    {
        _broken = true;
        Tell(kind, place, detail);
        return null;
    }

    private void Tell(YamlFaultKind kind, (int Line, int Column) place, string detail = "") => _tell(new YamlFault(kind, place.Line, place.Column, detail));

    // The end of the text may be reported one line past it.
    private (int Line, int Column) Place(Mark mark)
    {
        int line = (int)Math.Clamp(mark.Line, 1, _lines.Length);
        return (line, (int)Math.Clamp(mark.Column, 1, _lines[line - 1].Length + 1));
    }
}
