using TyingClass.Storage.Backups;
using TyingClass.Storage.Files;
using Xunit;

namespace TyingClass.Storage.Tests.Backups;

/// <summary>A restore that is cut off at any point leaves the old class or the new one, whole, with its photos; never an empty one.</summary>
public sealed class IncomingTests : IDisposable
{
    private readonly TempStore _temp = new();
    private readonly string _backup;

    public IncomingTests()
    {
        _backup = _temp.PathBeside("backup.zip");
        _temp.Store.People.AddGuest("Old hand");
        File.WriteAllText(Path.Combine(_temp.Folder.PhotosPath, "restored.jpg"), "restored");
        _temp.Store.Backup(_backup);
        File.Delete(Path.Combine(_temp.Folder.PhotosPath, "restored.jpg"));
        File.WriteAllText(Path.Combine(_temp.Folder.PhotosPath, "present.jpg"), "present");
        _temp.Store.People.AddGuest("Newcomer");
        _temp.Store.Dispose();
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void Open_CutOffBeforeTheSwitch_IsTheOldClass()
    {
        DataFolder incoming = Incoming.Begin(_temp.Folder);
        DataFolder.MakePrivate(incoming.PhotosPath);
        BackupFile.Unpack(_backup, incoming.DatabasePath, incoming.PhotosPath);

        _temp.Reopen();

        Assert.Equal(["Newcomer", "Old hand"], Names());
        Assert.Equal(["present.jpg"], Photos());
        Assert.False(Directory.Exists(_temp.Folder.IncomingPath));
    }

    /// <summary>A restore over one that was cut off after its switch: what that one put in place is the data that are kept aside.</summary>
    [Fact]
    public void Restore_OverASwitchThatWasCutOff_FinishesItFirst()
    {
        DataFolder incoming = Incoming.Begin(_temp.Folder);
        DataFolder.MakePrivate(incoming.PhotosPath);
        BackupFile.Unpack(_backup, incoming.DatabasePath, incoming.PhotosPath);
        File.WriteAllText(Path.Combine(_temp.Folder.IncomingPath, "take-over"), "before-restore-x");

        Restored restored = Restoring.Restore(_temp.Folder, _backup, _temp.Clock.GetUtcNow());

        Assert.True(File.Exists(Path.Combine(_temp.Folder.Path, "before-restore-x.db")));
        Assert.Equal("before-restore-20260114-193000.db", Path.GetFileName(restored.KeptAs));
        _temp.Reopen();
        Assert.Equal(["Old hand"], Names());
    }

    /// <summary>What a restore that never came to its switch had laid there is not part of the next one.</summary>
    [Fact]
    public void Begin_LeftoverOfOneThatWasCutOff_IsAnEmptyPlace()
    {
        DataFolder.MakePrivate(Incoming.Begin(_temp.Folder).PhotosPath);
        File.WriteAllText(Path.Combine(DataFolder.Seen(_temp.Folder.IncomingPath).PhotosPath, "stray.jpg"), "stray");

        DataFolder place = Incoming.Begin(_temp.Folder);

        Assert.Empty(Directory.GetFileSystemEntries(place.Path));
    }

    /// <summary>The moves of a switch, in their order: cut off after each of them.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    public void Open_CutOffAfterTheSwitch_IsTheRestoredClassWithTheOldOneBeside(int moves)
    {
        DataFolder incoming = Incoming.Begin(_temp.Folder);
        DataFolder.MakePrivate(incoming.PhotosPath);
        BackupFile.Unpack(_backup, incoming.DatabasePath, incoming.PhotosPath);
        string stem = Path.Combine(_temp.Folder.Path, "before-restore-x");
        File.WriteAllText(Path.Combine(_temp.Folder.IncomingPath, "take-over"), Path.GetFileName(stem));
        Action[] all =
        [
            () => File.Move(_temp.Folder.CountPath, stem + ".count"),
            () => File.Move(_temp.Folder.DatabasePath, stem + ".db"),
            () => File.Move(incoming.DatabasePath, _temp.Folder.DatabasePath),
            () => Directory.Move(_temp.Folder.PhotosPath, stem + "-photos"),
            () => Directory.CreateDirectory(_temp.Folder.PhotosPath),
            () =>
            {
                Directory.Delete(_temp.Folder.PhotosPath);
                Directory.Move(incoming.PhotosPath, _temp.Folder.PhotosPath);
            },
        ];
        foreach (Action move in all.Take(moves)) move();

        _temp.Reopen();

        Assert.Equal(["Old hand"], Names());
        Assert.Equal(["restored.jpg"], Photos());
        Assert.Equal(["present.jpg"], Directory.GetFiles(stem + "-photos").Select(Path.GetFileName));
        using LiteDB.LiteDatabase old = DatabaseFile.OpenFile(stem + ".db", readOnly: true);
        Assert.Equal(2, old.GetCollection("people").Count());
        Assert.False(Directory.Exists(_temp.Folder.IncomingPath));
    }

    [Fact]
    public void Restore_ThreeTimesInOneSecond_KeepsAllThatStoodThere()
    {
        string?[] kept = [.. Enumerable.Range(0, 3).Select(_ => Restoring.Restore(_temp.Folder, _backup, _temp.Clock.GetUtcNow()).KeptAs)];
        Assert.Equal(
            ["before-restore-20260114-193000.db", "before-restore-20260114-193000-2.db", "before-restore-20260114-193000-3.db"], kept.Select(Path.GetFileName));
        Assert.All(kept, path => Assert.True(File.Exists(path)));
    }

    private IEnumerable<string> Names() => _temp.Store.People.All().Select(p => p.Label).Order(StringComparer.Ordinal);

    private IEnumerable<string?> Photos() => Directory.GetFiles(_temp.Folder.PhotosPath).Select(Path.GetFileName);
}
