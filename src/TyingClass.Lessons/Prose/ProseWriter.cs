using System.Text.RegularExpressions;
using Markdig;
using Markdig.Renderers;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Yaml;

namespace TyingClass.Lessons.Prose;

/// <summary>Markdown of an author into HTML that is safe to show.</summary>
internal static partial class ProseWriter
{
    /// <summary>A short piece, such as an exercise's prompt.</summary>
    /// <param name="firstLine">Line of the file on which it begins.</param>
    /// <param name="columnsBefore">Columns of the file in front of its first sign.</param>
    public static string Prompt(string markdown, int firstLine, int columnsBefore, AuthorErrors errors)
    {
        MarkdownDocument document = Markdown.Parse(markdown, ProsePipeline.Prompt);
        Check(document, firstLine - 1, columnsBefore, errors);
        return Render(document, ProsePipeline.Prompt);
    }

    public static string Render(IEnumerable<Block> blocks, MarkdownPipeline pipeline)
    {
        using StringWriter text = new();
        HtmlRenderer renderer = new(text);
        pipeline.Setup(renderer);
        foreach (Block block in blocks) renderer.Render(block);
        // A wide table scrolls within its frame, which the keyboard must be able to reach; added after cleaning, which would take it out.
        return FigureAndUnit().Replace(SafeHtml.Clean(text.ToString()).Trim(), "\u00A0")
            // A heading without words is none: it is read aloud as one.
            .Replace("<th></th>", "<td></td>", StringComparison.Ordinal)
            .Replace("<table>", "<div class=\"table-frame\" role=\"group\" aria-label=\"Table\" tabindex=\"0\"><table>", StringComparison.Ordinal)
            .Replace("</table>", "</table></div>", StringComparison.Ordinal)
            // The page's security policy knows no style attributes; Markdig aligns table cells by nothing else.
            .Replace("style=\"text-align: right\"", "class=\"to-right\"", StringComparison.Ordinal)
            .Replace("style=\"text-align: center\"", "class=\"to-middle\"", StringComparison.Ordinal)
            .Replace("style=\"text-align: left\"", "class=\"to-left\"", StringComparison.Ordinal);
    }

    // A line must not end between a figure and its unit, nor a row of a narrow table.
    [GeneratedRegex(@"(?<=[0-9]) (?=(?:[0-9]{3}|mm³|mm²|mm|cm³|cm|mg/mm|mg|kg/m³|kg|mN|g·mm|g|m/s|m|N·mm|J|°C|in|oz|%)(?![\w·/]))")]
    private static partial Regex FigureAndUnit();

    /// <summary>Reports bad addresses and images without text, and makes the addresses harmless.</summary>
    /// <param name="linesBefore">Lines of the file in front of the document.</param>
    /// <param name="columnsBefore">Columns of the file in front of each of its lines.</param>
    public static void Check(MarkdownDocument document, int linesBefore, int columnsBefore, AuthorErrors errors)
    {
        foreach (MarkdownObject item in document.Descendants())
        {
            switch (item)
            {
                case LinkInline link:
                    CheckLink(link, linesBefore + link.Line + 1, columnsBefore + link.Column + 1, errors);
                    break;
                case AutolinkInline auto when !auto.IsEmail && Addresses.Complaint(auto.Url, isImage: false) is { } complaint:
                    errors.Add(linesBefore + auto.Line + 1, columnsBefore + auto.Column + 1, complaint);
                    auto.Url = "";
                    break;
                case HeadingBlock { Level: 1 } heading:
                    errors.Add(linesBefore + heading.Line + 1, columnsBefore + heading.Column + 1,
                        "The lesson's title is the only heading of the first rank: begin this one with ## instead of #.");
                    break;
            }
        }
    }

    private static void CheckLink(LinkInline link, int line, int column, AuthorErrors errors)
    {
        string? url = link.GetDynamicUrl?.Invoke() ?? link.Url;
        if (link.IsImage && !link.Descendants<LiteralInline>().Any(l => !string.IsNullOrWhiteSpace(l.Content.ToString())))
            errors.Add(line, column, "This image has no text. Say in the square brackets what it shows, for readers who cannot see it.");
        if (Addresses.Complaint(url, link.IsImage) is { } complaint)
        {
            errors.Add(line, column, complaint);
            link.GetDynamicUrl = null;
            link.Url = "";
        }
        else
        {
            if (link.GetDynamicUrl is null && url is not null) link.Url = Addresses.ToPage(url);
            errors.Links.Add(new LessonLink(Addresses.ToPage(url ?? ""), link.IsImage, line, column));
        }
    }
}
