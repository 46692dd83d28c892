using System.Collections.Immutable;
using LiteDB;
using TyingClass.Storage.Backups;
using TyingClass.Storage.BenchLog;
using TyingClass.Storage.Files;
using TyingClass.Storage.Upgrades;
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
        string path = _temp.PathBeside("nowhere/backup.zip");
        StorageException refused = Assert.Throws<StorageException>(() => _temp.Store.Backup(path));
        Assert.StartsWith($"No backup of {_temp.Folder.Path} was made at {path}: ", refused.Message, StringComparison.Ordinal);
        _temp.Store.Attempts.Add("p1", "keel-03", "a", Grades.Passed);
        Assert.Single(_temp.Store.Attempts.Of("p1", "keel-03"));
    }

    [Fact]
    public void Backup_PlaceTakenByAFolder_LeavesNothingHalfMadeBesideIt()
    {
        string path = _temp.PathBeside("backup.zip");
        Directory.CreateDirectory(path);
        Assert.Throws<StorageException>(() => _temp.Store.Backup(path));
        Assert.Empty(Directory.GetFiles(_temp.PathBeside(""), "backup.zip*"));
    }

    [Fact]
    public void Backup_LeftoversOfOneThatWasCutOff_AreNotInItsWay()
    {
        string path = _temp.PathBeside("backup.zip");
        foreach (string left in new[] { ".copy", ".part" }) File.WriteAllText(path + left, "half a backup");
        File.WriteAllText(path, "the last one");
        _temp.Store.People.AddGuest("Wren");
        Assert.Equal(1, _temp.Store.Backup(path).Documents["people"]);
        Assert.Equal([path], Directory.GetFiles(_temp.PathBeside(""), "backup.zip*"));
        Assert.Equal(1, Restoring.Restore(DataFolder.At(_temp.PathBeside("restored")), path, _temp.Clock.GetUtcNow()).Contents.Documents["people"]);
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

    /// <summary>Read back as whoever restores it would: data of a later program are none of ours.</summary>
    [Fact]
    public void Backup_DataOfALaterProgram_IsRefusedWithBothFormats()
    {
        string path = _temp.PathBeside("backup.zip");
        StorageException refused = Assert.Throws<StorageException>(() => BackupFile.Write(
            to =>
            {
                _temp.Store.Dispose();
                File.Copy(_temp.Folder.DatabasePath, to);
                using LiteDatabase db = DatabaseFile.OpenFile(to);
                db.UserVersion = FileFormat.Current + 1;
                db.Checkpoint();
            },
            _temp.Folder, path, _temp.Clock.GetUtcNow()));

        Assert.Contains($"its data are of format {FileFormat.Current + 1}, and this one reads up to {FileFormat.Current}.", refused.Message,
            StringComparison.Ordinal);
    }

    /// <summary>Read to its last record before it is called a backup.</summary>
    [Fact]
    public void Backup_CopyWithABrokenPage_IsNoneAndLeavesNothing()
    {
        for (int i = 1; i <= 100; i++) _temp.AddAnswer(i);
        string path = _temp.PathBeside("backup.zip");

        StorageException refused = Assert.Throws<StorageException>(() => BackupFile.Write(
            to =>
            {
                _temp.Store.Dispose();
                byte[] bytes = File.ReadAllBytes(_temp.Folder.DatabasePath);
                const int pageBytes = 8192;
                // All but the first, which says what the file is.
                bytes.AsSpan(pageBytes).Clear();
                File.WriteAllBytes(to, bytes);
            },
            _temp.Folder, path, _temp.Clock.GetUtcNow()));

        Assert.StartsWith($"No backup of {_temp.Folder.Path} was made at {path}: ", refused.Message, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(_temp.PathBeside(""), "backup.zip*"));
    }

    [Fact]
    public void Restore_FileThatIsNotThere_SaysWhatWasNotRestoredWhere()
    {
        _temp.Store.Dispose();
        string path = _temp.PathBeside("nowhere.zip");
        StorageException refused = Assert.Throws<StorageException>(() => Restoring.Restore(_temp.Folder, path, _temp.Clock.GetUtcNow()));
        Assert.StartsWith($"{path} was not restored into {_temp.Folder.Path}: ", refused.Message, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_temp.Folder.IncomingPath));
    }

    [Fact]
    public void Restore_DataThatWereDamaged_PutsTheBookAsideWithThem()
    {
        string path = _temp.PathBeside("backup.zip");
        _temp.Store.Backup(path);
        _temp.Store.Dispose();
        File.WriteAllText(_temp.Folder.DamagePath, "found damaged");

        Restoring.Restore(_temp.Folder, path, _temp.Clock.GetUtcNow());

        _temp.Reopen();
        Assert.Empty(_temp.Store.Damage.Lines);
        Assert.Equal("found damaged", File.ReadAllText(Path.Combine(_temp.Folder.Path, "before-restore-20260114-193000.damage.txt")));
    }

    [Fact]
    public void Restore_OnUnix_IsItsOwnersAlone()
    {
        if (OperatingSystem.IsWindows()) return;
        string path = _temp.PathBeside("backup.zip");
        _temp.Store.Backup(path);
        DataFolder other = DataFolder.At(_temp.PathBeside("restored"));
        Restoring.Restore(other, path, _temp.Clock.GetUtcNow());
        foreach (string file in new[] { path, other.DatabasePath })
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(file));
    }

    [Fact]
    public void Said_OfABackup_CountsWhatAPersonCanCheck()
    {
        // 14 + 231 + 5 = 250.
        BackupContents contents = new(
            1, default, ImmutableSortedDictionary.CreateRange(new Dictionary<string, int> { ["people"] = 14, ["attempts"] = 231, ["standings"] = 5 }), "",
            ImmutableSortedDictionary.CreateRange(new Dictionary<string, string> { ["a.jpg"] = "", ["b.jpg"] = "" }));
        Assert.Equal("14 people, 231 attempts, 2 photos, 250 records in all", contents.Said);
        Assert.Equal("14 people, 231 attempts, 2 photos, 250 records in all, 3 of them damaged", (contents with { Damaged = 3 }).Said);
    }

    [Fact]
    public void Restore_FolderInUse_IsRefused()
    {
        string path = _temp.PathBeside("backup.zip");
        _temp.Store.Backup(path);
        StorageException refused = Assert.Throws<StorageException>(() => Restoring.Restore(_temp.Folder, path, _temp.Clock.GetUtcNow()));
        Assert.Contains("Stop", refused.Message, StringComparison.Ordinal);
    }

    public void Dispose() => _temp.Dispose();
}
