using TyingClass.Storage.Editing;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.Reviews;
using Xunit;

namespace TyingClass.Storage.Tests.Reviews;

public sealed class ReviewStoreTests
{
    private const string Class = "alder-bridge";

    [Fact]
    public void Queue_Always_LongestWaitFirstAndOnlyThatClass()
    {
        using TempStore temp = new();
        Review first = Asked(temp, "wren", "Slate Minnow");
        temp.Clock.Advance(TimeSpan.FromHours(1));
        Review second = Asked(temp, "heron", "Copper Loach");
        Asked(temp, "teal", "Reed Darter", "elsewhere");
        Assert.Equal([first.Id, second.Id], temp.Store.Reviews.Queue(Class).Select(r => r.Id));
    }

    [Fact]
    public void Ask_WhileWaiting_MovesOnToTheLatestAndKeepsItsPlace()
    {
        using TempStore temp = new();
        Review first = Asked(temp, "wren", "Slate Minnow");
        temp.Store.Patterns.Save(first.PatternId, "wren", 1, "Slate Minnow", "second");
        temp.Clock.Advance(TimeSpan.FromDays(2));
        Review again = temp.Store.Reviews.Ask(first.PatternId, "wren", Class, null)!;
        Assert.Equal((first.Id, 2, first.AskedAt, "Why?"), (again.Id, again.Revision, again.AskedAt, again.Question));
        Assert.NotEqual(first.Version, again.Version);
        Assert.Single(temp.Store.Reviews.Queue(Class));
    }

    [Fact]
    public void Decide_OfAnOlderVersion_ChangesNothing()
    {
        using TempStore temp = new();
        Review seen = Asked(temp, "wren", "Slate Minnow");
        temp.Store.Patterns.Save(seen.PatternId, "wren", 1, "Slate Minnow", "second");
        temp.Store.Reviews.Ask(seen.PatternId, "wren", Class, null);
        EditOutcome<Review> late = temp.Store.Reviews.Decide(seen.Id, "otter", seen.Version, new ReviewDecision(true, "fine"))!;
        Assert.False(late.Saved);
        Assert.Equal(ReviewState.Waiting, temp.Store.Reviews.Find(seen.Id)!.State);
        Assert.Empty(temp.Store.Patterns.Book(Class));
    }

    [Fact]
    public void Decide_ByTwoMentors_TheSecondIsTold()
    {
        using TempStore temp = new();
        Review seen = Asked(temp, "wren", "Slate Minnow");
        Assert.True(temp.Store.Reviews.Decide(seen.Id, "otter", seen.Version, new ReviewDecision(false, "Heavier eyes."))!.Saved);
        EditOutcome<Review> second = temp.Store.Reviews.Decide(seen.Id, "dipper", seen.Version, new ReviewDecision(true, "Fine."))!;
        Assert.False(second.Saved);
        Assert.Equal((ReviewState.Returned, "otter", "Heavier eyes."), (second.Current.State, second.Current.DecidedById, second.Current.Words));
    }

    [Fact]
    public void SignOff_ThenAnotherRevision_TheBookKeepsTheOneSignedOff()
    {
        using TempStore temp = new();
        Review seen = Asked(temp, "wren", "Slate Minnow");
        temp.Store.Reviews.Decide(seen.Id, "otter", seen.Version, new ReviewDecision(true, null));
        temp.Store.Patterns.Save(seen.PatternId, "wren", 1, "Slate Minnow", "second");
        temp.Reopen();
        Pattern book = Assert.Single(temp.Store.Patterns.Book(Class));
        Assert.Equal((1, 2, PatternState.SignedOff), (book.SignedOffRevision, book.Revision, book.State));
        Assert.Empty(temp.Store.Patterns.Book("elsewhere"));
        temp.Store.Patterns.Trash(seen.PatternId, "wren");
        Assert.Empty(temp.Store.Patterns.Book(Class));
    }

    [Fact]
    public void Reopen_SignedOff_WaitsAgainAtItsOldPlaceAndLeavesTheBook()
    {
        using TempStore temp = new();
        Review seen = Asked(temp, "wren", "Slate Minnow");
        Review decided = temp.Store.Reviews.Decide(seen.Id, "otter", seen.Version, new ReviewDecision(true, "Fine."))!.Current;
        EditOutcome<Review> reopened = temp.Store.Reviews.Reopen(seen.Id, decided.Version)!;
        Assert.True(reopened.Saved);
        Assert.Equal(seen.AskedAt, Assert.Single(temp.Store.Reviews.Queue(Class)).AskedAt);
        Assert.Empty(temp.Store.Patterns.Book(Class));
    }

    [Fact]
    public void Withdraw_Waiting_LeavesTheQueue()
    {
        using TempStore temp = new();
        Review seen = Asked(temp, "wren", "Slate Minnow");
        Assert.False(temp.Store.Reviews.Withdraw(seen.PatternId, "heron"));
        Assert.True(temp.Store.Reviews.Withdraw(seen.PatternId, "wren"));
        Assert.Empty(temp.Store.Reviews.Queue(Class));
        Assert.Equal(PatternState.Own, temp.Store.Patterns.Find(seen.PatternId)!.State);
    }

    private static Review Asked(TempStore temp, string owner, string name, string classId = Class) =>
        temp.Store.Reviews.Ask(temp.Store.Patterns.Create(owner, name, "first").Id, owner, classId, "Why?")!;
}
