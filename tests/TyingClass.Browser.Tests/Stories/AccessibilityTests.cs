using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Xunit;

namespace TyingClass.Browser.Tests.Stories;

public sealed class AccessibilityTests(RunningApp app, Chromium browser) : IClassFixture<RunningApp>, IClassFixture<Chromium>
{
    [Theory]
    [InlineData(1280, ColorScheme.Light)]
    [InlineData(1280, ColorScheme.Dark)]
    [InlineData(390, ColorScheme.Light)]
    [InlineData(390, ColorScheme.Dark)]
    public async Task Pages_ByAxe_HaveNothingToMend(int width, ColorScheme scheme)
    {
        IPage page = await browser.NewVisitorAsync(app.Address, width, scheme);
        List<string> found = [];
        foreach (string address in Addresses())
        {
            await page.GotoAsync(address);
            AxeResult result = await page.RunAxe();
            found.AddRange(result.Violations.Select(v => $"{address}: {v.Id} at {v.Nodes.FirstOrDefault()?.Html}"));
        }

        Assert.Empty(found);
    }

    [Theory]
    [InlineData(390)]
    [InlineData(1280)]
    public async Task Pages_AtAnyWidth_DoNotScrollSideways(int width)
    {
        IPage page = await browser.NewVisitorAsync(app.Address, width);
        foreach (string address in Addresses())
        {
            await page.GotoAsync(address);
            Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width, address);
        }
    }

    private IEnumerable<string> Addresses() =>
    [
        "/", "/safety", "/model", "/preferences", "/sign-in",
        .. app.Course.Lessons.Take(2).Select(l => $"/lessons/{l.Slug}"),
        .. app.Course.Exercises.GroupBy(e => e.Kind).Select(g => $"/exercises/{g.First().Id}"),
    ];
}
