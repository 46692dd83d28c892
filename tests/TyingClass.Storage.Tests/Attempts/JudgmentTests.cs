using System.Collections.Immutable;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Editing;
using TyingClass.Storage.People;
using Xunit;

namespace TyingClass.Storage.Tests.Attempts;

public sealed class JudgmentTests : IDisposable
{
    private readonly TempStore _temp = new();
    private readonly Person _dipper;

    public JudgmentTests() => _dipper = _temp.Store.Instructors.Claim(_temp.Store.Instructors.NewCode(), "Dipper", "hash")!;

    private AttemptStore Attempts => _temp.Store.Attempts;

    [Fact]
    public void Judge_AcceptedThenReturned_KeepsBothAndTheComputedGrade()
    {
        Attempt attempt = Attempts.Add("wren", "first-01", "a", Grades.Failed);
        Attempts.Judge(attempt.Id, 0, _dipper, accepted: true, "Bent hook.");
        Assert.True(Attempts.StandingOf("wren", "first-01") is { Passed: true, Failed: 0 });
        Attempts.Judge(attempt.Id, 1, _dipper, accepted: false, "Not so bent.");
        _temp.Reopen();
        Attempt kept = Attempts.Find(attempt.Id)!;
        Assert.Equal([(true, "Bent hook."), (false, "Not so bent.")], kept.Judgments.Select(j => (j.Accepted, j.Reason)));
        Assert.Equal((false, false), (kept.Passed, kept.Counts));
        Assert.True(Attempts.StandingOf("wren", "first-01") is { Passed: false, Failed: 1 });
    }

    [Fact]
    public void Judge_WaitingAttemptReturned_NoLongerWaits()
    {
        Attempt attempt = Attempts.Add("wren", "first-01", "a", Grades.Waiting);
        Assert.True(Attempts.StandingOf("wren", "first-01").AwaitsReview);
        EditOutcome<Attempt> outcome = Attempts.Judge(attempt.Id, 0, _dipper, accepted: false, "Say which side.")!;
        Assert.True(outcome.Saved);
        Assert.True(Attempts.StandingsOf("wren").Single() is { AwaitsReview: false, Passed: false, Failed: 1 });
    }

    [Fact]
    public void Judge_AttemptThatIsGone_IsNothing() => Assert.Null(Attempts.Judge("gone", 0, _dipper, accepted: true, "Bent hook."));

    [Fact]
    public void Judge_JudgedMeanwhile_IsNotSavedAndShowsWhatTheOtherSaid()
    {
        Attempt attempt = Attempts.Add("wren", "first-01", "a", Grades.Waiting);
        Attempts.Judge(attempt.Id, 0, _dipper, accepted: true, "Bent hook.");
        EditOutcome<Attempt> late = Attempts.Judge(attempt.Id, 0, _dipper, accepted: false, "Say which side.")!;
        Assert.False(late.Saved);
        Assert.Equal(["Bent hook."], late.Current.Judgments.Select(j => j.Reason));
        Assert.Equal(["Bent hook."], Attempts.Find(attempt.Id)!.Judgments.Select(j => j.Reason));
        Assert.True(Attempts.StandingOf("wren", "first-01").Passed);
    }

    [Fact]
    public void JudgedOf_SomeJudged_AreThatPersonsOldestFirst()
    {
        Attempt first = Attempts.Add("wren", "first-02", "a", Grades.Failed);
        _temp.Clock.Advance(TimeSpan.FromMinutes(1));
        Attempt second = Attempts.Add("wren", "first-01", "a", Grades.Waiting);
        Attempts.Add("wren", "first-03", "a", Grades.Failed);
        Attempt other = Attempts.Add("heron", "first-01", "a", Grades.Waiting);
        foreach (Attempt attempt in new[] { other, second, first }) Attempts.Judge(attempt.Id, 0, _dipper, accepted: true, "Bent hook.");
        Assert.Equal([first.Id, second.Id], Attempts.JudgedOf("wren").Select(a => a.Id));
    }

    [Fact]
    public async Task Judge_ManyAtOnce_OnlyOneIsKept()
    {
        Attempt attempt = Attempts.Add("wren", "first-01", "a", Grades.Waiting);
        EditOutcome<Attempt>?[] outcomes = await Task.WhenAll(Enumerable.Range(0, 8).Select(i =>
            Task.Run(() => Attempts.Judge(attempt.Id, 0, _dipper, i % 2 == 0, $"r{i}"), TestContext.Current.CancellationToken)));
        Assert.Single(outcomes, o => o!.Saved);
        Assert.Single(Attempts.Find(attempt.Id)!.Judgments);
    }

    [Fact]
    public void NotesAt_AfterJudgments_SayWhatTheAttemptsSay()
    {
        Attempt failed = Attempts.Add("wren", "first-01", " same ", Grades.Failed);
        Attempt alike = Attempts.Add("heron", "first-01", "same", Grades.Passed);
        Attempts.Add("heron", "first-02", "same", Grades.Passed);
        Attempts.Judge(failed.Id, 0, _dipper, accepted: true, "Fine.");
        _temp.Reopen();
        ImmutableArray<AttemptNote> notes = Attempts.NotesAt("first-01");
        Assert.Equal(
            [.. new[] { failed.Id, alike.Id }.Select(id => AttemptNote.Of(Attempts.Find(id)!) with { Missed = [] }).OrderBy(n => n.Id, StringComparer.Ordinal)],
            notes.Select(n => n with { Missed = [] }).OrderBy(n => n.Id, StringComparer.Ordinal));
        AttemptNote note = notes.Single(n => n.Id == failed.Id);
        Assert.Equal((true, false, "This treats the eye as if it were straight."), (note.Counts, note.Waits, note.Misreading));
        Assert.Equal(["keel height at least 0.4 mm"], note.Missed);
        Assert.Single(notes.Select(n => n.AnswerKey).Distinct());
    }

    public void Dispose() => _temp.Dispose();
}
