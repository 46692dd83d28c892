using Microsoft.Playwright;
using Xunit;

namespace TyingClass.Browser.Tests;

/// <summary>Debian's Chromium, driven for all stories. Missing, it fails the tests and says how to get it: they are never skipped.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    public async ValueTask InitializeAsync()
    {
        string path = Environment.GetEnvironmentVariable("CHROMIUM") ?? "/usr/bin/chromium";
        Assert.True(File.Exists(path), $"There is no Chromium at {path}. Run tests/run, which installs it, or set CHROMIUM to where it is.");
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = path,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update",
                "--disable-sync"],
        });
    }

    /// <summary>A visitor with cookies of their own.</summary>
    public async Task<IPage> NewVisitorAsync(string address, int width = 1280, ColorScheme scheme = ColorScheme.Light, bool scripting = true)
    {
        IBrowserContext context = await (_browser ?? throw new InvalidOperationException("No browser.")).NewContextAsync(new BrowserNewContextOptions
        {
            BaseURL = address,
            ViewportSize = new ViewportSize { Width = width, Height = 900 },
            ColorScheme = scheme,
            JavaScriptEnabled = scripting,
            ReducedMotion = ReducedMotion.Reduce,
        });
        IPage page = await context.NewPageAsync();
        page.SetDefaultTimeout(60_000);
        return page;
    }

    /// <summary>Presses a key once the page has been painted: before that Chromium drops what is typed, as it would drop a user's.</summary>
    public static async Task PressAsync(IPage page, string key)
    {
        await page.EvaluateAsync("() => new Promise(painted => requestAnimationFrame(() => requestAnimationFrame(painted)))");
        await page.Keyboard.PressAsync(key);
    }

    /// <summary>
    /// A key that leads to another page. Headless Chromium loses a key now and then while a page is new and the machine is busy, so a key that led nowhere in
    /// ten seconds is pressed once more.
    /// </summary>
    public static async Task PressToAsync(IPage page, string key, Func<string, bool> there)
    {
        await PressAsync(page, key);
        try
        {
            await page.WaitForURLAsync(there, new() { Timeout = 10_000 });
        }
        catch (TimeoutException)
        {
            if (!there(page.Url)) await PressAsync(page, key);
            await page.WaitForURLAsync(there);
        }
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.DisposeAsync();
        }

        _playwright?.Dispose();
    }
}
