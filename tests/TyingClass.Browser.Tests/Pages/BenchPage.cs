using Microsoft.Playwright;

namespace TyingClass.Browser.Tests.Pages;

/// <summary>The bench in a browser.</summary>
internal sealed class BenchPage(IPage page)
{
    public ILocator Verdict => page.Locator(".bench-verdict");

    public ILocator Announced => page.Locator("[data-say]");

    public ILocator Size => page.GetByRole(AriaRole.Slider, new() { Name = "Size of the dumbbell eyes, mm" });

    public ILocator Speed => page.GetByRole(AriaRole.Slider, new() { Name = "Speed, m/s" });

    public Task OpenAsync() => page.GotoAsync("/bench");

    public Task<string> FieldAsync(string path) => page.Locator($"[name='r:{path}']").InputValueAsync();

    public Task<string> TextAsync() => page.Locator("#text").InputValueAsync();

    public ILocator Button(string name) => page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });

    public Task WaitForVerdictAsync(string words) => Verdict.Filter(new() { HasText = words }).WaitForAsync();

    /// <summary>Takes the handle with the mouse and pulls it to a share of the track.</summary>
    public async Task DragAsync(ILocator slider, double from, double to)
    {
        await slider.ScrollIntoViewIfNeededAsync();
        LocatorBoundingBoxResult box = await slider.BoundingBoxAsync() ?? throw new InvalidOperationException("The slider is not on the page.");
        float y = box.Y + box.Height / 2;
        // The handle's middle keeps half its width from either end.
        float At(double share) => (float)(box.X + 8 + share * (box.Width - 16));
        await page.Mouse.MoveAsync(At(from), y);
        await page.Mouse.DownAsync();
        for (int i = 1; i <= 12; i++) await page.Mouse.MoveAsync(At(from + (to - from) * i / 12), y);
    }

    public Task LetGoAsync() => page.Mouse.UpAsync();
}
