using AngleSharp.Html.Parser;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;

namespace TyingClass.Lessons.Checking;

/// <summary>How long a lesson takes.</summary>
/// <remarks>Reading: 238 words a minute, the mean for adults reading English nonfiction silently (Brysbaert, J. Memory and Language 109 (2019) 104047; value from memory). Working an exercise: estimates.</remarks>
public static class ReadingTime
{
    public const double WordsPerMinute = 238;

    public static double Minutes(Lesson lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return Words(lesson) / WordsPerMinute + lesson.Exercises.Sum(e => MinutesFor(e.Kind));
    }

    public static int Words(Lesson lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return lesson.Blocks.Sum(b => b switch
        {
            ProseBlock prose => Count(prose.Html),
            ExerciseBlock exercise => Count(exercise.Exercise.PromptHtml),
            FlyBlock fly => Count(fly.Caption),
            _ => 0,
        });
    }

    /// <summary>The words of HTML, without its marks.</summary>
    public static string Text(string html) => new HtmlParser().ParseDocument(html).Body?.TextContent ?? "";

    internal static int Count(string html) => Text(html).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Length;

    private static double MinutesFor(ExerciseKind kind) => kind switch
    {
        ExerciseKind.Predict => 1.5,
        ExerciseKind.Measure or ExerciseKind.Sort => 3,
        ExerciseKind.Repair or ExerciseKind.Explain => 4,
        ExerciseKind.Compose => 6,
        _ => 0,
    };
}
