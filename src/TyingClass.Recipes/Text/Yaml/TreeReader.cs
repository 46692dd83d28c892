using System.Collections.Immutable;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace TyingClass.Recipes.Text.Yaml;

/// <summary>
/// YAML 1.2 text into a tree that knows where everything stands. Only plain lists, maps and text are taken: no anchors, aliases,
/// tags or second document. When the layout breaks down half way, what was read until then is still handed back.
/// </summary>
internal sealed class TreeReader
{
    // A recipe needs three levels; more is a mistake or an attack.
    private const int DeepestLevel = 8;

    private readonly string[] _lines;
    private readonly Parser _parser;
    private readonly ErrorList _errors;
    private bool _broken;

    private TreeReader(string text, ErrorList errors)
    {
        _lines = TextLines.Of(text);
        _parser = new Parser(new Scanner(new StringReader(text), skipComments: true));
        _errors = errors;
    }

    private ParsingEvent Current => _parser.Current!;

    /// <summary>The tree, and whether the text was read to its end: if not, what is missing may only be unread.</summary>
    public static (Node? Root, bool Complete) Read(string text, ErrorList errors)
    {
        // Notepad puts a byte order mark in front.
        if (text.StartsWith('\uFEFF')) text = text[1..];
        if (!TextGuard.Inspect(text, errors)) return (null, false);
        TreeReader reader = new(text, errors);
        Node? root = reader.ReadDocument();
        return (root, !reader._broken);
    }

    private Node? ReadDocument()
    {
        Node? root = null;
        if (Next() && Next() && Current is DocumentStart start)
        {
            CheckDirectives(start);
            if (Next()) root = ReadNode(1);
            while (!_broken && Current is not (DocumentStart or StreamEnd) && Next()) continue;
            if (!_broken && Current is DocumentStart second)
            {
                (int line, int column) = Place(second.Start);
                _errors.Add(line, column, null, "A second recipe begins here. One text holds one fly: put the second one in a text of its own.");
            }
        }

        return root;
    }

    private void CheckDirectives(DocumentStart start)
    {
        (int line, int column) = Place(start.Start);
        if (start.Version is { } version && version.Version is not { Major: 1, Minor: 2 })
            _errors.Add(line, column, null, "Recipes are written in YAML 1.2. Delete the line that begins with %YAML.");
        if (start.Tags is { } tags && tags.Any(t => t.Handle is not ("!" or "!!") || !t.Prefix.StartsWith(t.Handle == "!" ? "!" : "tag:yaml.org,2002:", StringComparison.Ordinal)))
            _errors.Add(line, column, null, "Tags have no place in a recipe. Delete the line that begins with %TAG.");
    }

    // Called with Current on the first event of the node; leaves Current on the one after it.
    private Node? ReadNode(int level)
    {
        (int line, int column) = Place(Current.Start);
        if (level > DeepestLevel) return Break(line, column, "Lists and groups are nested far deeper here than any recipe needs. Check the indentation and the brackets.");
        if (Current is AnchorAlias alias)
        {
            _errors.Add(line, column, null, $"{WordList.Quote("*" + alias.Value)} refers to another place in the text (an alias), which a recipe may not do. Write the value out here, or put it in quotes if the star is meant.");
            Next();
            return new SpoiledNode(line, column);
        }

        // The library loses its place after a key left empty.
        if (Current is not NodeEvent node) return Break(line, column, LayoutAdvice.General);
        CheckProperties(node, line, column);
        return Current switch
        {
            Scalar scalar => ReadScalar(scalar, line, column),
            SequenceStart => ReadList(level, line, column),
            MappingStart => ReadMap(level, line, column),
            _ => Break(line, column, LayoutAdvice.General),
        };
    }

    private ScalarNode ReadScalar(Scalar scalar, int line, int column)
    {
        bool isNull = scalar.Style == ScalarStyle.Plain && scalar.Value is "~";
        Next();
        return new ScalarNode(isNull ? "" : scalar.Value, line, column);
    }

    private ListNode ReadList(int level, int line, int column)
    {
        ImmutableArray<Node>.Builder items = ImmutableArray.CreateBuilder<Node>();
        Next();
        while (!_broken && Current is not SequenceEnd)
        {
            if (ReadNode(level + 1) is { } item) items.Add(item);
        }

        if (!_broken) Next();
        return new ListNode(items.ToImmutable(), line, column);
    }

    private MapNode ReadMap(int level, int line, int column)
    {
        ImmutableArray<MapEntry>.Builder entries = ImmutableArray.CreateBuilder<MapEntry>();
        Next();
        while (!_broken && Current is not MappingEnd)
        {
            (int keyLine, int keyColumn) = Place(Current.Start);
            Node? key = ReadNode(level + 1);
            if (_broken) break;
            Node? value = ReadNode(level + 1);
            if (key is ScalarNode { Value: var name })
            {
                if (value is not null) entries.Add(new MapEntry(name, value, keyLine, keyColumn));
            }
            else if (key is ListNode or MapNode)
            {
                _errors.Add(keyLine, keyColumn, null, "A list or group stands where a key should be. Write a word, a colon and a value, such as “size: 6”.");
            }
        }

        if (!_broken) Next();
        return new MapNode(entries.ToImmutable(), line, column);
    }

    private void CheckProperties(NodeEvent node, int line, int column)
    {
        if (!node.Anchor.IsEmpty)
            _errors.Add(line, column, null, $"{WordList.Quote("&" + node.Anchor.Value)} names this place for later use (an anchor), which a recipe may not do. Delete it, or put the value in quotes if the sign is meant.");
        if (!node.Tag.IsEmpty)
            _errors.Add(line, column, null, $"{WordList.Quote(node.Tag.Value.Replace("tag:yaml.org,2002:", "!!", StringComparison.Ordinal))} is a tag, which has no place in a recipe. Delete it, or put the value in quotes if the sign is meant.");
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
            (int line, int column, string advice) = LayoutAdvice.For(e.Message, Place(e.Start), _lines);
            Break(line, column, advice);
        }
        catch (Exception e) when (e is InvalidOperationException or ArgumentException or FormatException or OverflowException or IndexOutOfRangeException)
        {
            // The library's own slips on broken text, such as a brace that is never closed: still the text's fault.
            (int line, int column) = Place(_parser.Current?.End ?? Mark.Empty);
            Break(line, column, _lines.Any(l => l.IndexOfAny(['{', '[']) >= 0) ? LayoutAdvice.Brackets : LayoutAdvice.General);
        }

        return false;
    }

    private Node? Break(int line, int column, string advice)
    {
        _broken = true;
        _errors.Add(line, column, null, advice);
        return null;
    }

    // The end of the text may be reported one line past it.
    private (int Line, int Column) Place(Mark mark)
    {
        int line = (int)Math.Clamp(mark.Line, 1, _lines.Length);
        return (line, (int)Math.Clamp(mark.Column, 1, _lines[line - 1].Length + 1));
    }
}
