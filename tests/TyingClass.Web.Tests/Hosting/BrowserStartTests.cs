using TyingClass.Web.Hosting;
using Xunit;

namespace TyingClass.Web.Tests.Hosting;

public sealed class BrowserStartTests
{
    [Fact]
    public void IsWanted_RunFromARepository_IsNo() => Assert.False(BrowserStart.IsWanted([]));

    [Theory]
    [InlineData("DISPLAY=:0", true)]
    [InlineData("WAYLAND_DISPLAY=wayland-0", true)]
    [InlineData("", false)]
    [InlineData("DISPLAY=:0;INVOCATION_ID=0123", false)]
    // A terminal of a desktop session is itself a unit of systemd.
    [InlineData("DISPLAY=:0;INVOCATION_ID=0123;TERM=xterm", true)]
    public void HasScreen_OnLinux_NeedsADisplayAndNoService(string environment, bool expected)
    {
        if (!OperatingSystem.IsLinux()) return;
        Dictionary<string, string> set = environment.Split(';', StringSplitOptions.RemoveEmptyEntries).Select(e => e.Split('=')).ToDictionary(e => e[0],
            e => e[1], StringComparer.Ordinal);
        Assert.Equal(expected, BrowserStart.HasScreen(set.GetValueOrDefault));
    }

    [Theory]
    [InlineData("http://[::]:5080", "http://localhost:5080")]
    [InlineData("http://0.0.0.0:80", "http://localhost:80")]
    [InlineData("http://127.0.0.1:5080", "http://127.0.0.1:5080")]
    public void Here_BoundAddress_IsOneABrowserOpens(string bound, string expected) => Assert.Equal(expected, BrowserStart.Here(bound));

    [Fact]
    public async Task RefusalPage_Asked_SaysWhyWithItsOwnStatus()
    {
        await using Microsoft.AspNetCore.Builder.WebApplication page = RefusalPage.Build("The file <a> is newer.");
        await page.StartAsync(TestContext.Current.CancellationToken);
        using HttpClient client = new();
        using HttpResponseMessage answer = await client.GetAsync(new Uri(page.Urls.First()), TestContext.Current.CancellationToken);
        Assert.Equal(System.Net.HttpStatusCode.ServiceUnavailable, answer.StatusCode);
        Assert.Contains("The file &lt;a&gt; is newer.", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken),
            StringComparison.Ordinal);
    }
}
