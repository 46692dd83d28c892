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

    public int Passed => Exercises.Count(e => e.Kind == StandingKind.Passed);

    public bool IsBegun => Exercises.Any(e => e.Kind != StandingKind.Untried);
}

/// <param name="Next">The next thing to do; null when nothing is left.</param>
/// <param name="Started">True once anything was answered.</param>
public sealed record CoursePlan(ImmutableArray<LessonLine> Lessons, (LessonLine Lesson, ExerciseLine Line)? Next, bool Started,
    ImmutableArray<AuthorError> Problems)
{
    /// <summary>Handed in and not read yet, in the course's order.</summary>
    public ImmutableArray<ExerciseLine> Waiting => [.. Lessons.SelectMany(l => l.Exercises).Where(e => e.Kind == StandingKind.Waiting)];
}

/// <summary>Where the visitor is in the course.</summary>
public sealed class CourseProgress(ICourseSource source, AttemptStore store, Visitor visitor, ClassCalendar calendar)
{
    public CoursePlan Now()
    {
        Course course = source.Current;
        Dictionary<string, Standing> standings = Standings();
        ImmutableArray<LessonLine> lessons = [.. course.Lessons.Select(l => Line(l, standings))];
        return new CoursePlan(lessons, Next(lessons), standings.Count > 0, course.Problems);
    }

    /// <summary>By exercise, as far as there are any.</summary>
    public Dictionary<string, Standing> Standings() =>
        visitor.Person is { } person ? store.StandingsOf(person.Id).ToDictionary(s => s.ExerciseId) : [];

    // The course's own order.
    private static (LessonLine, ExerciseLine)? Next(ImmutableArray<LessonLine> lessons) =>
        lessons.Where(l => l.Opens is null).SelectMany(l => l.Exercises.Select(e => (l, e)))
            .Where(pair => pair.e.IsOpen)
            .Cast<(LessonLine, ExerciseLine)?>().FirstOrDefault();

    private LessonLine Line(Lesson lesson, Dictionary<string, Standing> standings)
    {
        ClassWindows? mine = calendar.Mine;
        return new LessonLine(lesson, [.. lesson.Exercises.Select(e => Line(e, standings.GetValueOrDefault(e.Id), mine?.Of(lesson, e) ?? default))])
        {
            Opens = calendar.OpensLater(lesson) is { } opens ? calendar.Say(opens) : null,
            Due = mine?.Of(lesson).DueAt is { } due ? calendar.Say(due) : null,
        };
    }

    private ExerciseLine Line(Exercise exercise, Standing? standing, Window window) =>
        new(exercise, StandingKinds.Of(standing), standing?.Attempts ?? 0, ClassWindows.Of(standing, window, calendar.Now));
}
