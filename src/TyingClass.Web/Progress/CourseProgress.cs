using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Storage;
using TyingClass.Storage.Attempts;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Progress;

public sealed record ExerciseLine(Exercise Exercise, StandingKind Kind, int Attempts);

public sealed record LessonLine(Lesson Lesson, ImmutableArray<ExerciseLine> Exercises)
{
    public int Passed => Exercises.Count(e => e.Kind == StandingKind.Passed);
}

/// <param name="Next">The next thing to do; null when nothing is left.</param>
/// <param name="Started">True once anything was answered.</param>
public sealed record CoursePlan(ImmutableArray<LessonLine> Lessons, (Lesson Lesson, ExerciseLine Line)? Next, bool Started, ImmutableArray<AuthorError> Problems);

/// <summary>Where the visitor is in the course.</summary>
public sealed class CourseProgress(ICourseSource source, ClassStore store, Visitor visitor)
{
    public CoursePlan Now()
    {
        Course course = source.Current;
        Dictionary<string, Standing> standings = Standings();
        ImmutableArray<LessonLine> lessons = [.. course.Lessons.Select(l => new LessonLine(l, [.. l.Exercises.Select(e => Line(e, standings))]))];
        return new CoursePlan(lessons, Next(lessons), standings.Count > 0, course.Problems);
    }

    /// <summary>By exercise, as far as there are any.</summary>
    public Dictionary<string, Standing> Standings() =>
        visitor.Person is { } person ? store.Attempts.StandingsOf(person.Id).ToDictionary(s => s.ExerciseId) : [];

    // The course's own order; what waits for a mark is out of the student's hands.
    private static (Lesson, ExerciseLine)? Next(ImmutableArray<LessonLine> lessons) =>
        lessons.SelectMany(l => l.Exercises.Select(e => (l.Lesson, e)))
            .Where(pair => pair.e.Kind is StandingKind.Trying or StandingKind.Untried)
            .Cast<(Lesson, ExerciseLine)?>().FirstOrDefault();

    private static ExerciseLine Line(Exercise exercise, Dictionary<string, Standing> standings) =>
        new(exercise, StandingKinds.Of(standings.GetValueOrDefault(exercise.Id)), standings.GetValueOrDefault(exercise.Id)?.Attempts ?? 0);
}
