using System.Text;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Logging.Abstractions;
using TyingClass.Web.Security;
using Xunit;

namespace TyingClass.Web.Tests.Faults;

/// <summary>The page about an error fails too.</summary>
public sealed class LastWordTests
{
    [Fact]
    public async Task Failure_OfAllElse_IsAnsweredInWordsThatNeedNothing()
    {
        DefaultHttpContext context = new();
        using MemoryStream body = new();
        context.Response.Body = body;
        LastWord word = new(_ => throw new InvalidOperationException("Wren’s secret"), NullLogger<LastWord>.Instance);
        await word.InvokeAsync(context);
        string said = Encoding.UTF8.GetString(body.ToArray());
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
