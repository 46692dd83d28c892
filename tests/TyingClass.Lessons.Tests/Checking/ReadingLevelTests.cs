using System.Text.RegularExpressions;
using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Courses;
using Xunit;

namespace TyingClass.Lessons.Tests.Checking;

/// <summary>Lessons are written for grade 8: the reading grade of Kincaid, Fishburne, Rogers and Chissom, Navy Research Branch Report 8-75 (1975), formula from memory.</summary>
public sealed partial class ReadingLevelTests
{
    private const double HardestGrade = 8.9;

    public static TheoryData<string> Slugs() => [.. CourseChecker.Check(Repo.Lessons).Course.Lessons.Select(l => l.Slug)];

    [Theory]
    [MemberData(nameof(Slugs))]
    public void Grade_OfEachLesson_IsEightOrLower(string slug)
    {
        using CourseFolder course = new(Repo.Lessons);
        Assert.True(course.Current.TryFindLesson(slug, out Lesson lesson));

        double grade = Grade(string.Concat(lesson.Blocks.OfType<ProseBlock>().Select(p => ReadingTime.Text(Running(p.Html)) + "\n")));

        Assert.True(grade <= HardestGrade, FormattableString.Invariant($"{slug} reads at grade {grade:F1}."));
    }

    // A text of known grade: one sentence of six one-syllable words is 0.39 × 6 + 11.8 − 15.59.
    [Fact]
    public void Grade_SixShortWords_IsByHand() => Assert.Equal(0.39 * 6 + 11.8 - 15.59, Grade("The cat sat on the mat."), 1e-9);

    private static double Grade(string text)
    {
        string[] sentences = [.. SentenceEnd().Split(text).Where(s => Word().IsMatch(s))];
        string[] words = [.. Word().Matches(text).Select(m => m.Value)];
        return 0.39 * words.Length / sentences.Length + 11.8 * words.Sum(Syllables) / words.Length - 15.59;
    }

    // Groups of vowels, a silent e at the end not counted.
    private static int Syllables(string word)
    {
        string plain = word.ToLowerInvariant();
        int groups = Vowels().Count(plain);
        return Math.Max(1, plain.Length > 2 && plain.EndsWith('e') && !plain.EndsWith("le", StringComparison.Ordinal) ? groups - 1 : groups);
    }

    // Running text only: tables and headings are no sentences.
    private static string Running(string html) => Blocks().Replace(html, " ");

    [GeneratedRegex(@"(?<=[.!?:])\s|\n\n")]
    private static partial Regex SentenceEnd();

    [GeneratedRegex(@"[A-Za-z][A-Za-z'’]*")]
    private static partial Regex Word();

    [GeneratedRegex("[aeiouy]+")]
    private static partial Regex Vowels();

    [GeneratedRegex("<(table|h2|h3|sup)[ >].*?</\\1>", RegexOptions.Singleline)]
    private static partial Regex Blocks();
}
