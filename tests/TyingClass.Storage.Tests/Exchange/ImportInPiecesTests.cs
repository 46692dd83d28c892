using System.Text;
using System.Text.Json.Nodes;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Exchange;
using TyingClass.Storage.Files;
using TyingClass.Storage.People;
using TyingClass.Storage.Practice;
using Xunit;

namespace TyingClass.Storage.Tests.Exchange;

/// <summary>A class comes in piece by piece, others work on beside it, and it is there whole or not at all.</summary>
public sealed class ImportInPiecesTests : IDisposable
{
    private const int Many = 450;

    private readonly TempStore _from = new();
    private readonly TempStore _to = new();
    private readonly Person _teacher;
    private readonly ClassExport _sent;
    private readonly string _wren;

    public ImportInPiecesTests()
    {
        Person sender = Claim(_from);
        ClassRoom room = _from.Store.Classes.OfInstructor(sender.Id)[0];
        _wren = _from.Store.Accounts.Add(room.Id, Role.Student, "Wren", "hash").Person!.Id;
        Attempt one = _from.Store.Attempts.Add(_wren, "keel-03", "as typed", Grades.Failed);
        _from.Store.Attempts.AddKept([.. Enumerable.Range(2, Many - 1).Select(i => one with { Id = $"attempt-{i}", Number = i })]);
        _sent = _from.Store.Exchange.Export(room.Id)!;
        _teacher = Claim(_to);
    }

    public void Dispose()
    {
        _from.Dispose();
        _to.Dispose();
    }

    [Fact]
    public void Import_WhileItComesIn_OthersReadAndWriteAndSeeNothingOfIt()
    {
        int seen = -1, classes = -1;
        Import(_sent with
        {
            Attempts = Interrupted(_sent.Attempts, () => OnAnotherThread(() =>
            {
                _to.Store.Attempts.Add("somebody", "keel-05", "meanwhile", Grades.Passed);
                (seen, classes) = (_to.Store.Accounts.FindByName("Wren") is null ? 0 : 1, _to.Store.Classes.All().Length);
            })),
        });
        Assert.Equal((0, 1), (seen, classes));
        Assert.Single(_to.Store.Attempts.Of("somebody", "keel-05"));
        Assert.Equal(Many, _to.Store.Attempts.AllOf(_wren).Length);
        Assert.Equal((Many, Many), (_to.Store.Attempts.StandingOf(_wren, "keel-03").Attempts, _to.Store.Attempts.StandingOf(_wren, "keel-03").Failed));
        Assert.Equal(0, Staged(_to.Store));
    }

    [Fact]
    public void Import_OfAttemptsInDisorder_ComesToTheSameStanding()
    {
        Import(_sent with { Attempts = _sent.Attempts.Reverse().ToList() });
        Standing expected = _from.Store.Attempts.StandingOf(_wren, "keel-03");
        Assert.Equal(expected, _to.Store.Attempts.StandingOf(_wren, "keel-03"));
        Assert.Equal(Many, expected.LastFailed!.Number);
    }

    [Fact]
    public void Import_FailsOnTheWay_LeavesNothing()
    {
        int before = Records(_to.Store);
        ClassExport broken = _sent with { Attempts = Interrupted(_sent.Attempts, () => throw new InvalidOperationException()) };
        Assert.Throws<InvalidOperationException>(() => Import(broken));
        Assert.Equal(before, Records(_to.Store));
        Import(_sent);
        Assert.Equal(Many, _to.Store.Attempts.AllOf(_wren).Length);
    }

    [Fact]
    public void Import_ServerKilledOnTheWay_IsUndoneWhenAsked()
    {
        int before = Records(_to.Store);
        DataFolder killed = DataFolder.At(_to.PathBeside("killed"));
        Import(_sent with { Attempts = Interrupted(_sent.Attempts, () => Copy(_to.Folder, killed)) });
        using ClassStore store = new(killed, _to.Clock);
        Assert.True(Staged(store) > 0);
        Assert.Null(store.Accounts.FindByName("Wren"));
        store.Exchange.UndoUnfinished();
        Assert.Equal(before, Records(store));
    }

    [Fact]
    public void UndoUnfinished_WhileOneComesIn_LeavesItAlone()
    {
        Import(_sent with
        {
            Attempts = Interrupted(_sent.Attempts, () => OnAnotherThread(_to.Store.Exchange.UndoUnfinished)),
        });
        Assert.Equal(Many, _to.Store.Attempts.AllOf(_wren).Length);
    }

    [Theory]
    [InlineData("\"number\": 7,", "\"number\": \"seven\",", "$.attempts[6].number")]
    [InlineData("\"attempts\": [", "\"attempts\": [ null,", "$.attempts[0]")]
    [InlineData("\"standings\": [", "\"standings\": [ 7,", "$.standings[0]")]
    public async Task Read_FaultInside_SaysWhereInTheWholeFile(string from, string to, string where)
    {
        using MemoryStream written = new();
        await ExportJson.WriteAsync(written, _sent, TestContext.Current.CancellationToken);
        string text = Encoding.UTF8.GetString(written.ToArray());
        int at = text.IndexOf(from, StringComparison.Ordinal);
        Assert.True(at > 0, from);
        int line = text[..at].Count(c => c == '\n') + 1;

        using MemoryStream stream = new(Encoding.UTF8.GetBytes(text[..at] + to + text[(at + from.Length)..]));
        (ClassExport? export, string? problem) = await ExportJson.ReadAsync(stream, TestContext.Current.CancellationToken);

        Assert.Null(export);
        Assert.StartsWith($"Line {line}, at {where}", problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Read_CutShort_IsRefused()
    {
        using MemoryStream written = new();
        await ExportJson.WriteAsync(written, _sent, TestContext.Current.CancellationToken);
        foreach (int length in (int[])[1, 300, (int)written.Length / 2, (int)written.Length - 3])
        {
            using MemoryStream cut = new(written.ToArray()[..length]);
            Assert.NotEmpty((await ExportJson.ReadAsync(cut, TestContext.Current.CancellationToken)).Problem!);
        }
    }

    // Some megabytes: an attempt lies across every border between what is held at once, and a letter of several bytes across some.
    [Fact]
    public async Task Read_MoreThanIsHeldAtOnce_GivesEveryAttemptOnceAndWhole()
    {
        string[] answers = [.. Enumerable.Range(1, Many).Select(i => string.Concat(Enumerable.Repeat($"schräg {i} — ", 700)))];
        List<Attempt> large = [.. _sent.Attempts.Zip(answers, (a, text) => a with { AnswerText = text })];
        using MemoryStream written = new();
        await ExportJson.WriteAsync(written, _sent with { Attempts = large }, TestContext.Current.CancellationToken);
        Assert.True(written.Length > 3 << 20, $"{written.Length} bytes may be held at once.");

        (ClassExport? export, string? problem) = await ExportJson.ReadAsync(written, TestContext.Current.CancellationToken);

        Assert.Null(problem);
        Assert.Equal(large.Select(a => (a.Id, a.Number, a.AnswerText)), export!.Attempts.Select(a => (a.Id, a.Number, a.AnswerText)));
        Assert.Equal(_sent.People.Select(p => p.Id), export.People.Select(p => p.Id));
    }

    // It would be read as nothing at all, taken in, and show only when the class cannot be taken out again.
    [Fact]
    public async Task Read_PartMissingDeepInside_IsRefusedAtOnce()
    {
        PracticeAnswer answer = new(new PracticeProblem("practice-keel-height-7-20", "keel height", 7, 20, "recipe: Reed Darter\n"), _sent.Attempts.First());
        using MemoryStream written = new();
        await ExportJson.WriteAsync(written, _sent with { Practice = [answer] }, TestContext.Current.CancellationToken);
        JsonNode root = JsonNode.Parse(written.ToArray())!;
        JsonObject feedback = root["practice"]![0]!["attempt"]!["feedback"]!.AsObject();
        Assert.True(feedback.Remove("goals"));

        using MemoryStream lacking = new(Encoding.UTF8.GetBytes(root.ToJsonString()));
        (ClassExport? export, string? problem) = await ExportJson.ReadAsync(lacking, TestContext.Current.CancellationToken);

        Assert.Null(export);
        Assert.Contains("this is not a class export that can be read", problem, StringComparison.Ordinal);
    }

    private void Import(ClassExport export) => Assert.Empty(_to.Store.Exchange.Import(export, _teacher.Id, [new HandedOut("p", "h")]).Problems);

    // The first time through is the check, which must find nothing wrong; the second is the taking in.
    private static IEnumerable<Attempt> Interrupted(IEnumerable<Attempt> attempts, Action inTheMiddle)
    {
        int times = 0;
        return Once();

        IEnumerable<Attempt> Once()
        {
            bool isTakenIn = ++times > 1;
            int i = 0;
            foreach (Attempt attempt in attempts)
            {
                if (isTakenIn && ++i == Many / 2) inTheMiddle();
                yield return attempt;
            }
        }
    }

    private static void OnAnotherThread(Action work)
    {
        Thread other = new(() => work());
        other.Start();
        Assert.True(other.Join(TimeSpan.FromSeconds(30)));
    }

    private int Records(ClassStore store) => store.Backup(_to.PathBeside("count.zip")).Documents.Values.Sum();

    private int Staged(ClassStore store) => store.Backup(_to.PathBeside("count.zip")).Documents.GetValueOrDefault("imports");

    private static void Copy(DataFolder from, DataFolder to)
    {
        foreach (string path in new[] { from.DatabasePath, from.LogPath, from.CountPath })
        {
            using FileStream source = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            using FileStream copy = File.Create(Path.Combine(to.Path, Path.GetFileName(path)));
            source.CopyTo(copy);
        }
    }

    private static Person Claim(TempStore temp) => temp.Store.Instructors.Claim(temp.Store.Instructors.NewCode(), "Dipper", "hash", "Alder Bridge")!;
}
