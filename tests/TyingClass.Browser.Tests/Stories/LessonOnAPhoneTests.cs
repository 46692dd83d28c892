using Microsoft.Playwright;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Kinds.Predict;
using Xunit;

namespace TyingClass.Browser.Tests.Stories;

/// <summary>A lesson on a phone is to be read to its end: what is only looked up waits behind a line, and is on paper all the same.</summary>
[Collection(BrowserCollection.Name)]
public sealed class LessonOnAPhoneTests(RunningApp app, Chromium browser)
{
    // At 390 px: some fourteen screens. What the design asks of the longest lesson.
    private const int TallestPx = 12_000;

    private const string Height = "() => document.documentElement.scrollHeight";

    [Fact]
    public async Task Lessons_AtPhoneWidth_AreNoTallerThanTheCeilingAndNoWiderThanTheGlass()
    {
        IPage page = await browser.NewVisitorAsync(app.Address, 390);
        List<string> faults = [];
        foreach (Lesson lesson in app.Course.Lessons)
        {
            await page.GotoAsync($"/lessons/{lesson.Slug}");
            int height = await page.EvaluateAsync<int>(Height), width = await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth");
            if (height > TallestPx || width > 390) faults.Add($"{lesson.Slug}: {width} by {height} px");
        }

        Assert.Empty(faults);
    }

    [Fact]
    public async Task Lesson_WithEveryPredictionAnswered_KeepsTheCeilingAndShowsTheVerdicts()
    {
        Lesson lesson = app.Course.Lessons.MaxBy(l => l.Exercises.Count(e => e.Task is PredictTask))!;
        IPage page = await browser.NewVisitorAsync(app.Address, 390);
        await page.GotoAsync($"/lessons/{lesson.Slug}");
        Exercise[] asked = [.. lesson.Exercises.Where(e => e.Task is PredictTask)];
        foreach (Exercise exercise in asked)
        {
            ILocator task = page.Locator($"#exercise-{exercise.Id}");
            await task.Locator(".choice").First.ClickAsync();
            await task.GetByRole(AriaRole.Button, new() { Name = "Submit answer" }).First.ClickAsync();
            await task.Locator(".outcome .verdict").WaitForAsync();
            // Whoever has just answered sees the fly without another tap.
            await task.Locator(".found .swimming svg").First.WaitForAsync();
        }

        await page.GotoAsync($"/lessons/{lesson.Slug}");
        Assert.Equal(asked.Length, await page.Locator(".outcome .verdict").CountAsync());
        Assert.InRange(await page.EvaluateAsync<int>(Height), 1, TallestPx);
    }

    [Fact]
    public async Task Recipe_FoldedOnAPhone_OpensWithoutScriptingAndStandsOpenOnPaperAndOnAWideScreen()
    {
        Lesson lesson = app.Course.Lessons.First(l => l.Exercises.Any(e => e.Task is PredictTask));
        IPage phone = await browser.NewVisitorAsync(app.Address, 390, scripting: false);
        await phone.GotoAsync($"/lessons/{lesson.Slug}");
        ILocator fold = phone.Locator(".task .fold").First, card = fold.Locator(".card");
        Assert.False(await card.IsVisibleAsync());
        await phone.EmulateMediaAsync(new() { Media = Media.Print });
        Assert.True(await card.IsVisibleAsync(), "on paper");
        await phone.EmulateMediaAsync(new() { Media = Media.Screen });
        await fold.Locator("summary").ClickAsync();
        Assert.True(await card.IsVisibleAsync(), "opened by a tap");

        IPage wide = await browser.NewVisitorAsync(app.Address);
        await wide.GotoAsync($"/lessons/{lesson.Slug}");
        Assert.True(await wide.Locator(".task .fold .card").First.IsVisibleAsync(), "on a wide screen");
        Assert.False(await wide.Locator(".task .fold summary").First.IsVisibleAsync());
    }
}
