using TyingClass.Balance.Reports;
using TyingClass.Storage.BenchLog;
using TyingClass.Storage.Editing;
using Xunit;

namespace TyingClass.Storage.Tests.BenchLog;

public sealed class BenchLogStoreTests
{
    private static readonly TiedFly Fly = new("Slate Minnow", "recipe: Slate Minnow\n", FlySource.Pattern, "p1", 3);
    private static readonly Foreseen Computed = new(0.5, "point up", 0.0004, null, "1");

    private static readonly Seen Everything = new()
    {
        HangAngleRad = 0.6,
        Way = SeenWay.OnItsSide,
        MassKg = 0.00042,
        SinkTimeS = 1.6,
        SinkDepthM = 0.2,
        State = WetState.Fresh,
        WaterC = 12,
    };

    [Fact]
    public void Add_Everything_ReadsBackTheSame()
    {
        using TempStore temp = new();
        LogEntry added = temp.Store.BenchLog.Add("wren", "class", Fly, Everything, Computed, "tall glass\r\nfive drops");
        temp.Reopen();
        Assert.Equal(added, temp.Store.BenchLog.Find(added.Id));
        Assert.Equal("tall glass\nfive drops", added.Note);
        // 20 cm in 1.6 s.
        Assert.Equal(0.125, added.Seen.SinkRateMS!.Value, 12);
        Assert.Equal(added.Id, Assert.Single(temp.Store.BenchLog.OfClass("class")).Id);
        Assert.Empty(temp.Store.BenchLog.OfClass("elsewhere"));
        Assert.Empty(temp.Store.BenchLog.Of("heron"));
    }

    [Fact]
    public void Correct_OlderVersion_IsToldAndLosesNothing()
    {
        using TempStore temp = new();
        LogEntry entry = temp.Store.BenchLog.Add("wren", null, Fly, Everything, Computed, "");
        Assert.True(temp.Store.BenchLog.Correct(entry.Id, "wren", 1, Everything with { MassKg = 0.0005 }, Computed, "phone")!.Saved);
        EditOutcome<LogEntry> late = temp.Store.BenchLog.Correct(entry.Id, "wren", 1, Everything with { MassKg = 0.0006 }, Computed, "desk")!;
        Assert.False(late.Saved);
        Assert.Equal((0.0005, "phone"), (late.Current.Seen.MassKg, late.Current.Note));
        Assert.Null(temp.Store.BenchLog.Correct(entry.Id, "heron", 2, Everything, Computed, "stolen"));
    }

    [Fact]
    public void SetPhoto_Replaced_OldFileGoesAndNewOneIsPrivate()
    {
        using TempStore temp = new();
        LogEntry entry = temp.Store.BenchLog.Add("wren", null, Fly, Everything, Computed, "");
        Assert.False(temp.Store.BenchLog.SetPhoto(entry.Id, "heron", [9]));
        Assert.True(temp.Store.BenchLog.SetPhoto(entry.Id, "wren", [1, 2]));
        Assert.True(temp.Store.BenchLog.SetPhoto(entry.Id, "wren", [3, 4, 5]));
        string file = Assert.Single(Directory.GetFiles(temp.Folder.PhotosPath));
        Assert.Equal([3, 4, 5], temp.Store.Photos.Find(temp.Store.BenchLog.Find(entry.Id)!.PhotoId!));
        if (!OperatingSystem.IsWindows()) Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(file));
    }

    [Theory]
    [InlineData("../class")]
    [InlineData("")]
    [InlineData("ABCDEF")]
    public void FindPhoto_NoId_IsNull(string id)
    {
        using TempStore temp = new();
        Assert.Null(temp.Store.Photos.Find(id));
    }

    [Fact]
    public void Trash_OneOfTwoEntries_IsInTheTrashAloneUntilItIsPutBack()
    {
        using TempStore temp = new();
        string thrown = temp.Store.BenchLog.Add("wren", "class", Fly, Everything, Computed, "thrown").Id,
            kept = temp.Store.BenchLog.Add("wren", "class", Fly, Everything, Computed, "kept").Id;

        Assert.True(temp.Store.BenchLog.Trash(thrown, "wren"));

        Assert.Equal(kept, Assert.Single(temp.Store.BenchLog.Of("wren")).Id);
        Assert.Equal(kept, Assert.Single(temp.Store.BenchLog.OfClass("class")).Id);
        Assert.Equal(thrown, Assert.Single(temp.Store.BenchLog.TrashOf("wren")).Id);
        Assert.True(temp.Store.BenchLog.Restore(thrown, "wren"));
        Assert.Equal([kept, thrown], temp.Store.BenchLog.Of("wren").Select(e => e.Id).Order().OrderBy(id => id == thrown));
        Assert.Empty(temp.Store.BenchLog.TrashOf("wren"));
    }

    [Fact]
    public void EmptyTrash_AfterThirtyDays_TakesThePhotoAlong()
    {
        using TempStore temp = new();
        LogEntry entry = temp.Store.BenchLog.Add("wren", "class", Fly, Everything, Computed, "");
        temp.Store.BenchLog.SetPhoto(entry.Id, "wren", [1]);
        Assert.True(temp.Store.BenchLog.Trash(entry.Id, "wren"));
        Assert.Empty(temp.Store.BenchLog.OfClass("class"));
        Assert.True(temp.Store.BenchLog.Restore(entry.Id, "wren"));
        Assert.True(temp.Store.BenchLog.Trash(entry.Id, "wren"));
        temp.Clock.Advance(TimeSpan.FromDays(30));
        Assert.Equal(1, temp.Store.BenchLog.EmptyTrash());
        Assert.Empty(Directory.GetFiles(temp.Folder.PhotosPath));
    }

    [Fact]
    public void SweepPhotos_NobodyNamesIt_RemovesItOnceItIsOld()
    {
        using TempStore temp = new();
        string named = temp.Store.BenchLog.Add("wren", null, Fly, Everything, Computed, "").Id;
        temp.Store.BenchLog.SetPhoto(named, "wren", [1]);
        string orphan = temp.Store.Photos.Add([2]);
        foreach (string file in Directory.GetFiles(temp.Folder.PhotosPath)) File.SetLastWriteTimeUtc(file, temp.Clock.GetUtcNow().UtcDateTime);
        temp.Store.BenchLog.SweepPhotos();
        Assert.NotNull(temp.Store.Photos.Find(orphan));
        temp.Clock.Advance(TimeSpan.FromDays(2));
        temp.Store.BenchLog.SweepPhotos();
        Assert.Null(temp.Store.Photos.Find(orphan));
        Assert.NotNull(temp.Store.Photos.Find(temp.Store.BenchLog.Find(named)!.PhotoId!));
    }
}
