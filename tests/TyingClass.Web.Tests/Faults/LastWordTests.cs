using System.Net;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Logging.Abstractions;
using TyingClass.Web.Security;
using Xunit;

namespace TyingClass.Web.Tests.Faults;

/// <summary>The page about an error fails too.</summary>
public sealed class LastWordTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task EveryPage_WhenTheStoreIsGoneAltogether_IsPlainWordsAndNoError()
    {
        using ClassRoom room = new();
        Browser browser = room.NewBrowser();
        Assert.Equal(HttpStatusCode.OK, (await browser.OpenAsync("/")).Status);
        room.Store.Dispose();
        foreach (string address in (string[])["/", "/class", "/exercises/first-01", "/nope"])
        {
            using HttpResponseMessage answer = await browser.Client.GetAsync(new Uri(address, UriKind.Relative), Stop);
            string said = await answer.Content.ReadAsStringAsync(Stop);
            Assert.True((int)answer.StatusCode is < 500 or 503, $"{address}: {answer.StatusCode}");
            Assert.Contains("<h1>", said, StringComparison.Ordinal);
            Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
        }
    }

    [Fact]
    public async Task Failure_OfAllElse_IsAnsweredInWordsThatNeedNothing()
    {
        DefaultHttpContext context = new();
        using MemoryStream body = new();
        context.Response.Body = body;
        LastWord word = new(_ => throw new InvalidOperationException("Wren’s secret"), NullLogger<LastWord>.Instance);
        await word.InvokeAsync(context);
        string said = System.Text.Encoding.UTF8.GetString(body.ToArray());
        Assert.Equal(StatusCodes.Status503ServiceUnavailable, context.Response.StatusCode);
        Assert.Contains("Nothing was kept of what you just sent", said, StringComparison.Ordinal);
        Assert.DoesNotContain("secret", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Asker_WhoHasLeft_IsNoFailure()
    {
        using CancellationTokenSource left = new();
        await left.CancelAsync();
        DefaultHttpContext context = new() { RequestAborted = left.Token };
        LastWord word = new(_ => throw new OperationCanceledException(), NullLogger<LastWord>.Instance);
        await word.InvokeAsync(context);
        Assert.Equal(StatusCodes.Status200OK, context.Response.StatusCode);
    }
}
