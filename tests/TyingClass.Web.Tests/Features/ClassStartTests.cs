using AngleSharp.Html.Dom;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

/// <summary>From the one-time code to slips, by the pages alone.</summary>
public sealed class ClassStartTests : IDisposable
{
    private readonly ClassRoom _room = new();

    [Fact]
    public async Task Start_FromTheCodeToSlips_LeadsThroughAndIsTakenUpAgainElsewhere()
    {
        Browser first = _room.NewBrowser();
        SignInPage claimed = await (await SignInPage.OpenAsync(first, withCode: true)).ClaimAsync(_room.Store.Instructors.NewCode(), "Dipper",
            TwoClasses.Passphrase);
        Sheet start = claimed.Sheet;
        Assert.Equal("/class/start", start.Address);
        Assert.Equal(["next", "to do", "to do", "to do", "to do"], Words(start));

        start = await start.PressAsync("Keep and go on", ("my-name", "Dipper Brook"), ("name", "Alder Bridge"), ("zone", "Europe/Berlin"));
        Assert.Equal(("Alder Bridge", "Europe/Berlin"), (_room.Store.Classes.All()[0].Name, _room.Store.Classes.All()[0].TimeZoneId));
        Assert.NotNull(_room.Store.Accounts.FindByName("Dipper Brook"));
        start = await start.PressAsync("That is settled");
        Assert.Equal(["done", "done", "next", "to do", "to do"], Words(start));
        await (await first.OpenAsync("/class/people/names")).FillAndSendAsync("#list", "button", ("names", "Wren\nTeal, captain of boats"));

        // Left there, and taken up in another browser.
        Browser second = _room.NewBrowser();
        await (await SignInPage.OpenAsync(second)).EnterAsync(TwoClasses.Passphrase, "Dipper Brook");
        start = await second.OpenAsync("/class/start");
        Assert.Contains("A list you began is kept", start.Text("#names"), StringComparison.Ordinal);
        Sheet names = await second.OpenAsync("/class/people/names");
        Assert.Equal("step", names.Find(".start-trail a[href='/class/people/names']").GetAttribute("aria-current"));
        Sheet slips = await (await names.FillAndSendAsync("#list", "button", ("names", "Wren\nTeal\n"))).FillAndSendAsync("#add");
        Assert.Equal(2, slips.All(".slip-pass").Count());

        // The slips were lost: new ones for whoever has not been here.
        string old = slips.All(".slip-pass").First().TextContent;
        await (await SignInPage.OpenAsync(_room.NewBrowser())).EnterAsync(slips.All(".slip-pass").Last().TextContent, "Teal");
        _room.Clock.Advance(TimeSpan.FromMinutes(10));
        Browser teal = _room.NewBrowser();
        await (await SignInPage.OpenAsync(teal)).EnterAsync(slips.All(".slip-pass").Last().TextContent, "Teal");
        await teal.OpenAsync("/account");
        Sheet again = await (await second.OpenAsync("/class/start")).PressAsync("Make a slip");
        Assert.Equal(["Wren"], again.All(".slip-name").Select(n => n.TextContent));
        Assert.NotEmpty((await (await SignInPage.OpenAsync(_room.NewBrowser())).EnterAsync(old, "Wren")).Errors);
        string words = again.Text(".slip-pass").Replace('-', ' ').ToUpperInvariant();
        Assert.StartsWith("/account", (await (await SignInPage.OpenAsync(_room.NewBrowser())).EnterAsync(words, "Wren")).Sheet.Address,
            StringComparison.Ordinal);

        start = await second.OpenAsync("/class/start");
        Assert.Equal(["done", "done", "done", "next", "done"], Words(start));
        Assert.Equal("Before evening 1", (await start.PressAsync("Leave the rest")).Heading);
        Assert.False((await second.OpenAsync("/class/people/names")).Has(".start-trail"));
    }

    [Fact]
    public async Task Start_NameThatIsTaken_SaysSoAndKeepsWhatWasTyped()
    {
        Browser instructor = await _room.NewInstructorAsync();
        await _room.NewStudentAsync("Wren");
        Sheet told = await (await instructor.OpenAsync("/class/start")).PressAsync("Keep and go on", ("my-name", "wren"), ("name", "Alder Bridge"));
        Assert.Contains("already has that name", told.Text("[role=alert]"), StringComparison.Ordinal);
        Assert.Equal("Alder Bridge", ((IHtmlInputElement)told.Find("#name")).Value);
    }

    [Fact]
    public async Task Slips_OfAnImportedClass_OfferToOpenIt()
    {
        Browser instructor = await _room.NewInstructorAsync();
        await _room.NewStudentAsync("Wren");
        // The class made later stands after the one that is open.
        _room.Clock.Advance(TimeSpan.FromSeconds(1));
        byte[] json = await instructor.Client.GetByteArrayAsync(new Uri("/class/files?handler=class", UriKind.Relative), TestContext.Current.CancellationToken);
        Sheet files = await instructor.OpenAsync("/class/files");
        using MultipartFormDataContent content = [];
        foreach ((string name, string value) in Browser.FieldsOf(files.Form("form[action*='Import' i]")).Where(f =>
            f.Key != "file")) content.Add(new StringContent(value), name);
        content.Add(new ByteArrayContent(json), "file", "class.json");
        using HttpResponseMessage answer = await instructor.Client.PostAsync(new Uri("/class/files?handler=import", UriKind.Relative), content,
            TestContext.Current.CancellationToken);
        Sheet slips = await instructor.OpenAsync(answer.Headers.Location!.ToString());
        Sheet opened = await slips.PressAsync("Open the class that came in");
        Assert.Equal("Tying class 2", opened.Text(".class-nav .tab"));
    }

    public void Dispose() => _room.Dispose();

    private static string[] Words(Sheet start) => [.. start.All(".start-steps h2 .tab").Select(t => t.TextContent)];
}
