using TyingClass.Storage.Attempts;
using TyingClass.Storage.Classes;
using TyingClass.Storage.People;
using Xunit;

namespace TyingClass.Storage.Tests.People;

public sealed class TrashTests : IDisposable
{
    private readonly TempStore temp = new();
    private readonly ClassRoom room;
    private readonly Person wren;

    public TrashTests()
    {
        room = temp.Store.Classes.Create("teacher");
        wren = temp.Store.Accounts.Join(room.Code, "Wren", "hash").Person!;
        temp.Store.Attempts.Add(wren.Id, "first-01", "mine", Grades.Passed);
        temp.Store.Comments.Add(wren.Id, "teacher", "Dipper", null, "Well done.");
    }

    [Fact]
    public void Remove_ThenRestoredInTime_BringsEverythingBack()
    {
        temp.Store.Trash.Remove(wren.Id);
        Assert.Empty(temp.Store.Accounts.OfClass(room.Id));
        Assert.Null(temp.Store.Accounts.FindByName("Wren"));
        Assert.Equal(JoinProblem.NameTaken, temp.Store.Accounts.Join(room.Code, "wren", "hash").Problem);
        temp.Clock.Advance(TimeSpan.FromDays(29));
        temp.Reopen();
        Assert.Single(temp.Store.Accounts.RemovedOf(room.Id));
        temp.Store.Trash.Restore(wren.Id);
        Assert.Single(temp.Store.Accounts.OfClass(room.Id));
        Assert.Single(temp.Store.Attempts.Of(wren.Id, "first-01"));
        Assert.NotEqual(wren.Stamp, temp.Store.People.Find(wren.Id)!.Stamp);
    }

    [Fact]
    public void Remove_Over30DaysAgo_IsGoneForGoodAtTheNextStart()
    {
        Person heron = temp.Store.Accounts.Join(room.Code, "Heron", "hash").Person!;
        temp.Store.Attempts.Add(heron.Id, "first-01", "hers", Grades.Passed);
        temp.Store.Trash.Remove(wren.Id);
        temp.Clock.Advance(TimeSpan.FromDays(31));
        temp.Reopen();
        Assert.Null(temp.Store.People.Find(wren.Id));
        Assert.Empty(temp.Store.Attempts.AllOf(wren.Id));
        Assert.Empty(temp.Store.Attempts.StandingsOf(wren.Id));
        Assert.Empty(temp.Store.Comments.To(wren.Id));
        Assert.Single(temp.Store.Attempts.AllOf(heron.Id));
    }

    [Fact]
    public void Remove_Instructor_IsNotDone()
    {
        Person dipper = temp.Store.Instructors.Claim(temp.Store.Instructors.NewCode(), "Dipper", "hash")!;
        Assert.Null(temp.Store.Trash.Remove(dipper.Id));
    }

    [Fact]
    public void Comment_Read_IsNoLongerUnseen()
    {
        string id = Assert.Single(temp.Store.Comments.UnseenBy(wren.Id)).Id;
        Assert.False(temp.Store.Comments.MarkSeen(id, "heron"));
        Assert.True(temp.Store.Comments.MarkSeen(id, wren.Id));
        Assert.Empty(temp.Store.Comments.UnseenBy(wren.Id));
        Assert.NotNull(Assert.Single(temp.Store.Comments.To(wren.Id)).SeenAt);
    }

    [Fact]
    public void AddKept_Attempts_StandAsTheyWereWithTheirStandings()
    {
        Attempt mine = temp.Store.Attempts.Of(wren.Id, "first-01")[0];
        temp.Store.Attempts.AddKept([mine with { Id = "x1", Number = 2 }, mine with { Id = "x2", Number = 3, Passed = false }]);
        Assert.True(temp.Store.Attempts.StandingOf(wren.Id, "first-01") is { Attempts: 3, Failed: 1, Passed: true });
        Assert.ThrowsAny<Exception>(() => temp.Store.Attempts.AddKept([mine with { Id = "x3", Number = 4 }, mine with { Id = "x4", Number = 1 }]));
        Assert.Equal(3, temp.Store.Attempts.Of(wren.Id, "first-01").Length);
    }

    public void Dispose() => temp.Dispose();
}
