using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.People;
using TyingClass.Web.Classes;

namespace TyingClass.Web.Briefs;

/// <summary>One thing that several of a class hold to be so, and is not.</summary>
/// <param name="Key">What it is told apart by within its exercise.</param>
/// <param name="Said">What they were told; null for a wrong vote that nobody foresaw.</param>
/// <param name="Vote">The choice they took; null where the answer was no choice.</param>
/// <param name="Holders">Hold it now: their last answer shows it and nothing has passed since. The latest first.</param>
/// <param name="Tried">Everyone of the class who answered the question.</param>
/// <param name="Sample">An attempt that shows it; null where it was only voted.</param>
public sealed record Belief(
    RegisterColumn Column, string Key, string? Said, string? Vote, string Concept, ImmutableArray<Person> Holders, int Tried, FailedTry? Sample)
{
    public Exercise Exercise => Column.Exercise;
}

/// <summary>Finds what a class believes.</summary>
public static class Beliefs
{
    /// <summary>By how many hold one now; a belief of one is none of the class's.</summary>
    public static ImmutableArray<Belief> Of(ClassPulse pulse)
    {
        ArgumentNullException.ThrowIfNull(pulse);
        ILookup<string, StuckLine> byExercise = pulse.Lines.ToLookup(l => l.Column.Exercise.Id);
        ILookup<string, WrongVote> votes = pulse.Votes.ToLookup(v => v.ExerciseId);
        return
        [
            .. pulse.Columns.SelectMany(c => Of(c, [.. byExercise[c.Exercise.Id]], [.. votes[c.Exercise.Id]]))
                .Where(b => b.Holders.Length > 1)
                .OrderByDescending(b => b.Holders.Length).ThenByDescending(b => (double)b.Holders.Length / b.Tried),
        ];
    }

    /// <summary>What an answer that fell short shows: the misreading it matched, or the vote itself; null where it is neither.</summary>
    public static string? KeyOf(Exercise exercise, FailedTry failed)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(failed);
        return failed.Misreading ?? (exercise.Choices.IsEmpty ? null : failed.AnswerKey);
    }

    private static IEnumerable<Belief> Of(RegisterColumn column, StuckLine[] lines, WrongVote[] votes)
    {
        Exercise exercise = column.Exercise;
        Dictionary<string, StuckLine> byPerson = lines.ToDictionary(l => l.Person.Id);
        var held = lines.Where(l => l.Standing is { IsOpen: true, LastFailed: not null })
            .Select(l => (Key: KeyOf(exercise, l.Standing.LastFailed!), l.Person, l.Standing.LastFailed!.At, Failed: (FailedTry?)l.Standing.LastFailed))
            .Concat(votes.Where(v => StillHeld(v, byPerson.GetValueOrDefault(v.Person.Id)))
                .Select(v => (Key: (string?)KeyOf(exercise, v.Choice), v.Person, v.At, Failed: (FailedTry?)null)))
            .Where(h => h.Key is not null);
        int tried = lines.Select(l => l.Person.Id).Union(votes.Select(v => v.Person.Id)).Count();
        foreach (var group in held.GroupBy(h => h.Key!))
        {
            FailedTry? sample = group.OrderByDescending(h => h.At).Select(h => h.Failed).FirstOrDefault(f => f is not null);
            string? said = exercise.Misreadings.FirstOrDefault(m => m.Say == group.Key)?.Say ?? sample?.Misreading;
            string? vote = exercise.Choices.FirstOrDefault(c => KeyOf(exercise, c) == group.Key);
            yield return new Belief(
                column, group.Key, said, vote, sample?.MisreadConcept ?? exercise.Concepts.FirstOrDefault() ?? "",
                [.. group.OrderByDescending(h => h.At).Select(h => h.Person).DistinctBy(p => p.Id)], tried, sample);
        }
    }

    // Whoever answered the exercise since has said something newer.
    private static bool StillHeld(WrongVote vote, StuckLine? line) => line is null || line.Standing.LastAt < vote.At;

    private static string KeyOf(Exercise exercise, string choice) =>
        exercise.Misreadings.FirstOrDefault(m => m.When == $"answer is \"{choice}\"")?.Say ?? AttemptNote.KeyOf(choice);
}
