using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Work;

/// <summary>What an answer and a step of a slider cost, in counts and not in milliseconds. docs/performance.md states them.</summary>
[Collection(CountedCollection.Name)]
public sealed class WorkCountTests : IDisposable
{
    private readonly ClassRoom room = new();

    [Fact]
    public async Task Answer_TypedIntoAForm_IsSolvedOnceForGradeAndPage()
    {
        // Somebody before them had the given fly drawn.
        await Answers.FailRepairAsync(room.NewBrowser());
        Browser browser = room.NewBrowser();
        ExercisePage page = (await ExercisePage.OpenAsync(browser, "first-03", "?attempt=0")).Set("parts[0].side", "top");
        using WorkCount count = new();

        ExercisePage shown = await page.SubmitAsync();

        Assert.True(shown.Sheet.Has("#feedback svg"), shown.Sheet.Text("#feedback"));
        // The text of the given fly is read, and it is built to be compared with; the answer is neither printed and read nor solved again.
        Assert.Equal((1, 2, 1), count.Take());
        await ExercisePage.OpenAsync(browser, "first-03", "?attempt=1");
        Assert.Equal((0, 0, 0), count.Take());
    }

    [Fact]
    public async Task Slider_MovedOneStep_CostsOneBuildAndOneReport()
    {
        Browser browser = room.NewBrowser();
        BenchPage bench = await BenchPage.OpenAsync(browser);
        KeyValuePair<string, string>[] moved = [.. bench.Slide("parts[0].size", "2.8").Fields(), new("gesture", "parts[0].size")];
        using WorkCount count = new();

        Sheet step = await browser.PostAsync("/bench", [.. moved, new("do", ""), new("live", "brief")]);
        Assert.True(step.Has("svg.fly-side"));
        Assert.Equal((1, 1, 1), count.Take());

        Sheet atRest = await browser.PostAsync("/bench", [.. moved, new("do", "draw"), new("live", "whole")]);
        Assert.True(atRest.Has("svg.fly-hang"));
        Assert.Equal((0, 0, 0), count.Take());
    }

    [Fact]
    public async Task Slider_OfTheTimeInTheWater_BuildsNoFly()
    {
        Browser browser = room.NewBrowser();
        BenchPage bench = await BenchPage.OpenAsync(browser);
        KeyValuePair<string, string>[] moved = [.. bench.Slide("soak", "5").Fields(), new("do", ""), new("live", "brief"), new("gesture", "soak")];
        using WorkCount count = new();

        await browser.PostAsync("/bench", moved);

        Assert.Equal((0, 0, 1), count.Take());
    }

    public void Dispose() => room.Dispose();
}
