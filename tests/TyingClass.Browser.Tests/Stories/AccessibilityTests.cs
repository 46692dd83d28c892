using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using Xunit;

namespace TyingClass.Browser.Tests.Stories;

[Collection(BrowserCollection.Name)]
public sealed class AccessibilityTests(RunningApp app, Chromium browser)
{
    [Theory]
    [InlineData(1280, ColorScheme.Light)]
    [InlineData(1280, ColorScheme.Dark)]
    [InlineData(390, ColorScheme.Light)]
    [InlineData(390, ColorScheme.Dark)]
    public Task LessonAndExercise_ByAxe_HaveNothingToMend(int width, ColorScheme scheme) =>
        AssertNothingToMend(width, scheme, [$"/lessons/{app.Course.Lessons[0].Slug}", $"/exercises/{app.Course.Exercises.First(e => e.Kind == ExerciseKind.Repair).Id}"]);

    [Fact]
    public Task EveryOtherPage_ByAxeOnAPhoneInTheDark_HasNothingToMend() => AssertNothingToMend(390, ColorScheme.Dark, Addresses());

    [Fact]
    public async Task Pages_OnAPhone_DoNotScrollSideways()
    {
        IPage page = await browser.NewVisitorAsync(app.Address, 390);
        foreach (string address in Addresses().Append($"/lessons/{app.Course.Lessons[0].Slug}"))
        {
            await page.GotoAsync(address);
            Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= 390, address);
        }
    }

    private async Task AssertNothingToMend(int width, ColorScheme scheme, IEnumerable<string> addresses)
    {
        IPage page = await browser.NewVisitorAsync(app.Address, width, scheme);
        List<string> found = [];
        foreach (string address in addresses)
        {
            await page.GotoAsync(address);
            AxeResult result = await page.RunAxe();
            found.AddRange(result.Violations.Select(v => $"{address}: {v.Id} at {v.Nodes.FirstOrDefault()?.Html}"));
        }

        Assert.Empty(found);
    }

    private IEnumerable<string> Addresses() =>
    [
        "/", "/safety", "/model", "/preferences", "/sign-in", "/practice",
        .. app.Course.Lessons.SelectMany(l => l.Blocks).OfType<PracticeBlock>().GroupBy(p => p.Practice.Template.Kind).Select(g => $"/practice/{g.First().Practice.Slug}"),
        .. app.Course.Exercises.GroupBy(e => e.Kind).Select(g => $"/exercises/{g.First().Id}"),
    ];
}
