using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Practice;
using Xunit;

namespace TyingClass.Lessons.Tests.Practice;

public sealed class ConceptTests
{
    private static readonly DateTimeOffset Monday = new(2026, 1, 5, 19, 0, 0, TimeSpan.Zero);

    // Bayes' rule by hand: P = 0.2, passed: 0.2·0.9/(0.2·0.9 + 0.8·0.25) = 0.473684; then + (1 - P)·0.15.
    [Fact]
    public void Next_OneSuccess_IsBayesByHand() => Assert.Equal(0.473684 + 0.526316 * 0.15, ConceptStrength.Next(0.2, passed: true), 1e-5);

    // Failed: 0.2·0.1/(0.2·0.1 + 0.8·0.75) = 0.032258; then + (1 - P)·0.15.
    [Fact]
    public void Next_OneFailure_IsBayesByHand() => Assert.Equal(0.032258 + 0.967742 * 0.15, ConceptStrength.Next(0.2, passed: false), 1e-5);

    [Fact]
    public void Of_MoreSuccesses_IsStronger()
    {
        double[] strengths = [.. Enumerable.Range(0, 8).Select(n => ConceptStrength.Of(Enumerable.Repeat(new ConceptAttempt(Monday, true), n)))];

        Assert.Equal(strengths.Order(), strengths);
        Assert.Equal("just beginning", ConceptStrength.Words(strengths[0]));
        Assert.Equal("very firm", ConceptStrength.Words(strengths[^1]));
        Assert.True(ConceptStrength.Of([new(Monday, true), new(Monday, false)]) < strengths[1]);
    }

    [Fact]
    public void Of_OldFailures_AreForgotten()
    {
        ConceptAttempt[] successes = [.. Enumerable.Repeat(new ConceptAttempt(Monday, true), ConceptStrength.RecentAttempts)];

        Assert.Equal(ConceptStrength.Of(successes), ConceptStrength.Of([.. Enumerable.Repeat(new ConceptAttempt(Monday, false), 50), .. successes]));
    }

    [Fact]
    public void DueAt_SuccessEachTimeItIsDue_DoublesTheGap()
    {
        List<ConceptAttempt> attempts = [new(Monday, true)];
        List<double> gaps = [];
        for (int i = 0; i < 8; i++)
        {
            DateTimeOffset due = ConceptSchedule.DueAt([.. attempts])!.Value;
            gaps.Add((due - attempts[^1].At).TotalDays);
            attempts.Add(new(due, true));
        }

        Assert.Equal([1, 2, 4, 8, 16, 32, 64, 64], gaps);
    }

    [Fact]
    public void DueAt_SuccessBeforeItIsDue_ChangesNothing() =>
        Assert.Equal(Monday.AddDays(1), ConceptSchedule.DueAt([new(Monday, true), new(Monday.AddHours(1), true), new(Monday.AddHours(2), true)]));

    [Fact]
    public void DueAt_Failure_IsDueAtOnceAndStartsOver()
    {
        DateTimeOffset later = Monday.AddDays(1);

        Assert.Equal(later, ConceptSchedule.DueAt([new(Monday, true), new(later, false)]));
        Assert.Equal(later.AddDays(1), ConceptSchedule.DueAt([new(Monday, true), new(later, false), new(later, true)]));
    }

    [Fact]
    public void Next_SeveralConcepts_TakesTheWeakestDueThenTheFirstNotBegun()
    {
        ConceptStanding firm = new("mass center", 0.9, Monday.AddDays(-1)), weak = new("keel side", 0.3, Monday),
            resting = new("hang test", 0.1, Monday.AddDays(3)), fresh = new("tow point", 0.2, null);

        Assert.Equal(weak, ConceptSchedule.Next([firm, resting, fresh, weak], Monday));
        Assert.Equal(fresh, ConceptSchedule.Next([resting, fresh], Monday));
        Assert.Null(ConceptSchedule.Next([resting], Monday));
        Assert.Equal("not begun", fresh.Words);
    }

    [Fact]
    public void Concepts_FailureWithAMisreading_CountsAgainstThatConceptOnly()
    {
        Exercise exercise = Repo.Exercise("id: e-1\nkind: explain\ntitle: E\nconcepts: [keel side, mass center]\nprompt: Why?\nmodel answer: x\n");

        Assert.Equal(["keel side", "mass center"], ConceptEvidence.Concepts(exercise, passed: true, null));
        Assert.Equal(["mass center"], ConceptEvidence.Concepts(exercise, passed: false, "mass center"));
        Assert.Equal(["keel side", "mass center"], ConceptEvidence.Concepts(exercise, passed: false, null));
    }

    // A student whose chance of success falls as the level rises must end up succeeding four times in five.
    [Fact]
    public void Next_StudentWhoFindsItHarderAsItRises_SettlesAtFourInFive()
    {
        Random random = new(1);
        double level = PracticeLevel.Start;
        int passed = 0;
        const int Warmup = 200, Counted = 20_000;
        for (int i = 0; i < Warmup + Counted; i++)
        {
            bool success = random.NextDouble() < 1 - 0.4 * level;
            if (i >= Warmup && success) passed++;
            level = PracticeLevel.Next(level, success);
        }

        Assert.Equal(0.8, (double)passed / Counted, 0.02);
    }
}
