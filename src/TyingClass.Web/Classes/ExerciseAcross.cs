using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Classes;
using TyingClass.Storage.People;
using TyingClass.Web.Progress;

namespace TyingClass.Web.Classes;

/// <summary>Finds what the students of a class share in their answers to one exercise; mentors are not counted.</summary>
public sealed class ExerciseAcross(ICourseSource source, AccountStore accountStore, AttemptStore attemptStore)
{
    /// <returns>Null for an exercise the course does not have.</returns>
    /// <param name="part">Of the answers, from 1; one that is not there gives the nearest.</param>
    public AcrossView? Of(ClassRoom room, string exerciseId, int part = 1)
    {
        ArgumentNullException.ThrowIfNull(room);
        if (ClassRegister.Columns(source.Current).FirstOrDefault(c => c.Exercise.Id == exerciseId) is not { } column) return null;
        Dictionary<string, Person> people = accountStore.OfClass(room.Id).Where(p => p.Role == Role.Student).ToDictionary(p => p.Id);
        ImmutableArray<AttemptNote> attempts = [.. attemptStore.NotesAt(exerciseId).Where(a => people.ContainsKey(a.PersonId))];
        ImmutableArray<AcrossLine> lines = [
            .. attempts.GroupBy(a => a.PersonId).Select(g => Line(people[g.Key], [.. g.OrderBy(a => a.Number)])).OrderBy(l => l.Person.Label,
                StringComparer.OrdinalIgnoreCase)];
        ImmutableArray<CountedFinding> misreadings = Counted(attempts, people, a => a.Misreading is { } said ? [said] : []);
        ImmutableArray<CountedFinding> missed = Counted(attempts.Where(a => !a.Counts), people, a => a.Missed);
        ImmutableArray<ImmutableArray<AcrossLine>> answers = Alike(lines);
        int parts = Math.Max(1, (answers.Length + AcrossView.AnswersAPart - 1) / AcrossView.AnswersAPart);
        part = Math.Clamp(part, 1, parts);
        ImmutableArray<GivenAnswer> shown =
            [.. answers.Skip((part - 1) * AcrossView.AnswersAPart).Take(AcrossView.AnswersAPart).Select(Given).OfType<GivenAnswer>()];
        return new AcrossView(column, people.Count, lines, misreadings, shown, part, parts, Sentence(misreadings, missed, lines.Length));
    }

    private static AcrossLine Line(Person person, ImmutableArray<AttemptNote> attempts)
    {
        AttemptNote? success = attempts.FirstOrDefault(a => a.Counts);
        AttemptNote shown = success ?? attempts[^1];
        return new AcrossLine(person, StandingKinds.Of(shown), attempts.Length, success?.Number, shown);
    }

    // A student who met the same thing five times counts once.
    private static ImmutableArray<CountedFinding> Counted(IEnumerable<AttemptNote> attempts, Dictionary<string, Person> people,
        Func<AttemptNote, IEnumerable<string>> findings) =>
        [.. attempts.SelectMany(a => findings(a).Distinct().Select(text => (Text: text, Attempt: a)))
            .GroupBy(f => f.Text)
            .Select(g => new CountedFinding(g.Key, g.Count(), [.. g.DistinctBy(f => f.Attempt.PersonId).Select(f => (people[f.Attempt.PersonId], f.Attempt))]))
            .OrderByDescending(f => f.Where.Length).ThenBy(f => f.Text, StringComparer.Ordinal)];

    private static ImmutableArray<ImmutableArray<AcrossLine>> Alike(IEnumerable<AcrossLine> lines) =>
        [.. lines.GroupBy(l => (l.Shown.AnswerKey, l.Kind)).Select(g => g.ToImmutableArray())
            .OrderByDescending(g => g.Length).ThenBy(g => g[0].Person.Label, StringComparer.OrdinalIgnoreCase)];

    private GivenAnswer? Given(ImmutableArray<AcrossLine> lines) =>
        attemptStore.Find(lines[0].Shown.Id) is { } sample ? new GivenAnswer(sample, lines[0].Kind, lines) : null;

    private static string? Sentence(ImmutableArray<CountedFinding> misreadings, ImmutableArray<CountedFinding> missed, int tried) =>
        (misreadings.FirstOrDefault(), missed.FirstOrDefault()) switch
        {
            ({ } read, var goal) when goal is null || read.Where.Length >= goal.Where.Length =>
                $"{Share(read.Where.Length, tried)} answered in a way that shows the same misreading: “{read.Text}”",
            (_, { } goal) => $"{Share(goal.Where.Length, tried)} missed the same goal at least once: {goal.Text}.",
            _ => null,
        };

    private static string Share(int count, int tried) =>
        FormattableString.Invariant($"{count} of the {tried} who tried it");
}
