using System.Text;
using LiteDB;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Files;
using TyingClass.Storage.People;
using Xunit;

namespace TyingClass.Storage.Tests.Damages;

/// <summary>A disk that gives back other bytes than were written: named, never overwritten, and no more lost than what was hit.</summary>
public sealed class DamageTests : IDisposable
{
    private const int PageBytes = 8192;

    // Of LiteDB's kinds of pages.
    private const int IndexPage = 3;
    private const int RecordPage = 4;

    // Of the head of a file, which LiteDB marks when it finds a page broken.
    private const int BrokenMark = 191;

    private readonly TempStore _temp = new();

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void Read_BitFlippedInOneRecord_LeavesOutThatRecordAndNamesIt()
    {
        Attempt hit = Add(1);
        Add(2);
        Damage(bytes => bytes[Find(bytes, "answer 1 ")] ^= 0x04);

        Assert.Equal(["answer 2 of Wren"], _temp.Store.Attempts.Of("p1", "keel-03").Select(a => a.AnswerText));

        string line = Assert.Single(_temp.Store.Damage.Lines);
        Assert.Contains("attempts", line, StringComparison.Ordinal);
        Assert.Contains(hit.Id, line, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_DamagedRecord_IsStillNamedAfterARestart()
    {
        Add(1);
        Damage(bytes => bytes[Find(bytes, "answer 1 ")] ^= 0x04);
        _temp.Store.Attempts.Of("p1", "keel-03");
        _temp.Reopen();
        Assert.Single(_temp.Store.Damage.Lines);
        Assert.True(File.Exists(_temp.Store.Damage.Path));
    }

    [Fact]
    public void Verify_BitFlippedInARecordNobodyReads_FindsIt()
    {
        for (int i = 1; i <= 300; i++) Add(i);
        Damage(bytes => bytes[Find(bytes, "answer 222 ")] ^= 0x04);
        Assert.Empty(_temp.Store.Damage.Lines);

        Assert.InRange(_temp.Store.Verify(TestContext.Current.CancellationToken), 300, 400);

        Assert.Contains("attempts", Assert.Single(_temp.Store.Damage.Lines), StringComparison.Ordinal);
    }

    [Fact]
    public void Verify_WholeFile_FindsNothing()
    {
        for (int i = 1; i <= 30; i++) Add(i);
        _temp.Store.People.AddGuest("Wren");
        _temp.Reopen();
        _temp.Store.Verify(TestContext.Current.CancellationToken);
        Assert.Empty(_temp.Store.Damage.Lines);
    }

    [Fact]
    public void Add_AfterADamagedAttempt_TakesANumberThatIsFree()
    {
        Add(1);
        Add(2);
        Damage(bytes => bytes[Find(bytes, "answer 2 ")] ^= 0x04);
        _temp.Store.Attempts.Judge(_temp.Store.Attempts.Of("p1", "keel-03")[0].Id, 0, Someone, accepted: true, "It does.");
        Assert.Equal(3, Add(3).Number);
        Assert.Equal([1, 3], _temp.Store.Attempts.Of("p1", "keel-03").Select(a => a.Number));
    }

    [Fact]
    public void Verify_DamagedStanding_IsWorkedOutAnew()
    {
        Add(1);
        Add(2);
        // Its own name of the exercise stands in the standing's id and in each attempt; "failed" as a key stands in standings alone.
        Damage(bytes => bytes[Find(bytes, "failed\0") + "failed\0".Length] ^= 0x01);

        _temp.Store.Verify(TestContext.Current.CancellationToken);

        Assert.Equal((2, 2), (_temp.Store.Attempts.StandingOf("p1", "keel-03").Attempts, _temp.Store.Attempts.StandingOf("p1", "keel-03").Failed));
        Assert.Contains("worked out anew", Assert.Single(_temp.Store.Damage.Lines), StringComparison.Ordinal);
        Assert.Equal(2, Assert.Single(_temp.Store.Attempts.StandingsOf("p1")).Attempts);
    }

    [Fact]
    public void Notes_BitFlippedInANote_LeaveOutThatAttemptAndNameIt()
    {
        Attempt hit = Add(1);
        Add(2);
        Damage(bytes => bytes[Find(bytes, AttemptNote.KeyOf("answer 1 of Wren"))] ^= 0x01);

        Assert.Equal([2], _temp.Store.Attempts.NotesOf("p1").Select(n => n.Number));

        Assert.Contains(hit.Id, Assert.Single(_temp.Store.Damage.Lines), StringComparison.Ordinal);
    }

    [Fact]
    public void Notes_RestOfTheAttemptDamaged_AreLeftOutOnceThatIsFound()
    {
        Add(1);
        Add(2);
        Damage(bytes => bytes[Find(bytes, "answer 1 ")] ^= 0x04);
        Assert.Equal([1, 2], _temp.Store.Attempts.NotesOf("p1").Select(n => n.Number).Order());
        _temp.Store.Verify(TestContext.Current.CancellationToken);
        Assert.Equal([2], _temp.Store.Attempts.NotesOf("p1").Select(n => n.Number));
    }

    [Fact]
    public void Notes_KeptBeforeTheyHadAChecksum_ReadAndGetOne()
    {
        Add(1);
        _temp.Store.Dispose();
        using (LiteDatabase raw = DatabaseFile.OpenFile(_temp.Folder.DatabasePath))
        {
            ILiteCollection<BsonDocument> attempts = raw.GetCollection(AttemptDocument.Collection);
            BsonDocument old = attempts.FindAll().Single();
            Assert.True(old["note"].AsDocument.Remove(Checksum.Field));
            attempts.Update(Checksum.Put(AttemptDocument.Collection, old));
        }

        _temp.Reopen();
        Assert.Equal([1], _temp.Store.Attempts.NotesOf("p1").Select(n => n.Number));
        _temp.Store.Verify(TestContext.Current.CancellationToken);
        _temp.Store.Dispose();
        using (LiteDatabase raw = DatabaseFile.OpenFile(_temp.Folder.DatabasePath))
            Assert.True(AttemptNote.HasSum(raw.GetCollection(AttemptDocument.Collection).FindAll().Single()));
        _temp.Reopen();
        Assert.Equal(["answer 1 of Wren"], _temp.Store.Attempts.Of("p1", "keel-03").Select(a => a.AnswerText));
        Assert.Equal([1], _temp.Store.Attempts.NotesOf("p1").Select(n => n.Number));
        Assert.Empty(_temp.Store.Damage.Lines);
    }

    [Fact]
    public void Find_OfNoId_IsNothingAndNoDamage()
    {
        Add(1);
        Assert.Null(_temp.Store.Attempts.Find(null!));
        Assert.Null(_temp.Store.Patterns.Find(null!));
        Assert.Null(_temp.Store.BenchLog.Find(null!));
        Assert.Empty(_temp.Store.Damage.Lines);
    }

    [Theory]
    [InlineData(IndexPage)]
    [InlineData(RecordPage)]
    public void Read_PageZeroed_IsMendedWithTheRestWholeAndTheOldFileKept(int pageType)
    {
        for (int i = 1; i <= 400; i++) Add(i);
        _temp.Store.Dispose();
        byte[] broken = [.. File.ReadAllBytes(_temp.Folder.DatabasePath)];
        // One page of records from the middle; of the ways to them, every page there is.
        int[] pages = [.. Enumerable.Range(0, broken.Length / PageBytes).Where(p => broken[(p * PageBytes) + 4] == pageType)];
        foreach (int page in pageType == RecordPage ? pages[12..13] : pages) broken.AsSpan(page * PageBytes, PageBytes).Clear();
        File.WriteAllBytes(_temp.Folder.DatabasePath, broken);

        _temp.Reopen();
        int there = _temp.Store.Attempts.Of("p1", "keel-03").Length;
        _temp.Store.Verify(TestContext.Current.CancellationToken);

        Assert.InRange(there, 380, 400);
        if (pageType == IndexPage) Assert.Equal(400, there);
        Assert.Contains(_temp.Store.Damage.Lines, l => l.Contains("mended", StringComparison.Ordinal));
        Assert.Equal(400 - there, _temp.Store.Damage.Lines.Count(l => l.Contains("of attempts", StringComparison.Ordinal)));
        byte[] kept = File.ReadAllBytes(Assert.Single(Directory.GetFiles(_temp.Folder.Path, "damaged-*.db")));
        kept[BrokenMark] = broken[BrokenMark];
        Assert.Equal(broken, kept);
        Assert.Equal(401, Add(401).Number);
        _temp.Reopen();
        Assert.Equal(there + 1, _temp.Store.Attempts.Of("p1", "keel-03").Length);
    }

    [Fact]
    public void Open_FileCutShort_IsRefusedNamingWhatIsMissingAndChangesNothing()
    {
        for (int i = 1; i <= 500; i++) Add(i);
        _temp.Store.Dispose();
        byte[] whole = File.ReadAllBytes(_temp.Folder.DatabasePath), rest = whole[..(whole.Length / 8 * 7)];
        File.WriteAllBytes(_temp.Folder.DatabasePath, rest);

        StorageException refused = Assert.Throws<StorageException>(() => new ClassStore(_temp.Folder, _temp.Clock));

        Assert.Contains("cut short", refused.Message, StringComparison.Ordinal);
        Assert.Contains("restore", refused.Message, StringComparison.Ordinal);
        Assert.Equal(rest, File.ReadAllBytes(_temp.Folder.DatabasePath));
        using ClassStore goneOn = new(_temp.Folder, _temp.Clock, acceptLoss: true);
        Assert.InRange(goneOn.Attempts.Of("p1", "keel-03").Length, 1, 499);
        Assert.Contains(goneOn.Damage.Lines, l => l.Contains("before-loss", StringComparison.Ordinal));
        Assert.Equal(rest, File.ReadAllBytes(Assert.Single(Directory.GetFiles(_temp.Folder.Path, "before-loss-*.db"))));
    }

    [Fact]
    public void Open_LogDeleted_IsRefusedNamingHowManyAnswersAreMissing()
    {
        DataFolder copy = Killed(() =>
        {
            for (int i = 1; i <= 60; i++) Add(i);
        });
        File.Delete(copy.LogPath);

        StorageException refused = Assert.Throws<StorageException>(() => new ClassStore(copy, _temp.Clock));

        Assert.Contains("60 writes that were acknowledged", refused.Message, StringComparison.Ordinal);
        Assert.Contains(copy.LogPath, refused.Message, StringComparison.Ordinal);
        using ClassStore goneOn = new(copy, _temp.Clock, acceptLoss: true);
        Assert.Empty(goneOn.Attempts.Of("p1", "keel-03"));
        Assert.Contains("60 writes", Assert.Single(goneOn.Damage.Lines), StringComparison.Ordinal);
    }

    [Fact]
    public void Open_LogPutBack_GoesOnAsIfNothingHadBeen()
    {
        DataFolder copy = Killed(() => Add(1));
        byte[] log = File.ReadAllBytes(copy.LogPath);
        File.Delete(copy.LogPath);
        Assert.Throws<StorageException>(() => new ClassStore(copy, _temp.Clock));
        File.WriteAllBytes(copy.LogPath, log);
        using ClassStore store = new(copy, _temp.Clock);
        Assert.Single(store.Attempts.Of("p1", "keel-03"));
        Assert.Empty(store.Damage.Lines);
    }

    [Fact]
    public void Open_LogCutShort_NamesTheAnswersThatWereInItsEnd()
    {
        DataFolder copy = Killed(() =>
        {
            for (int i = 1; i <= 20; i++) Add(i);
        });
        using (FileStream log = new(copy.LogPath, FileMode.Open)) log.SetLength(log.Length / PageBytes / 2 * PageBytes);
        StorageException refused = Assert.Throws<StorageException>(() => new ClassStore(copy, _temp.Clock));
        Assert.Matches(@"\b\d+ writes that were acknowledged", refused.Message);
    }

    [Fact]
    public void Open_LastWriteTorn_IsNoLossWhereItWasNotAcknowledged()
    {
        DataFolder copy = Killed(() =>
        {
            for (int i = 1; i <= 5; i++) Add(i);
        });
        // A power failure in the middle of the next write: rest a page of rubbish at the end of the log.
        using (FileStream log = new(copy.LogPath, FileMode.Append)) log.Write(Enumerable.Repeat((byte)0xA5, PageBytes / 2).ToArray());
        using ClassStore store = new(copy, _temp.Clock);
        Assert.Equal(5, store.Attempts.Of("p1", "keel-03").Length);
    }

    private static Person Someone { get; } = new("m1", Role.Mentor, "Mentor", null, "", default, default);

    private Attempt Add(int number) => _temp.Store.Attempts.Add("p1", "keel-03", $"answer {number} of Wren", Grades.Failed);

    private static int Find(byte[] bytes, string text) =>
        bytes.AsSpan().IndexOf(Encoding.UTF8.GetBytes(text)) is >= 0 and var at ? at : throw new InvalidOperationException($"No “{text}” in the file.");

    /// <summary>With the server stopped; the log is folded in by then.</summary>
    private void Damage(Action<byte[]> change)
    {
        _temp.Reopen();
        _temp.Store.Dispose();
        byte[] bytes = File.ReadAllBytes(_temp.Folder.DatabasePath);
        change(bytes);
        File.WriteAllBytes(_temp.Folder.DatabasePath, bytes);
        _temp.Reopen();
    }

    /// <summary>What a kill leaves behind.</summary>
    private DataFolder Killed(Action work)
    {
        work();
        DataFolder copy = DataFolder.At(_temp.PathBeside("killed"));
        foreach (string path in new[] { _temp.Folder.DatabasePath, _temp.Folder.LogPath, _temp.Folder.CountPath })
        {
            using FileStream from = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            using FileStream to = File.Create(Path.Combine(copy.Path, Path.GetFileName(path)));
            from.CopyTo(to);
        }

        return copy;
    }
}
