using System.Collections.Immutable;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using TyingClass.Lessons.Courses;

namespace TyingClass.Lessons.Checking;

/// <summary>How hard a text is to read: the Flesch–Kincaid grade level, in years of US schooling.</summary>
/// <remarks>
/// grade = 0.39 × words per sentence + 11.8 × syllables per word − 15.59. Kincaid, Fishburne, Rogers and Chissom, Derivation of New Readability
/// Formulas, Naval Technical Training Command Research Branch Report 8-75 (1975); formula from memory.
/// Running text only: paragraphs and list items, each of which ends a sentence as . ! ? do. Figures and the units after them are not words.
/// Syllables are counted by rule from the spelling, which is right for most words and not for all: groups of vowels, with silent endings taken off.
/// </remarks>
public static partial class ReadingLevel
{
    private const string Passages = "p, li";
    private const string NotRunning = "table, pre, .footnotes, sup";

    /// <summary>Grade and length of sentences of a lesson's prose; zeros when it has none.</summary>
    public static (double Grade, double WordsPerSentence) Of(Lesson lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return Of(lesson.Blocks.OfType<ProseBlock>().SelectMany(p => PassagesOf(p.Html)));
    }

    /// <param name="passages">Each begins and ends a sentence.</param>
    public static (double Grade, double WordsPerSentence) Of(IEnumerable<string> passages)
    {
        ArgumentNullException.ThrowIfNull(passages);
        ImmutableArray<ImmutableArray<string>> sentences =
        [
            .. passages.SelectMany(p => SentenceEnd().Split(Measure().Replace(p, " "))).Select(s => Word().Matches(s).Select(m => m.Value).ToImmutableArray())
                .Where(w => w.Length > 0),
        ];
        if (sentences.IsEmpty) return (0, 0);
        double words = sentences.Sum(s => s.Length), perSentence = words / sentences.Length;
        return (0.39 * perSentence + 11.8 * sentences.Sum(s => s.Sum(Syllables)) / words - 15.59, perSentence);
    }

    /// <summary>Syllables of an English word, at least 1.</summary>
    public static int Syllables(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        string plain = word.ToLowerInvariant().Replace("’", "", StringComparison.Ordinal).Replace("'", "", StringComparison.Ordinal);
        return Math.Max(1, Vowels().Count(plain) + Parted().Count(plain) - Silent().Count(plain));
    }

    private static IEnumerable<string> PassagesOf(string html)
    {
        IElement body = new HtmlParser().ParseDocument(html).Body!;
        foreach (IElement skipped in body.QuerySelectorAll(NotRunning)) skipped.Remove();
        // An item that holds paragraphs is read through these.
        return body.QuerySelectorAll(Passages).Where(p => p.QuerySelector(Passages) is null).Select(p => p.TextContent);
    }

    [GeneratedRegex(@"(?<=[.!?][”’)]*)\s+")]
    private static partial Regex SentenceEnd();

    // "0.55 g·mm", "1/8 in", "−74°": read as a thing looked at, not as words.
    [GeneratedRegex(@"[−-]?[0-9][0-9.,/ ]*(?:\s?(?:mm|cm|mg|kg|mN|g|m|N|J|s|t|in)\b(?:[·/](?:mm|cm|m|s|g|h)\b)?[²³]?)?[°%]?")]
    private static partial Regex Measure();

    [GeneratedRegex(@"\p{L}+(?:['’]\p{L}+)*")]
    private static partial Regex Word();

    [GeneratedRegex("[aeiouy]+")]
    private static partial Regex Vowels();

    // Vowels that stand together and are spoken apart: ma-te-ri-al, ty-ing, flu-id, i-de-a, li-on; and a vowel nobody writes: pris-m.
    [GeneratedRegex("(?<![tcs])i[ao](?!u)|[aeiouy](?=ing)|(?<!g)ui(?=d)|(?<=[aeiouy][a-z]*)ea$|(?<=cr)ea(?=t)|sm$|(?<![qg])ua(?!r)|oya|oyi|iet|rio|[^aeiouy]le[ds]$")]
    private static partial Regex Parted();

    // The e of tube, tubes and tubed, but not of table, boxes or needed.
    [GeneratedRegex("(?<=[aeiouy][a-z]*)(?<![aeiouy])(?<![^aeiouy]l)e$|(?<=[aeiouy][a-z]*)(?<![aeiouysxzcg]|[cs]h)es$|(?<=[aeiouy][a-z]*)(?<![aeiouytd])(?<!dr)ed$|(?<=[aeiouy][^aeiouy]+)e(?=ly$|ful|less|ment)")]
    private static partial Regex Silent();
}
