using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Storage.Attempts;
using TyingClass.Web.Calendar;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Progress;

public sealed record ExerciseLine(Exercise Exercise, StandingKind Kind, int Attempts, Lateness Lateness = Lateness.None)
{
    /// <summary>Still to be done; what waits for a mark is out of the student's hands.</summary>
    public bool IsOpen => Kind is StandingKind.Trying or StandingKind.Untried;
}

public sealed record LessonLine(Lesson Lesson, ImmutableArray<ExerciseLine> Exercises)
{
    /// <summary>When it opens, for a student of a class that has not come so far; null when it is open.</summary>
    public string? Opens { get; init; }

    /// <summary>When it is due, for a student of a class with due dates.</summary>
    public string? Due { get; init; }

    /// <summary>That time is past.</summary>
    public bool IsPastDue { get; init; }

    /// <summary>It is due within the week, and something of it is still to be done.</summary>
    public bool IsDueSoon { get; init; }

    /// <summary>"due Tue, Dec 1", or "was due Mon, Oct 26" once that is past; empty where all is done, or nothing is due.</summary>
    public string DueWords => Due is null || Passed == Exercises.Length ? "" : IsPastDue ? $"was due {Due}" : $"due {Due}";

    public int Passed => Exercises.Count(e => e.Kind == StandingKind.Passed);

    public bool IsBegun => Exercises.Any(e => e.Kind != StandingKind.Untried);
}

/// <param name="Next">The next thing to do; null when nothing is left.</param>
/// <param name="Started">True once anything was answered.</param>
public sealed record CoursePlan(ImmutableArray<LessonLine> Lessons, (LessonLine Lesson, ExerciseLine Line)? Next, bool Started,
    ImmutableArray<AuthorError> Problems)
{
    /// <summary>What is left at home of the evening one is at, by what comes first; null where the course does not say.</summary>
    public Homework? Homework { get; init; }

    /// <summary>Begun lessons after one another: how far one has come.</summary>
    public LessonLine? Furthest => Lessons.LastOrDefault(l => l.IsBegun);

    /// <summary>What is due within the week and not done, the soonest first.</summary>
    public ImmutableArray<LessonLine> DueSoon => [.. Lessons.Where(l => l.IsDueSoon)];

    public int Passed => Lessons.Sum(l => l.Passed);

    public int Exercises => Lessons.Sum(l => l.Exercises.Length);

    /// <summary>The next thing to do besides one exercise.</summary>
    public (LessonLine Lesson, ExerciseLine Line)? NextBut(Exercise exercise) => Open(Lessons)
        .Where(pair => pair.Line.Exercise.Id != exercise.Id).Cast<(LessonLine, ExerciseLine)?>().FirstOrDefault();

    /// <summary>All that can be done now: what is due within the week first, then the course's own order.</summary>
    internal static IEnumerable<(LessonLine Lesson, ExerciseLine Line)> Open(ImmutableArray<LessonLine> lessons) =>
        lessons.Where(l => l.Opens is null).OrderByDescending(l => l.IsDueSoon)
            .SelectMany(l => l.Exercises.Select(e => (l, e))).Where(pair => pair.e.IsOpen);

    /// <summary>Handed in and not read yet, in the course's order.</summary>
    public ImmutableArray<ExerciseLine> Waiting => [.. Lessons.SelectMany(l => l.Exercises).Where(e => e.Kind == StandingKind.Waiting)];
}

/// <summary>Where the visitor is in the course.</summary>
public sealed class CourseProgress(ICourseSource source, AttemptStore store, Visitor visitor, ClassCalendar calendar)
{
    private static readonly TimeSpan Soon = TimeSpan.FromDays(7);

    public CoursePlan Now()
    {
        Course course = source.Current;
        Dictionary<string, Standing> standings = Standings();
        ImmutableArray<LessonLine> lessons = [.. course.Lessons.Select(l => Line(l, standings))];
        (LessonLine Lesson, ExerciseLine Line)? next = Next(lessons);
        return new CoursePlan(lessons, next, standings.Count > 0, course.Problems) { Homework = Homework.Of(course, lessons, next?.Lesson.Lesson) };
    }

    /// <summary>By exercise, as far as there are any.</summary>
    public Dictionary<string, Standing> Standings() =>
        visitor.Person is { } person ? store.StandingsOf(person.Id).ToDictionary(s => s.ExerciseId) : [];

    private static (LessonLine, ExerciseLine)? Next(ImmutableArray<LessonLine> lessons) =>
        CoursePlan.Open(lessons).Cast<(LessonLine, ExerciseLine)?>().FirstOrDefault();

    private LessonLine Line(Lesson lesson, Dictionary<string, Standing> standings)
    {
        ClassWindows? mine = calendar.Mine;
        ImmutableArray<ExerciseLine> exercises =
            [.. lesson.Exercises.Select(e => Line(e, standings.GetValueOrDefault(e.Id), mine?.Of(lesson, e) ?? default))];
        TimeSpan? left = mine?.Of(lesson).DueAt - calendar.Now;
        return new LessonLine(lesson, exercises)
        {
            IsPastDue = left < TimeSpan.Zero,
            IsDueSoon = left >= TimeSpan.Zero && left <= Soon && exercises.Any(e => e.IsOpen),
            Opens = calendar.OpensLater(lesson) is { } opens ? calendar.Say(opens) : null,
            Due = mine?.Of(lesson).DueAt is { } due ? calendar.Say(due) : null,
        };
    }

    private ExerciseLine Line(Exercise exercise, Standing? standing, Window window) =>
        new(exercise, StandingKinds.Of(standing), standing?.Attempts ?? 0, ClassWindows.Of(standing, window, calendar.Now));
}
