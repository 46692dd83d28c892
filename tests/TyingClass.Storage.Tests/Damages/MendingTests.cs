using TyingClass.Storage.Attempts;
using TyingClass.Storage.Backups;
using TyingClass.Storage.Files;
using Xunit;

namespace TyingClass.Storage.Tests.Damages;

/// <summary>
/// Pages of the data file that cannot be read: the file is mended at once with every record that can still be read, the broken one is kept beside, and each
/// record that is lost is named (docs/reliability.md).
/// </summary>
public sealed class MendingTests : IDisposable
{
    private const int PageBytes = 8192;

    // Of LiteDB's kinds of pages.
    private const int IndexPage = 3;
    private const int RecordPage = 4;

    // Of the head of a file, which LiteDB marks when it finds a page broken.
    private const int BrokenMark = 191;

    private readonly TempStore _temp = new();

    public void Dispose() => _temp.Dispose();

    [Theory]
    [InlineData(IndexPage)]
    [InlineData(RecordPage)]
    public void Read_PageZeroed_IsMendedWithTheRestWholeAndTheOldFileKept(int pageType)
    {
        for (int i = 1; i <= 400; i++) _temp.AddAnswer(i);
        _temp.Store.Dispose();
        byte[] broken = [.. File.ReadAllBytes(_temp.Folder.DatabasePath)];
        // One page of records from the middle; of the ways to them, every page there is.
        int[] pages = Pages(pageType, broken);
        foreach (int page in pageType == RecordPage ? pages[12..13] : pages) broken.AsSpan(page * PageBytes, PageBytes).Clear();
        File.WriteAllBytes(_temp.Folder.DatabasePath, broken);

        _temp.Reopen();
        int there = _temp.Store.Attempts.Of("p1", "keel-03").Length;
        _temp.Store.Verify(TestContext.Current.CancellationToken);

        Assert.InRange(there, 380, 400);
        if (pageType == IndexPage) Assert.Equal(400, there);
        string keptAs = Path.Combine(_temp.Folder.Path, "damaged-20260114-193000.db");
        Assert.Equal(
            "2026-01-14 19:30 UTC: The data file was damaged and has been mended with all that could be read. As it was, it is kept as "
            + $"{keptAs}. There is no backup in its own folder.",
            _temp.Store.Damage.Lines[0]);
        string[] lost = [.. _temp.Store.Damage.Lines.Skip(1)];
        Assert.Equal(400 - there, lost.Length);
        Assert.All(lost, l => Assert.Matches(
            @"^2026-01-14 19:30 UTC: A record of attempts \(\S+\) could not be read and was left behind when the file was mended\.$", l));
        Assert.Equal(lost.Order(StringComparer.Ordinal), lost);
        byte[] kept = File.ReadAllBytes(keptAs);
        kept[BrokenMark] = broken[BrokenMark];
        Assert.Equal(broken, kept);
        Assert.Equal(401, _temp.AddAnswer(401).Number);
        _temp.Reopen();
        Assert.Equal(there + 1, _temp.Store.Attempts.Of("p1", "keel-03").Length);
    }

    [Fact]
    public void Read_PageBrokenUnderARunningServer_KeepsWhatOnlyTheLogHolds()
    {
        for (int i = 1; i <= 400; i++) _temp.AddAnswer(i);
        _temp.Reopen();
        _temp.AddAnswer(401);
        BreakWhileOpen(file => file.Write(new byte[PageBytes]), Pages(RecordPage)[12]);

        ILookup<int, Attempt> read = _temp.Store.Attempts.Of("p1", "keel-03").ToLookup(a => a.Number);

        Assert.InRange(read.Count, 380, 400);
        Assert.Equal("answer 401 of Wren", Assert.Single(read[401]).AnswerText);
        Assert.Contains("has been mended", _temp.Store.Damage.Lines[0], StringComparison.Ordinal);
        // The log is part of what was there.
        Assert.True(File.Exists(Path.Combine(_temp.Folder.Path, "damaged-20260114-193000.db")));
        Assert.True(File.Exists(Path.Combine(_temp.Folder.Path, "damaged-20260114-193000-log.db")));
    }

    [Fact]
    public void Read_FileCutShortUnderARunningServer_IsMendedWithWhatIsLeft()
    {
        for (int i = 1; i <= 400; i++) _temp.AddAnswer(i);
        _temp.Reopen();
        int[] pages = Pages(RecordPage);
        BreakWhileOpen(file => file.SetLength(file.Position), pages[^(pages.Length / 4)]);

        Assert.InRange(_temp.Store.Attempts.Of("p1", "keel-03").Length, 1, 399);

        Assert.Contains("has been mended", _temp.Store.Damage.Lines[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Read_PageOfRubbish_IsMendedWithTheRest()
    {
        for (int i = 1; i <= 400; i++) _temp.AddAnswer(i);
        // Behind the head of the page: it still says what kind it is, and where its records stand is nonsense.
        _temp.ChangeFile(bytes => bytes.AsSpan((Pages(RecordPage, bytes)[12] * PageBytes) + 32, PageBytes - 32).Fill(0xA5));

        Assert.InRange(_temp.Store.Attempts.Of("p1", "keel-03").Length, 380, 400);

        Assert.Contains("has been mended", _temp.Store.Damage.Lines[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Read_FieldOfNoKindThereIs_IsMendedWithoutThatRecordAndNamesIt()
    {
        Attempt[] all = [_temp.AddAnswer(1), _temp.AddAnswer(2)];
        // Only attempts have such a field; before its name stands its kind, and there is none of this number.
        _temp.ChangeFile(bytes => bytes[bytes.AsSpan().IndexOf("exerciseVersion\0"u8) - 1] = 0xC8);

        int left = Assert.Single(_temp.Store.Attempts.Of("p1", "keel-03")).Number;

        Attempt hit = all.Single(a => a.Number != left);
        Assert.Contains("has been mended", _temp.Store.Damage.Lines[0], StringComparison.Ordinal);
        string named = Assert.Single(_temp.Store.Damage.Lines.Skip(1));
        Assert.StartsWith($"2026-01-14 19:30 UTC: A record of attempts ({hit.Id}) ", named, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_StandingsPageZeroed_AreWorkedOutAnewAtOnceAndNamed()
    {
        for (int i = 1; i <= 30; i++) _temp.Store.Attempts.Add("p1", $"keel-{i:00}", "point down", i % 3 == 0 ? Grades.Passed : Grades.Failed);
        Standing[] before = [.. _temp.Store.Attempts.StandingsOf("p1").OrderBy(s => s.ExerciseId, StringComparer.Ordinal)];
        // Only standings have such a field.
        _temp.ChangeFile(bytes => bytes.AsSpan(bytes.AsSpan().IndexOf("lastFailed\0"u8) / PageBytes * PageBytes, PageBytes).Clear());

        Assert.Equal(before, _temp.Store.Attempts.StandingsOf("p1").OrderBy(s => s.ExerciseId, StringComparer.Ordinal));

        Assert.Contains("has been mended", _temp.Store.Damage.Lines[0], StringComparison.Ordinal);
        Assert.Contains(
            "2026-01-14 19:30 UTC: A sum of attempts (p1/keel-01) could not be read. It is worked out anew from the attempts.", _temp.Store.Damage.Lines);
        _temp.Reopen();
        Assert.Equal(before.Length, _temp.Store.Attempts.StandingsOf("p1").Length);
    }

    [Fact]
    public void Open_NothingReadable_IsRefusedWithAWayThatHelpsAndLeftAsItWas()
    {
        _temp.AddAnswer(1);
        KeptBackups.Make(_temp.Folder, _temp.Store.Backup, _temp.Clock.GetUtcNow());
        _temp.Store.Dispose();
        byte[] broken = File.ReadAllBytes(_temp.Folder.DatabasePath);
        broken.AsSpan(PageBytes).Clear();
        File.WriteAllBytes(_temp.Folder.DatabasePath, broken);

        StorageException refused = Assert.Throws<StorageException>(_temp.Reopen);

        string backup = Path.Combine(_temp.Folder.Path, "backups", "nightly-20260114-193000.zip");
        Assert.Equal(
            $"The data file {_temp.Folder.DatabasePath} is damaged and cannot be mended: Not one record in it can be read. To go back to the last backup, stop "
            + $"the server and run: tying restore \"{backup}\" --data \"{_temp.Folder.Path}\". Or begin anew in another folder, with --data DIR.",
            refused.Message);
        byte[] after = File.ReadAllBytes(_temp.Folder.DatabasePath);
        after[BrokenMark] = broken[BrokenMark];
        Assert.Equal(broken, after);
        Assert.False(Directory.Exists(_temp.Folder.IncomingPath));
        Assert.Empty(Directory.GetFiles(_temp.Folder.Path, "damaged-*"));
    }

    private int[] Pages(int kind) => Pages(kind, ReadWhileOpen());

    private static int[] Pages(int kind, byte[] bytes) => [.. Enumerable.Range(0, bytes.Length / PageBytes).Where(p => bytes[(p * PageBytes) + 4] == kind)];

    private byte[] ReadWhileOpen()
    {
        using FileStream file = new(_temp.Folder.DatabasePath, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        byte[] bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        return bytes;
    }

    /// <param name="change">The stream stands where the page begins.</param>
    private void BreakWhileOpen(Action<FileStream> change, int page)
    {
        using FileStream file = new(_temp.Folder.DatabasePath, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite);
        file.Position = page * PageBytes;
        change(file);
    }
}
