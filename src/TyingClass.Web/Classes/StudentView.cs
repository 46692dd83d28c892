using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Practice;
using TyingClass.Storage;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Comments;
using TyingClass.Storage.People;
using TyingClass.Web.Identity;
using TyingClass.Web.Progress;

namespace TyingClass.Web.Classes;

public sealed record TimeLineEntry(AttemptNote Attempt, string Title, StandingKind Kind);

/// <param name="Days">Of the time line, the latest first; the entries of a day in their order.</param>
public sealed record StudentView(
    Person Person, ImmutableArray<ConceptStanding> Concepts, ImmutableArray<StuckLine> Stuck, ImmutableArray<IGrouping<DateOnly, TimeLineEntry>> Days,
    ImmutableArray<Comment> Comments, int Passed, int Exercises);

/// <summary>One student, for whoever helps them.</summary>
public sealed class StudentDesk(ICourseSource source, ClassStore store, ClassAccess access, Visitor visitor)
{
    /// <returns>Null when there is no such person, or not for this visitor.</returns>
    public StudentView? Open(string personId) =>
        access.MaySeeWorkOf(visitor.Person, personId) && store.People.Find(personId) is { } person ? Of(person, access.Current?.Zone ?? TimeZoneInfo.Utc) : null;

    /// <param name="zone">The class's: which day an attempt was made on.</param>
    public StudentView Of(Person person, TimeZoneInfo zone)
    {
        ArgumentNullException.ThrowIfNull(person);
        Dictionary<string, RegisterColumn> columns = ClassRegister.Columns(source.Current).ToDictionary(c => c.Exercise.Id);
        ImmutableArray<AttemptNote> attempts = store.Attempts.NotesOf(person.Id);
        ImmutableArray<Standing> standings = [.. store.Attempts.StandingsOf(person.Id).Where(s => columns.ContainsKey(s.ExerciseId))];
        return new StudentView(
            person,
            Concepts(columns, attempts),
            [.. standings.Where(s => s is { Passed: false, AwaitsReview: false, Failed: > 0 }).OrderBy(s => s.LastAt).Select(s => new StuckLine(person, columns[s.ExerciseId], s))],
            Days(columns, attempts, zone),
            store.Comments.To(person.Id),
            standings.Count(s => s.Passed),
            columns.Count);
    }

    private static ImmutableArray<ConceptStanding> Concepts(Dictionary<string, RegisterColumn> columns, ImmutableArray<AttemptNote> attempts)
    {
        ILookup<string, ConceptAttempt> evidence = attempts
            .Where(a => columns.ContainsKey(a.ExerciseId) && !a.Waits)
            .SelectMany(a => ConceptEvidence.Concepts(columns[a.ExerciseId].Exercise, a.Counts, a.MisreadConcept).Select(concept => (concept, a)))
            .ToLookup(e => e.concept, e => new ConceptAttempt(e.a.At, e.a.Counts));
        return [.. columns.Values.SelectMany(c => c.Exercise.Concepts).Distinct().Select(concept => ConceptStanding.Of(concept, evidence[concept]))];
    }

    private static ImmutableArray<IGrouping<DateOnly, TimeLineEntry>> Days(Dictionary<string, RegisterColumn> columns, ImmutableArray<AttemptNote> attempts, TimeZoneInfo zone) =>
        [.. attempts
            .Select(a => new TimeLineEntry(a, columns.GetValueOrDefault(a.ExerciseId)?.Exercise.Title ?? a.ExerciseId, StandingKinds.Of(a)))
            .GroupBy(e => DateOnly.FromDateTime(TimeZoneInfo.ConvertTime(e.Attempt.At, zone).DateTime))
            .OrderByDescending(g => g.Key)];
}
