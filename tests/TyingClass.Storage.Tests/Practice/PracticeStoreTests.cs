using TyingClass.Storage.Attempts;
using TyingClass.Storage.Practice;
using Xunit;

namespace TyingClass.Storage.Tests.Practice;

public sealed class PracticeStoreTests
{
    private static readonly PracticeProblem Seven = Problem(7);

    [Fact]
    public void Of_AfterReopening_ReturnsProblemAndAnswerAsKept()
    {
        using TempStore temp = new();
        Attempt added = temp.Store.Practice.Add("p1", Seven, "  point up\r\n", Grades.Failed);

        temp.Reopen();
        PracticeAnswer kept = Assert.Single(temp.Store.Practice.Of("p1", Seven.Id));

        Assert.Equal(Seven, kept.Problem);
        Assert.Equal(("  point up\r\n", added.Id, 1, temp.Clock.GetUtcNow()), (kept.Attempt.AnswerText, kept.Attempt.Id, kept.Attempt.Number, kept.Attempt.At));
        Assert.Equal("engine 1, course a", kept.Attempt.EngineVersion);
        Assert.Equal(Grades.Failed.Feedback!.Goals, kept.Attempt.Feedback!.Goals);
    }

    [Fact]
    public void FirstOutcomesOf_SeveralAnswers_AreTheFirstToEachProblemOldestFirst()
    {
        using TempStore temp = new();
        temp.Store.Practice.Add("p1", Seven, "a", Grades.Failed);
        temp.Clock.Advance(TimeSpan.FromMinutes(1));
        temp.Store.Practice.Add("p1", Seven, "b", Grades.Passed);
        temp.Store.Practice.Add("p1", Problem(8), "c", Grades.Passed);
        temp.Store.Practice.Add("p2", Problem(9), "d", Grades.Passed);

        Assert.Equal(
            [("keel height", 7, false), ("keel height", 8, true)],
            temp.Store.Practice.FirstOutcomesOf("p1").Select(o => (o.Concept, o.Seed, o.Passed)));
    }

    [Fact]
    public void Add_Unreadable_IsRefusedAndNothingIsKept()
    {
        using TempStore temp = new();

        Assert.Throws<ArgumentException>(() => temp.Store.Practice.Add("p1", Seven, "wide", Grades.Unreadable));
        Assert.Empty(temp.Store.Practice.Of("p1", Seven.Id));
    }

    [Fact]
    public void MoveGuestInto_GuestWithPractice_AnswersGoOnAfterThoseOfTheAccount()
    {
        using TempStore temp = new();
        string guest = temp.Store.People.AddGuest().Guest.Id;
        string wren = temp.Store.Accounts.Join(temp.Store.Classes.Create("teacher").Code, "Wren", "hash").Person!.Id;
        temp.Store.Practice.Add(wren, Seven, "mine", Grades.Failed);
        temp.Store.Practice.Add(guest, Seven, "as a guest", Grades.Passed);
        temp.Store.Practice.Add(guest, Problem(8), "as a guest", Grades.Passed);

        Assert.NotNull(temp.Store.GuestMoves.MoveInto(guest, wren));

        Assert.Equal([(1, "mine"), (2, "as a guest")], temp.Store.Practice.Of(wren, Seven.Id).Select(a => (a.Attempt.Number, a.Attempt.AnswerText)));
        Assert.Equal([7, 8], temp.Store.Practice.FirstOutcomesOf(wren).Select(o => o.Seed));
        Assert.Empty(temp.Store.Practice.FirstOutcomesOf(guest));
    }

    private static PracticeProblem Problem(int seed) => new($"practice-keel-height-{seed}-20", "keel height", seed, 20, "recipe: Reed Darter\n");
}
