using System.Collections.Immutable;
using System.Globalization;
using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Renderers;
using Markdig.Syntax;

namespace TyingClass.Lessons.Prose;

/// <summary>The tables of a note, in plain words.</summary>
public static class NoteTable
{
    // As the note is shown, but with the marks as typed: titles are looked for in the cells.
    private static readonly MarkdownPipeline Tables = new MarkdownPipelineBuilder().UsePipeTables().Build();

    /// <summary>The rows of every table, cell by cell, without heads and without the marks of Markdown.</summary>
    public static ImmutableArray<ImmutableArray<string>> Rows(string markdown)
    {
        ArgumentNullException.ThrowIfNull(markdown);
        return [.. Markdown.Parse(markdown, Tables).Descendants<TableRow>().Where(r => !r.IsHeader)
            .Select(r => ImmutableArray.CreateRange(r.OfType<TableCell>().Select(Plain)))];
    }

    private static string Plain(TableCell cell)
    {
        using StringWriter words = new(CultureInfo.InvariantCulture);
        HtmlRenderer writer = new(words) { EnableHtmlForBlock = false, EnableHtmlForInline = false, EnableHtmlEscape = false };
        Tables.Setup(writer);
        writer.WriteChildren(cell);
        return words.ToString().Trim();
    }
}
