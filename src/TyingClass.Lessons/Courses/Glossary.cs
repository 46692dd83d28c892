using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;

namespace TyingClass.Lessons.Courses;

/// <summary>A word of the trade: what it means, and the lesson that brings it in.</summary>
public sealed partial record GlossaryEntry(string Term, string Meaning, Lesson Lesson)
{
    /// <summary>What a link to it names after #: "mass-center".</summary>
    public string Anchor => NotAnchor().Replace(Term.ToLowerInvariant(), "-").Trim('-');

    [GeneratedRegex("[^a-z0-9]+")]
    private static partial Regex NotAnchor();
}

/// <summary>The words of all lessons together.</summary>
public static class Glossary
{
    /// <summary>In the order of the alphabet. Of a word that two lessons define, the earlier lesson's meaning stands.</summary>
    public static ImmutableArray<GlossaryEntry> Of(IEnumerable<Lesson> lessons)
    {
        ArgumentNullException.ThrowIfNull(lessons);
        return
        [
            .. lessons.OrderBy(l => l.Number)
                .SelectMany(l => l.Glossary.Select(t => new GlossaryEntry(t.Term, t.Meaning, l)))
                .DistinctBy(e => SameWord(e.Term))
                .OrderBy(e => e.Term, StringComparer.Create(CultureInfo.InvariantCulture, ignoreCase: true)),
        ];
    }

    /// <summary>Equal for two spellings of one word: "Bead" and "beads".</summary>
    internal static string SameWord(string term)
    {
        string lower = term.Trim().ToLowerInvariant();
        return lower.Length > 3 && lower.EndsWith('s') && !lower.EndsWith("ss", StringComparison.Ordinal) ? lower[..^1] : lower;
    }
}
