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
    private readonly TempStore _temp = new();

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void Read_BitFlippedInOneRecord_LeavesOutThatRecordAndNamesIt()
    {
        Attempt hit = _temp.AddAnswer(1);
        _temp.AddAnswer(2);
        _temp.ChangeFile(bytes => bytes[Find(bytes, "answer 1 ")] ^= 0x04);

        Assert.Equal(["answer 2 of Wren"], _temp.Store.Attempts.Of("p1", "keel-03").Select(a => a.AnswerText));

        Assert.Equal(
            [$"2026-01-14 19:30 UTC: A record of attempts ({hit.Id}) is not what was written. It is left out everywhere."], _temp.Store.Damage.Lines);
    }

    [Fact]
    public void Read_DamagedRecord_IsStillNamedAfterARestart()
    {
        _temp.AddAnswer(1);
        _temp.ChangeFile(bytes => bytes[Find(bytes, "answer 1 ")] ^= 0x04);
        _temp.Store.Attempts.Of("p1", "keel-03");
        _temp.Reopen();
        Assert.Single(_temp.Store.Damage.Lines);
        // Found again, it is no new finding.
        Assert.Empty(_temp.Store.Attempts.Of("p1", "keel-03"));
        Assert.Equal(_temp.Store.Damage.Lines, File.ReadAllLines(_temp.Store.Damage.Path));
        Assert.Single(_temp.Store.Damage.Lines);
    }

    [Fact]
    public void Verify_BitFlippedInARecordNobodyReads_FindsIt()
    {
        for (int i = 1; i <= 300; i++) _temp.AddAnswer(i);
        _temp.ChangeFile(bytes => bytes[Find(bytes, "answer 222 ")] ^= 0x04);
        Assert.Empty(_temp.Store.Damage.Lines);

        Assert.InRange(_temp.Store.Verify(TestContext.Current.CancellationToken), 300, 400);

        Assert.Contains("attempts", Assert.Single(_temp.Store.Damage.Lines), StringComparison.Ordinal);
    }

    [Fact]
    public void Verify_WholeFile_FindsNothing()
    {
        for (int i = 1; i <= 30; i++) _temp.AddAnswer(i);
        _temp.Store.People.AddGuest("Wren");
        _temp.Reopen();
        long writes = _temp.Store.Writes.Now;
        _temp.Store.Verify(TestContext.Current.CancellationToken);
        Assert.Empty(_temp.Store.Damage.Lines);
        // A write would have every page that was worked out worked out again.
        Assert.Equal(writes, _temp.Store.Writes.Now);
    }

    [Fact]
    public void Verify_DamagedAttempt_WritesNothing()
    {
        _temp.AddAnswer(1);
        _temp.ChangeFile(bytes => bytes[Find(bytes, "answer 1 ")] ^= 0x04);
        long writes = _temp.Store.Writes.Now;
        _temp.Store.Verify(TestContext.Current.CancellationToken);
        Assert.Single(_temp.Store.Damage.Lines);
        Assert.Equal(writes, _temp.Store.Writes.Now);
    }

    [Fact]
    public void Verify_ServerStopping_ReadsNothingMore()
    {
        _temp.AddAnswer(1);
        _temp.ChangeFile(bytes => bytes[Find(bytes, "answer 1 ")] ^= 0x04);
        Assert.Throws<OperationCanceledException>(() => _temp.Store.Verify(new CancellationToken(canceled: true)));
        Assert.Empty(_temp.Store.Damage.Lines);
    }

    [Fact]
    public void Add_AfterADamagedAttempt_TakesANumberThatIsFree()
    {
        _temp.AddAnswer(1);
        _temp.AddAnswer(2);
        _temp.ChangeFile(bytes => bytes[Find(bytes, "answer 2 ")] ^= 0x04);
        _temp.Store.Attempts.Judge(_temp.Store.Attempts.Of("p1", "keel-03")[0].Id, 0, Someone, accepted: true, "It does.");
        Assert.Equal(3, _temp.AddAnswer(3).Number);
        Assert.Equal([1, 3], _temp.Store.Attempts.Of("p1", "keel-03").Select(a => a.Number));
    }

    [Fact]
    public void Verify_DamagedStanding_IsWorkedOutAnew()
    {
        _temp.AddAnswer(1);
        _temp.AddAnswer(2);
        // Its own name of the exercise stands in the standing's id and in each attempt; "failed" as a key stands in standings alone.
        _temp.ChangeFile(bytes => bytes[Find(bytes, "failed\0") + "failed\0".Length] ^= 0x01);

        _temp.Store.Verify(TestContext.Current.CancellationToken);

        Assert.Equal((2, 2), (_temp.Store.Attempts.StandingOf("p1", "keel-03").Attempts, _temp.Store.Attempts.StandingOf("p1", "keel-03").Failed));
        Assert.Equal(
            ["2026-01-14 19:30 UTC: A sum of attempts (p1/keel-03) was not what was written. It is worked out anew from the attempts."],
            _temp.Store.Damage.Lines);
        Assert.Equal(2, Assert.Single(_temp.Store.Attempts.StandingsOf("p1")).Attempts);
    }

    [Fact]
    public void Notes_BitFlippedInANote_LeaveOutThatAttemptAndNameIt()
    {
        Attempt hit = _temp.AddAnswer(1);
        _temp.AddAnswer(2);
        _temp.ChangeFile(bytes => bytes[Find(bytes, AttemptNote.KeyOf("answer 1 of Wren"))] ^= 0x01);

        Assert.Equal([2], _temp.Store.Attempts.NotesOf("p1").Select(n => n.Number));

        Assert.Contains(hit.Id, Assert.Single(_temp.Store.Damage.Lines), StringComparison.Ordinal);
    }

    [Fact]
    public void Notes_RestOfTheAttemptDamaged_AreLeftOutOnceThatIsFound()
    {
        _temp.AddAnswer(1);
        _temp.AddAnswer(2);
        _temp.ChangeFile(bytes => bytes[Find(bytes, "answer 1 ")] ^= 0x04);
        Assert.Equal([1, 2], _temp.Store.Attempts.NotesOf("p1").Select(n => n.Number).Order());
        _temp.Store.Verify(TestContext.Current.CancellationToken);
        Assert.Equal([2], _temp.Store.Attempts.NotesOf("p1").Select(n => n.Number));
    }

    [Fact]
    public void Notes_KeptBeforeTheyHadAChecksum_ReadAndGetOne()
    {
        _temp.AddAnswer(1);
        _temp.ChangeRecords("attempts", old => Assert.True(old["note"].AsDocument.Remove(Checksum.Field)));
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
        _temp.AddAnswer(1);
        Assert.Null(_temp.Store.Attempts.Find(null!));
        Assert.Null(_temp.Store.Patterns.Find(null!));
        Assert.Null(_temp.Store.BenchLog.Find(null!));
        Assert.Empty(_temp.Store.Damage.Lines);
    }

    private static Person Someone { get; } = new("m1", Role.Mentor, "Mentor", null, "", default, default);

    private static int Find(byte[] bytes, string text) =>
        bytes.AsSpan().IndexOf(Encoding.UTF8.GetBytes(text)) is >= 0 and var at ? at : throw new InvalidOperationException($"No “{text}” in the file.");
}
