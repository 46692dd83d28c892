using System.Net;
using AngleSharp.Html.Dom;
using TyingClass.Storage.People;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

public sealed class JoinTests : IDisposable
{
    private readonly ClassRoom _room = new();

    [Fact]
    public async Task Join_AfterWorkingAsAGuest_TheWorkComesAlong()
    {
        await _room.NewInstructorAsync();
        Browser browser = _room.NewBrowser();
        await Answers.PassFirstAsync(browser);
        JoinPage page = await JoinPage.OpenAsync(browser);
        Assert.Contains("1 attempt sent in from this browser", page.Sheet.Text("main"), StringComparison.Ordinal);

        JoinPage joined = await page.JoinAsync(_room.Store.Classes.All()[0].Code.ToUpperInvariant().Replace('-', ' '), "Wren");

        Assert.Equal("Wren", joined.Sheet.Heading);
        Assert.Single((await ExercisePage.OpenAsync(browser, "first-01")).Attempts);
        Assert.Equal(Role.Student, _room.Store.Accounts.FindByName("Wren")!.Role);
        Assert.Empty(_room.Store.People.Guests());
    }

    [Fact]
    public async Task Join_WrongCodeTakenNameShortPassphrase_SaysWhichAndKeepsTheRest()
    {
        await _room.NewInstructorAsync();
        await _room.NewStudentAsync("Wren");
        string code = _room.Store.Classes.All()[0].Code;
        JoinPage page = await JoinPage.OpenAsync(_room.NewBrowser());

        JoinPage wrong = await page.JoinAsync("acorn acorn", "Heron");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, wrong.Sheet.Status);
        Assert.Contains("No class has that code", wrong.Errors, StringComparison.Ordinal);
        Assert.Equal(("acorn acorn", "Heron", TwoClasses.Passphrase), (wrong.Value("#code"), wrong.Value("#name"), wrong.Value("#passphrase")));

        JoinPage taken = await wrong.JoinAsync(code, "wren");
        Assert.Contains("already has that name", taken.Errors, StringComparison.Ordinal);
        Assert.Equal(code, taken.Value("#code"));

        Assert.Contains("8 characters", (await taken.JoinAsync(code, "Heron", "short")).Errors, StringComparison.Ordinal);
        JoinPage endless = await taken.JoinAsync(code, "Heron", new string('a', 129));
        Assert.Contains("this one has 129", endless.Errors, StringComparison.Ordinal);
        Assert.Equal(129, endless.Value("#passphrase")!.Length);
        Assert.Single(_room.Store.Accounts.OfClass(_room.Store.Classes.All()[0].Id));
    }

    [Fact]
    public async Task Join_EverythingWrong_IsToldAtOnceInTheOrderOfTheFormAndNothingIsLost()
    {
        await _room.NewInstructorAsync();
        JoinPage told = await (await JoinPage.OpenAsync(_room.NewBrowser())).JoinAsync("", " ", "short");
        Assert.Equal(["#code", "#name", "#passphrase"], told.Sheet.All("[role=alert] a").Select(a => a.GetAttribute("href")));
        Assert.Contains("this one has 5", told.Errors, StringComparison.Ordinal);
        Assert.Equal(("short", "true"), (told.Value("#passphrase"), told.Sheet.Find("#passphrase").GetAttribute("aria-invalid")));
        Assert.True(told.Sheet.Response.Headers.CacheControl!.NoStore);
    }

    [Fact]
    public async Task Join_WithoutTheCode_IsNotToldWhichNamesThereAre()
    {
        await _room.NewInstructorAsync();
        await _room.NewStudentAsync("Wren");
        JoinPage told = await (await JoinPage.OpenAsync(_room.NewBrowser())).JoinAsync("acorn acorn acorn", "Wren");
        Assert.DoesNotContain("already has that name", told.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Claim_EverythingWrong_IsToldAtOnceAndTheCodeStaysGood()
    {
        string code = _room.Store.Instructors.NewCode();
        SignInPage wrong = await (await SignInPage.OpenAsync(_room.NewBrowser(), withCode: true)).ClaimAsync("XXXX", "Dipper", "short");
        Assert.Equal(["#code", "#passphrase"], wrong.Sheet.All("[role=alert] a").Select(a => a.GetAttribute("href")));
        Assert.Equal("short", ((IHtmlInputElement)wrong.Sheet.Find("#passphrase")).Value);
        SignInPage tooShort = await wrong.ClaimAsync(code, "Dipper", "short");
        Assert.Equal(["#passphrase"], tooShort.Sheet.All("[role=alert] a").Select(a => a.GetAttribute("href")));
        Assert.Empty((await tooShort.ClaimAsync(code, "Dipper", TwoClasses.Passphrase)).Errors);
    }

    [Fact]
    public async Task SignIn_Refused_HandsBackNoPassphraseThatMayOpenAnAccount()
    {
        await _room.NewInstructorAsync();
        SignInPage door = await SignInPage.OpenAsync(_room.NewBrowser());
        SignInPage empty = await door.EnterAsync("", "");
        Assert.Equal(["#name", "#passphrase"], empty.Sheet.All("[role=alert] a").Select(a => a.GetAttribute("href")));
        SignInPage refused = await empty.EnterAsync("another one entirely");
        Assert.Equal("", ((IHtmlInputElement)refused.Sheet.Find("#passphrase")).Value);
        Assert.DoesNotContain("another one entirely", refused.Sheet.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task SignIn_NameInAnyCase_OpensTheAccountAndOldSignInsEndOnDemand()
    {
        await _room.NewInstructorAsync();
        Browser first = await _room.NewStudentAsync("Wren");
        Browser second = _room.NewBrowser();
        SignInPage signedIn = await (await SignInPage.OpenAsync(second)).EnterAsync(TwoClasses.Passphrase, "WREN");
        Assert.Equal("/", signedIn.Sheet.Address);

        await PressAsync(second, "leave");

        Assert.StartsWith("/sign-in", (await first.OpenAsync("/account")).Address, StringComparison.Ordinal);
        Assert.StartsWith("/sign-in", (await second.OpenAsync("/account")).Address, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Account_PassphraseChanged_OtherBrowsersAreSignedOutThisOneIsNot()
    {
        await _room.NewInstructorAsync();
        Browser here = await _room.NewStudentAsync("Wren");
        Browser there = _room.NewBrowser();
        await (await SignInPage.OpenAsync(there)).EnterAsync(TwoClasses.Passphrase, "Wren");

        Sheet account = await here.OpenAsync("/account");
        ((IHtmlInputElement)account.Find("#current")).Value = "not it at all";
        ((IHtmlInputElement)account.Find("#chosen")).Value = "another one longer";
        Sheet wrong = await PressAsync(account, "passphrase");
        Assert.Contains("not the passphrase you have now", wrong.Text("[role=alert]"), StringComparison.Ordinal);
        Assert.Equal(("", "another one longer"), (((IHtmlInputElement)wrong.Find("#current")).Value, ((IHtmlInputElement)wrong.Find("#chosen")).Value));
        ((IHtmlInputElement)wrong.Find("#current")).Value = TwoClasses.Passphrase;
        ((IHtmlInputElement)wrong.Find("#chosen")).Value = "another long one";
        await PressAsync(wrong, "passphrase");

        Assert.Equal("/account", (await here.OpenAsync("/account")).Address);
        Assert.StartsWith("/sign-in", (await there.OpenAsync("/account")).Address, StringComparison.Ordinal);
        Assert.NotEmpty((await (await SignInPage.OpenAsync(_room.NewBrowser())).EnterAsync(TwoClasses.Passphrase, "Wren")).Errors);
    }

    [Fact]
    public async Task SignIn_ManyTriesAtOneName_IsSlowedDownForThatNameOnlyAndTheRightPassphraseStillOpens()
    {
        await _room.NewInstructorAsync();
        await _room.NewStudentAsync("Wren");
        SignInPage door = await SignInPage.OpenAsync(_room.NewBrowser());
        for (int i = 0; i < Security.Doors.FreeTries; i++) door = await door.EnterAsync("guess", "wren");

        Task<SignInPage> right = door.EnterAsync(TwoClasses.Passphrase, "Wren");
        Assert.Equal("/class", (await (await SignInPage.OpenAsync(_room.NewBrowser())).EnterAsync(TwoClasses.Passphrase)).Sheet.Address);
        Assert.False(right.IsCompleted);
        while (!right.IsCompleted)
        {
            _room.Clock.Advance(TimeSpan.FromSeconds(1));
            await Task.Delay(10, TestContext.Current.CancellationToken);
        }

        Assert.Empty((await right).Errors);
    }

    [Fact]
    public async Task SignIn_BrowserThatOpenedTheAccountBefore_IsNotSlowedDownByOthersTries()
    {
        await _room.NewInstructorAsync();
        Browser known = _room.NewBrowser();
        await _room.NewStudentAsync("Wren", known);
        await (await known.OpenAsync("/sign-out")).PressAsync("Sign out");
        SignInPage stranger = await SignInPage.OpenAsync(_room.NewBrowser());
        for (int i = 0; i < Security.Doors.FreeTries; i++) stranger = await stranger.EnterAsync("guess", "Wren");

        // No second of the clock goes by: it would wait for ever.
        Assert.Empty((await (await SignInPage.OpenAsync(known)).EnterAsync(TwoClasses.Passphrase, "Wren")).Errors);
    }

    [Fact]
    public async Task Join_WholeRoomFromOneAddress_LosesNobodyAndNothing()
    {
        await _room.NewInstructorAsync();
        for (int phone = 0; phone < 45; phone++) await _room.NewStudentAsync($"Phone {phone}");
        Assert.Equal(45, _room.Store.Accounts.OfClass(_room.Store.Classes.All()[0].Id).Length);
    }

    [Theory]
    [InlineData("Wr\u0435n")]
    [InlineData("W\u200Bren")]
    [InlineData("\u202EWren")]
    [InlineData("\uFF37ren")]
    [InlineData("Wren\u3164")]
    public async Task Join_NameThatLooksLikeAnothers_IsTaken(string name)
    {
        await _room.NewInstructorAsync();
        await _room.NewStudentAsync("Wren");
        JoinPage second = await (await JoinPage.OpenAsync(_room.NewBrowser())).JoinAsync(_room.Store.Classes.All()[0].Code, name);
        Assert.Contains("already has that name", second.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Account_GuestWorkInThisBrowser_IsBroughtInOnDemand()
    {
        await _room.NewInstructorAsync();
        await Answers.PassFirstAsync(await _room.NewStudentAsync("Wren"));
        Browser other = _room.NewBrowser();
        await Answers.PassFirstAsync(other);
        await (await SignInPage.OpenAsync(other)).EnterAsync(TwoClasses.Passphrase, "Wren");

        await PressAsync(other, "bring");

        Assert.Equal(["Attempt 2: passed", "Attempt 1: passed"], (await ExercisePage.OpenAsync(other, "first-01")).Attempts);
    }

    [Fact]
    public async Task SignIn_WhereNobodyHasAnAccount_LeadsOnAsAGuestAndNotToTheInstructorsForm()
    {
        Sheet door = await _room.NewBrowser().OpenAsync("/sign-in");
        Assert.Equal("Sign in", door.Heading);
        Assert.False(door.Has("#code"));
        Assert.Equal("/", door.Find(".guest-way a.button").GetAttribute("href"));
        Assert.Contains("Nobody has an account here yet", door.Text(".guest-way"), StringComparison.Ordinal);
        Assert.True((await door.Browser.OpenAsync("/sign-in?code=new")).Has("#code"));
    }

    [Fact]
    public async Task Patterns_AskedForByAGuest_LeadToJoinOrOnAsAGuest()
    {
        await _room.NewInstructorAsync();
        Sheet door = await _room.NewBrowser().OpenAsync("/patterns");
        Assert.Equal("/sign-in?next=%2Fpatterns", door.Address);
        Assert.Equal(["/bench", "/join"], door.All(".guest-way .tools a").Select(a => a.GetAttribute("href")));
        Assert.True(door.Has("#passphrase"));
    }

    [Fact]
    public async Task Explain_ForAGuestWithoutAClass_PromisesNoReader()
    {
        Browser guest = _room.NewBrowser();
        Pages.ExercisePage page = await Pages.ExercisePage.OpenAsync(guest, "second-03");
        Assert.Contains("nobody reads this", page.Sheet.Text("form.answer"), StringComparison.Ordinal);
        page = await page.Answer("Because the eyes hang low under the shank.").SubmitAsync();
        Assert.Contains("Nobody marks it here", page.Sheet.Text("#feedback"), StringComparison.Ordinal);
        Assert.DoesNotContain("A person will read this", page.Sheet.Text(), StringComparison.Ordinal);
    }

    public void Dispose() => _room.Dispose();

    private static async Task<Sheet> PressAsync(Browser browser, string what) => await PressAsync(await browser.OpenAsync("/account"), what);

    private static Task<Sheet> PressAsync(Sheet account, string what)
    {
        var button = account.Find($"button[value='{what}']");
        return account.Browser.SendAsync(account, (IHtmlFormElement)button.Closest("form")!, button);
    }
}
