using System.Net;
using System.Text;
using AngleSharp.Html.Dom;
using TyingClass.Storage.People;
using TyingClass.Web.Exchange;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

/// <summary>Names of a class from a list: looked at first, then everyone or nobody.</summary>
public sealed class NamesTests : IDisposable
{
    private const string Names = "/class/people/names";
    private const string List = "#list";

    private readonly ClassRoom _room = new();

    [Fact]
    public async Task Roster_Typed_GivesEachASlipThatOpensTheDoorOnce()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Sheet slips = await AddAsync(instructor, "Wren\nOtter, mentor\n");

        Assert.Equal(["Wren", "Otter"], slips.All(".slip-name").Select(s => s.TextContent));
        Assert.Equal(Role.Mentor, _room.Store.Accounts.FindByName("Otter")!.Role);
        string passphrase = slips.All(".slip-pass").First().TextContent;
        SignInPage entered = await (await SignInPage.OpenAsync(_room.NewBrowser())).EnterAsync(passphrase, "Wren");
        Assert.StartsWith("/account", entered.Sheet.Address, StringComparison.Ordinal);
        _room.Clock.Advance(PassphraseSlips.Kept + TimeSpan.FromSeconds(1));
        Assert.Equal(HttpStatusCode.Gone, (await instructor.OpenAsync(slips.Address)).Status);
    }

    [Fact]
    public async Task Slips_OfAnotherInstructor_AreNotShown()
    {
        using TwoClasses two = await TwoClasses.OpenAsync();
        Sheet slips = await AddAsync(await two.AsAsync("Dipper"), "Dunlin");
        Assert.Equal(HttpStatusCode.OK, slips.Status);
        Assert.Equal(HttpStatusCode.Gone, (await (await two.AsAsync("Plover")).OpenAsync(slips.Address)).Status);
    }

    [Fact]
    public async Task Roster_WithANameThatIsTaken_AddsNobodyAndKeepsTheList()
    {
        Browser instructor = await _room.NewInstructorAsync();
        await _room.NewStudentAsync("Wren");
        Sheet told = await LookAsync(instructor, "Teal\nwren\n");
        Assert.Contains("Line 2: someone on this server is called “wren”", told.Text("[role=alert]"), StringComparison.Ordinal);
        Assert.Contains("Teal", told.Text("#names"), StringComparison.Ordinal);
        Assert.Null(_room.Store.Accounts.FindByName("Teal"));
    }

    [Fact]
    public async Task Roster_Added_IsSaidNotToHaveBeenHereYet()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Sheet slips = await AddAsync(instructor, "Wren");
        Assert.Contains("not here yet", (await instructor.OpenAsync("/class/people")).Text("tbody"), StringComparison.Ordinal);
        Browser wren = _room.NewBrowser();
        SignInPage entered = await (await SignInPage.OpenAsync(wren)).EnterAsync(slips.All(".slip-pass").First().TextContent, "Wren");
        _room.Clock.Advance(TimeSpan.FromHours(2));
        await wren.OpenAsync("/");
        Assert.DoesNotContain("not here yet", (await instructor.OpenAsync("/class/people")).Text("tbody"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Roster_FileAndTypedNamesAtOnce_AddsNobodyAndKeepsTheNames()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Sheet open = await instructor.OpenAsync(Names);
        using MultipartFormDataContent form = [];
        foreach ((string key, string value) in Browser.FieldsOf(open.Form(List)).Where(f => f.Key != "names").Select(f =>
            (f.Key, f.Value))) form.Add(new StringContent(value), key);
        form.Add(new StringContent("Teal"), "names");
        form.Add(new ByteArrayContent(Encoding.UTF8.GetBytes("Wren\n")), "file", "people.csv");
        using HttpResponseMessage answer = await instructor.Client.PostAsync(new Uri(Names, UriKind.Relative), form, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("Teal</textarea>", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Null(_room.Store.Accounts.FindByName("Wren"));
        Assert.Null(_room.Store.Accounts.FindByName("Teal"));
    }

    [Fact]
    public async Task Look_AtAList_ShowsWhatEachLineBecomesAndAddsNobody()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Sheet look = await LookAsync(instructor, "Last name;First name;Email\nAlder;Wren;w@example.org\nBrook;Teal;\n");
        Assert.Equal(HttpStatusCode.OK, look.Status);
        Assert.Equal(["Wren Alder", "Teal Brook"], look.All(".names-look tbody th").Select(t => t.TextContent));
        Assert.Contains("Not used: Email", look.Text("#look"), StringComparison.Ordinal);
        Assert.Empty(_room.Store.Accounts.OfClass(_room.Store.Classes.All()[0].Id));

        Sheet slips = await look.FillAndSendAsync("#add");
        Assert.Equal(["Wren Alder", "Teal Brook"], slips.All(".slip-name").Select(s => s.TextContent));
    }

    [Fact]
    public async Task Look_TwoNamesThatAreOne_TellsEachLineAndOffersNoButton()
    {
        Browser instructor = await _room.NewInstructorAsync();
        await _room.NewStudentAsync("Heron");
        Sheet told = await LookAsync(instructor, "Wren  Alder\n heron\nwren alder\nTeal\n");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, told.Status);
        Assert.Equal(["Line 2", "Line 3"], told.All("[role=alert] li").Select(l => l.TextContent.Split(':')[0]));
        Assert.False(told.Has("#add"));
        Assert.Contains("Teal", told.Text("#names"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Add_SomeoneJoinedUnderOneOfTheNamesMeanwhile_AddsNobodyAndSaysWhichLine()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Sheet look = await LookAsync(instructor, "Teal\nWren\n");
        await _room.NewStudentAsync("WREN");
        Sheet told = await look.FillAndSendAsync("#add");
        Assert.Contains("Line 2: someone on this server is called “Wren”", told.Text("[role=alert]"), StringComparison.Ordinal);
        Assert.Null(_room.Store.Accounts.FindByName("Teal"));
    }

    [Fact]
    public async Task List_LookedAtAndLeft_IsThereAgainInAnotherBrowser()
    {
        await LookAsync(await _room.NewInstructorAsync(), "Wren, Alder\nTeal, captain of boats\n");
        Browser other = _room.NewBrowser();
        await (await SignInPage.OpenAsync(other)).EnterAsync(TwoClasses.Passphrase, "Dipper");
        Sheet again = await other.OpenAsync(Names);
        Assert.Contains("captain of boats", again.Text("#names"), StringComparison.Ordinal);
        Assert.Equal("Wren Alder", again.All(".names-look tbody th").First().TextContent);
    }

    [Fact]
    public async Task Look_LastNameFirstWithoutHeadings_IsTurnedRoundByAButtonThatShowsTheName()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Sheet look = await LookAsync(instructor, "Berg, Anna\nLind, Per\n");
        Assert.Equal(["Berg Anna", "Lind Per"], look.All(".names-look tbody th").Select(t => t.TextContent));
        Assert.Equal("Turn them round: Anna Berg, not Berg Anna", Sheet.Plain(look.Find("#turn button").TextContent));
        Sheet turned = await look.PressAsync("Turn them round");
        Assert.Equal(["Anna Berg", "Per Lind"], turned.All(".names-look tbody th").Select(t => t.TextContent));
        // Kept with the list, and meant so when it is added.
        Sheet slips = await (await instructor.OpenAsync(Names)).FillAndSendAsync("#add");
        Assert.Equal(["Anna Berg", "Per Lind"], slips.All(".slip-name").Select(s => s.TextContent));
        Assert.False((await instructor.OpenAsync(Names)).Has("#look"));
    }

    [Fact]
    public async Task Look_ColumnsUnderUnknownHeadings_AreAskedForAndCount()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Sheet look = await LookAsync(instructor, "Etternavn;Fornavn;Gruppe;Oppgave\nBerg;Anna;A;mentor\nLind;Per;B;\n");
        Assert.True(look.Find(".columns").HasAttribute("open"));
        Assert.Equal(4, look.All("#columns select").Count());
        Assert.Contains("such as “Oppgave” and “mentor”", look.Text("#columns"), StringComparison.Ordinal);
        Assert.Contains("Line 1: “Oppgave” is not a role", look.Text("[role=alert]"), StringComparison.Ordinal);
        foreach ((string at, string column) in new[] { ("0", "Last"), ("1", "First"), ("2", "Unused"), ("3", "Role") })
            ((IHtmlSelectElement)look.Find($"#column-{at}")).Value = column;
        ((IHtmlInputElement)look.Find("#headed")).IsChecked = true;
        Sheet told = await look.FillAndSendAsync("#columns");
        Assert.Equal(["Anna Berg", "Per Lind"], told.All(".names-look tbody th").Select(t => t.TextContent));
        Assert.Contains("Not used: Gruppe", told.Text("#look"), StringComparison.Ordinal);
        await told.FillAndSendAsync("#add");
        Assert.Equal((Role.Mentor, Role.Student),
            (_room.Store.Accounts.FindByName("Anna Berg")!.Role, _room.Store.Accounts.FindByName("Per Lind")!.Role));
    }

    [Theory]
    [InlineData("First", "First", "Two columns are said to hold “first name”")]
    [InlineData("Unused", "Role", "No column is said to hold a name")]
    public async Task Look_ColumnsThatGiveNoName_SaysSoAndAsksAgain(string first, string second, string says)
    {
        Sheet look = await LookAsync(await _room.NewInstructorAsync(), "Berg;Anna\n");
        ((IHtmlSelectElement)look.Find("#column-0")).Value = first;
        ((IHtmlSelectElement)look.Find("#column-1")).Value = second;
        Sheet told = await look.FillAndSendAsync("#columns");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, told.Status);
        Assert.Contains(says, told.Text("[role=alert]"), StringComparison.Ordinal);
        Assert.Equal(first, ((IHtmlSelectElement)told.Find("#column-0")).Value);
        Assert.Contains("Berg;Anna", told.Text("#names"), StringComparison.Ordinal);
    }

    public void Dispose() => _room.Dispose();

    private static async Task<Sheet> LookAsync(Browser instructor, string names) =>
        await (await instructor.OpenAsync(Names)).FillAndSendAsync(List, "button", ("names", names));

    private static async Task<Sheet> AddAsync(Browser instructor, string names) => await (await LookAsync(instructor, names)).FillAndSendAsync("#add");
}
