using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Storage;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.People;

namespace TyingClass.Web.Progress;

public sealed record RegisterCell(Exercise Exercise, StandingKind Kind, int Attempts);

public sealed record RegisterRow(Person Person, ImmutableArray<RegisterCell> Cells)
{
    public int Passed => Cells.Count(c => c.Kind == StandingKind.Passed);
}

public sealed record RegisterView(ImmutableArray<Lesson> Lessons, ImmutableArray<RegisterRow> Rows);

/// <param name="Exercise">Null when it has left the course since.</param>
public sealed record CellView(Person Person, string ExerciseId, Exercise? Exercise, ImmutableArray<Attempt> Attempts);

/// <summary>Everyone's standing with everything, for the instructor.</summary>
public sealed class ClassRegister(ICourseSource source, ClassStore store)
{
    public RegisterView All()
    {
        Course course = source.Current;
        Dictionary<(string, string), Standing> standings = store.Attempts.AllStandings().ToDictionary(s => (s.PersonId, s.ExerciseId));
        HashSet<string> atWork = [.. standings.Values.Select(s => s.PersonId)];
        // A browser that gave no name and answered nothing is nobody yet.
        ImmutableArray<RegisterRow> rows = [.. store.People.All()
            .Where(p => p.Role != Role.Instructor && (p.Name is not null || atWork.Contains(p.Id)))
            .OrderBy(p => p.Name is null).ThenBy(p => p.Label, StringComparer.OrdinalIgnoreCase)
            .Select(p => new RegisterRow(p, [.. course.Exercises.Select(e => Cell(e, standings.GetValueOrDefault((p.Id, e.Id))))]))];
        return new RegisterView([.. course.Lessons.Where(l => l.Exercises.Any())], rows);
    }

    /// <returns>Null when there is no such person or nothing to show.</returns>
    public CellView? Cell(string personId, string exerciseId)
    {
        if (store.People.Find(personId) is not { } person) return null;
        bool known = source.Current.TryFindExercise(exerciseId, out _, out Exercise exercise);
        ImmutableArray<Attempt> attempts = store.Attempts.Of(personId, exerciseId);
        return known || attempts.Length > 0 ? new CellView(person, exerciseId, known ? exercise : null, attempts) : null;
    }

    private static RegisterCell Cell(Exercise exercise, Standing? standing) => new(exercise, StandingKinds.Of(standing), standing?.Attempts ?? 0);
}
