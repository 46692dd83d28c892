using System.Collections.Immutable;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace TyingClass.Lessons.Yaml;

/// <summary>YAML 1.2 into a tree that knows where everything stands. Plain lists, maps and text only: no anchors, aliases, tags or second document.</summary>
internal sealed class YamlReader
{
    private const int DeepestLevel = 12;

    private readonly Parser _parser;
    private readonly AuthorErrors _errors;

    private YamlReader(string text, AuthorErrors errors)
    {
        _parser = new Parser(new Scanner(new StringReader(text), skipComments: true));
        _errors = errors;
    }

    private ParsingEvent Current => _parser.Current!;

    /// <summary>Reads a piece of a file; the positions are those of the file.</summary>
    /// <param name="firstLine">Line of the file on which <paramref name="text"/> begins, from 1.</param>
    public static YamlMap? ReadMap(string text, int firstLine, AuthorErrors errors, string what)
    {
        // Empty lines in front make every position of the library a position in the file.
        YamlReader reader = new(new string('\n', firstLine - 1) + text, errors);
        try
        {
            return reader.ReadDocument(firstLine, what);
        }
        catch (YamlException e)
        {
            errors.Add(Math.Max(firstLine, (int)e.Start.Line), Math.Max(1, (int)e.Start.Column), $"This cannot be read as YAML: {Plain(e)}. Check the indentation, the colons and the quotes near here.");
            return null;
        }
        catch (Exception e) when (e is InvalidOperationException or ArgumentException or FormatException or OverflowException or IndexOutOfRangeException)
        {
            errors.Add(firstLine, 1, "This cannot be read as YAML. Check the indentation, the brackets and the quotes.");
            return null;
        }
    }

    private static string Plain(YamlException e) => e.Message.Split("): ", 2)[^1].TrimEnd('.');

    private YamlMap? ReadDocument(int firstLine, string what)
    {
        _parser.MoveNext();
        _parser.MoveNext();
        if (Current is not DocumentStart)
        {
            _errors.Add(firstLine, 1, $"{what} is empty.");
            return null;
        }

        _parser.MoveNext();
        YamlNode? root = ReadNode(1);
        while (Current is not (DocumentStart or StreamEnd) && _parser.MoveNext()) continue;
        if (Current is DocumentStart second)
        {
            _errors.Add((int)second.Start.Line, (int)second.Start.Column, $"A second document begins here; {what.ToLowerInvariant()} is one.");
        }

        if (root is YamlMap map) return map;
        if (root is not null) _errors.Add(root, $"{what} needs keys, each with a colon and a value, such as “title: The hang test”.");
        return null;
    }

    private YamlNode? ReadNode(int level)
    {
        (int line, int column) = ((int)Current.Start.Line, (int)Current.Start.Column);
        if (level > DeepestLevel) throw new YamlException(Current.Start, Current.End, "lists and groups are nested too deep");
        if (Current is AnchorAlias alias)
        {
            _errors.Add(line, column, $"“*{alias.Value}” refers to another place (an alias). Write the value out.");
            _parser.MoveNext();
            return new YamlSpoiled(line, column);
        }

        if (Current is NodeEvent { Anchor.IsEmpty: false } anchored)
            _errors.Add(line, column, $"“&{anchored.Anchor.Value}” names this place for later (an anchor). Delete it and write values out where they are used.");
        if (Current is NodeEvent { Tag.IsEmpty: false } tagged)
            _errors.Add(line, column, $"“{tagged.Tag.Value}” is a tag, which has no use here. Delete it.");
        switch (Current)
        {
            case Scalar scalar:
                _parser.MoveNext();
                return new YamlText(
                    scalar.Value, scalar.Style is ScalarStyle.Literal or ScalarStyle.Folded,
                    scalar.Style is ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted, line, column);
            case SequenceStart:
                return ReadList(level, line, column);
            case MappingStart:
                return ReadMap(level, line, column);
            default:
                throw new YamlException(Current.Start, Current.End, "a value is missing");
        }
    }

    private YamlList ReadList(int level, int line, int column)
    {
        ImmutableArray<YamlNode>.Builder items = ImmutableArray.CreateBuilder<YamlNode>();
        _parser.MoveNext();
        while (Current is not SequenceEnd)
        {
            if (ReadNode(level + 1) is { } item) items.Add(item);
        }

        _parser.MoveNext();
        return new YamlList(items.ToImmutable(), line, column);
    }

    private YamlMap ReadMap(int level, int line, int column)
    {
        ImmutableArray<YamlEntry>.Builder entries = ImmutableArray.CreateBuilder<YamlEntry>();
        _parser.MoveNext();
        while (Current is not MappingEnd)
        {
            (int keyLine, int keyColumn) = ((int)Current.Start.Line, (int)Current.Start.Column);
            YamlNode? key = ReadNode(level + 1);
            YamlNode? value = ReadNode(level + 1);
            if (key is YamlSpoiled) continue;
            if (key is not YamlText { Value: var name })
                _errors.Add(keyLine, keyColumn, "A key must be a word or two, not a list or a group.");
            else if (entries.Any(e => e.Key == name))
                _errors.Add(keyLine, keyColumn, $"“{name}” is written twice. Keep one of the two.");
            else if (value is not null)
                entries.Add(new YamlEntry(name, value, keyLine, keyColumn));
        }

        int endLine = (int)Current.Start.Line;
        _parser.MoveNext();
        return new YamlMap(entries.ToImmutable(), endLine, line, column);
    }
}
