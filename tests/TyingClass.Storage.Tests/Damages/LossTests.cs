using TyingClass.Storage.Backups;
using TyingClass.Storage.Damages;
using TyingClass.Storage.Files;
using Xunit;

namespace TyingClass.Storage.Tests.Damages;

/// <summary>
/// Something that was kept is missing: the start is refused in words that say how much, since when and what to do about it, and changes nothing. The sentences
/// are written out from docs/reliability.md and docs/decisions/0037; figures and times are what the test itself did, counted by hand.
/// </summary>
public sealed class LossTests : IDisposable
{
    private const int PageBytes = 8192;
    private const string PutBack = "Nothing was changed. If the missing file is in the trash of this machine, put it back and start again.";
    private const string GoOn = "To go on with what can be read, start it once with --accept-loss: what is there now is kept beside it, whole.";

    private readonly TempStore _temp = new();

    public void Dispose() => _temp.Dispose();

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Open_LogDeletedOrEmptied_SaysHowManyWritesAndWhen(bool emptied)
    {
        for (int i = 1; i <= 60; i++) _temp.AddAnswer(i);
        DataFolder copy = _temp.CopyAsKilled();
        if (emptied) File.WriteAllBytes(copy.LogPath, []);
        else File.Delete(copy.LogPath);
        byte[] before = File.ReadAllBytes(copy.DatabasePath);

        StorageException refused = Refused(copy);

        Assert.Equal(
            $"60 writes that were acknowledged, the last at 2026-01-14 19:30:00 UTC, are missing: {copy.LogPath} was deleted or emptied while it was needed, "
            + $"or {copy.DatabasePath} is an older one. {PutBack} {NoBackup(copy)} {GoOn}",
            refused.Message);
        Assert.True(refused.IsLoss);
        Assert.Equal(before, File.ReadAllBytes(copy.DatabasePath));
        using ClassStore goneOn = new(copy, _temp.Clock, acceptLoss: true);
        Assert.Empty(goneOn.Attempts.Of("p1", "keel-03"));
        // What to do about it stands in the refusal; in the book, after it was accepted, it would mislead.
        string lost = refused.Message[..refused.Message.IndexOf(" Nothing was changed", StringComparison.Ordinal)];
        Assert.EndsWith($"What was lost: {lost}", Assert.Single(goneOn.Damage.Lines), StringComparison.Ordinal);
    }

    [Fact]
    public void Open_LogCutShort_SaysWhatIsMissingAfterWhen()
    {
        DataFolder copy = WithLogCutShort();
        byte[] data = File.ReadAllBytes(copy.DatabasePath), log = File.ReadAllBytes(copy.LogPath);

        StorageException refused = Refused(copy);

        Assert.Equal(
            "2 writes that were acknowledged, the last at 2026-01-14 19:40:00 UTC, are missing, everything after 2026-01-14 19:30:00 UTC: "
            + $"{copy.DatabasePath} or {copy.LogPath} is older or shorter than it was. {PutBack} {NoBackup(copy)} {GoOn}",
            refused.Message);
        Assert.Equal(data, File.ReadAllBytes(copy.DatabasePath));
        Assert.Equal(log, File.ReadAllBytes(copy.LogPath));
    }

    [Fact]
    public void Open_OneWriteMissingAndABackupThere_IsSaidOfOneAndNamesTheBackup()
    {
        _temp.AddAnswer(1);
        DataFolder copy = _temp.CopyAsKilled();
        File.Delete(copy.LogPath);
        KeptBackups.Make(copy, _temp.Store.Backup, _temp.Clock.GetUtcNow());

        string said = Refused(copy).Message;

        Assert.StartsWith("1 write that was acknowledged, at 2026-01-14 19:30:00 UTC, is missing: ", said, StringComparison.Ordinal);
        string backup = Path.Combine(copy.Path, "backups", "nightly-20260114-193000.zip");
        Assert.EndsWith(
            $"{PutBack} To go back to the last backup, stop the server and run: tying restore \"{backup}\" --data \"{copy.Path}\". {GoOn}", said,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Open_LossAccepted_KeepsDataLogAndCountBesideAndGoesOn()
    {
        DataFolder copy = WithLogCutShort();
        byte[] data = File.ReadAllBytes(copy.DatabasePath), log = File.ReadAllBytes(copy.LogPath), count = File.ReadAllBytes(copy.CountPath);
        string why = Refused(copy).Lost!, stem = Path.Combine(copy.Path, "before-loss-20260114-194000");

        using (ClassStore goneOn = new(copy, _temp.Clock, acceptLoss: true))
        {
            Assert.Equal([1, 2, 3], goneOn.Attempts.Of("p1", "keel-03").Select(a => a.Number));
            Assert.Equal(
                [$"2026-01-14 19:40 UTC: Gone on after a loss, as asked for. What was there is kept as {stem}.db. What was lost: {why}"], goneOn.Damage.Lines);
            goneOn.Attempts.Add("p1", "keel-03", "answer 4 of Wren", Grades.Failed);
        }

        Assert.Equal(data, File.ReadAllBytes(stem + ".db"));
        Assert.Equal(log, File.ReadAllBytes(stem + "-log.db"));
        Assert.Equal(count, File.ReadAllBytes(stem + ".count"));
        using ClassStore again = new(copy, _temp.Clock);
        Assert.Equal([1, 2, 3, 4], again.Attempts.Of("p1", "keel-03").Select(a => a.Number));
    }

    [Fact]
    public void Open_LogPutBack_GoesOnAsIfNothingHadBeen()
    {
        _temp.AddAnswer(1);
        DataFolder copy = _temp.CopyAsKilled();
        byte[] log = File.ReadAllBytes(copy.LogPath);
        File.Delete(copy.LogPath);
        Refused(copy);
        File.WriteAllBytes(copy.LogPath, log);
        using ClassStore store = new(copy, _temp.Clock);
        Assert.Single(store.Attempts.Of("p1", "keel-03"));
        Assert.Empty(store.Damage.Lines);
    }

    /// <summary>Found on the running program: the refused start made an empty file and a log, and the log spoiled the file that was put back.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Open_FileGoneOrEmptiedAndPutBack_IsRefusedAndThenGoesOn(bool emptied)
    {
        _temp.AddAnswer(1);
        _temp.Store.Dispose();
        byte[] whole = File.ReadAllBytes(_temp.Folder.DatabasePath);
        if (emptied) File.WriteAllBytes(_temp.Folder.DatabasePath, []);
        else File.Delete(_temp.Folder.DatabasePath);
        string[] before = Files();

        Assert.Equal(
            $"1 write that was acknowledged, at 2026-01-14 19:30:00 UTC, is missing: {_temp.Folder.DatabasePath} is {(emptied ? "empty" : "not there")}. "
            + $"{PutBack} {NoBackup(_temp.Folder)} To begin anew without it, start it once with --accept-loss.",
            Refused(_temp.Folder).Message);

        Assert.Equal(before, Files());
        File.WriteAllBytes(_temp.Folder.DatabasePath, whole);
        using ClassStore store = new(_temp.Folder, _temp.Clock);
        Assert.Single(store.Attempts.Of("p1", "keel-03"));
        Assert.Empty(store.Damage.Lines);

        string[] Files() => [.. Directory.GetFiles(_temp.Folder.Path).Order(StringComparer.Ordinal)];
    }

    [Fact]
    public void Open_FileGoneAndItsLogLeft_AcceptedBeginsAnewWithTheLogKeptBeside()
    {
        _temp.AddAnswer(1);
        DataFolder copy = _temp.CopyAsKilled();
        byte[] log = File.ReadAllBytes(copy.LogPath);
        File.Delete(copy.DatabasePath);
        Assert.Contains("is not there", Refused(copy).Message, StringComparison.Ordinal);

        using ClassStore anew = new(copy, _temp.Clock, acceptLoss: true);

        Assert.True(anew.IsEmpty);
        Assert.Equal(log, File.ReadAllBytes(Assert.Single(Directory.GetFiles(copy.Path, "before-loss-*-log.db"))));
    }

    /// <summary>Found on the running program: each try left a copy of the file and a note that it had gone on.</summary>
    [Fact]
    public void Open_CutShortWithNothingReadable_IsRefusedThoughAcceptedAndLeavesNothing()
    {
        _temp.AddAnswer(1);
        _temp.Store.Dispose();
        byte[] head = File.ReadAllBytes(_temp.Folder.DatabasePath)[..PageBytes];
        File.WriteAllBytes(_temp.Folder.DatabasePath, head);

        string said = Assert.Throws<StorageException>(() => new ClassStore(_temp.Folder, _temp.Clock, acceptLoss: true)).Message;

        Assert.Contains("cannot be mended", said, StringComparison.Ordinal);
        Assert.DoesNotContain("--accept-loss", said, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(_temp.Folder.Path, "before-loss-*"));
        Assert.False(File.Exists(_temp.Folder.DamagePath));
        Assert.True(File.Exists(_temp.Folder.CountPath));
        Assert.Equal(head, File.ReadAllBytes(_temp.Folder.DatabasePath));
    }

    [Fact]
    public void Open_LastWriteTorn_IsNoLossWhereItWasNotAcknowledged()
    {
        for (int i = 1; i <= 5; i++) _temp.AddAnswer(i);
        DataFolder copy = _temp.CopyAsKilled();
        // A power failure in the middle of the next write: rest a page of rubbish at the end of the log.
        using (FileStream log = new(copy.LogPath, FileMode.Append)) log.Write(Enumerable.Repeat((byte)0xA5, PageBytes / 2).ToArray());
        using ClassStore store = new(copy, _temp.Clock);
        Assert.Equal(5, store.Attempts.Of("p1", "keel-03").Length);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Open_FileCutShort_SaysHowManyPagesAndChangesNothing(bool emptyLog)
    {
        (int pages, int left, byte[] rest) = CutShort();
        if (emptyLog) File.WriteAllBytes(_temp.Folder.LogPath, []);

        StorageException refused = Refused(_temp.Folder);

        Assert.Equal(
            $"The data file {_temp.Folder.DatabasePath} is cut short: {pages - left} of its {pages} pages of 8 KB are missing, and with them what they held. "
            + $"Nothing was changed. {NoBackup(_temp.Folder)} {GoOn}",
            refused.Message);
        Assert.Equal(rest, File.ReadAllBytes(_temp.Folder.DatabasePath));
    }

    [Fact]
    public void Open_FileCutShortAccepted_IsMendedBeforeAnyoneReadsAndNamesWhatIsGone()
    {
        (_, _, byte[] rest) = CutShort();

        using ClassStore goneOn = new(_temp.Folder, _temp.Clock, acceptLoss: true);

        string[] atOnce = [.. goneOn.Damage.Lines];
        // Mended first: what cannot be mended is not gone on with.
        Assert.Contains("has been mended with all that could be read", atOnce[0], StringComparison.Ordinal);
        Assert.Contains("Gone on after a loss", atOnce[^1], StringComparison.Ordinal);
        int there = goneOn.Attempts.Of("p1", "keel-03").Length;
        Assert.InRange(there, 1, 499);
        goneOn.Verify(TestContext.Current.CancellationToken);
        Assert.Equal(atOnce, goneOn.Damage.Lines);
        Assert.Equal(rest, File.ReadAllBytes(Assert.Single(Directory.GetFiles(_temp.Folder.Path, "before-loss-*.db"))));
    }

    /// <summary>Records that reach into the other half would be read as if they ended in zeros.</summary>
    [Fact]
    public void Pad_HalfAPageAtTheEnd_IsEmptiedLikeThoseThatAreMissing()
    {
        (int pages, int left, byte[] rest) = CutShort();
        FileLength.Pad(_temp.Folder);
        Assert.Equal([.. rest[..(left * PageBytes)], .. new byte[(pages - left) * PageBytes]], File.ReadAllBytes(_temp.Folder.DatabasePath));
    }

    [Fact]
    public void Open_PagesOnlyInTheLog_AreNoneMissing()
    {
        _temp.AddAnswer(1);
        _temp.Reopen();
        for (int i = 2; i <= 200; i++) _temp.AddAnswer(i);
        // Cut off while the log was folded in: the head is written, which speaks of all pages, and none of the new ones is.
        DataFolder copy = _temp.CopyAsKilled();
        _temp.Store.Dispose();
        byte[] folded = File.ReadAllBytes(_temp.Folder.DatabasePath), old = File.ReadAllBytes(copy.DatabasePath);
        Assert.True(old.Length < folded.Length);
        folded.AsSpan(0, PageBytes).CopyTo(old);
        File.WriteAllBytes(copy.DatabasePath, old);

        using ClassStore store = new(copy, _temp.Clock);

        Assert.Equal(200, store.Attempts.Of("p1", "keel-03").Length);
        Assert.Empty(store.Damage.Lines);
    }

    [Fact]
    public void Open_FileOfAFewBytes_IsCutShort()
    {
        CutShort();
        File.WriteAllBytes(_temp.Folder.DatabasePath, File.ReadAllBytes(_temp.Folder.DatabasePath)[..20]);
        Assert.Contains("is cut short: 1 of its 1 pages of 8 KB are missing", Refused(_temp.Folder).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Open_EmptyFile_IsANewOne()
    {
        DataFolder folder = DataFolder.At(_temp.PathBeside("new"));
        File.WriteAllBytes(folder.DatabasePath, []);
        using ClassStore store = new(folder, _temp.Clock);
        Assert.True(store.IsEmpty);
    }

    /// <summary>Three writes in the file at 19:30, two in the log at 19:40, of which one page is left: no whole write.</summary>
    private DataFolder WithLogCutShort()
    {
        for (int i = 1; i <= 3; i++) _temp.AddAnswer(i);
        _temp.Reopen();
        _temp.Clock.Advance(TimeSpan.FromMinutes(10));
        for (int i = 4; i <= 5; i++) _temp.AddAnswer(i);
        DataFolder copy = _temp.CopyAsKilled();
        using (FileStream log = new(copy.LogPath, FileMode.Open)) log.SetLength(PageBytes);
        return copy;
    }

    /// <summary>500 answers; an eighth of the pages gone, and half of the next one.</summary>
    private (int Pages, int Left, byte[] Cut) CutShort()
    {
        for (int i = 1; i <= 500; i++) _temp.AddAnswer(i);
        _temp.Store.Dispose();
        byte[] whole = File.ReadAllBytes(_temp.Folder.DatabasePath);
        int pages = whole.Length / PageBytes, left = pages / 8 * 7;
        byte[] rest = whole[..((left * PageBytes) + (PageBytes / 2))];
        File.WriteAllBytes(_temp.Folder.DatabasePath, rest);
        return (pages, left, rest);
    }

    private static string NoBackup(DataFolder folder) =>
        $"To go back to a backup, stop the server and run: tying restore FILE --data \"{folder.Path}\" (there is none in its own folder).";

    private StorageException Refused(DataFolder folder) => Assert.Throws<StorageException>(() => new ClassStore(folder, _temp.Clock));
}
