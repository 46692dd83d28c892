using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Recipes.Model;

namespace TyingClass.Lessons.Courses;

/// <summary>How the course means one evening to be spent. The instructor may write a plan of his own over it.</summary>
/// <param name="Plan">Markdown: what comes when.</param>
/// <param name="Demonstrations">Markdown.</param>
/// <param name="WatchFor">What students get wrong that evening, plain text.</param>
/// <param name="Home">What is left for home, plain text.</param>
/// <param name="Besides">What to bring that no recipe lists.</param>
/// <param name="InTheRoom">Ids of exercises that are worked together that evening, and so are no homework.</param>
/// <param name="Line">Where the file lists it.</param>
public sealed record CourseEvening(
    int Number, string Title, string Plan, string Demonstrations, string WatchFor, string Home, ImmutableArray<string> Besides,
        ImmutableArray<string> InTheRoom, int Line)
{
    /// <summary>What is tied that evening; empty where the file says nothing of it.</summary>
    public ImmutableArray<CourseFly> Flies { get; init; } = [];

    /// <summary>Single parts to have at hand besides those of the flies: each in a recipe that has that part alone.</summary>
    public ImmutableArray<CourseFly> Spares { get; init; } = [];

    /// <summary>Ids of exercises at home that come first; the others are for who has time. Empty where the file draws no line.</summary>
    public ImmutableArray<string> First { get; init; } = [];

    /// <summary>Minutes of reading and exercises at home, of an evening's lessons.</summary>
    public double HomeworkMinutes(IEnumerable<Lesson> lessons) => Minutes(lessons, IsHomework);

    /// <summary>Minutes of reading and of the exercises that come first.</summary>
    public double FirstMinutes(IEnumerable<Lesson> lessons) => Minutes(lessons, e => IsHomework(e) && IsFirst(e));

    /// <summary>Whether an exercise is not to be left out; all are where the file draws no line.</summary>
    public bool IsFirst(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return First.IsEmpty || First.Contains(exercise.Id);
    }

    private bool IsHomework(Exercise exercise) => !exercise.Kind.IsAtTheBench && !InTheRoom.Contains(exercise.Id);

    private static double Minutes(IEnumerable<Lesson> lessons, Func<Exercise, bool> which)
    {
        ArgumentNullException.ThrowIfNull(lessons);
        return lessons.Sum(l => Checking.ReadingTime.ReadingMinutes(l) + l.Exercises.Where(which).Sum(e => e.Kind.Minutes));
    }
}

/// <summary>A fly of an evening, and how many of it are tied; or a spare part, and how many of it are wanted.</summary>
/// <param name="File">Empty for a spare part.</param>
/// <param name="ForTwo">How many two neighbors tie between them.</param>
/// <param name="ToShow">How many the instructor ties to show.</param>
/// <param name="Line">Where the file lists it.</param>
public sealed record CourseFly(string File, Recipe Recipe, string RecipeText, int ForTwo, int ToShow, int Line);
