using System.Net;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

public sealed class InstructorTests : IDisposable
{
    private const string Passphrase = "four quiet winter trout";

    private readonly ClassRoom _room = new();

    [Theory]
    [InlineData("/class")]
    [InlineData("/class/students/anyone/first-01")]
    public async Task Register_NotSignedIn_LeadsToTheDoor(string address)
    {
        Browser browser = _room.NewBrowser();
        await Answers.PassFirstAsync(browser);
        Sheet sheet = await browser.OpenAsync(address);
        Assert.StartsWith("/sign-in", sheet.Address, StringComparison.Ordinal);
    }

    [Fact]
    public async Task SignIn_CodeThenPassphrase_OpensTheBrief()
    {
        Browser first = await _room.NewInstructorAsync(Passphrase);
        Assert.Equal(HttpStatusCode.OK, (await first.OpenAsync("/class")).Status);

        SignInPage door = await SignInPage.OpenAsync(_room.NewBrowser());
        Assert.False(door.AsksForCode);
        SignInPage wrong = await door.EnterAsync("not the passphrase");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, wrong.Sheet.Status);
        Assert.NotEmpty(wrong.Errors);
        Assert.Equal("Brief", (await wrong.EnterAsync(Passphrase)).Sheet.Heading);
    }

    [Fact]
    public async Task SignIn_WrongCodeOrShortPassphrase_KeepsWhatMayBeKept()
    {
        string code = _room.Store.Instructors.NewCode();
        SignInPage door = await SignInPage.OpenAsync(_room.NewBrowser(), withCode: true);
        SignInPage wrong = await door.ClaimAsync("AAAA-AAAA-AAAA", "Dipper", Passphrase);
        Assert.Contains("code", wrong.Errors, StringComparison.Ordinal);
        SignInPage tooShort = await wrong.ClaimAsync(code, "Dipper", "short");
        Assert.Contains("12", tooShort.Errors, StringComparison.Ordinal);
        Assert.Equal(code, tooShort.Sheet.Find("#code").GetAttribute("value"));
        Assert.Equal("Dipper", tooShort.Sheet.Find("#name").GetAttribute("value"));
        // One that is being chosen stays in the hands of who chooses it.
        Assert.Equal("short", tooShort.Sheet.Find("#passphrase").GetAttribute("value"));
        Assert.Null(_room.Store.Instructors.Find());
    }

    [Fact]
    public async Task SignIn_NewCodeUsed_EndsOlderSignIns()
    {
        Browser old = await _room.NewInstructorAsync(Passphrase);
        SignInPage door = await SignInPage.OpenAsync(_room.NewBrowser(), withCode: true);
        await door.ClaimAsync(_room.Store.Instructors.NewCode(), "Dipper", "five loud summer perch");
        Assert.StartsWith("/sign-in", (await old.OpenAsync("/class")).Address, StringComparison.Ordinal);
    }

    [Fact]
    public async Task SignIn_OneTryMoreThanIsFree_WaitsASecond()
    {
        await _room.NewInstructorAsync(Passphrase);
        SignInPage door = await SignInPage.OpenAsync(_room.NewBrowser());
        for (int i = 0; i < Security.Doors.FreeTries; i++) door = await door.EnterAsync("guess");
        Task<SignInPage> slow = door.EnterAsync("guess");
        await Task.Delay(200, TestContext.Current.CancellationToken);
        Assert.False(slow.IsCompleted);
        _room.Clock.Advance(TimeSpan.FromSeconds(1));
        Assert.NotEmpty((await slow).Errors);
    }

    [Theory]
    [InlineData("https://evil.example/")]
    [InlineData("//evil.example/")]
    public async Task SignIn_ForeignReturnAddress_IsIgnored(string next)
    {
        await _room.NewInstructorAsync(Passphrase);
        Browser browser = _room.NewBrowser();
        SignInPage door = new(await browser.OpenAsync("/sign-in?next=" + Uri.EscapeDataString(next)));
        Assert.Equal("/class", (await door.EnterAsync(Passphrase)).Sheet.Address);
    }

    [Fact]
    public async Task SignOut_Sent_ClosesTheRegister()
    {
        Browser browser = await _room.NewInstructorAsync(Passphrase);
        Sheet sheet = await browser.OpenAsync("/sign-out");
        await browser.SendAsync(sheet, sheet.Form("main form"), sheet.Find("main form button"));
        Assert.StartsWith("/sign-in", (await browser.OpenAsync("/class")).Address, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Register_StudentJoined_StandsUnderTheNameWithEveryState()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Browser browser = await _room.NewStudentAsync("<b>Wren</b>");
        await Answers.PassFirstAsync(browser);
        await Answers.FailRepairAsync(browser);
        await (await ExercisePage.OpenAsync(browser, "second-03")).Answer("Because the eyes lie on the point side of the shank.").SubmitAsync();

        RegisterPage register = await RegisterPage.OpenAsync(instructor);

        Assert.Equal(["<b>Wren</b>"], register.People);
        Assert.Equal("1 passed", register.Cell("Wren", "Before the eyes are moved"));
        Assert.Equal("1 not yet", register.Cell("Wren", "The darter that rolled over"));
        Assert.Equal("1 to be read", register.Cell("Wren", "Why it flips"));
        Assert.Equal("untried", register.Cell("Wren", "On the scale"));
        Assert.All(register.Sheet.All(".register tbody td"), cell => Assert.Contains(cell.ClassName, new[] { "p", "t", "w", "u" }));
    }

    [Fact]
    public async Task Cell_UnknownStudent_IsNotFound()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Assert.Equal(HttpStatusCode.NotFound, (await instructor.OpenAsync("/class/students/nobody/first-01")).Status);
    }

    public void Dispose() => _room.Dispose();
}
