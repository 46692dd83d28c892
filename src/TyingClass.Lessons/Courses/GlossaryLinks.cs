using System.Collections.Immutable;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace TyingClass.Lessons.Courses;

/// <summary>Links the first use of each word of the glossary, in the running text of a lesson, to its meaning.</summary>
internal sealed partial class GlossaryLinks
{
    private const string Page = "/glossary#";

    // Where a link would stand inside another, or get in the way of reading.
    private static readonly HashSet<string> Spared = new(StringComparer.Ordinal) { "A", "CODE", "PRE", "H2", "H3", "H4", "H5", "H6", "TH" };

    private readonly Dictionary<string, GlossaryEntry> _byWord;
    private readonly Regex? _words;

    public GlossaryLinks(ImmutableArray<GlossaryEntry> glossary)
    {
        _byWord = glossary.ToDictionary(e => Glossary.SameWord(e.Term), StringComparer.Ordinal);
        // The longest first, so that "mass center" is never taken for "mass".
        string any = string.Join('|', glossary.OrderByDescending(e => e.Term.Length).Select(e => Pattern(e.Term)));
        _words = glossary.IsEmpty ? null : new Regex($@"(?<![\w-])(?:{any})(?:e?s)?(?![\w-])", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);
    }

    /// <summary>The lesson with <see cref="ProseBlock.Shown"/> of its blocks set; links of an earlier glossary are gone.</summary>
    public Lesson Apply(Lesson lesson)
    {
        HashSet<GlossaryEntry> linked = [];
        return lesson with { Blocks = [.. lesson.Blocks.Select(b => b is ProseBlock prose ? prose with { Shown = Linked(prose.Html, linked) } : b)] };
    }

    private string Linked(string html, HashSet<GlossaryEntry> linked)
    {
        if (_words is null || !_words.IsMatch(html)) return html;
        int before = linked.Count;
        IElement body = new HtmlParser().ParseDocument(html).Body!;
        foreach (IText text in body.Descendants<IText>().Where(IsRunning).ToArray()) Link(text, linked);
        return linked.Count > before ? body.InnerHtml : html;
    }

    private void Link(IText text, HashSet<GlossaryEntry> linked)
    {
        foreach (Match match in _words!.Matches(text.Data))
        {
            if (Find(match.Value) is not { } entry || !linked.Add(entry)) continue;
            IText word = text.Split(match.Index), rest = word.Split(match.Length);
            IElement link = text.Owner!.CreateElement("a");
            link.SetAttribute("class", "term");
            link.SetAttribute("href", Page + entry.Anchor);
            word.Replace(link);
            link.Append(word);
            // Matches were counted from the start of what was one piece of text.
            Link(rest, linked);
            return;
        }
    }

    private GlossaryEntry? Find(string word)
    {
        string plain = Spaces().Replace(word, " ");
        return _byWord.GetValueOrDefault(Glossary.SameWord(plain))
            ?? (plain.EndsWith("es", StringComparison.OrdinalIgnoreCase) ? _byWord.GetValueOrDefault(Glossary.SameWord(plain[..^2])) : null);
    }

    private static bool IsRunning(IText text) =>
        !text.Ancestors<IElement>().Any(e => Spared.Contains(e.TagName) || e.ClassList.Contains("footnotes"));

    private static string Pattern(string term) => string.Join(@"\s+", Spaces().Split(term.Trim()).Select(Regex.Escape));

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
