using TyingClass.Storage.Backups;
using TyingClass.Storage.Files;
using Xunit;

namespace TyingClass.Storage.Tests.Backups;

public sealed class BackupRequestsTests : IDisposable
{
    private readonly TempStore _temp = new();

    [Fact]
    public async Task Ask_ServerAnswers_PutsTheBackupWhereItWasWanted()
    {
        _temp.Store.People.AddGuest("Wren");
        using CancellationTokenSource enough = new();
        Task server = Task.Run(
            () =>
            {
                while (!enough.IsCancellationRequested)
                {
                    BackupRequests.Answer(_temp.Folder, _temp.Store.Backup, DateTimeOffset.UtcNow, TimeSpan.FromMinutes(5));
                    Thread.Sleep(20);
                }
            },
            TestContext.Current.CancellationToken);
        string path = _temp.PathBeside("asked.zip");
        File.WriteAllText(path, "the one of last week");

        BackupContents contents =
            await Task.Run(() => BackupRequests.Ask(_temp.Folder, path, TimeProvider.System, TimeSpan.FromSeconds(30)), TestContext.Current.CancellationToken);

        await enough.CancelAsync();
        await server;
        Assert.Equal(1, contents.Documents["people"]);
        Assert.Equal(1, Restoring.Restore(DataFolder.At(_temp.PathBeside("other")), path, _temp.Clock.GetUtcNow()).Contents.Documents["people"]);
        Assert.Empty(Directory.GetFiles(_temp.Folder.RequestsPath));
    }

    [Fact]
    public void Ask_NobodyAnswers_SaysSoAndTakesTheNoteBack()
    {
        _temp.Clock.AutoAdvanceAmount = TimeSpan.FromSeconds(31);
        StorageException refused = Assert.Throws<StorageException>(
            () => BackupRequests.Ask(_temp.Folder, _temp.PathBeside("asked.zip"), _temp.Clock, TimeSpan.FromSeconds(30)));
        Assert.Equal(
            $"The TyingClass that holds {_temp.Folder.Path} did not answer within 30 s. Is it hanging, or an older version? Stop it and try again.",
            refused.Message);
        Assert.Empty(Directory.GetFiles(_temp.Folder.RequestsPath));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Ask_NoBackupCanBeMadeOrPutThere_SaysWhyAndLeavesNothing(bool madeWell)
    {
        string path = _temp.PathBeside("a-folder");
        Directory.CreateDirectory(path);
        Task<StorageException> asking = Task.Run(
            () => Assert.Throws<StorageException>(() => BackupRequests.Ask(_temp.Folder, path, TimeProvider.System, TimeSpan.FromSeconds(30))),
            TestContext.Current.CancellationToken);
        while (!asking.IsCompleted)
        {
            BackupRequests.Answer(_temp.Folder, Make, DateTimeOffset.UtcNow, TimeSpan.FromMinutes(5));
            await Task.Delay(20, TestContext.Current.CancellationToken);
        }

        string said = (await asking).Message;
        if (madeWell) Assert.StartsWith($"No backup was made at {path}: ", said, StringComparison.Ordinal);
        else Assert.Equal("The lamp went out.", said);
        Assert.Empty(Directory.GetFileSystemEntries(_temp.Folder.RequestsPath));

        BackupContents Make(string to) => madeWell ? _temp.Store.Backup(to) : throw new StorageException("The lamp went out.");
    }

    [Fact]
    public void Open_FolderThatWasMovedAway_IsNotMadeAnew()
    {
        BackupRequests.Open(_temp.Folder);
        Assert.True(Directory.Exists(_temp.Folder.RequestsPath));

        DataFolder gone = DataFolder.Seen(_temp.PathBeside("gone"));
        BackupRequests.Open(gone);
        Assert.False(Directory.Exists(gone.Path));
    }

    [Fact]
    public void Answer_NobodyEverAsked_MakesNothing()
    {
        BackupRequests.Answer(_temp.Folder, _temp.Store.Backup, DateTimeOffset.UtcNow, TimeSpan.FromMinutes(5));
        Assert.False(Directory.Exists(_temp.Folder.RequestsPath));
    }

    [Fact]
    public void Answer_NoteGivenUpLongAgo_IsSweptAwayUnanswered()
    {
        string note = Path.Combine(Directory.CreateDirectory(_temp.Folder.RequestsPath).FullName, "old.asked");
        File.WriteAllText(note, "");
        int made = 0;
        BackupRequests.Answer(_temp.Folder, p => { made++; return _temp.Store.Backup(p); }, DateTimeOffset.UtcNow + TimeSpan.FromHours(1),
            TimeSpan.FromMinutes(5));
        Assert.Equal(0, made);
        Assert.Empty(Directory.GetFiles(_temp.Folder.RequestsPath));
    }

    public void Dispose() => _temp.Dispose();
}
