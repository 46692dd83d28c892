using System.Globalization;
using Microsoft.Playwright;
using TyingClass.Lessons.Kinds;
using Xunit;

namespace TyingClass.Browser.Tests.Stories;

/// <summary>What stands on the wall stands there whole: nobody at the back of a room can scroll it.</summary>
[Collection(BrowserCollection.Name)]
public sealed class WallTests(RunningApp app, Chromium browser)
{
    private static readonly (int Width, int Height)[] Screens = [(1920, 1080), (1280, 720)];

    [Theory]
    [InlineData(2)]
    [InlineData(4)]
    public async Task Evening_EveryScreenAndEveryReveal_FitsWithoutScrolling(int evening)
    {
        string name = string.Create(CultureInfo.InvariantCulture, $"Wall Dipper {evening}");
        StoryClass story = StoryClass.Make(app, browser, name, $"Wall Wren {name}", $"Wall Teal {name}");
        IPage wall = await story.EnterAsync(name);
        int asked = 0, step = 1;
        string ends = "1 of ";
        for (int steps = int.MaxValue; step <= steps; step++)
        {
            string slide = string.Create(CultureInfo.InvariantCulture, $"/class/evenings/{evening}/wall/{step}");
            await wall.GotoAsync(slide);
            if (step == 1)
                steps = int.Parse((await wall.Locator(".wall-steps span").InnerTextAsync())[ends.Length..], CultureInfo.InvariantCulture);
            await FitsAsync(wall, slide);
            ILocator ask = wall.GetByRole(AriaRole.Button, new() { Name = "Ask the room" });
            if (await ask.CountAsync() == 0) continue;
            Assert.True(await wall.Locator(".at-the-vise svg").CountAsync() > 0, $"{slide} shows no fly");
            asked++;
            await ask.ClickAsync();
            await wall.WaitForURLAsync("**/tonight/wall**");
            Assert.True(await wall.Locator(".at-the-vise svg").CountAsync() > 0, $"the question of {slide} shows no fly");
            Assert.Equal(0, await wall.Locator(".tally").CountAsync());
            await FitsAsync(wall, "the question of " + slide);
            await wall.GetByRole(AriaRole.Button, new() { Name = "Reveal the answer" }).ClickAsync();
            await wall.Locator(".revealed").WaitForAsync();
            await FitsAsync(wall, "the answer to " + slide);
            await wall.GetByRole(AriaRole.Button, new() { Name = "Close the question" }).ClickAsync();
            await wall.WaitForURLAsync(url => url.EndsWith(slide, StringComparison.Ordinal));
        }

        // As many as the evening's plan puts to the room, and none of those that are homework.
        string[] together = [.. app.Course.Evenings.Single(e => e.Number == evening).InTheRoom];
        int planned = app.Course.Exercises.Count(e => together.Contains(e.Id) && e.Kind is IPutToRoom);
        Assert.True(planned > 1, $"{planned} questions");
        Assert.Equal(planned, asked);
    }

    [Fact]
    public async Task Course_EveryScreenOfEveryEvening_FitsWithoutScrolling()
    {
        IPage wall = await StoryClass.Make(app, browser, "Wall Plover", "Wall Sedge").EnterAsync("Wall Plover");
        foreach (int evening in app.Course.Evenings.Select(e => e.Number))
        {
            string slide = string.Create(CultureInfo.InvariantCulture, $"/class/evenings/{evening}/wall/1");
            while (slide.Length > 0)
            {
                await wall.GotoAsync(slide);
                await FitsAsync(wall, slide);
                ILocator next = wall.Locator("a[rel=next]");
                slide = await next.CountAsync() > 0 ? (await next.GetAttributeAsync("href"))! : "";
            }
        }
    }

    private static async Task FitsAsync(IPage wall, string what)
    {
        foreach ((int width, int height) in Screens)
        {
            await wall.SetViewportSizeAsync(width, height);
            int[] size = await wall.EvaluateAsync<int[]>("[document.documentElement.scrollWidth, document.documentElement.scrollHeight]");
            Assert.True(size[0] <= width && size[1] <= height, $"{what} takes {size[0]} by {size[1]} of {width} by {height}");
        }
    }
}
