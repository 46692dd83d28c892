using System.Text;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Dates;
using TyingClass.Storage.Evenings;
using TyingClass.Storage.Exchange;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.People;
using Xunit;

namespace TyingClass.Storage.Tests.Exchange;

public sealed class ClassExchangeTests : IDisposable
{
    private readonly TempStore here = new();
    private readonly TempStore there = new();
    private readonly Person teacher;
    private readonly ClassRoom room;
    private readonly Person wren;

    public ClassExchangeTests()
    {
        teacher = here.Store.Instructors.Claim(here.Store.Instructors.NewCode(), "Dipper", "hash", "Alder Bridge")!;
        room = here.Store.Classes.OfInstructor(teacher.Id)[0];
        wren = here.Store.Accounts.Add(room.Id, Role.Student, "Wren", "secret hash").Person!;
        here.Store.Accounts.Add(room.Id, Role.Mentor, "Otter", "secret hash");
        here.Store.Attempts.Add(wren.Id, "keel-03", "first\n  answer “as typed”", Grades.Failed);
        here.Clock.Advance(TimeSpan.FromHours(1));
        here.Store.Attempts.Add(wren.Id, "keel-03", "second", Grades.Passed);
        here.Store.Attempts.Judge(here.Store.Attempts.Add(wren.Id, "keel-05", "because", Grades.Waiting).Id, 0, teacher, accepted: true, "Good.");
        here.Store.Comments.Add(wren.Id, teacher.Id, "Dipper", "keel-03", "Look at the eye.");
        here.Store.Dates.Save(room.Id, [new DateRow(DateTargets.Lesson("keel"), new DateTime(2026, 1, 14, 19, 0, 0), new DateTime(2026, 3, 29, 2, 30, 0))], 0);
        here.Store.Evenings.Save(new EveningPlan(room.Id, 2) { Plan = "Tie *two*.", Flies = [new FlyCount("Slate Minnow", 2, 1)] });
        RoomQuestion asked = here.Store.RoomQuestions.Put(new RoomQuestion("", room.Id, "Which way up?", ["up", "down"], default) { ExerciseId = "keel-01" });
        here.Store.RoomQuestions.Answer(asked.Id, wren.Id, 1);
        Pattern pattern = here.Store.Patterns.Create(wren.Id, "Slate Minnow", "recipe: Slate Minnow\n", "begun");
        here.Store.Patterns.Save(pattern.Id, wren.Id, 1, "Slate Minnow", "recipe: Slate Minnow\n# heavier\n");
    }

    [Fact]
    public void Import_OfAnUnknownTimeZone_WritesNothing()
    {
        ClassExport sent = here.Store.Exchange.Export(room.Id)!;
        ImportOutcome outcome = here.Store.Exchange.Import(sent with { Class = sent.Class with { TimeZone = "Mars/Base" } }, teacher.Id, Passphrases(2));
        Assert.StartsWith("$.class.timeZone: ", Assert.Single(outcome.Problems), StringComparison.Ordinal);
        Assert.Single(here.Store.Classes.OfInstructor(teacher.Id));
    }

    [Fact]
    public void Create_NameOfAnotherClass_GetsANumber()
    {
        Assert.Equal("Alder Bridge 2", here.Store.Classes.Create(teacher.Id, "Alder Bridge").Name);
        Assert.Equal("Alder Bridge 3", here.Store.Classes.Create(teacher.Id, "Alder Bridge").Name);
        Assert.Equal("Alder Bridge", here.Store.Instructors.Claim(here.Store.Instructors.Invite(), "Plover", "hash", "Mill Pond") is { } plover ? here.Store.Classes.Create(plover.Id, "Alder Bridge").Name : null);
    }

    [Fact]
    public async Task Import_OfAnExport_IsTheSameClassExported()
    {
        Person other = Claim(there, "Plover");
        ClassExport sent = here.Store.Exchange.Export(room.Id)!;

        ImportOutcome outcome = there.Store.Exchange.Import(await ThroughFileAsync(sent), other.Id, Passphrases(2));

        Assert.Empty(outcome.Problems);
        Assert.Equal([("Otter", "pass-0"), ("Wren", "pass-1")], outcome.People.Select(p => (p.Person.Name!, p.Passphrase)));
        Assert.True(there.Store.Accounts.FindByName("Wren")!.MustChoosePassphrase);
        ClassExport back = there.Store.Exchange.Export(outcome.Room!.Id)!;
        // What a new class must have of its own, and what closing the open question changes, aside: the two files are one.
        ClassExport expected = sent with { ExportedAt = back.ExportedAt, Class = back.Class, RoomQuestions = [.. sent.RoomQuestions.Select(q => q with { ClosedAt = sent.ExportedAt })] };
        Assert.Equal(await TextAsync(expected), await TextAsync(back));
        Assert.Equal("Alder Bridge", back.Class.Name);
        Assert.True(there.Store.Attempts.StandingOf(wren.Id, "keel-05").Passed);
    }

    [Fact]
    public async Task Import_WhereItCameFrom_RenewsIdsAndNamesAndTouchesNothingElse()
    {
        ClassExport sent = here.Store.Exchange.Export(room.Id)!;
        string before = await TextAsync(sent);

        ImportOutcome outcome = here.Store.Exchange.Import(await ThroughFileAsync(sent), teacher.Id, Passphrases(2));

        Assert.Equal(["Otter 2", "Wren 2"], outcome.People.Select(p => p.Person.Name));
        Person twin = outcome.People[1].Person;
        Assert.NotEqual(wren.Id, twin.Id);
        Assert.Equal(["first\n  answer “as typed”", "second"], here.Store.Attempts.Of(twin.Id, "keel-03").Select(a => a.AnswerText));
        Assert.Equal(2, here.Store.Patterns.Revisions(Assert.Single(here.Store.Patterns.Of(twin.Id)).Id).Length);
        Assert.Equal(before, await TextAsync(here.Store.Exchange.Export(room.Id)! with { ExportedAt = sent.ExportedAt }));
    }

    [Fact]
    public async Task Export_AsAFile_HoldsNoSecret()
    {
        string text = await TextAsync(here.Store.Exchange.Export(room.Id)!);
        Assert.Contains(wren.Name!, text, StringComparison.Ordinal);
        Assert.DoesNotContain("secret hash", text, StringComparison.Ordinal);
        Assert.DoesNotContain(here.Store.People.Find(wren.Id)!.Stamp, text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"number\": 2", "\"number\": 1", "two attempts")]
    [InlineData("\"role\": \"Student\"", "\"role\": \"Instructor\"", "$.people[1].role")]
    [InlineData("\"format\": 1", "\"format\": 2", "$.format")]
    public async Task Import_ThatDoesNotFitTogether_IsRefusedWhole(string from, string to, string expected)
    {
        Person other = Claim(there, "Plover");
        string text = await TextAsync(here.Store.Exchange.Export(room.Id)!);
        int at = text.IndexOf(from, StringComparison.Ordinal);
        Assert.True(at >= 0, from);
        (ClassExport? export, _) = await ReadAsync(text[..at] + to + text[(at + from.Length)..]);

        ImportOutcome outcome = there.Store.Exchange.Import(export!, other.Id, Passphrases(2));

        Assert.Null(outcome.Room);
        Assert.Contains(outcome.Problems, p => p.Contains(expected, StringComparison.Ordinal));
        Assert.Null(there.Store.Accounts.FindByName("Wren"));
    }

    [Fact]
    public async Task Import_NamingAPersonOfAnotherClassAsPattern_DoesNotReachThatPerson()
    {
        // Someone else's id, taken here, under which the file smuggles a pattern of its own: entries by its person must not land on the other.
        Person victim = there.Store.Accounts.Add(there.Store.Classes.OfInstructor(Claim(there, "Plover").Id)[0].Id, Role.Student, "Teal", "hash").Person!;
        ClassExport sent = here.Store.Exchange.Export(room.Id)!;
        ClassExport forged = (await ReadAsync((await TextAsync(sent)).Replace(wren.Id, victim.Id, StringComparison.Ordinal).Replace(sent.Patterns[0].Id, victim.Id, StringComparison.Ordinal))).Export!;

        ImportOutcome outcome = there.Store.Exchange.Import(forged, there.Store.Instructors.Find()!.Id, Passphrases(2));

        Assert.Empty(outcome.Problems);
        Assert.Empty(there.Store.Attempts.AllOf(victim.Id));
        Assert.Empty(there.Store.Patterns.Of(victim.Id));
        Assert.Single(there.Store.Patterns.Of(outcome.People[1].Person.Id));
    }

    [Theory]
    [InlineData("")]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("{\"format\": 1}")]
    [InlineData("{\"format\": 1, \"exportedAt\": \"2026-01-14T19:00:00Z\", \"class\": {\"id\": \"a\", \"name\": \"b\", \"timeZone\": \"UTC\", \"createdAt\": \"2026-01-14T19:00:00Z\"}, \"people\": null, \"attempts\": []}")]
    public async Task Read_WhatIsNoExport_SaysSo(string text)
    {
        (ClassExport? export, string? problem) = await ReadAsync(text);
        Assert.Null(export);
        Assert.NotEmpty(problem!);
    }

    public void Dispose()
    {
        here.Dispose();
        there.Dispose();
    }

    private static Person Claim(TempStore store, string name) => store.Store.Instructors.Claim(store.Store.Instructors.NewCode(), name, "hash")!;

    private static HandedOut[] Passphrases(int count) => [.. Enumerable.Range(0, count).Select(i => new HandedOut($"pass-{i}", $"hash-{i}"))];

    private static async Task<ClassExport> ThroughFileAsync(ClassExport export) => (await ReadAsync(await TextAsync(export))).Export!;

    private static async Task<string> TextAsync(ClassExport export)
    {
        using MemoryStream stream = new();
        await ExportJson.WriteAsync(stream, export, TestContext.Current.CancellationToken);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static async Task<(ClassExport? Export, string? Problem)> ReadAsync(string text)
    {
        using MemoryStream stream = new(Encoding.UTF8.GetBytes(text));
        return await ExportJson.ReadAsync(stream, TestContext.Current.CancellationToken);
    }
}
