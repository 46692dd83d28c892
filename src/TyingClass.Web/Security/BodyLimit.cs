namespace TyingClass.Web.Security;

/// <summary>
/// Turns away a post too large to be read. An answer may hold 64 KB, checked where answers are read and shown back with the
/// form; this lies far above it, so that whatever a person typed or pasted is read and shown back.
/// </summary>
public sealed class BodyLimit(RequestDelegate next)
{
    public const int MostBytes = 2 << 20;

    public Task InvokeAsync(HttpContext context)
    {
        if (context.Request.ContentLength is not > MostBytes) return next(context);
        context.Response.StatusCode = StatusCodes.Status413PayloadTooLarge;
        return Task.CompletedTask;
    }
}
