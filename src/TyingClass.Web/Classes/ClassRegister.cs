using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Classes;
using TyingClass.Storage.People;
using TyingClass.Web.Briefs;
using TyingClass.Web.Calendar;
using TyingClass.Web.Progress;

namespace TyingClass.Web.Classes;

/// <summary>A whole class's standing with everything, for its instructor.</summary>
public sealed class ClassRegister(ICourseSource source, AccountStore accountStore, AttemptStore attemptStore, ClassCalendar calendar)
{
    /// <summary>What the columns are made of.</summary>
    public Course Course => source.Current;

    /// <summary>Late and overdue are marked against the dates of the class.</summary>
    public RegisterView Of(ClassRoom room, RegisterFilter filter)
    {
        ArgumentNullException.ThrowIfNull(room);
        ArgumentNullException.ThrowIfNull(filter);
        Course course = source.Current;
        ImmutableArray<Person> people = [.. accountStore.OfClass(room.Id).Where(p => filter.WithMentors || p.Role == Role.Student)];
        ILookup<string, Standing> standings = attemptStore.StandingsOf(people.Select(p => p.Id)).ToLookup(s => s.PersonId);
        ImmutableArray<RegisterColumn> columns = [.. Columns(course).Where(c => filter.Fits(c.Lesson, c.Exercise))];
        ClassWindows dates = calendar.Of(room);
        ImmutableArray<Window> windows = [.. columns.Select(c => dates.Of(c.Lesson, c.Exercise))];
        DateTimeOffset now = calendar.Now;
        ImmutableArray<RegisterRow> rows = [.. people.Select(p => Row(p, columns, windows, standings[p.Id], now))];
        if (filter.StuckOnly) (columns, rows) = OnlyStuck(columns, rows);
        return new RegisterView(room, filter, columns, [.. Sorted(rows, filter.Sort)], people.Length, Evenings(course), Concepts(course));
    }

    /// <summary>What waits for a person to read it, the longest wait first.</summary>
    /// <param name="reader">Nobody reads their own work, and a mentor only that of students.</param>
    public ImmutableArray<StuckLine> WaitingIn(ClassRoom room, Person reader)
    {
        ArgumentNullException.ThrowIfNull(room);
        ArgumentNullException.ThrowIfNull(reader);
        bool readsMentors = ClassAccess.RightIn(reader, room) >= ClassRight.Everything;
        return Lines(room, people => people.Where(p => p.Id != reader.Id && (readsMentors || p.Role == Role.Student)), s => s.AwaitsReview);
    }

    /// <summary>The students by name.</summary>
    public ImmutableArray<NameLine> NamesIn(ClassRoom room)
    {
        ArgumentNullException.ThrowIfNull(room);
        ImmutableArray<Person> students = [.. accountStore.OfClass(room.Id).Where(p => p.Role == Role.Student)];
        ILookup<string, Standing> standings = attemptStore.StandingsOf(students.Select(p => p.Id)).ToLookup(s => s.PersonId);
        return [.. students.Select(p => new NameLine(
            p, standings[p.Id].Count(s => s.Passed), standings[p.Id].Count(s => s.IsOpen && s.Failed >= SitBeside.LeastFailed),
            standings[p.Id].Count(s => s.AwaitsReview)))];
    }

    public static IEnumerable<RegisterColumn> Columns(Course course)
    {
        ArgumentNullException.ThrowIfNull(course);
        return course.Lessons.SelectMany(lesson => lesson.Exercises.Select((exercise, i) => new RegisterColumn(lesson, exercise, i + 1)));
    }

    private ImmutableArray<StuckLine> Lines(ClassRoom room, Func<IEnumerable<Person>, IEnumerable<Person>> whose, Func<Standing, bool> which)
    {
        Dictionary<string, Person> people = whose(accountStore.OfClass(room.Id)).ToDictionary(p => p.Id);
        Dictionary<string, RegisterColumn> exercises = Columns(source.Current).ToDictionary(c => c.Exercise.Id);
        return [.. attemptStore.StandingsOf(people.Keys)
            .Where(s => which(s) && exercises.ContainsKey(s.ExerciseId))
            .OrderBy(s => s.LastAt)
            .Select(s => new StuckLine(people[s.PersonId], exercises[s.ExerciseId], s))];
    }

    private static RegisterRow Row(Person person, ImmutableArray<RegisterColumn> columns, ImmutableArray<Window> windows, IEnumerable<Standing> standings,
        DateTimeOffset now)
    {
        Dictionary<string, Standing> byExercise = standings.ToDictionary(s => s.ExerciseId);
        return new RegisterRow(person, [.. columns.Select((c, i) => Cell(person, byExercise.GetValueOrDefault(c.Exercise.Id), windows[i], now))]);
    }

    private static RegisterCell Cell(Person person, Standing? standing, Window window, DateTimeOffset now)
    {
        StandingKind kind = StandingKinds.Of(standing);
        // A mentor works exercises for pleasure: nothing of theirs is due.
        Lateness lateness = person.Role == Role.Student ? ClassWindows.Of(standing, window, now) : Lateness.None;
        return new RegisterCell(kind, standing?.Attempts ?? 0, kind == StandingKind.Trying && standing!.Failed > 0, lateness);
    }

    private static (ImmutableArray<RegisterColumn>, ImmutableArray<RegisterRow>) OnlyStuck(ImmutableArray<RegisterColumn> columns,
        ImmutableArray<RegisterRow> rows)
    {
        int[] kept = [.. Enumerable.Range(0, columns.Length).Where(i => rows.Any(r => r.Cells[i].IsStuck))];
        return ([.. kept.Select(i => columns[i])], [.. rows.Where(r => r.Stuck > 0).Select(r => r with { Cells = [.. kept.Select(i => r.Cells[i])] })]);
    }

    private static IEnumerable<RegisterRow> Sorted(IEnumerable<RegisterRow> rows, RegisterSort sort) => sort switch
    {
        RegisterSort.Passed => rows.OrderByDescending(r => r.Passed),
        RegisterSort.Stuck => rows.OrderByDescending(r => r.Stuck),
        RegisterSort.Away => rows.OrderBy(r => r.Person.HasBeenHere).ThenBy(r => r.Person.LastSeenAt),
        _ => rows,
    };

    private static ImmutableArray<int> Evenings(Course course) => [.. course.Lessons.Select(l => l.Evening).OfType<int>().Distinct().Order()];

    private static ImmutableArray<string> Concepts(Course course) =>
        [.. course.Exercises.SelectMany(e => e.Concepts).Distinct().Order(StringComparer.OrdinalIgnoreCase)];
}

/// <summary>One student who waits with one exercise since <see cref="Standing.LastAt"/>.</summary>
public sealed record StuckLine(Person Person, RegisterColumn Column, Standing Standing);

/// <summary>One student of a list of names; counts are of exercises.</summary>
public sealed record NameLine(Person Person, int Passed, int Stuck, int Waiting);
