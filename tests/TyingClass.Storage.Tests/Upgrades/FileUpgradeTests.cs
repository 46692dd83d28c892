using System.IO.Compression;
using System.Security.Cryptography;
using LiteDB;
using Microsoft.Extensions.Time.Testing;
using TyingClass.Storage.Backups;
using TyingClass.Storage.Files;
using TyingClass.Storage.Upgrades;
using Xunit;

namespace TyingClass.Storage.Tests.Upgrades;

/// <summary>
/// format-1.zip is a backup of the invented class as the program of 28 November 2026 (commit 03ceed2, before files carried a format) made it:
/// 16 people, 1912 attempts, 3268 records in all, as that program said when it made it.
/// </summary>
public sealed class FileUpgradeTests : IDisposable
{
    private static readonly string Fixture = Path.Combine(AppContext.BaseDirectory, "Upgrades", "format-1.zip");

    private readonly DirectoryInfo _directory = Directory.CreateTempSubdirectory("tying-class-upgrade-");
    private readonly FakeTimeProvider _clock = new(new DateTimeOffset(2026, 11, 29, 9, 30, 0, TimeSpan.Zero));

    private DataFolder Folder => DataFolder.At(Path.Combine(_directory.FullName, "data"));

    public void Dispose() => _directory.Delete(recursive: true);

    [Fact]
    public void Open_FileOfTheFirstFormat_IsUpgradedAndKeepsEverything()
    {
        LayFixture();

        using ClassStore store = new(Folder, _clock);

        Upgraded upgraded = Assert.IsType<Upgraded>(store.Upgraded);
        Assert.Equal((1, FileFormat.Current), (upgraded.From, upgraded.To));
        Assert.Equal(1912, store.Attempts.StandingsOf(store.People.All().Select(p => p.Id)).Sum(s => s.Attempts));
        Assert.Equal(16, store.People.All().Length);
        Assert.True(store.IsInvented);
        Assert.NotNull(store.Accounts.FindByName("Wren"));
        Assert.Single(store.Classes.All());
    }

    [Fact]
    public void Open_FileOfTheFirstFormat_LeavesABackupOfWhatItWas()
    {
        byte[] before = LayFixture();
        string path;
        using (ClassStore store = new(Folder, _clock)) path = store.Upgraded!.BackupPath;

        Assert.Equal($"before-upgrade-1-to-{FileFormat.Current}-20261129-093000.zip", Path.GetFileName(path));
        using (ZipArchive zip = ZipFile.OpenRead(path))
        using (Stream inside = zip.GetEntry("class.db")!.Open())
        using (MemoryStream bytes = new())
        {
            inside.CopyTo(bytes);
            Assert.Equal(before, bytes.ToArray());
        }

        DataFolder other = DataFolder.At(Path.Combine(_directory.FullName, "other"));
        Assert.Equal(1912, Restoring.Restore(other, path, _clock.GetUtcNow()).Contents.Documents["attempts"]);
    }

    [Fact]
    public void Open_UpgradedFile_IsUpgradedOnce()
    {
        LayFixture();
        new ClassStore(Folder, _clock).Dispose();

        using ClassStore again = new(Folder, _clock);

        Assert.Null(again.Upgraded);
        Assert.Single(Directory.GetFiles(Folder.Path, "before-upgrade-*"));
    }

    [Fact]
    public void Open_NewFile_IsOfThisFormatWithoutAnUpgrade()
    {
        using (ClassStore store = new(Folder, _clock)) Assert.Null(store.Upgraded);

        Assert.Equal(FileFormat.Current, FormatOfFile());
    }

    [Fact]
    public void Open_NewerFile_IsRefusedInWordsAndLeftAlone()
    {
        new ClassStore(Folder, _clock).Dispose();
        SetFormat(FileFormat.Current + 7);
        byte[] before = File.ReadAllBytes(Folder.DatabasePath);

        StorageException refused = Assert.Throws<StorageException>(() => new ClassStore(Folder, _clock));

        Assert.Contains("newer TyingClass", refused.Message, StringComparison.Ordinal);
        Assert.Contains($"its format is {FileFormat.Current + 7}, and this one reads up to {FileFormat.Current}", refused.Message, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(Folder.DatabasePath));
        Assert.Empty(Directory.GetFiles(Folder.Path, "before-upgrade-*"));
    }

    [Fact]
    public void Restore_BackupOfANewerFile_IsRefusedAndChangesNothing()
    {
        string backup = Path.Combine(_directory.FullName, "newer.zip");
        BackupContents contents;
        using (ClassStore store = new(Folder, _clock)) contents = store.Backup(backup);
        SetFormat(FileFormat.Current + 1);
        // As a newer program would write it: sound in itself.
        using (ZipArchive zip = ZipFile.Open(backup, ZipArchiveMode.Update))
        {
            foreach (ZipArchiveEntry old in zip.Entries.ToList()) old.Delete();
            zip.CreateEntryFromFile(Folder.DatabasePath, "class.db");
            using Stream list = zip.CreateEntry("contents.json").Open();
            System.Text.Json.JsonSerializer.Serialize(list,
                contents with { Sha256 = Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(Folder.DatabasePath))) });
        }

        DataFolder other = DataFolder.At(Path.Combine(_directory.FullName, "other"));

        BackupDamagedException refused = Assert.Throws<BackupDamagedException>(() => Restoring.Restore(other, backup, _clock.GetUtcNow()));

        Assert.Contains("newer TyingClass", refused.Message, StringComparison.Ordinal);
        Assert.False(File.Exists(other.DatabasePath));
    }

    [Fact]
    public void Upgrade_StepThatFails_LeavesTheFileAsItWasAndSaysSo()
    {
        byte[] before = LayFixture();
        UpgradeStep half = new(2, db => db.DropCollection("attempts")), broken = new(3, _ => throw new InvalidOperationException("the lamp went out"));

        StorageException failed = Assert.Throws<StorageException>(() => FileUpgrade.Run(Folder, _clock.GetUtcNow(), [half, broken]));

        Assert.Contains("the lamp went out", failed.Message, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(Folder.DatabasePath));
        Assert.Equal(["class.db"], Directory.GetFiles(Folder.Path, "class*").Select(Path.GetFileName));
    }

    [Fact]
    public void Upgrade_SeveralSteps_RunInOrderFromTheFilesOwnFormatOn()
    {
        LayFixture();
        SetFormat(2);
        List<int> ran = [];
        UpgradeStep Step(int to) => new(to, db => { ran.Add(to); db.GetCollection("marks").Upsert(new BsonDocument { ["_id"] = $"step {to}" }); });

        Upgraded? upgraded = FileUpgrade.Run(Folder, _clock.GetUtcNow(), [Step(2), Step(3), Step(4)]);

        Assert.Equal((2, 4), (upgraded!.From, upgraded.To));
        Assert.Equal([3, 4], ran);
        Assert.Equal(4, FormatOfFile());
        using LiteDatabase db = DatabaseFile.OpenFile(Folder.DatabasePath);
        Assert.NotNull(db.GetCollection("marks").FindById("step 4"));
        Assert.Equal(1912, db.GetCollection("attempts").Count());
    }

    [Fact]
    public void Restore_BackupOfTheFirstFormat_IsUpgradedWhenItIsOpened()
    {
        Restoring.Restore(Folder, Fixture, _clock.GetUtcNow());

        using ClassStore store = new(Folder, _clock);

        Assert.Equal(1, store.Upgraded?.From);
        Assert.Equal(16, store.People.All().Length);
    }

    private byte[] LayFixture()
    {
        using ZipArchive zip = ZipFile.OpenRead(Fixture);
        zip.GetEntry("class.db")!.ExtractToFile(Folder.DatabasePath);
        return File.ReadAllBytes(Folder.DatabasePath);
    }

    private void SetFormat(int format)
    {
        using LiteDatabase db = DatabaseFile.OpenFile(Folder.DatabasePath);
        db.UserVersion = format;
        db.Checkpoint();
    }

    private int FormatOfFile()
    {
        using LiteDatabase db = DatabaseFile.OpenFile(Folder.DatabasePath, readOnly: true);
        return db.UserVersion;
    }
}
