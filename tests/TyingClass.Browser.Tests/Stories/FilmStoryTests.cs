using Microsoft.Playwright;
using TyingClass.Browser.Tests.Pages;
using Xunit;

namespace TyingClass.Browser.Tests.Stories;

/// <summary>The film strip of a retrieve: still for who wants no motion, has no scripting or prints it; moving when asked.</summary>
[Collection(BrowserCollection.Name)]
public sealed class FilmStoryTests(RunningApp app, Chromium browser)
{
    private const string Poses = "[data-film] .fly-film-pose:not([visibility=hidden])", Go = "[data-film-go]";

    [Fact]
    public async Task Visitor_WhoWantsMotion_SeesItSwimAndStopsIt()
    {
        IPage page = await browser.NewVisitorAsync(app.Address);
        await page.EmulateMediaAsync(new() { ReducedMotion = ReducedMotion.NoPreference });
        await new BenchPage(page).OpenAsync();
        int still = await page.Locator(Poses).CountAsync();
        Assert.True(still >= 3);
        await page.Locator(Go).ClickAsync();
        ILocator moving = page.Locator(".fly-film-moving .fly-film-fly[display=inline]");
        await moving.WaitForAsync();
        string? first = await moving.GetAttributeAsync("transform");
        await Assertions.Expect(moving).Not.ToHaveAttributeAsync("transform", first ?? "");
        // It is a fly, and not an empty place: what it points at is drawn.
        Assert.True(await page.EvaluateAsync<bool>("""
            () => [...document.querySelectorAll(".fly-film-moving .fly-film-fly")].find(fly => fly.getAttribute("display") === "inline")
                .getBoundingClientRect().width > 4
            """));
        Assert.Equal(0, await page.Locator(Poses).CountAsync());
        await page.Locator(Go).ClickAsync();
        Assert.Equal(still, await page.Locator(Poses).CountAsync());
    }

    [Fact]
    public async Task Visitor_WhoWantsNoMotion_SeesTheStripAndNoButton()
    {
        IPage page = await browser.NewVisitorAsync(app.Address);
        await new BenchPage(page).OpenAsync();
        await SeesTheStripAsync(page);
        await Assertions.Expect(page.Locator(Go)).ToBeHiddenAsync();
    }

    [Fact]
    public async Task Visitor_WithoutScriptingOrOnPaper_SeesTheStrip()
    {
        IPage page = await browser.NewVisitorAsync(app.Address, width: 390, scripting: false);
        await page.GotoAsync("/bench");
        await SeesTheStripAsync(page);
        await Assertions.Expect(page.Locator(Go)).ToBeHiddenAsync();
        await page.GotoAsync("/lessons/the-retrieve");
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        Assert.True(await page.Locator("svg.fly-film").First.IsVisibleAsync());
        Assert.True(await page.Locator("svg.fly-film .fly-film-pose").First.IsVisibleAsync());
    }

    private static async Task SeesTheStripAsync(IPage page)
    {
        int poses = await page.Locator(Poses).CountAsync();
        Assert.True(poses >= 3, $"{poses} poses");
        Assert.True(await page.Locator(Poses).First.IsVisibleAsync());
        Assert.Equal("hidden", await page.Locator("[data-film] .fly-film-moving").GetAttributeAsync("visibility"));
    }
}
