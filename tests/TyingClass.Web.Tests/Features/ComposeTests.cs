using System.Net;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

public sealed class ComposeTests : IDisposable
{
    private const string Id = "second-01";

    private const string Loach =
        "recipe: Copper Loach\nintent: point down\nhook:\n  size: 6\nparts:\n  - part: bead\n    material: brass\n    size: 4 mm\n    at: 0 "
        + "mm\nfishing:\n  speed: 0.4 m/s\n";

    private readonly ClassRoom _room = new();

    [Fact]
    public async Task Compose_PartsAddedMovedAndTakenOut_FormFollowsAndKeepsWhatWasTyped()
    {
        ExercisePage page = await ExercisePage.OpenAsync(_room.NewBrowser(), Id);
        page = await page.Set("recipe", "Half done").AddPartAsync("bead");
        page = await page.Set("parts[0].size", "about so big").AddPartAsync("wing");
        page = await page.Set("parts[1].length", "45 mm").AddPartAsync("dumbbell eyes");
        Assert.Equal(["bead", "wing", "dumbbell eyes"], page.PartTitles);

        page = await page.PressAsync("up:2");
        Assert.Equal(["bead", "dumbbell eyes", "wing"], page.PartTitles);
        page = await page.PressAsync("down:0");
        Assert.Equal(["dumbbell eyes", "bead", "wing"], page.PartTitles);
        Assert.Equal("about so big", page.Field("parts[1].size"));
        page = await page.PressAsync("remove:0");

        Assert.Equal(["bead", "wing"], page.PartTitles);
        Assert.Equal("about so big", page.Field("parts[0].size"));
        Assert.Equal("45 mm", page.Field("parts[1].length"));
        Assert.Equal("Half done", page.Field("recipe"));
        Assert.Empty(page.Problems);
        Assert.Empty(_room.Store.People.All());
    }

    [Fact]
    public async Task Compose_BadFields_AreMarkedAtTheFieldAndNotCounted()
    {
        ExercisePage page = await (await ExercisePage.OpenAsync(_room.NewBrowser(), Id)).AddPartAsync("bead");

        ExercisePage refused = await page.Set("parts[0].size", "4").Set("parts[0].at", "0 mm").Set("parts[0].mass", "heavy").SubmitAsync();

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Sheet.Status);
        Assert.Equal(2, refused.Problems.Count);
        Assert.Equal("true", refused.Sheet.Find("#f-parts-0--size").GetAttribute("aria-invalid"));
        // By the words of the form, and at the field without them.
        Assert.StartsWith("Bead (part 1), Size", refused.Problems[0], StringComparison.Ordinal);
        Assert.StartsWith("“heavy”", refused.Sheet.Text("#f-parts-0--mass-error"), StringComparison.Ordinal);
        Assert.Null(refused.Sheet.Find("#f-parts-0--at").GetAttribute("aria-invalid"));
        Assert.Equal("4", refused.Field("parts[0].size"));
        Assert.Empty(refused.Attempts);
        Assert.All(refused.Sheet.All("#problems a"), link => Assert.True(refused.Sheet.Has(link.GetAttribute("href")!)));
    }

    [Fact]
    public async Task Compose_BadText_IsListedByLineAndColumnAndKept()
    {
        ExercisePage page = await (await ExercisePage.OpenAsync(_room.NewBrowser(), Id)).AsTextAsync();
        string bad = Loach.Replace("size: 4 mm", "size: 90 mm", StringComparison.Ordinal).Replace("part: bead", "part: beed", StringComparison.Ordinal);

        ExercisePage refused = await page.Write(bad).SubmitAsync();

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Sheet.Status);
        Assert.Contains(refused.Problems, p => p.StartsWith("line 6, column 11", StringComparison.Ordinal));
        Assert.Contains(refused.Problems, p => p.StartsWith("line 8, column 11", StringComparison.Ordinal));
        Assert.Equal(bad, refused.RecipeText);
        Assert.Empty(refused.Attempts);
    }

    [Fact]
    public async Task Compose_BrokenLayout_StaysTextAndSaysWhy()
    {
        const string broken = "recipe: Half\nhook:\n  size: 6\n size: 8\n";
        ExercisePage page = await (await ExercisePage.OpenAsync(_room.NewBrowser(), Id)).AsTextAsync();

        ExercisePage still = await page.Write(broken).AsFormAsync();

        Assert.True(still.IsText);
        Assert.Equal(broken, still.RecipeText);
        Assert.Contains("layout", still.Notice, StringComparison.Ordinal);
        Assert.NotEmpty(still.Problems);
    }

    [Fact]
    public async Task Compose_UnknownKeysInText_ComeAlongIntoTheForm()
    {
        ExercisePage page = await (await ExercisePage.OpenAsync(_room.NewBrowser(), Id)).AsTextAsync();

        ExercisePage form = await page.Write(Loach.Replace("  size: 6", "  size: 6\n  colour: bronze", StringComparison.Ordinal)).AsFormAsync();

        Assert.True(form.IsForm);
        Assert.Equal("bronze", form.Field("hook.colour"));
        Assert.Contains("colour: bronze", (await form.AsTextAsync()).RecipeText, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Compose_GoodText_IsKeptToTheLetter()
    {
        Browser browser = _room.NewBrowser();
        string typed = "# mine\n" + Loach + "\n\n";

        ExercisePage passed = await (await (await ExercisePage.OpenAsync(browser, Id)).AsTextAsync()).Write(typed).SubmitAsync();

        Assert.Equal(["Attempt 1: passed"], passed.Attempts);
        string person = Assert.Single(_room.Store.People.All()).Id;
        Assert.Equal(typed, Assert.Single(_room.Store.Attempts.Of(person, Id)).AnswerText);
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("\"><img src=x onerror=alert(1)>")]
    [InlineData("</title></svg><b>")]
    [InlineData("&lt;b&gt; ' \" `")]
    public async Task Compose_HostileName_StaysText(string name)
    {
        Browser instructor = await _room.NewInstructorAsync();
        ExercisePage sent = await (await ExercisePage.OpenAsync(await _room.NewStudentAsync(name), Id)).Set("recipe", name).AddPartAsync("bead");
        sent = await sent.Set("parts[0].size", "4 mm").SubmitAsync();

        Assert.Equal(name, sent.Field("recipe"));
        Assert.True(sent.Sheet.Has("figure.plate svg"));
        Assert.Empty(sent.Sheet.All("script:not([src^='/js/']), img, b, [onerror]"));
        string id = _room.Store.Accounts.FindByName(name)!.Id;
        string[] pages = ["/class/register", "/class/people", $"/class/students/{id}", $"/class/students/{id}/{Id}", $"/class/exercises/{Id}"];
        foreach (string address in pages)
        {
            Sheet sheet = await instructor.OpenAsync(address);
            Assert.Contains(name, sheet.Document.Body!.TextContent, StringComparison.Ordinal);
            Assert.Empty(sheet.All("script:not([src^='/js/']), img, main p b, [onerror]"));
        }
    }

    [Fact]
    public async Task Compose_DrawPressed_DrawsWithoutCounting()
    {
        ExercisePage page = await (await ExercisePage.OpenAsync(_room.NewBrowser(), Id)).AddPartAsync("bead");
        page = await page.Set("parts[0].material", "brass").Set("parts[0].size", "4 mm").Set("parts[0].at", "0 mm").DrawAsync();
        Assert.True(page.Sheet.Has("figure.plate svg"));
        Assert.Empty(page.Problems);
        Assert.Empty(page.Attempts);
        Assert.Equal("draw", page.Sheet.All("form.answer button").First().GetAttribute("value"));
    }

    [Fact]
    public async Task Compose_WithAPartsBox_BeginsWithWhatIsFixedAndOffersOnlyTheBox()
    {
        ExercisePage page = await ExercisePage.OpenAsync(_room.NewBrowser(), "second-05");

        Assert.True(page.IsLocked("hook.eye"));
        Assert.Equal("straight", page.Field("hook.eye"));
        Assert.True(page.IsLocked("intent"));
        Assert.False(page.IsLocked("hook.gape"));
        Assert.Equal(["bead", "wing"], page.Sheet.All("#add-kind option").Select(o => o.TextContent));
        page = await page.AddPartAsync("bead");
        Assert.Equal("2.4 mm to 4.8 mm", page.Sheet.Text("#f-parts-0--size-note"));
        Assert.Contains("at most 1", page.Sheet.Text(".brief"), StringComparison.Ordinal);

        page = await page.Set("parts[0].material", "brass").Set("parts[0].size", "4 mm").Set("parts[0].at", "0 mm").SubmitAsync();
        Assert.Equal(["Attempt 1: passed"], page.Attempts);
    }

    // second-05: a bead of 2.4 mm to 4.8 mm, brass or tungsten; a wing of bucktail.
    [Fact]
    public async Task Compose_FromABox_OffersWhatTheBoxHoldsAndTakesNothingElseForGranted()
    {
        ExercisePage page = await (await ExercisePage.OpenAsync(_room.NewBrowser(), "second-05")).AddPartAsync("bead");

        Assert.Equal(["bead", "wing"], page.Sheet.All("[name='r:parts[0].part'] option").Select(o => o.TextContent));
        Assert.Equal("needed: 2.4 mm to 4.8 mm", page.Sheet.Find("[name='r:parts[0].size']").GetAttribute("placeholder"));
        Assert.Equal(["as usual: brass", "brass", "tungsten"], page.Sheet.All("[name='r:parts[0].material'] option").Select(o => o.TextContent));
        page = await page.SubmitAsync();
        Assert.Empty(page.Attempts);
        Assert.Equal("#f-parts-0--size", page.Sheet.Find("#problems a").GetAttribute("href"));
    }

    // second-08: a point-up fly from a box without lead, the usual metal of eyes.
    [Fact]
    public async Task Compose_FromABoxWithoutTheUsualMetal_AsksForOneOfItsOwn()
    {
        ExercisePage page = await (await ExercisePage.OpenAsync(_room.NewBrowser(), "second-08")).AddPartAsync("dumbbell eyes");

        Assert.Equal(["choose one", "tin", "brass"], page.Sheet.All("[name='r:parts[0].material'] option").Select(o => o.TextContent));
        Assert.Equal("2 mm", page.Field("parts[0].at"));
        page = await (await page.Set("parts[0].size", "4 mm").SubmitAsync()).AddPartAsync("wing");
        Assert.Empty(page.Attempts);
        // On the point side, where the hair of a point-up fly goes.
        Assert.Equal("under", page.Field("parts[1].side"));
    }

    [Fact]
    public async Task Compose_PartWhoseMaterialIsNamed_OffersOnlyThatAndSaysWhatAnEmptyFieldIsTakenAs()
    {
        ExercisePage page = await (await ExercisePage.OpenAsync(_room.NewBrowser(), Id)).AddPartAsync("bead");
        Assert.StartsWith("usual: ", page.Sheet.Find("[name='r:parts[0].at']").GetAttribute("placeholder"), StringComparison.Ordinal);
        Assert.Contains("0.5 × shank", page.Sheet.All("#f-parts-0--at-list option").Select(o => o.GetAttribute("value")));
        Assert.Equal("select", page.Sheet.Find("[name='r:parts[0].material']").LocalName);
        Assert.Contains("brass", page.Sheet.All("[name='r:parts[0].material'] option").Select(o => o.GetAttribute("value")));
    }

    public void Dispose() => _room.Dispose();
}
