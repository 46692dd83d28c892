using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Xunit;

namespace TyingClass.Browser.Tests.Stories;

/// <summary>From the copied folder to three phones in the room. 127.0.0.2 stands for the club's network.</summary>
[Collection(BrowserCollection.Name)]
public sealed partial class PublishedStoryTests(PublishedFolder published, Chromium browser) : IClassFixture<PublishedFolder>
{
    private const string Passphrase = "kettle river amber stone";

    [Fact]
    public async Task PublishedFolder_InAnEmptyHome_BringsThreePhonesIntoTheClass()
    {
        await using PublishedRun run =
            await PublishedRun.StartAsync(published, "--room", "--room-address", "127.0.0.2", "--urls", "http://127.0.0.1:0", "--no-browser");
        string root = run.Said("In the room, for phones: ");
        Assert.Matches(@"^http://127\.0\.0\.2:\d+$", root);
        Assert.Equal(Path.Combine(published.Path, "lessons"), run.Said("Lessons: "));
        // Its own runtime, not one that this machine happens to have.
        Assert.Equal(Path.Combine(published.Path, "program", "libcoreclr.so"), run.LoadedRuntime());
        Assert.Equal(Path.Combine(run.Home, ".local", "share", "TyingClass"), run.Said("Data: "));

        // The instructor, at the machine itself, comes in with the code from the console.
        IPage instructor = await browser.NewVisitorAsync(run.Said("TyingClass is open at "));
        await instructor.GotoAsync("/sign-in?code=new");
        await instructor.Locator("#code").FillAsync(run.Said("The instructor's one-time code: "));
        await instructor.Locator("#name").FillAsync("Dipper");
        await instructor.Locator("#passphrase").FillAsync(Passphrase);
        await instructor.Locator("main form button").First.ClickAsync();
        await instructor.WaitForURLAsync(url => !url.Contains("/sign-in", StringComparison.Ordinal));

        // He holds a phone against the network first: his screen turns green by itself.
        await instructor.GotoAsync("/class/room");
        await instructor.GetByText("No phone has reached the class yet.").WaitForAsync();
        IPage checking = await browser.NewVisitorAsync(root, 390);
        await checking.GotoAsync(await PrintedAsync(instructor));
        await checking.GetByRole(AriaRole.Heading, new() { Name = "Your phone reached the class" }).WaitForAsync();
        await instructor.GetByText("One phone has reached the class.").WaitForAsync();

        // Three phones join at the address that the empty register prints, one of them without scripting.
        await instructor.GotoAsync("/class");
        string join = await PrintedAsync(instructor);
        Assert.StartsWith($"{root}/join?code=", join, StringComparison.Ordinal);
        foreach ((string name, bool scripting) in new[] { ("Wren", true), ("Teal", true), ("Siskin", false) }) await JoinAsync(join, name, scripting);
        await instructor.GotoAsync("/class/register?evening=all");
        string register = await instructor.Locator("main").InnerTextAsync();
        Assert.All(["Wren", "Teal", "Siskin"], name => Assert.Contains(name, register, StringComparison.Ordinal));

        // He makes slips for two who are not here yet, and prints them.
        await instructor.GotoAsync("/class/people/names");
        await instructor.Locator("#names").FillAsync("Dunlin\nOuzel");
        await instructor.GetByRole(AriaRole.Button, new() { Name = "See what each line becomes" }).ClickAsync();
        await instructor.GetByRole(AriaRole.Button, new() { Name = "Add these 2 people" }).ClickAsync();
        await instructor.Locator(".slips").WaitForAsync();
        Assert.Equal(2, await instructor.Locator(".slips .qr").CountAsync());
        Assert.Contains($"{root}/sign-in", await instructor.Locator(".slips").InnerTextAsync(), StringComparison.Ordinal);
        byte[] paper = await instructor.PdfAsync(new() { Format = "A4", PrintBackground = false });
        Assert.Single(Page().Matches(System.Text.Encoding.Latin1.GetString(paper)));
        await instructor.EmulateMediaAsync(new() { Media = Media.Print });
        LocatorBoundingBoxResult code = (await instructor.Locator(".slips .qr").First.BoundingBoxAsync())!;
        // Some 2 cm, 96 px to the inch: a camera reads it at arm's length; common practice, no source.
        Assert.InRange(code.Width, 75, 200);

        // The command line beside it finds the same class, lessons and words.
        string backup = Path.Combine(run.Home, "winter.zip");
        (int exit, string said) = await run.CallAsync(published.CommandLine, "backup", backup);
        Assert.True(exit == 0, said);
        Assert.Contains("6 people", said, StringComparison.Ordinal);
        Assert.True(File.Exists(backup));
    }

    // Read aloud to whoever cannot see it, the code says where it leads; that it does is tested where it is drawn.
    private static async Task<string> PrintedAsync(IPage page) =>
        Address().Match(await page.Locator("svg.qr").First.GetAttributeAsync("aria-label") ?? "").Value;

    private async Task JoinAsync(string address, string name, bool scripting)
    {
        IPage phone = await browser.NewVisitorAsync(address, 390, scripting: scripting);
        await phone.GotoAsync(address);
        await phone.Locator("#name").FillAsync(name);
        await phone.Locator("#passphrase").FillAsync(Passphrase);
        await phone.GetByRole(AriaRole.Button, new() { Name = "Join", Exact = true }).ClickAsync();
        await phone.WaitForURLAsync("**/account**");
    }

    [GeneratedRegex(@"https?://\S+$")]
    private static partial Regex Address();

    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex Page();
}
