using System.Text;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Dates;
using TyingClass.Storage.Evenings;
using TyingClass.Storage.Exchange;
using TyingClass.Storage.Files;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.People;
using Xunit;

namespace TyingClass.Storage.Tests.Exchange;

public sealed class ClassExchangeTests : IDisposable
{
    private readonly TempStore _here = new();
    private readonly TempStore _there = new();
    private readonly Person _teacher;
    private readonly ClassRoom _room;
    private readonly Person _wren;

    public ClassExchangeTests()
    {
        _teacher = _here.Store.Instructors.Claim(_here.Store.Instructors.NewCode(), "Dipper", "hash", "Alder Bridge")!;
        _room = _here.Store.Classes.OfInstructor(_teacher.Id)[0];
        _wren = _here.Store.Accounts.Add(_room.Id, Role.Student, "Wren", "secret hash").Person!;
        _here.Store.Accounts.Add(_room.Id, Role.Mentor, "Otter", "secret hash");
        _here.Store.Attempts.Add(_wren.Id, "keel-03", "first\n  answer “as typed”", Grades.Failed);
        _here.Clock.Advance(TimeSpan.FromHours(1));
        _here.Store.Attempts.Add(_wren.Id, "keel-03", "second", Grades.Passed);
        _here.Store.Attempts.Judge(_here.Store.Attempts.Add(_wren.Id, "keel-05", "because", Grades.Waiting).Id, 0, _teacher, accepted: true, "Good.");
        _here.Store.Comments.Add(_wren.Id, _teacher.Id, "Dipper", "keel-03", "Look at the eye.");
        _here.Store.Dates.Save(_room.Id,
            [new DateRow(DateTargets.Lesson("keel"), new DateTime(2026, 1, 14, 19, 0, 0), new DateTime(2026, 3, 29, 2, 30, 0))], 0);
        _here.Store.Evenings.Save(new EveningPlan(_room.Id, 2) { Plan = "Tie *two*.", Flies = [new FlyCount("Slate Minnow", 2, 1)] });
        RoomQuestion asked = _here.Store.RoomQuestions.Put(new RoomQuestion("", _room.Id, "Which way up?", ["up", "down"], default) { ExerciseId = "keel-01" });
        _here.Store.RoomQuestions.Answer(asked.Id, _wren.Id, 1);
        Pattern pattern = _here.Store.Patterns.Create(_wren.Id, "Slate Minnow", "recipe: Slate Minnow\n", "begun");
        _here.Store.Patterns.Save(pattern.Id, _wren.Id, 1, "Slate Minnow", "recipe: Slate Minnow\n# heavier\n");
    }

    [Fact]
    public void Import_OfAnUnknownTimeZone_WritesNothing()
    {
        ClassExport sent = _here.Store.Exchange.Export(_room.Id)!;
        ImportOutcome outcome = _here.Store.Exchange.Import(sent with { Class = sent.Class with { TimeZone = "Mars/Base" } }, _teacher.Id, Passphrases(2));
        Assert.StartsWith("$.class.timeZone: ", Assert.Single(outcome.Problems), StringComparison.Ordinal);
        Assert.Single(_here.Store.Classes.OfInstructor(_teacher.Id));
    }

    [Fact]
    public void Create_NameOfAnotherClass_GetsANumber()
    {
        Assert.Equal("Alder Bridge 2", _here.Store.Classes.Create(_teacher.Id, "Alder Bridge").Name);
        Assert.Equal("Alder Bridge 3", _here.Store.Classes.Create(_teacher.Id, "Alder Bridge").Name);
        Assert.Equal(
            "Alder Bridge", _here.Store.Instructors.Claim(_here.Store.Instructors.Invite(), "Plover", "hash", "Mill Pond") is { } plover
                ? _here.Store.Classes.Create(plover.Id, "Alder Bridge").Name : null);
    }

    [Fact]
    public async Task Import_OfAnExport_IsTheSameClassExported()
    {
        Person other = Claim(_there, "Plover");
        ClassExport sent = _here.Store.Exchange.Export(_room.Id)!;

        ImportOutcome outcome = _there.Store.Exchange.Import(await ThroughFileAsync(sent), other.Id, Passphrases(2));

        Assert.Empty(outcome.Problems);
        Assert.Equal([("Otter", "pass-0"), ("Wren", "pass-1")], outcome.People.Select(p => (p.Person.Name!, p.Passphrase)));
        Assert.True(_there.Store.Accounts.FindByName("Wren")!.MustChoosePassphrase);
        ClassExport back = _there.Store.Exchange.Export(outcome.Room!.Id)!;
        // What a new class must have of its own, and what closing the open question changes, aside: the two files are one.
        ClassExport expected = sent with
        {
            ExportedAt = back.ExportedAt,
            Class = back.Class,
            RoomQuestions = [.. sent.RoomQuestions.Select(q => q with { ClosedAt = sent.ExportedAt })]
        };
        Assert.Equal(await TextAsync(expected), await TextAsync(back));
        Assert.Equal("Alder Bridge", back.Class.Name);
        Assert.True(_there.Store.Attempts.StandingOf(_wren.Id, "keel-05").Passed);
    }

    [Fact]
    public async Task Import_WhereItCameFrom_RenewsIdsAndNamesAndTouchesNothingElse()
    {
        ClassExport sent = _here.Store.Exchange.Export(_room.Id)!;
        string before = await TextAsync(sent);

        ImportOutcome outcome = _here.Store.Exchange.Import(await ThroughFileAsync(sent), _teacher.Id, Passphrases(2));

        Assert.Equal(["Otter 2", "Wren 2"], outcome.People.Select(p => p.Person.Name));
        Person twin = outcome.People[1].Person;
        Assert.NotEqual(_wren.Id, twin.Id);
        Assert.Equal(["first\n  answer “as typed”", "second"], _here.Store.Attempts.Of(twin.Id, "keel-03").Select(a => a.AnswerText));
        Assert.Equal(2, _here.Store.Patterns.Revisions(Assert.Single(_here.Store.Patterns.Of(twin.Id)).Id).Length);
        Assert.Equal(before, await TextAsync(_here.Store.Exchange.Export(_room.Id)! with { ExportedAt = sent.ExportedAt }));
    }

    [Fact]
    public async Task Export_AsAFile_HoldsNoSecret()
    {
        string text = await TextAsync(_here.Store.Exchange.Export(_room.Id)!);
        Assert.Contains(_wren.Name!, text, StringComparison.Ordinal);
        Assert.DoesNotContain("secret hash", text, StringComparison.Ordinal);
        Assert.DoesNotContain(_here.Store.People.Find(_wren.Id)!.Stamp, text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"number\": 2", "\"number\": 1", "two attempts")]
    [InlineData("\"role\": \"Student\"", "\"role\": \"Instructor\"", "$.people[1].role")]
    [InlineData("\"format\": 1", "\"format\": 2", "$.format")]
    public async Task Import_ThatDoesNotFitTogether_IsRefusedWhole(string from, string to, string expected)
    {
        Person other = Claim(_there, "Plover");
        string text = await TextAsync(_here.Store.Exchange.Export(_room.Id)!);
        int at = text.IndexOf(from, StringComparison.Ordinal);
        Assert.True(at >= 0, from);
        (ClassExport? export, _) = await ReadAsync(text[..at] + to + text[(at + from.Length)..]);

        ImportOutcome outcome = _there.Store.Exchange.Import(export!, other.Id, Passphrases(2));

        Assert.Null(outcome.Room);
        Assert.Contains(outcome.Problems, p => p.Contains(expected, StringComparison.Ordinal));
        Assert.Null(_there.Store.Accounts.FindByName("Wren"));
    }

    [Fact]
    public async Task Import_NamingAPersonOfAnotherClassAsPattern_DoesNotReachThatPerson()
    {
        // Someone else's id, taken here, under which the file smuggles a pattern of its own: entries by its person must not land on the other.
        Person victim = _there.Store.Accounts.Add(_there.Store.Classes.OfInstructor(Claim(_there, "Plover").Id)[0].Id, Role.Student, "Teal", "hash").Person!;
        ClassExport sent = _here.Store.Exchange.Export(_room.Id)!;
        ClassExport forged = (await ReadAsync(
            (await TextAsync(sent)).Replace(_wren.Id, victim.Id, StringComparison.Ordinal).Replace(sent.Patterns[0].Id, victim.Id,
                StringComparison.Ordinal))).Export!;

        ImportOutcome outcome = _there.Store.Exchange.Import(forged, _there.Store.Instructors.Find()!.Id, Passphrases(2));

        Assert.Empty(outcome.Problems);
        Assert.Empty(_there.Store.Attempts.AllOf(victim.Id));
        Assert.Empty(_there.Store.Patterns.Of(victim.Id));
        Assert.Single(_there.Store.Patterns.Of(outcome.People[1].Person.Id));
    }

    [Theory]
    [InlineData("")]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("{\"format\": 1}")]
    [InlineData("{\"format\": 1, \"exportedAt\": \"2026-01-14T19:00:00Z\", \"class\": {\"id\": \"a\", \"name\": \"b\", \"timeZone\": \"UTC\", "
        + "\"createdAt\": \"2026-01-14T19:00:00Z\"}, \"people\": null, \"attempts\": []}")]
    public async Task Read_WhatIsNoExport_SaysSo(string text)
    {
        (ClassExport? export, string? problem) = await ReadAsync(text);
        Assert.Null(export);
        Assert.NotEmpty(problem!);
    }

    [Fact]
    public async Task WriteFile_ThenRead_HoldsWhatWasThere()
    {
        ClassExport export = _here.Store.Exchange.Export(_room.Id)!;
        string path = Path.GetTempFileName();
        try
        {
            await ExportJson.WriteFileAsync(path, export, TestContext.Current.CancellationToken);
            await using FileStream file = File.OpenRead(path);
            ClassExport read = (await ExportJson.ReadAsync(file, TestContext.Current.CancellationToken)).Export!;
            Assert.Equal(["first\n  answer “as typed”", "second", "because"], read.Attempts.Select(a => a.AnswerText));
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Fact]
    public async Task Export_WhileItIsGoneThrough_KeepsNobodyFromWriting()
    {
        Person late = _here.Store.Accounts.Add(_room.Id, Role.Student, "Zander", "secret hash").Person!;
        _here.Store.Attempts.Add(late.Id, "keel-03", "last", Grades.Passed);
        ClassExport export = _here.Store.Exchange.Export(_room.Id)!;
        using IEnumerator<Attempt> attempts = export.Attempts.GetEnumerator();
        Assert.True(attempts.MoveNext());
        Task written = Task.Run(() => _here.Store.Attempts.Add(_wren.Id, "keel-05", "meanwhile", Grades.Passed), TestContext.Current.CancellationToken);
        await written.WaitAsync(TimeSpan.FromSeconds(30), TestContext.Current.CancellationToken);
        int rest = 1;
        while (attempts.MoveNext()) rest++;
        Assert.InRange(rest, 4, 5);
    }

    [Fact]
    public async Task WriteFile_DiskTakesNothing_SaysSo()
    {
        Assert.SkipUnless(File.Exists("/dev/full"), "Only where the system has a disk that is always full.");
        ClassExport export = _here.Store.Exchange.Export(_room.Id)!;
        StorageException e = await Assert.ThrowsAsync<StorageException>(() => ExportJson.WriteFileAsync("/dev/full", export,
            TestContext.Current.CancellationToken));
        Assert.Contains("disk full", e.Message, StringComparison.Ordinal);
    }

    public void Dispose()
    {
        _here.Dispose();
        _there.Dispose();
    }

    private static Person Claim(TempStore store, string name) => store.Store.Instructors.Claim(store.Store.Instructors.NewCode(), name, "hash")!;

    private static HandedOut[] Passphrases(int count) => [.. Enumerable.Range(0, count).Select(i => new HandedOut($"pass-{i}", $"hash-{i}"))];

    private static async Task<ClassExport> ThroughFileAsync(ClassExport export) => (await ReadAsync(await TextAsync(export))).Export!;

    /// <summary>Whatever else a later version writes, the reader is told that it is later, and not what this version misses in it.</summary>
    [Theory]
    [InlineData("""{ "format": 2, "somethingNew": { "format": 9 }, "attempts": [1, 2] }""")]
    [InlineData("""{ "made": { "format": 1 }, "format": 2, "people": "none" }""")]
    [InlineData("""{ "format": 2, "people": [null], "attempts": [{ "grade": 1e999 }] }""")]
    public async Task Read_FileOfALaterVersion_SaysSo(string text)
    {
        (ClassExport? export, string? problem) = await ReadAsync(text);

        Assert.Null(export);
        Assert.Equal("$.format: this server reads format 1, the file has 2. Update the older of the two servers.", problem);
    }

    [Theory]
    [InlineData("""{ "format": 1, "attempts": [1, 2] }""")]
    [InlineData("""{ "format": "2", "attempts": [1, 2] }""")]
    [InlineData("""{ "attempts": [1, 2] }""")]
    public async Task Read_BrokenFileThatIsOfNoLaterVersion_SaysWhereItIsBroken(string text) =>
        Assert.StartsWith("Line 1, at $.attempts[0]", (await ReadAsync(text)).Problem, StringComparison.Ordinal);

    private static async Task<string> TextAsync(ClassExport export)
    {
        using MemoryStream stream = new();
        await ExportJson.WriteAsync(stream, export, TestContext.Current.CancellationToken);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    // Left open: the attempts are read from it later.
    private static Task<(ClassExport? Export, string? Problem)> ReadAsync(string text) =>
        ExportJson.ReadAsync(new MemoryStream(Encoding.UTF8.GetBytes(text)), TestContext.Current.CancellationToken);
}
