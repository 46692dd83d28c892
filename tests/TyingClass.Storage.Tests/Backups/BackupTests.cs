using System.IO.Compression;
using TyingClass.Storage.Backups;
using TyingClass.Storage.BenchLog;
using TyingClass.Storage.Files;
using Xunit;

namespace TyingClass.Storage.Tests.Backups;

public sealed class BackupTests : IDisposable
{
    private readonly TempStore _temp = new();

    [Fact]
    public void Backup_Restored_HoldsTheSameDocuments()
    {
        _temp.Store.People.AddGuest("Wren");
        _temp.Store.Attempts.Add("p1", "keel-03", "a", Grades.Passed);
        string path = _temp.PathBeside("backup.zip");

        BackupContents contents = _temp.Store.Backup(path);

        Assert.Equal((1, 1, 1), (contents.Documents["people"], contents.Documents["attempts"], contents.Documents["standings"]));
        Assert.Equal([path], Directory.GetFiles(_temp.PathBeside(""), "backup.zip*"));
        DataFolder other = DataFolder.At(_temp.PathBeside("restored"));
        Restored restored = Restoring.Restore(other, path, _temp.Clock.GetUtcNow());
        Assert.Null(restored.KeptAs);
        Assert.Equal(contents.Documents, restored.Contents.Documents);
        using ClassStore reopened = new(other, _temp.Clock);
        Assert.True(Assert.Single(reopened.Attempts.Of("p1", "keel-03")).Passed);
    }

    [Fact]
    public void Backup_WithAPhoto_IsRestoredByteForByteWhereItsEntryNamesIt()
    {
        byte[] jpeg = [0xFF, 0xD8, .. Enumerable.Range(0, 5000).Select(i => (byte)(i * 31)), 0xFF, 0xD9];
        LogEntry entry = _temp.Store.BenchLog.Add(
            "p1", null, new TiedFly("Mill Candle", "recipe: Mill Candle\n", FlySource.Text, null, 0), new Seen { MassKg = 0.0012 },
            new Foreseen(0.2, "point up", 0.0011, 0.2, "engine"), "");
        Assert.True(_temp.Store.BenchLog.SetPhoto(entry.Id, "p1", jpeg));
        string path = _temp.PathBeside("backup.zip");
        Assert.Single(_temp.Store.Backup(path).Photos);

        DataFolder other = DataFolder.At(_temp.PathBeside("restored"));
        Restoring.Restore(other, path, _temp.Clock.GetUtcNow());

        using ClassStore reopened = new(other, _temp.Clock);
        Assert.Equal(jpeg, reopened.Photos.Find(reopened.BenchLog.Find(entry.Id)!.PhotoId!));
        Assert.Single(Directory.GetFiles(other.PhotosPath));
    }

    [Fact]
    public async Task Backup_WhileOthersWrite_IsWholeAndLosesNothingOfTheirs()
    {
        using CancellationTokenSource enough = new();
        Task<int> writer = Task.Run(
            () =>
            {
                int written = 0;
                for (; !enough.IsCancellationRequested; written++) _temp.Store.Attempts.Add($"p{written % 7}", "keel-03", $"answer {written}", Grades.Failed);
                return written;
            },
            TestContext.Current.CancellationToken);
        List<(string Path, BackupContents Contents)> made = [];
        for (int i = 0; i < 5; i++)
        {
            string path = _temp.PathBeside($"backup-{i}.zip");
            made.Add((path, _temp.Store.Backup(path)));
        }

        await enough.CancelAsync();
        int all = await writer;

        Assert.Equal(all, Enumerable.Range(0, 7).Sum(p => _temp.Store.Attempts.Of($"p{p}", "keel-03").Length));
        foreach ((string path, BackupContents contents) in made)
        {
            DataFolder other = DataFolder.At(path + ".folder");
            Restoring.Restore(other, path, _temp.Clock.GetUtcNow());
            using ClassStore reopened = new(other, _temp.Clock);
            // A standing is written together with its attempt: a copy made in between would tell.
            int standing = Enumerable.Range(0, 7).Sum(p => reopened.Attempts.StandingOf($"p{p}", "keel-03").Attempts);
            Assert.Equal(contents.Documents.GetValueOrDefault("attempts"), standing);
        }
    }

    [Fact]
    public void Backup_ToAFolderThatIsNotThere_ThrowsAndTheStoreGoesOn()
    {
        Assert.Throws<StorageException>(() => _temp.Store.Backup(_temp.PathBeside("nowhere/backup.zip")));
        _temp.Store.Attempts.Add("p1", "keel-03", "a", Grades.Passed);
        Assert.Single(_temp.Store.Attempts.Of("p1", "keel-03"));
    }

    [Fact]
    public void Restore_OverOtherData_KeepsThemBesideWithTheirLog()
    {
        _temp.Store.Attempts.Add("p1", "keel-03", "old", Grades.Passed);
        string path = _temp.PathBeside("backup.zip");
        _temp.Store.Backup(path);
        _temp.Store.Attempts.Add("p1", "keel-03", "newer than the backup", Grades.Passed);
        _temp.Store.Dispose();

        Restored restored = Restoring.Restore(_temp.Folder, path, _temp.Clock.GetUtcNow());

        _temp.Reopen();
        Assert.Equal("old", Assert.Single(_temp.Store.Attempts.Of("p1", "keel-03")).AnswerText);
        DataFolder before = DataFolder.At(_temp.PathBeside("before"));
        File.Copy(restored.KeptAs!, before.DatabasePath);
        string log = restored.KeptAs![..^".db".Length] + "-log.db";
        if (File.Exists(log)) File.Copy(log, before.LogPath);
        using ClassStore kept = new(before, _temp.Clock);
        Assert.Equal(["old", "newer than the backup"], kept.Attempts.Of("p1", "keel-03").Select(a => a.AnswerText));
    }

    [Theory]
    [InlineData("cut short")]
    [InlineData("one byte changed")]
    [InlineData("no zip at all")]
    [InlineData("another zip")]
    [InlineData("list altered")]
    public void Restore_DamagedFile_IsRefusedAndChangesNothing(string damage)
    {
        _temp.Store.Attempts.Add("p1", "keel-03", "still here", Grades.Passed);
        string path = _temp.PathBeside("backup.zip");
        _temp.Store.Backup(path);
        Damage(path, damage);
        _temp.Store.Dispose();

        Assert.Throws<BackupDamagedException>(() => Restoring.Restore(_temp.Folder, path, _temp.Clock.GetUtcNow()));

        _temp.Reopen();
        Assert.Equal("still here", Assert.Single(_temp.Store.Attempts.Of("p1", "keel-03")).AnswerText);
        Assert.Empty(Directory.GetFiles(_temp.Folder.Path, "*restor*"));
    }

    [Fact]
    public void Restore_FolderInUse_IsRefused()
    {
        string path = _temp.PathBeside("backup.zip");
        _temp.Store.Backup(path);
        StorageException refused = Assert.Throws<StorageException>(() => Restoring.Restore(_temp.Folder, path, _temp.Clock.GetUtcNow()));
        Assert.Contains("Stop", refused.Message, StringComparison.Ordinal);
    }

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

        BackupContents contents =
            await Task.Run(() => BackupRequests.Ask(_temp.Folder, path, TimeProvider.System, TimeSpan.FromSeconds(30)), TestContext.Current.CancellationToken);

        await enough.CancelAsync();
        await server;
        Assert.Equal(1, contents.Documents["people"]);
        Assert.True(File.Exists(path));
        Assert.Empty(Directory.GetFiles(_temp.Folder.RequestsPath));
    }

    [Fact]
    public void Ask_NobodyAnswers_SaysSoAndTakesTheNoteBack()
    {
        StorageException refused = Assert.Throws<StorageException>(
            () => BackupRequests.Ask(_temp.Folder, _temp.PathBeside("asked.zip"), TimeProvider.System, TimeSpan.FromMilliseconds(300)));
        Assert.Contains(_temp.Folder.Path, refused.Message, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(_temp.Folder.RequestsPath));
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

    private static void Damage(string path, string damage)
    {
        byte[] bytes = File.ReadAllBytes(path);
        switch (damage)
        {
            case "cut short":
                File.WriteAllBytes(path, bytes[..(bytes.Length / 2)]);
                break;
            case "one byte changed":
                // In the head of what was packed. Farther on stand pages of zeros, where another bit can unpack to the very same file, and is no damage.
                bytes[90] ^= 0x10;
                File.WriteAllBytes(path, bytes);
                break;
            case "no zip at all":
                File.WriteAllText(path, "a shopping list");
                break;
            case "another zip":
                File.Delete(path);
                using (ZipArchive zip = ZipFile.Open(path, ZipArchiveMode.Create)) zip.CreateEntry("holiday.jpg");
                break;
            default:
                using (ZipArchive zip = ZipFile.Open(path, ZipArchiveMode.Update))
                {
                    string text;
                    using (StreamReader reader = new(zip.GetEntry("contents.json")!.Open())) text = reader.ReadToEnd();
                    zip.GetEntry("contents.json")!.Delete();
                    using StreamWriter writer = new(zip.CreateEntry("contents.json").Open());
                    writer.Write(text.Replace("\"attempts\":1", "\"attempts\":2", StringComparison.Ordinal));
                }

                break;
        }
    }
}
