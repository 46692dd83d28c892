using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Practice;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Practice;
using TyingClass.Web.Figures;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Practice;

/// <summary>One concept and how firmly a person holds it.</summary>
/// <param name="Lesson">The first that teaches it.</param>
/// <param name="HasPractice">False where no fence draws problems of it.</param>
/// <param name="FirstAnswers">What the strength is made from, exercises and problems together.</param>
/// <param name="Due">In words: "due now", "back on Jan 20".</param>
public sealed record ConceptLine(string Concept, Lesson Lesson, ConceptStanding Standing, bool HasPractice, int FirstAnswers, bool IsDue, string Due)
{
    public string Address => "/practice/" + Uri.EscapeDataString(PracticeSet.SlugOf(Concept));

    public bool IsBegun => FirstAnswers > 0;
}

/// <param name="Lines">In the order of the course.</param>
/// <param name="Next">The one most in need of those begun that can be practiced and are due; null when none is.</param>
public sealed record ConceptView(ImmutableArray<ConceptLine> Lines, ConceptLine? Next)
{
    /// <summary>Which comes back first, when none is due.</summary>
    public ConceptLine? Resting => Lines.Where(l => l.HasPractice && l.IsBegun && !l.IsDue).MinBy(l => l.Standing.DueAt);
}

/// <summary>Where the answers stand that tell how firm a concept is.</summary>
public sealed record ConceptStores(AttemptStore Attempts, PracticeStore Practice);

/// <summary>How firmly somebody holds each concept of the course, from first answers to exercises and practice problems.</summary>
public sealed class ConceptBoard(ICourseSource source, PracticeSets sets, ConceptStores store, Visitor visitor, TimeText times, TimeProvider time)
{
    public ConceptView Mine() => Of(visitor.Person?.Id);

    /// <param name="personId">Null for somebody who has answered nothing.</param>
    public ConceptView Of(string? personId)
    {
        Course course = source.Current;
        Dictionary<string, List<ConceptAttempt>> evidence = personId is null ? [] : Evidence(course, personId);
        HashSet<string> practiced = [.. sets.All().Select(s => s.Set.Concept)];
        DateTimeOffset now = time.GetUtcNow();
        ImmutableArray<ConceptLine> lines =
        [
            .. course.Lessons.SelectMany(
                l => l.Concepts.Concat(l.Blocks.OfType<PracticeBlock>().Select(p => p.Practice.Concept)).Select(c => (Concept: c, Lesson: l)))
                .DistinctBy(c => c.Concept)
                .Select(c => Line(c.Concept, c.Lesson, evidence.GetValueOrDefault(c.Concept) ?? [], practiced.Contains(c.Concept), now)),
        ];
        ConceptStanding? next = ConceptSchedule.Next(lines.Where(l => l.HasPractice && l.IsBegun).Select(l => l.Standing), now);
        return new ConceptView(lines, lines.FirstOrDefault(l => l.Standing == next));
    }

    private Dictionary<string, List<ConceptAttempt>> Evidence(Course course, string personId)
    {
        Dictionary<string, List<ConceptAttempt>> all = [];
        Dictionary<string, Exercise> exercises = course.Exercises.ToDictionary(e => e.Id);
        foreach (AttemptNote first in store.Attempts.NotesOf(personId).Where(n => n is { Number: 1, Waits: false }))
        {
            if (!exercises.TryGetValue(first.ExerciseId, out Exercise? exercise)) continue;
            foreach (string concept in ConceptEvidence.Concepts(exercise, first.Counts, first.MisreadConcept)) Add(concept, first.At, first.Counts);
        }

        foreach (PracticeOutcome outcome in store.Practice.FirstOutcomesOf(personId)) Add(outcome.Concept, outcome.At, outcome.Passed);
        return all;

        void Add(string concept, DateTimeOffset at, bool passed)
        {
            if (!all.TryGetValue(concept, out List<ConceptAttempt>? list)) all[concept] = list = [];
            list.Add(new ConceptAttempt(at, passed));
        }
    }

    private ConceptLine Line(string concept, Lesson lesson, List<ConceptAttempt> attempts, bool hasPractice, DateTimeOffset now)
    {
        ConceptStanding standing = ConceptStanding.Of(concept, attempts);
        return new ConceptLine(concept, lesson, standing, hasPractice, attempts.Count, standing.DueAt <= now, DueWords.Of(standing.DueAt, now, times.Zone));
    }
}
