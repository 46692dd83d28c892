using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Work;

/// <summary>What an answer and a step of a slider cost, in counts and not in milliseconds. docs/performance.md states them.</summary>
[Collection(CountedCollection.Name)]
public sealed class WorkCountTests(ITestOutputHelper output) : IDisposable
{
    private readonly ClassRoom room = new();

    [Fact]
    public async Task Answer_TypedIntoAForm_IsGradedAndShown()
    {
        Browser browser = room.NewBrowser();
        ExercisePage page = (await ExercisePage.OpenAsync(browser, "first-03", "?attempt=0")).Set("parts[0].side", "top");
        using WorkCount count = new();
        ExercisePage shown = await page.SubmitAsync();
        Assert.True(shown.Passed);
        output.WriteLine($"answer {count.Take()}");
        await ExercisePage.OpenAsync(browser, "first-03", "?attempt=1");
        output.WriteLine($"again {count.Take()}");
    }

    [Fact]
    public async Task Slider_MovedOneStep()
    {
        Browser browser = room.NewBrowser();
        BenchPage bench = await BenchPage.OpenAsync(browser);
        KeyValuePair<string, string>[] moved = [.. bench.Slide("parts[0].size", "2.8").Fields(), new("gesture", "parts[0].size")];
        using WorkCount count = new();

        Sheet brief = await browser.PostAsync("/bench", [.. moved, new("do", ""), new("live", "brief")]);
        output.WriteLine($"step {count.Take()}");
        Assert.True(brief.Has("svg.fly-side"));
        await browser.PostAsync("/bench", [.. moved, new("do", "draw"), new("live", "whole")]);
        output.WriteLine($"at rest {count.Take()}");
    }

    public void Dispose() => room.Dispose();
}
