using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Kinds;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Comments;
using TyingClass.Storage.Editing;
using TyingClass.Storage.Evenings;
using TyingClass.Storage.People;
using TyingClass.Web.Calendar;
using TyingClass.Web.Classes;
using TyingClass.Web.Evenings;
using TyingClass.Web.Identity;
using TyingClass.Web.Preferences;

namespace TyingClass.Web.Briefs;

/// <summary>What a brief reads and changes.</summary>
public sealed record BriefStores(AttemptStore Attempts, EveningStore Evenings, CommentStore Comments);

/// <summary>The brief of the class that is open, and what its buttons do.</summary>
public sealed class BriefDesk(ICourseSource source, BriefStores store, PulseReader pulse, EveningBook book, ClassAccess access, Visitor visitor, ReaderUnits units,
    TimeProvider time)
{
    public const int BeliefsShown = 4;
    public const int GroupsShown = 5;

    // An evening goes on being tonight's for a while after it has begun.
    private static readonly TimeSpan EveningLasts = TimeSpan.FromHours(3);

    /// <summary>Null for someone without a class.</summary>
    public Brief? Open()
    {
        if (access.Current is not { } room) return null;
        ClassPulse now = pulse.Of(room);
        EveningsNow when = When(room);
        ImmutableArray<Belief> beliefs = Beliefs.Of(now);
        ImmutableArray<StuckGroup> groups = SitBeside.Of(now.Lines);
        return new Brief(
            room, now.Students.Length, when, [.. beliefs.Take(BeliefsShown).Select(Line)], beliefs.Length, [.. groups.Take(GroupsShown)],
            groups.SelectMany(g => g.People).DistinctBy(p => p.Person.Id).Count(),
            ConceptMoves.Of(now, when.LastAt, when.Next ?? when.Last, time.GetUtcNow()),
            when.Next is { } next ? NextEvening.Of(book, next, units.Now) : null);
    }

    /// <summary>Every group, and those who missed once.</summary>
    public (ImmutableArray<StuckGroup> Groups, ImmutableArray<StuckLine> Once) Stuck()
    {
        if (access.Current is not { } room) return ([], []);
        ClassPulse now = pulse.Of(room);
        return (SitBeside.Of(now.Lines), SitBeside.MissedOnce(now.Lines));
    }

    /// <summary>Wrong answers to the exercises of one evening that several share.</summary>
    public ImmutableArray<BeliefLine> OfEvening(EveningView evening)
    {
        ArgumentNullException.ThrowIfNull(evening);
        return [.. Beliefs.Of(pulse.Of(evening.Room)).Where(b => b.Column.Lesson.Evening == evening.Number).Take(BeliefsShown).Select(Line)];
    }

    /// <returns>Null when nobody holds it any more.</returns>
    public BeliefLine? Find(string? exerciseId, string? key) => access.Current is { } room
        && Beliefs.Of(pulse.Of(room)).FirstOrDefault(b => b.Exercise.Id == exerciseId && b.Key == key) is { } found ? Line(found) : null;

    /// <summary>Writes to everyone who holds a belief where to practice it.</summary>
    /// <returns>How many; 0 when nobody holds it any more.</returns>
    public int GivePractice(string? exerciseId, string? key)
    {
        if (visitor.Person is not { } me || Find(exerciseId, key) is not { Practice: { } address } line) return 0;
        string text = $"Before the next evening, please do three problems of “{line.Belief.Concept}”: {address} . They are about what “{line.Belief.Exercise.Title}” "
            + "asked.";
        foreach (Person holder in line.Belief.Holders) store.Comments.Add(holder.Id, me.Id, me.Label, line.Belief.Exercise.Id, text);
        return line.Belief.Holders.Length;
    }

    /// <summary>Writes the demonstration into the plan of the next evening.</summary>
    /// <returns>The evening's number; null when there is none, or nobody holds the belief any more.</returns>
    public int? Plan(string? exerciseId, string? key)
    {
        if (access.Current is not { } room || When(room).Next is not { } number || Find(exerciseId, key) is not { } line) return null;
        EveningPlan plan = store.Evenings.Find(room.Id, number);
        string words = $"* {line.Show.Words} ({line.Belief.Holders.Length} of {line.Belief.Tried} believe otherwise: *{line.Belief.Exercise.Title}*.)";
        string all = plan.Demonstrations.Length == 0 ? words : $"{plan.Demonstrations.TrimEnd()}\n{words}";
        if (plan.Demonstrations.Contains(words, StringComparison.Ordinal)) return number;
        if (all.Length > EveningPlan.MostNoteLength) return null;
        EditOutcome<EveningPlan> outcome = store.Evenings.Save(plan with { Demonstrations = all });
        return outcome.Saved ? number : null;
    }

    /// <summary>By the dates of the evenings; without dates the first is the next.</summary>
    public EveningsNow When(ClassRoom room)
    {
        ArgumentNullException.ThrowIfNull(room);
        ClassClock clock = new(room);
        DateTimeOffset now = time.GetUtcNow();
        ImmutableArray<EveningLine> all = book.All();
        var dated = all.Where(e => e.Plan.StartsLocal is not null).Select(e => (e.Number, At: clock.Opening(e.Plan.StartsLocal!.Value))).OrderBy(e => e.At).ToList();
        var held = dated.Where(e => e.At + EveningLasts <= now).ToList();
        int? next = dated.Count == 0 ? all.Select(e => (int?)e.Number).FirstOrDefault()
            : dated.Where(e => e.At + EveningLasts > now).Select(e => (int?)e.Number).FirstOrDefault();
        return held.Count == 0 ? new EveningsNow(null, null, next) : new EveningsNow(held[^1].Number, held[^1].At, next);
    }

    private BeliefLine Line(Belief belief)
    {
        Exercise exercise = belief.Exercise;
        string? text = belief.Sample is { } sample ? store.Attempts.Find(sample.AttemptId)?.AnswerText : null;
        bool isFly = exercise.Kind.AnswerIsRecipe;
        return new BeliefLine(
            belief, isFly || text is null ? null : exercise.Kind.Shown(exercise, text), isFly ? text : null,
            Demonstration.Of(exercise, isFly ? text : null), ToRoom(belief), PracticeOf(belief.Concept));
    }

    // The very question; else one of the same concept, of the same lesson before any other.
    private Exercise? ToRoom(Belief belief) => belief.Exercise.Kind is IPutToRoom ? belief.Exercise
        : belief.Column.Lesson.Exercises.Concat(source.Current.Exercises).FirstOrDefault(e => e.Kind is IPutToRoom && e.Concepts.Contains(belief.Concept));

    private string? PracticeOf(string concept) =>
        source.Current.Lessons.SelectMany(l => l.Blocks.OfType<PracticeBlock>()).FirstOrDefault(b => b.Practice.Concept == concept) is { } block
            ? "/practice/" + block.Practice.Slug : null;
}
