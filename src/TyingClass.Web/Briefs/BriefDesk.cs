using System.Collections.Immutable;
using TyingClass.Storage.Comments;
using TyingClass.Storage.Editing;
using TyingClass.Storage.Evenings;
using TyingClass.Storage.People;
using TyingClass.Web.Classes;
using TyingClass.Web.Evenings;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Briefs;

/// <summary>What a brief reads and changes.</summary>
public sealed record BriefStores(EveningStore Evenings, CommentStore Comments, RoomQuestionStore Questions);

/// <summary>The brief of the class that is open, and what its buttons do.</summary>
public sealed class BriefDesk(BriefStores store, PulseReader pulse, BriefLines lines, EveningDays days, ClassAccess access, Visitor visitor)
{
    private const int BeliefsShown = 4;
    private const int GroupsShown = 5;

    /// <summary>Null for someone without a class.</summary>
    public Brief? Open()
    {
        if (access.Current is not { } room) return null;
        ClassPulse now = pulse.Of(room);
        EveningsNow when = days.Of(room);
        ImmutableArray<Belief> beliefs = Beliefs.Of(now);
        ImmutableArray<StuckGroup> groups = SitBeside.Of(now.Lines);
        return new Brief(
            room, now.Students.Length, when, [.. beliefs.Take(BeliefsShown).Select(lines.Of)], beliefs.Length,
            [.. groups.Take(GroupsShown).Select(lines.WithWhy)],
            groups.SelectMany(g => g.People).DistinctBy(p => p.Person.Id).Count(),
            ConceptMoves.Of(now, when.LastAt, when.Next ?? when.Last, days.Now),
            when.Next is { } next ? days.Prepare(next) : null);
    }

    /// <summary>Evenings that are over, to look back on.</summary>
    public ImmutableArray<HeldEvening> Held => access.Current is { } room ? days.Held(room) : [];

    /// <returns>Null for an evening that is not over, or that nobody gave a date.</returns>
    public LookBack? LookBack(int number)
    {
        if (access.Current is not { } room || days.Held(room).FirstOrDefault(e => e.Number == number) is not { } evening) return null;
        ClassPulse now = pulse.Of(room);
        IEnumerable<StuckLine> itsLines = now.Lines.Where(l => l.Column.Lesson.Evening == number);
        return new LookBack(
            evening, Asked(room.Id, evening), HeldOf(now, number), [.. SitBeside.Of(itsLines).Take(GroupsShown).Select(lines.WithWhy)],
            ConceptMoves.Of(now, evening.At, number, evening.Until ?? days.Now));
    }

    private ImmutableArray<AskedThen> Asked(string classId, HeldEvening evening) =>
    [
        .. store.Questions.OfClass(classId)
            .Where(q => q.Answer is not null && q.OpenedAt >= evening.At && (evening.Until is not { } until || q.OpenedAt < until))
            .Select(q => Asked(q, store.Questions.Tally(q.Id))),
    ];

    private static AskedThen Asked(RoomQuestion question, RoomTally tally)
    {
        var counts = question.Choices.Select((choice, i) => (Choice: choice, Count: tally.Counts[i])).ToArray();
        (string Choice, int Count) wrong = counts.Where(c => c.Choice != question.Answer!.Choice).OrderByDescending(c => c.Count).FirstOrDefault();
        return new AskedThen(
            question.Title, question.Answer!.Choice, counts.Where(c => c.Choice == question.Answer.Choice).Sum(c => c.Count), tally.Total,
            wrong.Count > 0 ? wrong.Choice : null, wrong.Count);
    }

    /// <summary>Every group, and those who missed once.</summary>
    public (ImmutableArray<StuckGroup> Groups, ImmutableArray<StuckLine> Once) Stuck()
    {
        if (access.Current is not { } room) return ([], []);
        ClassPulse now = pulse.Of(room);
        return (SitBeside.Of(now.Lines), SitBeside.MissedOnce(now.Lines));
    }

    /// <summary>With what most of its people were told, where they share only a goal that they miss.</summary>
    public StuckGroup WithWhy(StuckGroup group) => lines.WithWhy(group);

    /// <summary>Wrong answers to the exercises of one evening that several share.</summary>
    public ImmutableArray<BeliefLine> OfEvening(EveningView evening)
    {
        ArgumentNullException.ThrowIfNull(evening);
        return HeldOf(pulse.Of(evening.Room), evening.Number);
    }

    private ImmutableArray<BeliefLine> HeldOf(ClassPulse now, int evening) =>
        [.. Beliefs.Of(now).Where(b => b.Column.Lesson.Evening == evening).Take(BeliefsShown).Select(lines.Of)];

    /// <returns>Null when nobody holds it any more.</returns>
    public BeliefLine? Find(string? exerciseId, string? key) => access.Current is { } room
        && Beliefs.Of(pulse.Of(room)).FirstOrDefault(b => b.Exercise.Id == exerciseId && b.Key == key) is { } found ? lines.Of(found) : null;

    /// <summary>Writes to everyone who holds a belief where to practice it.</summary>
    /// <returns>How many; 0 when nobody holds it any more.</returns>
    public int GivePractice(string? exerciseId, string? key)
    {
        if (visitor.Person is not { } me || Find(exerciseId, key) is not { Practice: { } address } line) return 0;
        string text = $"Before the next evening, please do three problems of “{line.Belief.Concept}”: {address} . They are about what "
            + $"“{line.Belief.Exercise.Title}” asked.";
        foreach (Person holder in line.Belief.Holders) store.Comments.Add(holder.Id, me.Id, me.Label, line.Belief.Exercise.Id, text);
        return line.Belief.Holders.Length;
    }

    /// <summary>Writes the demonstration into the plan of the next evening.</summary>
    /// <returns>The evening's number; null when there is none, or nobody holds the belief any more.</returns>
    public int? Plan(string? exerciseId, string? key)
    {
        if (access.Current is not { } room || days.Of(room).Next is not { } number || Find(exerciseId, key) is not { } line) return null;
        EveningPlan plan = store.Evenings.Find(room.Id, number);
        string words = $"* {line.Show.Words} ({line.Belief.Holders.Length} of {line.Belief.Tried} believe otherwise: *{line.Belief.Exercise.Title}*.)";
        string all = plan.Demonstrations.Length == 0 ? words : $"{plan.Demonstrations.TrimEnd()}\n{words}";
        if (plan.Demonstrations.Contains(words, StringComparison.Ordinal)) return number;
        if (all.Length > EveningPlan.MostNoteLength) return null;
        EditOutcome<EveningPlan> outcome = store.Evenings.Save(plan with { Demonstrations = all });
        return outcome.Saved ? number : null;
    }
}
