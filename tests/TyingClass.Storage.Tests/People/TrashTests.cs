using TyingClass.Storage.Attempts;
using TyingClass.Storage.Classes;
using TyingClass.Storage.People;
using Xunit;

namespace TyingClass.Storage.Tests.People;

public sealed class TrashTests : IDisposable
{
    private readonly TempStore _temp = new();
    private readonly ClassRoom _room;
    private readonly Person _wren;

    public TrashTests()
    {
        _room = _temp.Store.Classes.Create("teacher");
        _wren = _temp.Store.Accounts.Join(_room.Code, "Wren", "hash").Person!;
        _temp.Store.Attempts.Add(_wren.Id, "first-01", "mine", Grades.Passed);
        _temp.Store.Comments.Add(_wren.Id, "teacher", "Dipper", null, "Well done.");
    }

    [Fact]
    public void Remove_ThenRestoredInTime_BringsEverythingBack()
    {
        _temp.Store.Trash.Remove(_wren.Id);
        Assert.Empty(_temp.Store.Accounts.OfClass(_room.Id));
        Assert.Null(_temp.Store.Accounts.FindByName("Wren"));
        Assert.Equal(JoinProblem.NameTaken, _temp.Store.Accounts.Join(_room.Code, "wren", "hash").Problem);
        _temp.Clock.Advance(TimeSpan.FromDays(29));
        _temp.Reopen();
        Assert.Single(_temp.Store.Accounts.RemovedOf(_room.Id));
        _temp.Store.Trash.Restore(_wren.Id);
        Assert.Single(_temp.Store.Accounts.OfClass(_room.Id));
        Assert.Single(_temp.Store.Attempts.Of(_wren.Id, "first-01"));
        Assert.NotEqual(_wren.Stamp, _temp.Store.People.Find(_wren.Id)!.Stamp);
    }

    [Fact]
    public void Remove_Over30DaysAgo_IsGoneForGoodWhenTheTrashIsEmptied()
    {
        Person heron = _temp.Store.Accounts.Join(_room.Code, "Heron", "hash").Person!;
        _temp.Store.Attempts.Add(heron.Id, "first-01", "hers", Grades.Passed);
        _temp.Store.Trash.Remove(_wren.Id);
        _temp.Clock.Advance(TimeSpan.FromDays(31));
        _temp.Reopen();
        Assert.NotNull(_temp.Store.People.Find(_wren.Id));
        _temp.Store.Trash.Empty();
        Assert.Null(_temp.Store.People.Find(_wren.Id));
        Assert.Empty(_temp.Store.Attempts.AllOf(_wren.Id));
        Assert.Empty(_temp.Store.Attempts.StandingsOf(_wren.Id));
        Assert.Empty(_temp.Store.Comments.To(_wren.Id));
        Assert.Single(_temp.Store.Attempts.AllOf(heron.Id));
    }

    [Fact]
    public void MayBelieveClock_AfterALeap_OnlyWhenSeenOnThreeDays()
    {
        Assert.True(_temp.Store.Trash.MayBelieveClock());
        _temp.Clock.Advance(TimeSpan.FromDays(3650));
        _temp.Reopen();
        Assert.False(_temp.Store.Trash.MayBelieveClock());
        Assert.False(_temp.Store.Trash.MayBelieveClock());
        _temp.Clock.Advance(TimeSpan.FromDays(7));
        Assert.False(_temp.Store.Trash.MayBelieveClock());
        _temp.Clock.Advance(TimeSpan.FromDays(7));
        Assert.True(_temp.Store.Trash.MayBelieveClock());
    }

    [Fact]
    public void MayBelieveClock_PutBackToTheTruth_AtOnce()
    {
        Assert.True(_temp.Store.Trash.MayBelieveClock());
        DateTimeOffset truth = _temp.Clock.GetUtcNow();
        _temp.Clock.Advance(TimeSpan.FromDays(3650));
        Assert.False(_temp.Store.Trash.MayBelieveClock());
        _temp.Clock.AdjustTime(truth.AddHours(1));
        Assert.True(_temp.Store.Trash.MayBelieveClock());
    }

    [Fact]
    public void MayBelieveClock_FirstLookLongAfterTheLastWrite_NotYet()
    {
        _temp.Clock.Advance(TimeSpan.FromDays(400));
        _temp.Reopen();
        Assert.False(_temp.Store.Trash.MayBelieveClock());
    }

    [Fact]
    public void Remove_Instructor_IsNotDone()
    {
        Person dipper = _temp.Store.Instructors.Claim(_temp.Store.Instructors.NewCode(), "Dipper", "hash")!;
        Assert.Null(_temp.Store.Trash.Remove(dipper.Id));
    }

    [Fact]
    public void Comment_Read_IsNoLongerUnseen()
    {
        string id = Assert.Single(_temp.Store.Comments.UnseenBy(_wren.Id)).Id;
        Assert.False(_temp.Store.Comments.MarkSeen(id, "heron"));
        Assert.True(_temp.Store.Comments.MarkSeen(id, _wren.Id));
        Assert.Empty(_temp.Store.Comments.UnseenBy(_wren.Id));
        Assert.NotNull(Assert.Single(_temp.Store.Comments.To(_wren.Id)).SeenAt);
    }

    [Fact]
    public void AddKept_Attempts_StandAsTheyWereWithTheirStandings()
    {
        Attempt mine = _temp.Store.Attempts.Of(_wren.Id, "first-01")[0];
        _temp.Store.Attempts.AddKept([mine with { Id = "x1", Number = 2 }, mine with { Id = "x2", Number = 3, Passed = false }]);
        Assert.True(_temp.Store.Attempts.StandingOf(_wren.Id, "first-01") is { Attempts: 3, Failed: 1, Passed: true });
        Assert.ThrowsAny<Exception>(() => _temp.Store.Attempts.AddKept([mine with { Id = "x3", Number = 4 }, mine with { Id = "x4", Number = 1 }]));
        Assert.Equal(3, _temp.Store.Attempts.Of(_wren.Id, "first-01").Length);
    }

    public void Dispose() => _temp.Dispose();
}
