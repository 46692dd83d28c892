using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using TyingClass.Browser.Tests.Pages;
using Xunit;

namespace TyingClass.Browser.Tests.Stories;

[Collection(BrowserCollection.Name)]
public sealed class BenchStoryTests(RunningApp app, Chromium browser)
{
    [Fact]
    public async Task Visitor_PullsASliderAcrossTheFlip_SeesTheVerdictChangeUndoesAndAppliesAdvice()
    {
        IPage page = await browser.NewVisitorAsync(app.Address);
        BenchPage bench = new(page);
        await bench.OpenAsync();
        await bench.WaitForVerdictAsync("rides as intended");

        // The eyes shrink under the hand: before it lets go, the verdict has changed, and fields and text say the new size.
        await bench.DragAsync(bench.Size, (3 - 1.5) / 6.5, 0);
        await bench.WaitForVerdictAsync("flips");
        await bench.LetGoAsync();
        await Assertions.Expect(page.Locator("[name='r:parts[0].size']")).ToHaveValueAsync("1.5 mm");
        Assert.Contains("size: 1.5 mm", await bench.TextAsync(), StringComparison.Ordinal);
        await Assertions.Expect(bench.Announced).ToContainTextAsync("flip");
        await Assertions.Expect(page.Locator("svg.fly-side desc")).ToContainTextAsync("flipped");

        // One drag, one undo.
        await bench.Button("Undo").ClickAsync();
        await bench.WaitForVerdictAsync("rides as intended");
        Assert.Equal("3 mm", await bench.FieldAsync("parts[0].size"));
        await bench.Button("Redo").ClickAsync();
        await bench.WaitForVerdictAsync("flips");

        // The adviser mends it.
        await bench.Button("Keep to compare").ClickAsync();
        await bench.Button("Ask the adviser").ClickAsync();
        await page.Locator(".proposals button").First.ClickAsync();
        await bench.WaitForVerdictAsync("rides as intended");
        await Assertions.Expect(page.Locator("#compare .differs").First).ToBeVisibleAsync();

        // The address follows, and holds the fly.
        await Assertions.Expect(page).ToHaveURLAsync(await page.Locator("#address").InputValueAsync());
        string text = await bench.TextAsync();
        await page.ReloadAsync();
        Assert.Equal(text, await bench.TextAsync());
    }

    [Fact]
    public async Task Visitor_OneFlyOnTwoKnotsOnAPhone_SeesBothAtOneScaleAndWhatTheKnotDid()
    {
        IPage page = await browser.NewVisitorAsync(app.Address, width: 390);
        BenchPage bench = new(page);
        await bench.OpenAsync();
        await bench.Button("Keep to compare").ClickAsync();
        await page.Locator("#compare").WaitForAsync();

        // How it is fished lies folded to one line: pressed, it opens to its fields.
        await page.Locator("summary", new() { HasText = "Change fishing" }).ClickAsync();
        await page.Locator("[name='r:fishing.knot']").SelectOptionAsync("cinched");
        await Assertions.Expect(page.Locator("#compare .asked")).ToContainTextAsync("loop → cinched", new() { Timeout = 20_000 });

        // On the drop a stout leader holds the nose up: the figure says so, and both pictures are to one scale, as wide as each other.
        await Assertions.Expect(page.Locator("#compare tr.differs", new() { HasText = "Sink rate" })).ToBeVisibleAsync();
        string[] boxes = [.. await page.Locator("#compare-falling svg").EvaluateAllAsync<string[]>("all => all.map(svg => svg.getAttribute('viewBox'))")];
        Assert.Equal(2, boxes.Length);
        Assert.Equal(boxes[0].Split(' ')[2], boxes[1].Split(' ')[2]);
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= 390"));
    }

    [Fact]
    public async Task Visitor_TypingInAField_KeepsFocusAndEveryLetter()
    {
        IPage page = await browser.NewVisitorAsync(app.Address);
        BenchPage bench = new(page);
        await bench.OpenAsync();
        ILocator name = page.Locator("[name='r:recipe']");
        await name.FillAsync("");
        await name.PressSequentiallyAsync("Weir Loach of the long evening", new() { Delay = 40 });
        await Assertions.Expect(page.Locator("svg.fly-side title")).ToContainTextAsync("Weir Loach of the long evening");
        Assert.Equal("Weir Loach of the long evening", await name.InputValueAsync());
        Assert.Equal("r:recipe", await page.EvaluateAsync<string>("document.activeElement.name"));
        // What takes longest comes last, by itself, and stands.
        await Assertions.Expect(page.Locator("#retrieve-doubt:not([data-later])")).ToContainTextAsync("hop");
    }

    [Fact]
    public async Task Visitor_PullsTheSpeed_TheFlyTurnsThroughTheAttitudesOfTheEngine()
    {
        IPage page = await browser.NewVisitorAsync(app.Address);
        BenchPage bench = new(page);
        await bench.OpenAsync();
        await bench.Speed.FocusAsync();
        await page.Locator(".bench-run svg").WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await bench.DragAsync(bench.Speed, (0.4 - 0.05) / 1.45, 0.95);
        await Assertions.Expect(page.Locator(".bench-head.is-running")).ToBeVisibleAsync();
        ILocator pose = page.Locator(".fly-pose[display=inline]");
        double turned = double.Parse((await pose.GetAttributeAsync("transform") ?? "")["rotate(".Length..^1], CultureInfo.InvariantCulture);
        double drawn = double.Parse(await pose.GetAttributeAsync("data-pitch-deg") ?? "", CultureInfo.InvariantCulture);
        await bench.LetGoAsync();

        // What the hand saw is, at the same speed, the pitch that the server then works out: the recipe first has to say the speed where the hand let go.
        string speed = $"{await bench.Speed.InputValueAsync()} m/s";
        await Assertions.Expect(page.Locator("[name='r:fishing.speed']")).ToHaveValueAsync(speed, new() { Timeout = 20_000 });
        await Assertions.Expect(page.Locator(".bench-head.is-running")).ToHaveCountAsync(0);
        await Assertions.Expect(page.Locator("svg.fly-side title")).ToContainTextAsync($"at {speed}", new() { Timeout = 20_000 });
        string said = await page.Locator("svg.fly-side desc").TextContentAsync() ?? "";
        Match nose = Regex.Match(said, @"nose (up|down) (\d+)°");
        Assert.True(nose.Success, said);
        Assert.Equal((nose.Groups[1].Value == "up" ? 1 : -1) * double.Parse(nose.Groups[2].Value, CultureInfo.InvariantCulture), drawn + turned, 1.0);
    }

    [Fact]
    public async Task Visitor_WhoWantsMotion_TipsTheFlyAndItComesBack()
    {
        IPage page = await browser.NewVisitorAsync(app.Address);
        await page.EmulateMediaAsync(new() { ReducedMotion = ReducedMotion.NoPreference });
        BenchPage bench = new(page);
        await bench.OpenAsync();
        await bench.Button("Let it go").ClickAsync();
        await Assertions.Expect(page.Locator("[data-tip-said]")).ToHaveTextAsync("came back", new() { Timeout = 20_000 });
        double heel =
            double.Parse((await page.Locator(".fly-tipping").GetAttributeAsync("transform") ?? "")["rotate(".Length..^1], CultureInfo.InvariantCulture);
        Assert.InRange(heel, -3, 3);
    }

    [Fact]
    public async Task Visitor_WhoWantsNoMotion_GetsStillSteps()
    {
        IPage page = await browser.NewVisitorAsync(app.Address);
        BenchPage bench = new(page);
        await bench.OpenAsync();
        await page.Locator("#tip").FillAsync("90");
        await bench.Button("Let it go").ClickAsync();
        await page.Locator("svg.fly-tip use[data-heel-deg='90']").WaitForAsync();
        Assert.Equal(5, await page.Locator("svg.fly-tip use").CountAsync());
    }

    [Fact]
    public async Task Visitor_WithoutScripting_EditsMovesPartsAndUndoes()
    {
        IPage page = await browser.NewVisitorAsync(app.Address, width: 390, scripting: false);
        BenchPage bench = new(page);
        await bench.OpenAsync();
        await bench.Size.FillAsync("1.5");
        await bench.Button("Draw it").ClickAsync();
        await bench.WaitForVerdictAsync("flips");
        await bench.Button("Take out part 3, wing").ClickAsync();
        Assert.DoesNotContain("part: wing", await bench.TextAsync(), StringComparison.Ordinal);
        await bench.Button("Undo").ClickAsync();
        await bench.Button("Undo").ClickAsync();
        await bench.WaitForVerdictAsync("rides as intended");
        Assert.Contains("part: wing", await bench.TextAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Presenter_StepsThroughTheDrawings_ByKeys()
    {
        IPage page = await browser.NewVisitorAsync(app.Address);
        string slug = app.Course.Lessons.First(l => l.Blocks.OfType<TyingClass.Lessons.Courses.FlyBlock>().Count() > 1).Slug;
        await page.GotoAsync($"/lessons/{slug}/projector");
        await Chromium.PressToAsync(page, "ArrowRight", url => url.EndsWith("step=2", StringComparison.Ordinal));
        await Chromium.PressToAsync(page, "PageUp", url => url.EndsWith("step=1", StringComparison.Ordinal));
        await Chromium.PressToAsync(page, "Escape", url => url.EndsWith($"/lessons/{slug}", StringComparison.Ordinal));
    }
}
