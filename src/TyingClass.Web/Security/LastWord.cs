using System.Net.Mime;

namespace TyingClass.Web.Security;

/// <summary>
/// When even the page about a problem fails, because the store behind every page's frame cannot be read, say: plain words that need nothing. It stands
/// around everything else.
/// </summary>
public sealed partial class LastWord(RequestDelegate next, ILogger<LastWord> log)
{
    private const string Page =
        "<!DOCTYPE html><html lang=\"en\"><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width\"><title>TyingClass</title>"
        + "<h1>The server is in trouble</h1><p>Nothing was kept of what you just sent. Go back with your browser’s Back button: what you typed is still in "
        + "its form. Try again in a minute; if it stays so, tell whoever runs the server to look at its console.</p>";

    public async Task InvokeAsync(HttpContext context)
    {
        try
        {
            await next(context);
        }
        catch (OperationCanceledException) when (context.RequestAborted.IsCancellationRequested)
        {
            // Nobody is there to be answered.
        }
        catch (Exception e) when (!context.Response.HasStarted)
        {
            Failed(e);
            context.Response.Clear();
            context.Response.StatusCode = StatusCodes.Status503ServiceUnavailable;
            context.Response.ContentType = MediaTypeNames.Text.Html;
            await context.Response.WriteAsync(Page, context.RequestAborted);
        }
    }

    [LoggerMessage(LogLevel.Error, "A page failed, and so did the page that says so.")]
    private partial void Failed(Exception why);
}
