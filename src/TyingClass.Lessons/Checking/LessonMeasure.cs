using System.Collections.Immutable;
using TyingClass.Lessons.Courses;

namespace TyingClass.Lessons.Checking;

/// <summary>Size and reading level of a lesson, and what is unusual about them. A lesson may be unusual; its author should know.</summary>
/// <param name="Words">Of prose, its tables and headings included; exercises and captions are not.</param>
/// <param name="Grade">Flesch–Kincaid, see <see cref="ReadingLevel"/>.</param>
/// <param name="Remarks">Short, for a line of a table.</param>
public sealed record LessonMeasure(string File, int Words, int Exercises, int Kinds, int PracticeSets, double Grade, double WordsPerSentence,
    ImmutableArray<string> Remarks)
{
    public const int FewestWords = 900;
    public const int MostWords = 1800;
    public const int FewestExercises = 5;
    public const int FewestKinds = 4;

    /// <summary>Above this a grown beginner has to read sentences twice.</summary>
    public const double HardestGrade = 8;

    /// <summary>With shorter sentences, in the mean, a text reads like a telegram. Estimate.</summary>
    public const double ShortestSentences = 8;

    public static LessonMeasure Of(Lesson lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        int words = lesson.Blocks.OfType<ProseBlock>().Sum(p => ReadingTime.Count(p.Html)), exercises = lesson.Exercises.Count();
        int kinds = lesson.Exercises.Select(e => e.Kind).Distinct().Count();
        (double grade, double perSentence) = ReadingLevel.Of(lesson);
        (bool Is, string Remark)[] remarks =
        [
            (words < FewestWords, $"under {FewestWords} words"),
            (words > MostWords, $"over {MostWords} words"),
            (exercises < FewestExercises, $"under {FewestExercises} exercises"),
            (kinds < FewestKinds, $"under {FewestKinds} kinds of exercise"),
            (grade > HardestGrade, "hard to read: split long sentences, use shorter words"),
            (perSentence < ShortestSentences, "choppy: join short sentences"),
        ];
        return new LessonMeasure(
            lesson.File, words, exercises, kinds, lesson.Blocks.OfType<PracticeBlock>().Count(), grade, perSentence,
            [.. remarks.Where(r => r.Is).Select(r => r.Remark)]);
    }
}
