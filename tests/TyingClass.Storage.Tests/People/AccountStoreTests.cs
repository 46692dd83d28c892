using System.Collections.Immutable;
using TyingClass.Storage.Classes;
using TyingClass.Storage.People;
using Xunit;

namespace TyingClass.Storage.Tests.People;

public sealed class AccountStoreTests : IDisposable
{
    private readonly TempStore _temp = new();
    private readonly ClassRoom _room;

    public AccountStoreTests() => _room = _temp.Store.Classes.Create("teacher");

    private AccountStore Accounts => _temp.Store.Accounts;

    [Fact]
    public void Join_WithTheCode_MakesAStudentOfThatClass()
    {
        Person wren = Accounts.Join(_room.Code, "  Wren ", "hash").Person!;
        _temp.Reopen();
        Assert.Equal(wren, Accounts.FindByName("wREN"));
        Assert.Equal((Role.Student, "Wren", _room.Id), (wren.Role, wren.Name, wren.ClassId));
        Assert.Equal([wren], Accounts.OfClass(_room.Id));
        Assert.Empty(Accounts.OfClass("another"));
    }

    [Fact]
    public void Join_Guest_TakesTheWorkAlongAndTheCookieOpensNothingMore()
    {
        (Person guest, string secret) = _temp.Store.People.AddGuest("w");
        _temp.Store.Attempts.Add(guest.Id, "first-01", "answer", Grades.Passed);
        Person wren = Accounts.Join(_room.Code, "Wren", "hash", guest.Id).Person!;
        Assert.Equal(guest.Id, wren.Id);
        Assert.Single(_temp.Store.Attempts.Of(wren.Id, "first-01"));
        Assert.Null(_temp.Store.People.FindGuest(secret));
    }

    [Fact]
    public void Join_GuestIdOfAnAccount_NeverTakesItOver()
    {
        Person wren = Accounts.Join(_room.Code, "Wren", "hash").Person!;
        Person thief = Accounts.Join(_room.Code, "Thief", "other", wren.Id).Person!;
        Assert.NotEqual(wren.Id, thief.Id);
        Assert.Equal(wren, Accounts.FindByName("Wren"));
    }

    [Theory]
    [InlineData("WREN")]
    [InlineData(" wren")]
    [InlineData("Wr\u200Ben")]
    public void Join_NameThatLooksTheSame_IsTaken(string name)
    {
        Accounts.Join(_room.Code, "Wren", "hash");
        JoinOutcome again = Accounts.Join(_temp.Store.Classes.Create("other").Code, name, "hash");
        Assert.Equal((null, JoinProblem.NameTaken), (again.Person, again.Problem));
        Assert.Single(_temp.Store.People.All());
    }

    [Theory]
    [InlineData("Rene\u0301 Ame\u0301lie", "RENÉ  AMÉLIE")]
    [InlineData("Søren Ha\u030Akon", "søren håkon")]
    [InlineData("Zdene\u030Ck", "Zdeněk")]
    public void Join_MarkedLettersSpelledTheOtherWay_AreOneName(string apart, string composed)
    {
        Person one = Accounts.Join(_room.Code, apart, "hash").Person!;
        Assert.Equal(JoinProblem.NameTaken, Accounts.Join(_room.Code, composed, "hash").Problem);
        Assert.Equal(one.Id, Accounts.FindByName(composed)!.Id);
        Assert.Equal(one.Id, Accounts.FindByName(apart)!.Id);
    }

    [Fact]
    public void AddAll_Clean_AddsEveryoneWithAPassphraseToChangeInOneStep()
    {
        AddedPeople outcome = Accounts.AddAll(_room.Id, [new NewPerson(" Wren ", Role.Student, "one"), new NewPerson("Otter", Role.Mentor, "two")]);
        Assert.Empty(outcome.Refused);
        _temp.Reopen();
        Assert.Equal([("Otter", Role.Mentor, "two"), ("Wren", Role.Student, "one")], Accounts.OfClass(_room.Id).Select(p =>
            (p.Name!, p.Role, p.PassphraseHash!)));
        Assert.All(Accounts.OfClass(_room.Id), p => Assert.True(p is { MustChoosePassphrase: true, HasBeenHere: false }));
    }

    [Theory]
    [InlineData("Wren", " wren ", 0)]
    [InlineData("Wren Alder", "Wren   Alder", 0)]
    [InlineData("Wre\u200Bn", "Wren", 0)]
    [InlineData("Heron", "Teal", null)]
    [InlineData("Heron", " ", null)]
    public void AddAll_OneThatCannotBe_AddsNobodyAndSaysWhichOfTheList(string first, string second, int? twin)
    {
        Accounts.Join(_room.Code, "Teal", "hash");
        AddedPeople outcome = Accounts.AddAll(_room.Id, [new NewPerson(first, Role.Student, "h"), new NewPerson(second, Role.Student, "h"),
            new NewPerson("Dunlin", Role.Student, "h")]);
        JoinProblem problem = string.IsNullOrWhiteSpace(second) ? JoinProblem.NoName : JoinProblem.NameTaken;
        Assert.Equal([new RefusedPerson(1, problem, twin)], outcome.Refused);
        Assert.Equal(["Teal"], Accounts.OfClass(_room.Id).Select(p => p.Name));
    }

    [Fact]
    public void AddAll_ClassThatIsGone_AddsNobody() =>
        Assert.Equal(JoinProblem.NoSuchClass, Assert.Single(Accounts.AddAll("gone", [new NewPerson("Wren", Role.Student, "h")]).Refused).Problem);

    [Fact]
    public void HandAgain_OnlyThoseWhoHaveNotBeenHere_GetAnother()
    {
        Person[] added = [.. Accounts.AddAll(_room.Id, [new NewPerson("Otter", Role.Student, "h"), new NewPerson("Wren", Role.Student, "h")]).Added];
        _temp.Clock.Advance(TimeSpan.FromMinutes(1));
        Accounts.Touch(added[0].Id);
        Person[] handed = [.. Accounts.HandAgain(_room.Id, added.ToDictionary(p => p.Id, _ => "new"), Sheet)];
        Assert.Equal(["Wren"], handed.Select(p => p.Name));
        Assert.Equal(("h", "new"), (Accounts.FindByName("Otter")!.PassphraseHash, Accounts.FindByName("Wren")!.PassphraseHash));
    }

    [Fact]
    public void Join_WrongCodeOrNoName_SaysWhich()
    {
        Assert.Equal(JoinProblem.NoSuchClass, Accounts.Join("acorn-acorn", "Wren", "hash").Problem);
        Assert.Equal(JoinProblem.NoName, Accounts.Join(_room.Code, " \n ", "hash").Problem);
        Assert.Empty(_temp.Store.People.All());
    }

    [Fact]
    public async Task Join_SameNameAtOnce_OnlyOneGetsIt()
    {
        JoinOutcome[] all = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ =>
            Task.Run(() => Accounts.Join(_room.Code, "Wren", "hash"), TestContext.Current.CancellationToken)));
        Assert.Single(all, o => o.Person is not null);
    }

    [Fact]
    public void SetPassphraseOrSignOut_Always_ChangesTheStamp()
    {
        Person wren = Accounts.Join(_room.Code, "Wren", "hash").Person!;
        Person reset = Accounts.SetPassphrase(wren.Id, "new", mustChoose: true)!;
        Person signedOut = Accounts.SignOutEverywhere(wren.Id)!;
        Assert.Equal(3, new[] { wren.Stamp, reset.Stamp, signedOut.Stamp }.Distinct().Count());
        Assert.Equal(("new", true), (signedOut.PassphraseHash, signedOut.MustChoosePassphrase));
    }

    [Fact]
    public void Claim_Invitation_MakesASecondInstructorOnceAndInTime()
    {
        Person first = _temp.Store.Instructors.Claim(_temp.Store.Instructors.NewCode(), "Dipper", "hash")!;
        _temp.Clock.Advance(TimeSpan.FromSeconds(1));
        string invitation = _temp.Store.Instructors.Invite();
        string late = _temp.Store.Instructors.Invite();
        Person second = _temp.Store.Instructors.Claim(invitation, "dipper", "hash")!;
        Assert.NotEqual(first.Id, second.Id);
        Assert.Equal("dipper 2", second.Name);
        Assert.Null(_temp.Store.Instructors.Claim(invitation, "Third", "hash"));
        _temp.Clock.Advance(TimeSpan.FromDays(15));
        Assert.Null(_temp.Store.Instructors.Claim(late, "Third", "hash"));
        Assert.Equal(first, _temp.Store.Instructors.Find());
    }

    [Fact]
    public void SetRole_Guest_IsNotDone()
    {
        (Person guest, _) = _temp.Store.People.AddGuest();
        Assert.Null(Accounts.SetRole(guest.Id, Role.Mentor));
        Person wren = Accounts.Join(_room.Code, "Wren", "hash").Person!;
        Assert.Equal(Role.Mentor, Accounts.SetRole(wren.Id, Role.Mentor)!.Role);
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void AddAll_WithSlips_KeepsBothOrNeither()
    {
        SealedSlips slips = Sheet([]);
        Accounts.AddAll(_room.Id, [new NewPerson("Siskin", Role.Student, "h")], _ => slips);
        _temp.Reopen();
        Assert.Equal(slips, _temp.Store.Slips.Find(slips.Ticket));
        Assert.Equal(slips, _temp.Store.Slips.LatestOf("teacher"));

        Assert.Throws<InvalidOperationException>(
            () => Accounts.AddAll(_room.Id, [new NewPerson("Redwing", Role.Student, "h")], _ => throw new InvalidOperationException("the lamp went out")));
        Assert.Null(Accounts.FindByName("Redwing"));
        _temp.Clock.Advance(TimeSpan.FromHours(1));
        Assert.Null(_temp.Store.Slips.Find(slips.Ticket));
    }

    private SealedSlips Sheet(ImmutableArray<Person> people) =>
        new($"ticket-{people.Length}", "teacher", _temp.Clock.GetUtcNow().AddMinutes(30), "sealed");
}
