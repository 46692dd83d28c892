using System.Collections.Immutable;
using TyingClass.Storage.Backups;
using TyingClass.Storage.Files;
using Xunit;

namespace TyingClass.Storage.Tests.Backups;

public sealed class KeptBackupsTests : IDisposable
{
    private readonly TempStore _temp = new();

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void Make_NightAfterNight_KeepsSevenAndOneOfEachOfFourWeeksBefore()
    {
        _temp.Store.People.AddGuest("Wren");
        for (int night = 0; night < 60; night++)
        {
            KeptBackups.Make(_temp.Folder, _temp.Store.Backup, _temp.Clock.GetUtcNow());
            _temp.Clock.Advance(TimeSpan.FromDays(1));
        }

        string[] left = [.. Directory.GetFiles(_temp.Folder.BackupsPath).Order(StringComparer.Ordinal)];
        Assert.Equal(11, left.Length);
        Assert.Equal(KeptBackups.Latest(_temp.Folder), left[^1]);
        // Sixty nights from January 14: the last on March 14.
        Assert.Equal(["nightly-20260308-193000.zip", "nightly-20260314-193000.zip"], [Path.GetFileName(left[4]), Path.GetFileName(left[10])]);
        // Before the seven: the Sundays of three weeks, and of the week that the seven begin in its Saturday.
        Assert.Equal(["20260215", "20260222", "20260301", "20260307"], left[..4].Select(p => Path.GetFileName(p)["nightly-".Length..][..8]));
        Assert.Equal(1, Restoring.Restore(DataFolder.At(_temp.PathBeside("other")), left[0], _temp.Clock.GetUtcNow()).Contents.Documents["people"]);
    }

    [Fact]
    public void Make_ClockFarAhead_ThrowsNoneAwayForItsAge()
    {
        for (int night = 0; night < 5; night++)
        {
            KeptBackups.Make(_temp.Folder, _temp.Store.Backup, _temp.Clock.GetUtcNow());
            _temp.Clock.Advance(TimeSpan.FromDays(1));
        }

        _temp.Clock.Advance(TimeSpan.FromDays(10_000));
        KeptBackups.Make(_temp.Folder, _temp.Store.Backup, _temp.Clock.GetUtcNow());
        Assert.Equal(6, Directory.GetFiles(_temp.Folder.BackupsPath).Length);
    }

    [Fact]
    public void Make_BackupFails_LetsNoneGo()
    {
        for (int night = 0; night < 20; night++)
        {
            KeptBackups.Make(_temp.Folder, _temp.Store.Backup, _temp.Clock.GetUtcNow());
            _temp.Clock.Advance(TimeSpan.FromDays(1));
        }

        string[] before = Directory.GetFiles(_temp.Folder.BackupsPath);
        Assert.Throws<StorageException>(() => KeptBackups.Make(_temp.Folder, _ => throw new StorageException("The disk is full."), _temp.Clock.GetUtcNow()));
        Assert.Equal(before.Order(), Directory.GetFiles(_temp.Folder.BackupsPath).Order());
    }

    [Fact]
    public void Make_OtherFilesInTheFolder_AreNeitherCountedNorDeleted()
    {
        DataFolder.MakePrivate(_temp.Folder.BackupsPath);
        string[] others = ["nightly-x.zip", "nightly-20269999-999999.zip", "nightly-20260101-000000.txt", "before-the-fair.zip"];
        foreach (string name in others) File.WriteAllText(Path.Combine(_temp.Folder.BackupsPath, name), "");
        Assert.Null(KeptBackups.Latest(_temp.Folder));
        Assert.Null(KeptBackups.LatestAt(_temp.Folder));

        for (int night = 0; night < 8; night++)
        {
            KeptBackups.Make(_temp.Folder, _temp.Store.Backup, _temp.Clock.GetUtcNow());
            _temp.Clock.Advance(TimeSpan.FromHours(1));
        }

        // Seven, and before them the last of that week: eight.
        Assert.Equal(8 + others.Length, Directory.GetFiles(_temp.Folder.BackupsPath).Length);
        Assert.All(others, name => Assert.True(File.Exists(Path.Combine(_temp.Folder.BackupsPath, name))));
        Assert.Equal(new DateTimeOffset(2026, 1, 15, 2, 30, 0, TimeSpan.Zero), KeptBackups.LatestAt(_temp.Folder));
    }

    [Fact]
    public void Make_WhileDamageIsNotDealtWith_SaysSoInItsName()
    {
        File.WriteAllText(_temp.Folder.DamagePath, "found damaged");
        KeptBackups.Make(_temp.Folder, _temp.Store.Backup, _temp.Clock.GetUtcNow());
        Assert.Equal("nightly-20260114-193000-damaged.zip", Path.GetFileName(KeptBackups.Latest(_temp.Folder)));
        Assert.Equal(_temp.Clock.GetUtcNow(), KeptBackups.LatestAt(_temp.Folder));
    }

    [Fact]
    public void TooMany_OnlyDamagedOnesOfLate_KeepsTheLastWholeOne()
    {
        ImmutableArray<string> all =
        [
            "nightly-20260101-030000.zip", "nightly-20260102-030000.zip",
            .. Enumerable.Range(0, 90).Select(d => $"nightly-{new DateOnly(2026, 1, 3).AddDays(d):yyyyMMdd}-030000-damaged.zip"),
        ];
        ImmutableArray<string> gone = KeptBackups.TooMany(all);
        Assert.DoesNotContain("nightly-20260102-030000.zip", gone);
        Assert.Contains("nightly-20260101-030000.zip", gone);
        Assert.Equal(all.Length - 12, gone.Length);
    }

    [Fact]
    public void Backup_OfDataWithADamagedRecord_SaysSoAndCanBeRestored()
    {
        _temp.Store.Attempts.Add("p1", "keel-03", "answer of Wren", Grades.Passed);
        _temp.ChangeFile(bytes => bytes[bytes.AsSpan().IndexOf("answer of Wren"u8)] ^= 0x08);

        BackupContents made = _temp.Store.Backup(_temp.PathBeside("with-damage.zip"));

        Assert.Equal(1, made.Damaged);
        Assert.Contains("1 of them damaged", made.Said, StringComparison.Ordinal);
        DataFolder other = DataFolder.At(_temp.PathBeside("other"));
        Assert.Equal(1, Restoring.Restore(other, _temp.PathBeside("with-damage.zip"), _temp.Clock.GetUtcNow()).Contents.Damaged);

        DamagedBackupTests.Rewrite(
            _temp.PathBeside("with-damage.zip"), "contents.json", t => t.Replace("\"Damaged\":1", "\"Damaged\":0", StringComparison.Ordinal));
        Assert.Equal("It does not hold what its list of contents says.", Assert.Throws<BackupDamagedException>(
            () => Restoring.Restore(other, _temp.PathBeside("with-damage.zip"), _temp.Clock.GetUtcNow())).Message);
    }
}
