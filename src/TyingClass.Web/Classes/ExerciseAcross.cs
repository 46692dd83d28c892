using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Storage;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Classes;
using TyingClass.Storage.People;
using TyingClass.Web.Progress;

namespace TyingClass.Web.Classes;

/// <summary>Finds what a class shares in its answers to one exercise.</summary>
public sealed class ExerciseAcross(ICourseSource source, ClassStore store)
{
    /// <returns>Null for an exercise the course does not have.</returns>
    public AcrossView? Of(ClassRoom room, string exerciseId)
    {
        ArgumentNullException.ThrowIfNull(room);
        if (ClassRegister.Columns(source.Current).FirstOrDefault(c => c.Exercise.Id == exerciseId) is not { } column) return null;
        Dictionary<string, Person> people = store.Accounts.OfClass(room.Id).ToDictionary(p => p.Id);
        ImmutableArray<Attempt> attempts = [.. store.Attempts.At(exerciseId).Where(a => people.ContainsKey(a.PersonId))];
        ImmutableArray<AcrossLine> lines = [.. attempts.GroupBy(a => a.PersonId).Select(g => Line(people[g.Key], [.. g.OrderBy(a => a.Number)])).OrderBy(l => l.Person.Label, StringComparer.OrdinalIgnoreCase)];
        ImmutableArray<CountedFinding> misreadings = Counted(attempts, people, a => a.Feedback?.Misreading is { } said ? [said] : []);
        ImmutableArray<CountedFinding> missed = Counted(attempts.Where(a => !a.Counts), people, a => a.Feedback is { } f ? f.Goals.Where(g => !g.Met).Select(g => g.Asked) : []);
        return new AcrossView(column, people.Count, lines, misreadings, Answers(lines), Sentence(misreadings, missed, lines.Length));
    }

    private static AcrossLine Line(Person person, ImmutableArray<Attempt> attempts)
    {
        Attempt? success = attempts.FirstOrDefault(a => a.Counts);
        Attempt shown = success ?? attempts[^1];
        return new AcrossLine(person, StandingKinds.Of(shown), attempts.Length, success?.Number, shown);
    }

    // A student who met the same thing five times counts once.
    private static ImmutableArray<CountedFinding> Counted(IEnumerable<Attempt> attempts, Dictionary<string, Person> people, Func<Attempt, IEnumerable<string>> findings) =>
        [.. attempts.SelectMany(a => findings(a).Distinct().Select(text => (Text: text, Attempt: a)))
            .GroupBy(f => f.Text)
            .Select(g => new CountedFinding(g.Key, g.Count(), [.. g.DistinctBy(f => f.Attempt.PersonId).Select(f => (people[f.Attempt.PersonId], f.Attempt))]))
            .OrderByDescending(f => f.Where.Length).ThenBy(f => f.Text, StringComparer.Ordinal)];

    private static ImmutableArray<GivenAnswer> Answers(IEnumerable<AcrossLine> lines) =>
        [.. lines.GroupBy(l => (Text: l.Shown.AnswerText.Trim(), l.Kind))
            .Select(g => new GivenAnswer(g.Key.Text, g.Key.Kind, [.. g]))
            .OrderByDescending(a => a.Lines.Length).ThenBy(a => a.Lines[0].Person.Label, StringComparer.OrdinalIgnoreCase)];

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
