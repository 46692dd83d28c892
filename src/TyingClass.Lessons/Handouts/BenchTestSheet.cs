using System.Reflection;
using System.Text.RegularExpressions;
using Markdig;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using TyingClass.Lessons.Prose;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Lessons.Handouts;

/// <summary>The bench test protocol, docs/bench-test-protocol.md, as one page to print.</summary>
/// <param name="Html">Cleaned; headings from the second rank on.</param>
public sealed partial record BenchTestSheet(string Title, string Html)
{
    private const string Document = "bench-test-protocol.md";

    private static readonly Lazy<BenchTestSheet> BuiltIn = new(() => Write(Text()));

    /// <summary>The document as it was when the program was built.</summary>
    public static BenchTestSheet AsBuilt => BuiltIn.Value;

    /// <summary>Its first heading becomes the title.</summary>
    public static BenchTestSheet Write(string markdown)
    {
        MarkdownDocument document = Markdown.Parse(markdown, ProsePipeline.Lesson);
        HeadingBlock? title = document.OfType<HeadingBlock>().FirstOrDefault(h => h.Level == 1);
        return new BenchTestSheet(
            string.Concat(title?.Inline?.Descendants<LiteralInline>().Select(l => l.Content.ToString()) ?? []),
            ProseWriter.Render(document.Where(b => b != title), ProsePipeline.Lesson));
    }

    /// <summary>Its blanks with the reader's units behind them.</summary>
    public string For(UnitSystem units) => units == UnitSystem.Metric ? Html
        : Blank().Replace(Html, m => $"{m.Groups["line"].Value}{(m.Groups["unit"].Value == "g" ? Magnitudes.Mass : Magnitudes.SinkRate).Symbol(units)}");

    [GeneratedRegex(@"(?<line>_{3,} )(?<unit>m/s|g)\b")]
    private static partial Regex Blank();

    private static string Text()
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(Document)
            ?? throw new InvalidOperationException($"{Document} was not built into the program.");
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }
}
