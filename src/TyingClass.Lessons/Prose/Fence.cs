using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Markdig.Syntax;

namespace TyingClass.Lessons.Prose;

/// <summary>A fenced block of ours, cut from the file's own lines so that every position inside it is a position in the file.</summary>
/// <param name="Kind">"fly", "figure", "exercise", "practice".</param>
/// <param name="Arguments">The words after the kind.</param>
/// <param name="FirstLine">Line of the file on which its text begins, from 1.</param>
internal sealed partial record Fence(string Kind, string Arguments, string Text, int FirstLine)
{
    public static ImmutableArray<string> Kinds { get; } = ["fly", "figure", "exercise", "practice"];

    public static bool IsOurs(FencedCodeBlock block) => Kinds.Contains((block.Info ?? "").ToLowerInvariant());

    public static Fence From(FencedCodeBlock block, string[] lines)
    {
        int first = block.Line + 1, count = block.Lines.Count;
        string indent = new(' ', block.IndentCount);
        IEnumerable<string> body =
            lines.Skip(first).Take(count).Select(l => indent.Length > 0 && l.StartsWith(indent, StringComparison.Ordinal) ? l[indent.Length..] : l);
        return new Fence(block.Info!.ToLowerInvariant(), Spaces().Replace((block.Arguments ?? "").Trim(), " "), string.Join('\n', body) + "\n", first + 1);
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
