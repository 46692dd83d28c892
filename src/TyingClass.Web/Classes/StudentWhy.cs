using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Practice;
using TyingClass.Recipes.Text;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.BenchLog;
using TyingClass.Storage.Comments;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.People;
using TyingClass.Storage.Reviews;
using TyingClass.Web.BenchLog;
using TyingClass.Web.Briefs;
using TyingClass.Web.Patterns;

namespace TyingClass.Web.Classes;

/// <summary>What somebody is stuck on, with what is known of why.</summary>
/// <param name="Why">What the last answer misread, or else what the feedback said first of it; null where nothing is known of it.</param>
/// <param name="Tried">That answer, in a line.</param>
public sealed record StuckWhy(StuckLine Line, string? Why, string? Tried)
{
    /// <summary>The goal it misses, where no misreading is known.</summary>
    public string? Missed => SitBeside.Missed(Line);
}

/// <param name="Review">Its latest round: a pattern nobody was asked about is its owner's own.</param>
public sealed record ShownPattern(Pattern Pattern, Review Review);

/// <param name="Way">As computed; null when nobody looked which way up.</param>
public sealed record LoggedDrop(LogEntry Entry, bool? Way);

/// <summary>The tied flies of one student, as far as others were shown them.</summary>
public sealed record StudentFlies(ImmutableArray<ShownPattern> Patterns, ImmutableArray<LoggedDrop> Drops);

/// <summary>What the page of a student reads.</summary>
public sealed record StudentStores(
    PersonStore People, AttemptStore Attempts, CommentStore Comments, PatternStore Patterns, ReviewStore Reviews, BenchLogStore BenchLog);

/// <summary>Why somebody is stuck, and where whoever sits beside them may begin.</summary>
public sealed class StudentWhys(StudentStores store)
{
    private const int MostTold = 12;
    private const int MostChanges = 3;
    private const int MostLetters = 160;

    /// <param name="stuck">The last try first.</param>
    public ImmutableArray<StuckWhy> Of(IEnumerable<StuckLine> stuck)
    {
        ArgumentNullException.ThrowIfNull(stuck);
        return [.. stuck.Take(MostTold).Select(l => (Line: l, Last: Last(l)))
            .Select(l => new StuckWhy(l.Line, SitBeside.Cause(l.Line) ?? l.Last?.Feedback?.First, l.Last is { } last ? Tried(l.Line, last) : null))];
    }

    public StudentFlies FliesOf(Person person)
    {
        ArgumentNullException.ThrowIfNull(person);
        return new StudentFlies(
            [.. store.Patterns.Of(person.Id).Select(p => (Pattern: p, Review: store.Reviews.Of(p.Id).LastOrDefault(r => r.State != ReviewState.Withdrawn)))
                .Where(p => p.Review is not null).Select(p => new ShownPattern(p.Pattern, p.Review!))],
            [.. store.BenchLog.Of(person.Id).Select(e => new LoggedDrop(e, Agreement.WayAgrees(e)))]);
    }

    /// <summary>One sentence: the concept that most of it turns on, and the exercise to open.</summary>
    /// <param name="once">What was missed once and not tried again, the last first.</param>
    /// <param name="concepts">How firm each is.</param>
    public static string Begin(ImmutableArray<StuckWhy> stuck, ImmutableArray<StuckLine> once, ImmutableArray<ConceptStanding> concepts)
    {
        if (stuck.IsEmpty)
        {
            if (once is [var latest, ..]) return $"Nothing is stuck. Missed once and left: begin at “{latest.Column.Exercise.Title}”.";
            return concepts.Where(c => c.DueAt is not null).MinBy(c => c.Strength) is { } least
                ? $"Nothing is stuck. Least firm is {least.Concept} ({least.Words}): ask for an example of it."
                : "Nothing was begun yet: open the first lesson together.";
        }

        var turnsOn = stuck.GroupBy(s => SitBeside.ConceptOf(s.Line)).MaxBy(g => g.Count())!;
        StuckWhy first = turnsOn.First();
        string many = turnsOn.Count() == stuck.Length ? stuck.Length == 1 ? "The one thing open turns" : $"All {stuck.Length} turn"
            : $"{turnsOn.Count()} of {stuck.Length} turn";
        string where = $"begin at “{first.Line.Column.Exercise.Title}”";
        return $"{many} on {turnsOn.Key}: {where}{(first.Tried is null ? "" : ", and ask why the last try should work")}.";
    }

    private Attempt? Last(StuckLine line) => line.Standing.LastFailed is { } last ? store.Attempts.Find(last.AttemptId) : null;

    private static string? Tried(StuckLine line, Attempt attempt)
    {
        Exercise exercise = line.Column.Exercise;
        if (!exercise.Kind.AnswerIsRecipe) return Cut(exercise.Kind.Shown(exercise, attempt.AnswerText));
        if (RecipeParser.Parse(attempt.AnswerText).Value is not { } answer) return null;
        if (exercise.RecipeText is not { } given || RecipeParser.Parse(given).Value is not { } from) return answer.Name;
        string[] changes = [.. ChangeList.Between(from, answer).Take(MostChanges).Select(c => RevisionWords.Say(c, UnitSystem.Metric))];
        return changes.Length == 0 ? "the fly as it was given" : string.Join("; ", changes);
    }

    private static string Cut(string text)
    {
        string line = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return line.Length <= MostLetters ? line : line[..(MostLetters - 1)] + "…";
    }
}
