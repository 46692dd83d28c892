using System.Net;
using System.Text.RegularExpressions;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

public sealed class BenchTests(ClassRoom room) : IClassFixture<ClassRoom>
{
    [Fact]
    public async Task Bench_Opened_ShowsAFlyItsVerdictItsLedgerAndEveryView()
    {
        int people = room.Store.People.All().Length;
        BenchPage bench = await OpenAsync();
        Assert.Contains("rides as intended", bench.Verdict, StringComparison.Ordinal);
        Assert.Contains("g·mm", bench.Sheet.Text("#bench-verdict"), StringComparison.Ordinal);
        foreach (string kind in (string[])["fly-side", "fly-front", "fly-hang", "fly-tip", "fly-curve-ledger", "fly-curve-pitch", "fly-curve-keel",
            "fly-curve-righting", "fly-curve-depth", "fly-curve-lean"])
            Assert.True(bench.Sheet.Has($"svg.{kind}"), kind);
        Assert.Contains("Hooks are sharp", bench.Sheet.Text(".caution"), StringComparison.Ordinal);
        Assert.Equal(people, room.Store.People.All().Length);
    }

    [Fact]
    public async Task Slider_MovedAndDrawn_ChangesFieldTextAndVerdict()
    {
        BenchPage bench = await (await OpenAsync()).Slide("parts[0].size", "1.5").PressAsync("draw");
        Assert.Contains("flips", bench.Verdict, StringComparison.Ordinal);
        Assert.Equal("1.5 mm", bench.Field("parts[0].size"));
        Assert.Contains("size: 1.5 mm", bench.RecipeText, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Part_WithAFaultInIt_StandsOpenWhileTheRestStaysFolded()
    {
        BenchPage bench = await OpenAsync();
        Assert.Empty(bench.Sheet.All(".fold[open]"));
        Assert.Contains("brass, size of one eye 3 mm", bench.Sheet.Text("#part-1 .fold > summary"), StringComparison.Ordinal);
        bench = await bench.Fill("parts[0].size", "huge").PressAsync("draw");
        Assert.Equal("part-1", Assert.Single(bench.Sheet.All(".fold[open]")).ParentElement!.Id);
        Assert.True(bench.Sheet.Has(".fold[open] [name='r:parts[0].size'][aria-invalid=true]"));
        Assert.Contains("One thing to mend first", bench.Sheet.Text(".bench-bar"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Finding_OnTheBench_LinksToWhereItIsWorkedOut()
    {
        BenchPage bench = await OpenAsync();
        string[] links = [.. bench.Sheet.All("a.worked-out").Select(a => a.GetAttribute("href")!)];
        Assert.Equal("/model#verdicts", links[0]);
        Assert.Equal(1 + bench.Sheet.All("section:has(#findings-title) li").Count(), links.Length);
        Sheet model = await bench.Sheet.Browser.OpenAsync("/model");
        Assert.All(links, link => Assert.True(model.Has(link["/model".Length..]), link));
    }

    [Fact]
    public async Task Number_BeyondTheSlidersEnd_IsTakenAsTypedOrComplainedOf()
    {
        BenchPage bench = await OpenAsync();
        bench = await bench.Number("fishing.speed", "2").PressAsync("draw");
        Assert.Equal("2 m/s", bench.Field("fishing.speed"));
        bench = await bench.Number("fishing.speed", "99").PressAsync("draw");
        Assert.Equal("99 m/s", bench.Field("fishing.speed"));
        Assert.True(bench.Sheet.Has("#problems"));
    }

    [Fact]
    public async Task Slider_Untouched_LeavesAFigureBetweenItsStepsAlone()
    {
        BenchPage bench = await (await OpenAsync()).Fill("parts[0].size", "5/64 in").PressAsync("draw");
        bench = await bench.Fill("recipe", "Weir Loach").PressAsync("draw");
        Assert.Equal("5/64 in", bench.Field("parts[0].size"));
        Assert.Equal("Weir Loach", bench.Field("recipe"));
    }

    [Fact]
    public async Task Slider_OfAPartWithAStatedMass_LetsGoOfTheMass()
    {
        BenchPage bench = await (await OpenAsync()).Fill("parts[0].mass", "0.5 g").PressAsync("draw");
        bench = await bench.Slide("parts[0].size", "4").PressAsync("draw");
        Assert.Equal(("4 mm", ""), (bench.Field("parts[0].size"), bench.Field("parts[0].mass")));
    }

    [Theory]
    [InlineData("-20", "down 20°"), InlineData("0", "straight"), InlineData("15", "up 15°")]
    public async Task Slider_OfTheEye_WritesTheEyeInWords(string moved, string written)
    {
        BenchPage bench = await (await OpenAsync()).Slide("hook.eye", moved).PressAsync("draw");
        Assert.Equal(written, bench.Field("hook.eye"));
    }

    [Fact]
    public async Task SoakSlider_Moved_ShowsTheFlyAfterSoManySeconds()
    {
        BenchPage bench = await (await OpenAsync()).Slide("soak", "10").PressAsync("draw");
        Assert.StartsWith("After 10 s in the water", bench.Sheet.Text("[data-verdict]"), StringComparison.Ordinal);
        Assert.Contains("after 10 s in the water", bench.Sheet.Text("svg.fly-side"), StringComparison.Ordinal);
        bench = await bench.Slide("soak", bench.Sheet.Find("[name='s:soak']").GetAttribute("max")!).PressAsync("draw");
        Assert.StartsWith("Soaked", bench.Sheet.Text("[data-verdict]"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Text_Changed_ChangesTheFields()
    {
        BenchPage bench = await OpenAsync();
        bench = await bench.WriteText(bench.RecipeText.Replace("3 mm", "4 mm", StringComparison.Ordinal)).PressAsync("draw");
        Assert.Equal("4 mm", bench.Field("parts[0].size"));
    }

    [Fact]
    public async Task TextAndFields_BothChanged_TheTextIsTakenAndUndoBringsTheFieldsBack()
    {
        BenchPage bench = (await OpenAsync()).Fill("recipe", "Said in the field");
        bench = await bench.WriteText(bench.RecipeText.Replace("Mill Loach", "Said in the text", StringComparison.Ordinal)).PressAsync("draw");
        Assert.Equal("Said in the text", bench.Field("recipe"));
        Assert.Contains("one step back", bench.Sheet.Text("#bench-verdict .notice"), StringComparison.Ordinal);
        Assert.Equal("Said in the field", (await bench.PressAsync("undo")).Field("recipe"));
    }

    [Fact]
    public async Task Text_WithABrokenLayout_StandsAsTypedAndSaysWhere()
    {
        BenchPage bench = await OpenAsync();
        string typed = bench.RecipeText.Replace("  size: 4", "\tsize: 4", StringComparison.Ordinal);
        bench = await bench.WriteText(typed).PressAsync("draw");
        Assert.Equal(typed.Trim(), bench.RecipeText.Trim());
        Assert.Contains("line 4", bench.Sheet.Text("#problems"), StringComparison.Ordinal);
        Assert.True(bench.Sheet.Find("details.bench-text").HasAttribute("open"));
        Assert.Contains("rides", (await bench.PressAsync("undo")).Verdict, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Field_WithABadFigure_IsMarkedAndKept()
    {
        BenchPage bench = await (await OpenAsync()).Fill("hook.gape", "wide").PressAsync("draw");
        Assert.Equal("wide", bench.Field("hook.gape"));
        Assert.True(bench.Sheet.Has("#f-hook-gape[aria-invalid=true]"));
        Assert.Contains("One thing to mend", bench.Verdict, StringComparison.Ordinal);
    }

    [Fact]
    public async Task UndoAndRedo_AfterThreeChanges_WalkThroughThem()
    {
        BenchPage bench = await OpenAsync();
        foreach (string size in (string[])["2 mm", "2.5 mm", "4 mm"]) bench = await bench.Fill("parts[0].size", size).PressAsync("draw");
        bench = await (await bench.PressAsync("undo")).PressAsync("undo");
        Assert.Equal("2 mm", bench.Field("parts[0].size"));
        bench = await bench.PressAsync("redo");
        Assert.Equal("2.5 mm", bench.Field("parts[0].size"));
        bench = await (await bench.PressAsync("undo")).PressAsync("undo");
        Assert.Equal("3 mm", bench.Field("parts[0].size"));
        Assert.True(bench.Sheet.Find("button[value=undo]").HasAttribute("disabled"));
    }

    [Fact]
    public async Task Kept_ThenChanged_SaysWhatChangedAndWhatItDid()
    {
        BenchPage bench = await (await OpenAsync()).PressAsync("keep");
        bench = await bench.Fill("parts[0].size", "1.5 mm").PressAsync("draw");
        string compare = bench.Sheet.Text("#compare");
        Assert.Contains("the size of the dumbbell eyes: 3 mm → 1.5 mm", compare, StringComparison.Ordinal);
        Assert.Contains("flip", compare, StringComparison.Ordinal);
        Assert.Equal(2, bench.Sheet.All("#compare svg.fly-side").Count());
        Assert.Contains(bench.Sheet.All("#compare tr.differs th"), th => th.TextContent == "Keel height");
        Assert.Equal("3 mm", (await bench.PressAsync("take:")).Field("parts[0].size"));
        Assert.False((await bench.PressAsync("drop")).Sheet.Has("#compare"));
    }

    [Fact]
    public async Task Adviser_AskedAboutAFlyThatFlips_ProposesAndApplyMendsIt()
    {
        BenchPage bench = await (await OpenAsync()).Fill("parts[0].size", "1.5 mm").PressAsync("draw");
        bench = await bench.PressAsync("advise");
        Assert.NotEmpty(bench.Sheet.All(".proposals li"));
        bench = await bench.PressAsync("take:");
        Assert.Contains("rides as intended", bench.Verdict, StringComparison.Ordinal);
        Assert.Equal("1.5 mm", (await bench.PressAsync("undo")).Field("parts[0].size"));
    }

    [Fact]
    public async Task Address_OpenedInAnotherBrowser_ShowsTheSameFly()
    {
        BenchPage bench = await (await OpenAsync()).Fill("recipe", "Åse’s “Loach” & <b>co</b>").Fill("parts[0].size", "4.1 mm").PressAsync("draw");
        BenchPage other = await BenchPage.OpenAsync(room.NewBrowser(), new Uri(bench.Address).PathAndQuery);
        Assert.Equal(bench.RecipeText, other.RecipeText);
        Assert.Equal(bench.Verdict, other.Verdict);
        Assert.Empty(other.Sheet.All("main b"));
        Assert.True(bench.Address.Length < 600, bench.Address);
    }

    [Theory]
    [InlineData("r=abc"), InlineData("r=!!"), InlineData("r=Gw"), InlineData("r=")]
    public async Task Address_CutShort_SaysSo(string query)
    {
        BenchPage bench = await BenchPage.OpenAsync(room.NewBrowser(), "/bench?" + query);
        Assert.Equal(HttpStatusCode.OK, bench.Sheet.Status);
        Assert.Equal(query != "r=", bench.Sheet.Has("#bench-verdict .notice"));
        if (query != "r=") Assert.Contains("cut short", bench.Sheet.Text("#bench-verdict .notice"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Address_OfALongRecipe_IsToldToBeTooLong()
    {
        Random random = new(7);
        string noise = string.Concat(Enumerable.Range(0, 9000).Select(_ => (char)('a' + random.Next(26))));
        BenchPage bench = await OpenAsync();
        bench = await bench.WriteText(bench.RecipeText + "# " + noise + "\n").PressAsync("draw");
        Assert.Contains("too long to travel", bench.Sheet.Text(".bench-away"), StringComparison.Ordinal);
        Assert.Contains(noise, bench.RecipeText, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Run_Asked_AnswersWithTheAttitudesOverAllSpeeds()
    {
        BenchPage bench = await OpenAsync();
        Sheet run = await bench.Sheet.Browser.PostAsync("/bench", [.. bench.Fields(), KeyValuePair.Create("do", "run")]);
        Assert.Equal("image/svg+xml", run.Response.Content.Headers.ContentType!.MediaType);
        Assert.Matches(new Regex("data-speeds-ms=\"0.05 [^\"]*1.5\""), run.Html);
    }

    [Fact]
    public async Task Post_WithAStaleToken_LosesNothing()
    {
        BenchPage bench = (await OpenAsync()).Fill("recipe", "Kept all the same");
        Sheet answer = await room.NewBrowser().PostAsync("/bench", bench.Fields());
        Assert.Equal(HttpStatusCode.BadRequest, answer.Status);
        Assert.Contains("Kept all the same", answer.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Post_WithNonsenseInEveryHiddenField_IsAnswered()
    {
        BenchPage bench = await OpenAsync();
        string token = bench.Fields().First(f => f.Key.StartsWith("__", StringComparison.Ordinal)).Value;
        Sheet answer = await bench.Sheet.Browser.PostAsync("/bench",
        [
            new("__RequestVerificationToken", token), new("h", "zz"), new("k", "%%"), new("soak-was", "NaN"), new("tip", "1e999"), new("do", "take:zzz"),
            new("r:parts[7].size", "x"), new("s:soak", "-5"), new("live", "brief"),
        ]);
        Assert.Equal(HttpStatusCode.OK, answer.Status);
    }

    [Fact]
    public async Task Card_OfTheBench_HasDrawingPartsFiguresAndCautions()
    {
        BenchPage bench = await OpenAsync();
        Sheet card = await bench.Sheet.Browser.OpenAsync(bench.Sheet.Find("a[href^='/bench/card']").GetAttribute("href")!);
        Assert.Equal("Mill Loach", card.Heading);
        Assert.True(card.Has(".print-card svg.fly-side"));
        Assert.Contains("dumbbell eyes", card.Text(".print-card .card"), StringComparison.Ordinal);
        Assert.Contains("Keel height", card.Text(".bench-figures"), StringComparison.Ordinal);
        Assert.Contains("Hooks are sharp", card.Text(".caution"), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await bench.Sheet.Browser.OpenAsync("/bench/card?r=zz")).Status);
    }

    [Fact]
    public async Task Bench_ImperialReader_SlidesInInches()
    {
        Browser browser = room.NewBrowser();
        browser.Client.DefaultRequestHeaders.Add("Cookie", "tying-look=imperial.light");
        BenchPage bench = await BenchPage.OpenAsync(browser);
        bench = await bench.Slide("parts[0].size", "0.15").PressAsync("draw");
        Assert.Equal("0.15 in", bench.Field("parts[0].size"));
        Assert.DoesNotMatch(@"\d (mm|m/s)\b", bench.Sheet.Text("[data-verdict]"));
    }

    private Task<BenchPage> OpenAsync() => BenchPage.OpenAsync(room.NewBrowser());
}
