using System.Text.Encodings.Web;

namespace TyingClass.Web.Hosting;

/// <summary>
/// Says in the browser why the program does not start: a window that closes at once says nothing to someone who double-clicked. Served
/// instead of written to a file, which a browser in a sandbox may not read.
/// </summary>
internal static class RefusalPage
{
    private static readonly TimeSpan Shown = TimeSpan.FromMinutes(10);

    public static async Task ShowAsync(string message)
    {
        await using WebApplication page = Build(message);
        await page.StartAsync();
        BrowserStart.Open(page.Urls.First());
        Console.Error.WriteLine("The same stands in the browser. Close this window, or press Ctrl+C.");
        using CancellationTokenSource enough = new(Shown);
        await page.WaitForShutdownAsync(enough.Token);
    }

    internal static WebApplication Build(string message)
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        WebApplication app = builder.Build();
        app.Run(context =>
        {
            context.Response.StatusCode = StatusCodes.Status503ServiceUnavailable;
            context.Response.ContentType = "text/html; charset=utf-8";
            context.Response.Headers.ContentSecurityPolicy = "default-src 'none'";
            return context.Response.WriteAsync(Html(message), context.RequestAborted);
        });
        return app;
    }

    private static string Html(string message) => $"""
        <!DOCTYPE html>
        <html lang="en">
        <head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><meta name="color-scheme" content="light dark">
        <title>TyingClass did not start</title></head>
        <body><main><h1>TyingClass did not start</h1><p>{HtmlEncoder.Default.Encode(message)}</p>
        <p>Nothing was changed. When that is put right, start it again.</p></main></body>
        </html>
        """;
}
