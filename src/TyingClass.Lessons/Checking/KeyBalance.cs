using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Kinds.FindTheSlip;
using TyingClass.Lessons.Kinds.Predict;

namespace TyingClass.Lessons.Checking;

/// <summary>How often one choice of a kind of question is the right one.</summary>
/// <param name="Question">"change in a quantity".</param>
/// <param name="Of">Questions of the kind in the course.</param>
public sealed record KeyCount(string Question, string Choice, int Right, int Of);

/// <summary>A student who notices that one choice is right more often than not need not think.</summary>
public static class KeyBalance
{
    // Fewer questions than this are no pattern. Estimate.
    private const int Fewest = 8;

    // Of all questions of a kind, at most this share may have one answer. Estimate.
    private const double MostShare = 0.6;

    // In so many questions of a kind running. Estimate.
    private const int MostRunning = 4;

    private static readonly string[] Places = ["the first", "the second", "the third", "the fourth", "the fifth", "the sixth", "the seventh", "the eighth"];

    /// <summary>The commonest first of each kind of question.</summary>
    public static ImmutableArray<KeyCount> Of(Course course) =>
    [
        .. Keys(course).GroupBy(k => k.Question).SelectMany(g => g.GroupBy(k => k.Choice).OrderByDescending(c => c.Count())
            .Select(c => new KeyCount(g.Key, c.Key, c.Count(), g.Count()))),
    ];

    internal static IEnumerable<AuthorError> Check(Course course)
    {
        foreach (IGrouping<string, (string Question, string Choice, Lesson Lesson, Exercise Exercise)> kind in Keys(course).GroupBy(k => k.Question))
        {
            (string Question, string Choice, Lesson Lesson, Exercise Exercise)[] all = [.. kind];
            foreach (IGrouping<string, (string Question, string Choice, Lesson Lesson, Exercise Exercise)> choice in all.GroupBy(k => k.Choice)
                .Where(c => all.Length >= Fewest && c.Count() > MostShare * all.Length))
                yield return At(choice.Last().Lesson, choice.Last().Exercise,
                    $"Of {all.Length} questions “{kind.Key}” in the course, {choice.Count()} have the answer “{choice.Key}”. "
                    + "Ask some of them the other way round.");
            for (int i = MostRunning; i < all.Length; i++)
            {
                if (all[(i - MostRunning)..(i + 1)].All(k => k.Choice == all[i].Choice))
                    yield return At(all[i].Lesson, all[i].Exercise,
                        $"This is question “{kind.Key}” number {MostRunning + 1} running with the answer “{all[i].Choice}”. "
                        + "Ask one of them the other way round.");
            }
        }

        static AuthorError At(Lesson lesson, Exercise exercise, string text)
        {
            (int line, int column) = exercise.Place.Of("ask");
            return new AuthorError(lesson.File, line, column, $"{exercise.Id}: {text}");
        }
    }

    private static IEnumerable<(string Question, string Choice, Lesson Lesson, Exercise Exercise)> Keys(Course course)
    {
        foreach (Lesson lesson in course.Lessons)
        {
            foreach (Exercise exercise in lesson.Exercises)
            {
                (string Question, string Choice)? key = exercise.Task switch
                {
                    PredictTask task => Prediction.Answer(exercise)?.Choice is { } choice ? Key(task, choice) : null,
                    FindTheSlipTask => exercise.Kind.RightAnswer(exercise) is { Length: > 0 } answer ? ("find the slip", $"step {answer[0]}") : null,
                    _ => null,
                };
                if (key is { } known) yield return (known.Question, known.Choice, lesson, exercise);
            }
        }
    }

    // Choices that every question of a kind shares count by their words; others by their place in the list.
    private static (string, string) Key(PredictTask task, string choice) => task.Question switch
    {
        ChangeIn => ("change in a quantity", choice),
        WhichWayUp => ("which way up", choice),
        WhereTheNosePoints => ("nose", choice),
        WhichHasMore => ("which has more", Place(task, choice)),
        _ => ("choices of the author’s", Place(task, choice)),
    };

    private static string Place(PredictTask task, string choice) => Places[Math.Clamp(task.Offered.IndexOf(choice), 0, Places.Length - 1)];
}
