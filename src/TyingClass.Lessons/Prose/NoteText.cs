using Markdig;
using Markdig.Syntax;
using TyingClass.Lessons.Yaml;

namespace TyingClass.Lessons.Prose;

/// <summary>Notes that people type into a page, as safe HTML: the Markdown of prompts, addresses that are not allowed made harmless.</summary>
public static class NoteText
{
    public static string ToHtml(string markdown)
    {
        ArgumentNullException.ThrowIfNull(markdown);
        MarkdownDocument document = Markdown.Parse(markdown, ProsePipeline.Prompt);
        ProseWriter.Check(document, 0, 0, new AuthorErrors("note"));
        return ProseWriter.Render(document, ProsePipeline.Prompt);
    }
}
