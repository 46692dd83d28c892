using Markdig;
using Markdig.Extensions.AutoIdentifiers;

namespace TyingClass.Lessons.Prose;

/// <summary>
/// CommonMark with tables, footnotes and curled quotation marks. Extensions are named one by one: bundles bring attributes that authors could aim at the page.
/// </summary>
internal static class ProsePipeline
{
    public static MarkdownPipeline Lesson { get; } = new MarkdownPipelineBuilder()
        .UsePipeTables()
        .UseFootnotes()
        .UseSmartyPants()
        .UseAutoIdentifiers(AutoIdentifierOptions.GitHub)
        .UsePreciseSourceLocation()
        .DisableHtml()
        .Build();

    /// <summary>For prompts inside exercises: no headings of their own.</summary>
    public static MarkdownPipeline Prompt { get; } = new MarkdownPipelineBuilder()
        .UsePipeTables()
        .UseSmartyPants()
        .UsePreciseSourceLocation()
        .DisableHtml()
        .DisableHeadings()
        .Build();
}
