using Microsoft.AspNetCore.Http.Features;

namespace TyingClass.Web.Security;

/// <summary>
/// Turns away a post too large to be read. An answer may hold 64 KB, checked where answers are read and shown back with the
/// form; this lies far above it, so that whatever a person typed or pasted by mistake (a whole file, say) is read and shown back.
/// </summary>
public sealed class BodyLimit(RequestDelegate next)
{
    public const int MostBytes = 16 << 20;

    /// <summary>Many more than the longest form here has.</summary>
    public const int MostFields = 8192;

    // A browser that is cut off while still sending shows its own error instead of our page.
    private const long MostSwallowedBytes = 64L << 20;

    private const string FilesPath = "/class/files";

    public async Task InvokeAsync(HttpContext context)
    {
        HttpRequest request = context.Request;
        if (request.Path.Equals(FilesPath, StringComparison.OrdinalIgnoreCase) && request.ContentLength is null or <= Exchange.FilesDesk.MostBytes)
        {
            // A whole class comes in here; only an instructor gets as far as reading it.
            if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } most) most.MaxRequestBodySize = Exchange.FilesDesk.MostBytes;
            await next(context);
            return;
        }

        if (request.ContentLength is { } length and > MostBytes)
        {
            if (length <= MostSwallowedBytes) await SwallowAsync(context);
            // From here on it is a request for the page that says so.
            request.Method = HttpMethods.Get;
            request.Path = "/problem/413";
            request.QueryString = QueryString.Empty;
            request.Body = Stream.Null;
            request.ContentLength = null;
            request.ContentType = null;
        }

        await next(context);
    }

    private static Task SwallowAsync(HttpContext context)
    {
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } limit) limit.MaxRequestBodySize = MostSwallowedBytes;
        return context.Request.Body.CopyToAsync(Stream.Null, context.RequestAborted);
    }
}
