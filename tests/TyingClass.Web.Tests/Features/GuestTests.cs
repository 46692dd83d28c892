using System.Net;
using TyingClass.Storage.People;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

/// <summary>Work done without an account, and how an instructor brings it in: with several classes by the guest's mark only.</summary>
public sealed class GuestTests : IAsyncLifetime
{
    private TwoClasses _two = null!;
    private Browser _browser = null!;
    private Person _guest = null!;

    [Fact]
    public async Task Guest_OnAServerWithoutAClass_IsOfferedNothingToJoin()
    {
        using ClassRoom room = new();
        Assert.DoesNotContain("/join", (await room.NewBrowser().OpenAsync("/")).All("header nav a").Select(a => a.GetAttribute("href")));

        await room.NewInstructorAsync();
        Sheet home = await room.NewBrowser().OpenAsync("/");
        Assert.Contains("/join", home.All("header nav a").Select(a => a.GetAttribute("href")));
        Sheet door = await room.NewBrowser().OpenAsync("/sign-in");
        Assert.Equal("Go on as a guest", door.Text(".guest-way a[href='/']"));
    }

    [Fact]
    public async Task SeveralClasses_NoInstructorSeesAGuest()
    {
        foreach (string name in new[] { "Dipper", "Plover" })
        {
            Browser instructor = await _two.AsAsync(name);
            Sheet people = await instructor.OpenAsync("/class/people");
            Assert.DoesNotContain(_guest.Label, people.Text(), StringComparison.Ordinal);
            Assert.DoesNotContain(_guest.Id, people.Html, StringComparison.Ordinal);
            Assert.DoesNotContain(_guest.Id, (await instructor.OpenAsync($"/class/people/{(name == "Dipper" ? _two.Heron : _two.Person("Teal")).Id}")).Html,
                StringComparison.Ordinal);
            Assert.Equal(HttpStatusCode.NotFound, (await instructor.OpenAsync($"/class/students/{_guest.Id}")).Status);
            Assert.Equal(HttpStatusCode.NotFound, (await instructor.OpenAsync($"/class/students/{_guest.Id}/first-01")).Status);
        }
    }

    [Fact]
    public async Task SeveralClasses_MovedByIdWithoutTheMark_NothingHappens()
    {
        Browser plover = await _two.AsAsync("Plover");
        string teal = _two.Person("Teal").Id;
        KeyValuePair<string, string>[] token = [.. Browser.FieldsOf((await plover.OpenAsync($"/class/people/{teal}")).Form("main form"))];
        await plover.PostAsync($"/class/people/{teal}", [.. token, Pair("do", "move"), Pair("guest", _guest.Id)]);
        Assert.Equal(HttpStatusCode.UnprocessableEntity,
            (await plover.PostAsync("/class/people", [.. token, Pair("do", "move"), Pair("mark", _guest.Id), Pair("into", teal)])).Status);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await plover.PostAsync("/class/people", [.. token, Pair("do", "move"), Pair("into", teal)])).Status);
        Assert.Single(_two.Room.Store.Attempts.AllOf(_guest.Id));
    }

    [Fact]
    public async Task Mark_ShownToTheGuestAndTold_ItsWorkIsSeenMovedAndMovedBack()
    {
        string told = (await _browser.OpenAsync("/")).Text(".guest-mark .spoken");
        Assert.Equal(told, (await _browser.OpenAsync("/join")).Text(".guest-mark .spoken"));
        Browser dipper = await _two.AsAsync("Dipper");

        Sheet found = await (await dipper.OpenAsync("/class/people")).PressAsync("Look what it holds", ("mark", told.Replace('-', ' ').ToUpperInvariant()));
        Assert.Contains("Before the eyes are moved: 1 attempt", found.Text("main"), StringComparison.Ordinal);
        Assert.Contains("last seen just now", found.Text("main"), StringComparison.Ordinal);
        Sheet moved = await found.PressAsync("Move into this account", ("into", _two.Heron.Id));
        Assert.Contains("1 attempt moved in. For 30 days this can be undone", moved.Text("[role=status]"), StringComparison.Ordinal);
        Assert.Equal("1 passed", (await RegisterPage.OpenAsync(dipper)).Cell("Heron", "Before the eyes are moved"));

        Sheet undone = await moved.PressAsync("Undo the move");
        Assert.Contains("Undone", undone.Text("[role=status]"), StringComparison.Ordinal);
        Assert.Equal("untried", (await RegisterPage.OpenAsync(dipper)).Cell("Heron", "Before the eyes are moved"));
        Assert.Equal(["Attempt 1: passed"], (await ExercisePage.OpenAsync(_browser, "first-01")).Attempts);
        Assert.Equal(told, (await _browser.OpenAsync("/")).Text(".guest-mark .spoken"));
    }

    [Fact]
    public async Task Mark_OfNobodyOrIntoAnotherClass_IsToldAndMovesNothing()
    {
        Browser dipper = await _two.AsAsync("Dipper");
        Sheet people = await dipper.OpenAsync("/class/people");
        Sheet wrong = await people.PressAsync("Look what it holds", ("mark", "acorn badge comet dune"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, wrong.Status);
        Assert.Contains("No browser has this mark", wrong.Text("[role=alert]"), StringComparison.Ordinal);
        Assert.Equal("acorn badge comet dune", wrong.Find("#mark").GetAttribute("value"));

        Sheet found = await people.PressAsync("Look what it holds", ("mark", _guest.GuestMark!));
        Sheet none = await found.PressAsync("Move into this account");
        Assert.Contains("Choose the account", none.Text("[role=alert]"), StringComparison.Ordinal);
        KeyValuePair<string, string>[] token = [.. Browser.FieldsOf(none.Form("main form"))];
        Assert.Equal(HttpStatusCode.UnprocessableEntity,
            (await dipper.PostAsync("/class/people", [.. token.Where(f => f.Key != "into"), Pair("do", "move"), Pair("into", _two.Person("Teal").Id)])).Status);
        Assert.Single(_two.Room.Store.Attempts.AllOf(_guest.Id));
    }

    [Fact]
    public async Task Mark_ManyTries_AreSlowedDownForThatInstructorOnly()
    {
        Sheet people = await (await _two.AsAsync("Plover")).OpenAsync("/class/people");
        for (int i = 0; i < Security.AccountLimit.MarkTries; i++) await people.PressAsync("Look what it holds", ("mark", "acorn badge comet dune"));
        Sheet late = await people.PressAsync("Look what it holds", ("mark", _guest.GuestMark!));
        Assert.Contains("Too many marks tried", late.Text("[role=alert]"), StringComparison.Ordinal);
        Sheet other = await (await (await _two.AsAsync("Dipper")).OpenAsync("/class/people")).PressAsync("Look what it holds", ("mark", _guest.GuestMark!));
        Assert.Equal(HttpStatusCode.OK, other.Status);
    }

    [Fact]
    public async Task UndoMove_ByTheInstructorOfAnotherClass_IsNotDone()
    {
        GuestMove move = _two.Room.Store.GuestMoves.MoveInto(_guest.Id, _two.Heron.Id)!;
        Browser plover = await _two.AsAsync("Plover");
        string teal = _two.Person("Teal").Id;
        KeyValuePair<string, string>[] token = [.. Browser.FieldsOf((await plover.OpenAsync($"/class/people/{teal}")).Form("main form"))];
        Assert.Equal(HttpStatusCode.NotFound,
            (await plover.PostAsync($"/class/people/{_two.Heron.Id}", [.. token, Pair("do", "undo"), Pair("move", move.Id)])).Status);
        await plover.PostAsync($"/class/people/{teal}", [.. token, Pair("do", "undo"), Pair("move", move.Id)]);
        Assert.Single(_two.Room.Store.Attempts.AllOf(_two.Heron.Id));
    }

    [Fact]
    public async Task OneClass_ItsInstructorSeesGuestsAndMovesThemFromTheList()
    {
        using ClassRoom room = new();
        Browser instructor = await room.NewInstructorAsync();
        await room.NewStudentAsync("Wren");
        await Answers.PassFirstAsync(room.NewBrowser());
        Person one = Assert.Single(room.Store.People.Guests());
        Assert.Contains(one.Label, (await instructor.OpenAsync("/class/people")).Text("main"), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await instructor.OpenAsync($"/class/students/{one.Id}/first-01")).Status);
        await (await instructor.OpenAsync($"/class/people/{room.Store.Accounts.FindByName("Wren")!.Id}")).PressAsync("Move into this account",
            ("guest", one.Id));
        Assert.Equal("1 passed", (await RegisterPage.OpenAsync(instructor)).Cell("Wren", "Before the eyes are moved"));
    }

    public async ValueTask InitializeAsync()
    {
        _two = await TwoClasses.OpenAsync();
        _browser = _two.Room.NewBrowser();
        await Answers.PassFirstAsync(_browser);
        _guest = Assert.Single(_two.Room.Store.People.Guests());
    }

    public ValueTask DisposeAsync()
    {
        _two.Dispose();
        return ValueTask.CompletedTask;
    }

    private static KeyValuePair<string, string> Pair(string key, string value) => KeyValuePair.Create(key, value);
}
