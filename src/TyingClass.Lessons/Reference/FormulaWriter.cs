using System.Collections.Immutable;
using Markdig;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using TyingClass.Lessons.Prose;

namespace TyingClass.Lessons.Reference;

/// <summary>
/// A document of formulas as safe HTML: by the same road as a lesson's prose, with its headings one rank lower and its links turned to the page they stand on.
/// </summary>
internal static class FormulaWriter
{
    /// <param name="prefix">Put in front of every anchor of this document; empty for none.</param>
    /// <param name="prefixes">Prefix by file name of all documents on the page.</param>
    public static FormulaPage Write(string markdown, string prefix, IReadOnlyDictionary<string, string> prefixes)
    {
        MarkdownDocument document = Markdown.Parse(markdown, ProsePipeline.Lesson);
        ImmutableArray<FormulaHeading>.Builder headings = ImmutableArray.CreateBuilder<FormulaHeading>();
        foreach (HeadingBlock heading in document.Descendants<HeadingBlock>())
        {
            heading.Level++;
            HtmlAttributes attributes = heading.GetAttributes();
            attributes.Id = heading.Level == 2 && prefix.Length > 0 ? prefix : Joined(prefix, attributes.Id ?? "");
            headings.Add(new FormulaHeading(heading.Level, attributes.Id, Words(heading)));
        }

        foreach (LinkInline link in document.Descendants<LinkInline>().ToArray()) Turn(link, prefixes);
        return new FormulaPage(FormulaText.Raise(ProseWriter.Render(document, ProsePipeline.Lesson)), headings.ToImmutable());
    }

    // To a place on this page; what is not on it keeps its words alone.
    private static void Turn(LinkInline link, IReadOnlyDictionary<string, string> prefixes)
    {
        string[] parts = (link.Url ?? "").Split('#', 2);
        if (parts[0].Contains(':', StringComparison.Ordinal)) return;
        if (prefixes.TryGetValue(parts[0], out string? prefix))
        {
            link.Url = parts.Length > 1 ? "#" + Joined(prefix, parts[1]) : "#" + (prefix.Length > 0 ? prefix : "formulas");
            return;
        }

        foreach (Inline word in link.ToArray())
        {
            word.Remove();
            link.InsertBefore(word);
        }

        link.Remove();
    }

    private static string Joined(string prefix, string id) => prefix.Length > 0 ? $"{prefix}-{id}" : id;

    private static string Words(HeadingBlock heading) =>
        string.Concat(
        heading.Inline?.Descendants().Select(i => i switch { LiteralInline text => text.Content.ToString(), CodeInline code => code.Content, _ => "" }) ?? []);
}
