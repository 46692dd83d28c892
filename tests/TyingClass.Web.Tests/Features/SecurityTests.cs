using System.Net;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

public sealed class SecurityTests : IDisposable
{
    private static readonly string[] Addresses = ["/", "/lessons/first-evening", "/lessons/second-evening", "/exercises/first-03", "/exercises/second-01",
        "/safety", "/first-wraps", "/model", "/preferences", "/sign-in", "/bench", "/lessons/first-evening/projector", "/nope"];

    private readonly ClassRoom _room = new();

    [Fact]
    public async Task EveryPage_Opened_CarriesTheHeaders()
    {
        Browser browser = _room.NewBrowser();
        foreach (string address in Addresses)
        {
            Sheet sheet = await browser.OpenAsync(address);
            string csp = string.Join(';', sheet.Response.Headers.GetValues("Content-Security-Policy"));
            Assert.Contains("default-src 'none'", csp, StringComparison.Ordinal);
            Assert.DoesNotContain("unsafe", csp, StringComparison.Ordinal);
            Assert.Equal("nosniff", sheet.Response.Headers.GetValues("X-Content-Type-Options").Single());
            Assert.DoesNotContain("no-store", sheet.Response.Headers.CacheControl?.ToString() ?? "", StringComparison.Ordinal);
            Assert.False(sheet.Response.Headers.Contains("Strict-Transport-Security"));
        }
    }

    [Fact]
    public async Task EveryPage_Opened_HasNothingInlineThatThePolicyForbids()
    {
        Browser browser = _room.NewBrowser();
        await Answers.FailRepairAsync(browser);
        foreach (string address in Addresses)
        {
            Sheet sheet = await browser.OpenAsync(address);
            Assert.Empty(sheet.All("[style], style, script:not([src^='/js/']), [onclick], [onload]").Select(e => $"{address}: {e.OuterHtml}"));
        }
    }

    [Fact]
    public async Task EveryPage_Opened_HasOneHeadingALabelForEveryFieldAndIdsOnce()
    {
        Browser browser = _room.NewBrowser();
        await Answers.FailRepairAsync(browser);
        foreach (string address in Addresses)
        {
            Sheet sheet = await browser.OpenAsync(address);
            Assert.Single(sheet.All("h1"));
            Assert.Empty(sheet.All("[id]").GroupBy(e => e.Id).Where(g => g.Count() > 1).Select(g => $"{address}: {g.Key}"));
            Assert.Empty(sheet.All("main input:not([type=hidden]), main select, main textarea")
                .Where(e => !sheet.Has($"label[for='{e.Id}']")).Select(e => $"{address}: {e.OuterHtml}"));
        }
    }

    [Fact]
    public async Task StyleSheets_OfEveryPage_AreThere()
    {
        Browser browser = _room.NewBrowser();
        Sheet home = await browser.OpenAsync("/");
        foreach (string href in home.All("link[rel=stylesheet], link[rel=icon]").Select(l => l.GetAttribute("href")!))
        {
            using HttpResponseMessage response = await browser.Client.GetAsync(new Uri(href, UriKind.Relative), TestContext.Current.CancellationToken);
            Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        }
    }

    [Fact]
    public async Task GuestCookie_FirstAnswer_IsHttpOnlyAndNoIdOfTheStore()
    {
        Browser browser = _room.NewBrowser();
        ExercisePage page = (await ExercisePage.OpenAsync(browser, "first-01")).Choose("point down");
        using FormUrlEncodedContent content = new(page.Fields());
        using HttpResponseMessage response =
            await browser.Client.PostAsync(new Uri("/exercises/first-01", UriKind.Relative), content, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.Redirect, response.StatusCode);
        string cookie = response.Headers.GetValues("Set-Cookie").Single(c => c.StartsWith("tying-guest=", StringComparison.Ordinal));
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=lax", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("secure", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain(Assert.Single(_room.Store.People.All()).Id, cookie, StringComparison.Ordinal);
    }

    public void Dispose() => _room.Dispose();
}
