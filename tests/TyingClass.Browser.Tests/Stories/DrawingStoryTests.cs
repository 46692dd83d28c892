using Microsoft.Playwright;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using Xunit;

namespace TyingClass.Browser.Tests.Stories;

/// <summary>Drawings as they come out on a screen: how large letters are, and whether they lie on one another, only a browser can tell.</summary>
[Collection(BrowserCollection.Name)]
public sealed class DrawingStoryTests(RunningApp app, Chromium browser)
{
    // Each picture's words as they stand on the screen; a line of words is a little lower than its box.
    private const string Faults = """
        () => [...document.querySelectorAll('svg.fly-plate, svg.fly-curve')].filter(s => s.getClientRects().length).flatMap(svg => {
          const title = svg.querySelector('title'), name = title?.textContent ?? svg.getAttribute('class');
          const frame = svg.getBoundingClientRect(), faults = [];
          if (!title && svg.getAttribute('aria-hidden') !== 'true') faults.push(`${name}: has no title`);
          const words = [...svg.querySelectorAll('text')].filter(t => t.getClientRects().length).map(t => {
            const m = t.getScreenCTM(), r = t.getBoundingClientRect();
            return { said: t.textContent, px: parseFloat(getComputedStyle(t).fontSize) * Math.hypot(m.a, m.b),
              left: r.left, right: r.right, top: r.top + 0.2 * r.height, bottom: r.bottom - 0.2 * r.height };
          });
          for (const w of words) {
            if (w.px < 11) faults.push(`${name}: "${w.said}" is ${w.px.toFixed(1)} px`);
            if (w.left < frame.left - 1 || w.right > frame.right + 1) faults.push(`${name}: "${w.said}" is cut off`);
          }
          words.forEach((a, i) => words.slice(i + 1).forEach(b => {
            if (a.left < b.right - 1 && b.left < a.right - 1 && a.top < b.bottom && b.top < a.bottom) faults.push(`${name}: "${a.said}" lies on "${b.said}"`);
          }));
          return faults;
        })
        """;

    [Theory]
    [InlineData(390)]
    [InlineData(1280)]
    public async Task Pictures_OnAScreen_HaveLettersLargeEnoughToReadAndApart(int width)
    {
        IPage page = await browser.NewVisitorAsync(app.Address, width);
        Lesson[] drawn = [.. app.Course.Lessons.OrderByDescending(l => l.Blocks.OfType<FlyBlock>().Count()).Take(3)];
        List<string> faults = [];
        foreach (string address in drawn.Select(l => $"/lessons/{l.Slug}").Prepend("/bench"))
        {
            await page.GotoAsync(address);
            Assert.True(await page.Locator("svg[role=img]:is(.fly-plate, .fly-curve)").CountAsync() > 2, $"{address} has pictures");
            faults.AddRange(await page.EvaluateAsync<string[]>(Faults));
        }

        Assert.Empty(faults);
    }

    [Fact]
    public async Task Visitor_WhoSaidWhatAChangeDoes_SeesTheFlyBeforeAndAfterInTheLesson()
    {
        (Lesson lesson, Exercise exercise) = app.Course.Lessons.SelectMany(l => l.Exercises.Select(e => (l, e))).First(x => x.e.Task.ChangedRecipe is not null);
        IPage page = await browser.NewVisitorAsync(app.Address, 390);
        await page.GotoAsync($"/lessons/{lesson.Slug}");
        ILocator task = page.Locator($"#exercise-{exercise.Id}");
        Assert.Equal(0, await task.Locator("svg:not(.fly-vise)").CountAsync());

        await task.GetByLabel(exercise.Choices[0]).CheckAsync();
        await task.GetByRole(AriaRole.Button, new() { Name = "Submit answer" }).ClickAsync();

        // Asked how fast it sinks, the fly is shown as it falls, before the change and after it.
        await task.Locator("svg.fly-fall").Nth(1).WaitForAsync();
        Assert.Equal(2, await task.Locator("svg.fly-fall").CountAsync());
    }
}
