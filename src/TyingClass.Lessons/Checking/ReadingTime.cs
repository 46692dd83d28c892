using AngleSharp.Html.Parser;
using TyingClass.Lessons.Courses;

namespace TyingClass.Lessons.Checking;

/// <summary>How long a lesson takes.</summary>
/// <remarks>Reading: 238 words a minute, the mean for adults reading English nonfiction silently (Brysbaert, J. Memory and Language 109 (2019) 104047; value
/// from memory). Working an exercise: each kind says.</remarks>
public static class ReadingTime
{
    public const double WordsPerMinute = 238;

    public static double Minutes(Lesson lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return ReadingMinutes(lesson) + lesson.Exercises.Sum(e => e.Kind.Minutes);
    }

    public static double ReadingMinutes(Lesson lesson) => Words(lesson) / WordsPerMinute;

    public static int Words(Lesson lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return lesson.Blocks.Sum(b => b switch
        {
            ProseBlock prose => Count(prose.Html),
            ExerciseBlock exercise => Count(exercise.Exercise.PromptHtml),
            FlyBlock fly => Count(fly.Caption),
            FigureBlock figure => Count(figure.Caption),
            _ => 0,
        });
    }

    /// <summary>The words of HTML, without its marks.</summary>
    public static string Text(string html) => new HtmlParser().ParseDocument(html).Body?.TextContent ?? "";

    internal static int Count(string html) => Text(html).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Length;
}
