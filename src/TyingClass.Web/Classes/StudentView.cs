using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Practice;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Comments;
using TyingClass.Storage.People;
using TyingClass.Web.Briefs;
using TyingClass.Web.Identity;
using TyingClass.Web.Progress;

namespace TyingClass.Web.Classes;

/// <summary>One exercise on one day.</summary>
/// <param name="Attempt">The last of that day.</param>
public sealed record TimeLineEntry(AttemptNote Attempt, string Title, StandingKind Kind, int Attempts);

/// <param name="Days">Of the time line, the latest first; the entries of a day in their order.</param>
public sealed record StudentView(
    Person Person, ImmutableArray<ConceptStanding> Concepts, ImmutableArray<StuckWhy> Stuck, ImmutableArray<IGrouping<DateOnly, TimeLineEntry>> Days,
    ImmutableArray<Comment> Comments, int Passed, int Exercises, StudentFlies Flies)
{
    /// <summary>Fell short once and has not come back: not stuck yet.</summary>
    public ImmutableArray<StuckLine> Once { get; init; } = [];

    /// <summary>Where whoever sits beside them may begin.</summary>
    public string Begin => StudentWhys.Begin(Stuck, Once, Concepts);

    private const int DaysShown = 10;

    public IEnumerable<IGrouping<DateOnly, TimeLineEntry>> Recent => Days.Take(DaysShown);

    /// <summary>Folded away at first.</summary>
    public ImmutableArray<IGrouping<DateOnly, TimeLineEntry>> Older => [.. Days.Skip(DaysShown)];
}

/// <summary>One student, for whoever helps them.</summary>
public sealed class StudentDesk(ICourseSource source, StudentStores store, StudentWhys whys, ClassAccess access, Visitor visitor)
{
    /// <returns>Null when there is no such person, or not for this visitor.</returns>
    public StudentView? Open(string personId) =>
        access.MaySeeWorkOf(visitor.Person, personId) && store.People.Find(personId) is { } person
            ? Of(person, access.Current?.Zone ?? TimeZoneInfo.Utc)
            : null;

    /// <param name="zone">The class's: which day an attempt was made on.</param>
    public StudentView Of(Person person, TimeZoneInfo zone)
    {
        ArgumentNullException.ThrowIfNull(person);
        Dictionary<string, RegisterColumn> columns = ClassRegister.Columns(source.Current).ToDictionary(c => c.Exercise.Id);
        ImmutableArray<AttemptNote> attempts = store.Attempts.NotesOf(person.Id);
        ImmutableArray<Standing> standings = [.. store.Attempts.StandingsOf(person.Id).Where(s => columns.ContainsKey(s.ExerciseId))];
        ImmutableArray<StuckLine> open = [.. standings.Where(s => s.IsOpen).OrderByDescending(s => s.LastAt)
            .Select(s => new StuckLine(person, columns[s.ExerciseId], s))];
        return new StudentView(
            person,
            Concepts(columns, attempts),
            whys.Of(open.Where(l => l.Standing.Failed >= SitBeside.LeastFailed)),
            Days(columns, attempts, zone),
            store.Comments.To(person.Id),
            standings.Count(s => s.Passed),
            columns.Count,
            whys.FliesOf(person))
        {
            Once = SitBeside.MissedOnce(open),
        };
    }

    private static ImmutableArray<ConceptStanding> Concepts(Dictionary<string, RegisterColumn> columns, ImmutableArray<AttemptNote> attempts)
    {
        ILookup<string, ConceptAttempt> evidence = attempts
            .Where(a => columns.ContainsKey(a.ExerciseId) && !a.Waits)
            .SelectMany(a => ConceptEvidence.Concepts(columns[a.ExerciseId].Exercise, a.Counts, a.MisreadConcept).Select(concept => (concept, a)))
            .ToLookup(e => e.concept, e => new ConceptAttempt(e.a.At, e.a.Counts));
        return [.. columns.Values.SelectMany(c => c.Exercise.Concepts).Distinct().Select(concept => ConceptStanding.Of(concept, evidence[concept]))];
    }

    private static ImmutableArray<IGrouping<DateOnly, TimeLineEntry>> Days(Dictionary<string, RegisterColumn> columns, ImmutableArray<AttemptNote> attempts,
        TimeZoneInfo zone) =>
        [.. attempts
            .GroupBy(a => (a.ExerciseId, Day: DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(a.At, zone).DateTime)))
            .Select(g =>
            new TimeLineEntry(g.Last(), columns.GetValueOrDefault(g.Key.ExerciseId)?.Exercise.Title ?? g.Key.ExerciseId, StandingKinds.Of(g.Last()), g.Count()))
            .GroupBy(e => DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(e.Attempt.At, zone).DateTime))
            .OrderByDescending(g => g.Key)];
}
