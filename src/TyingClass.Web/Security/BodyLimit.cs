using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Http.Features;
using TyingClass.Storage.Photos;

namespace TyingClass.Web.Security;

/// <summary>
/// Turns away a post too large to be read. An answer may hold 64 KB, checked where answers are read and shown back with the
/// form; this lies far above it, so that whatever a person typed or pasted is read and shown back.
/// </summary>
public sealed partial class BodyLimit(RequestDelegate next)
{
    public const int MostBytes = 2 << 20;

    // The one place for more: a photo for the bench log, with what a form puts around it.
    private const int MostPhotoBytes = PhotoReader.MostBytes + (64 << 10);

    // A browser that is cut off while still sending shows its own error instead of our page.
    private const long MostSwallowedBytes = 64L << 20;

    public async Task InvokeAsync(HttpContext context)
    {
        HttpRequest request = context.Request;
        if (HttpMethods.IsPost(request.Method) && PhotoAddress().IsMatch(request.Path.Value ?? ""))
        {
            if (await TakePhotoAsync(context)) await next(context);
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

    /// <returns>False when it was over even this limit: then whoever sent it is on the way back to the entry, which says so.</returns>
    private static async Task<bool> TakePhotoAsync(HttpContext context)
    {
        if (context.Request.ContentLength > MostPhotoBytes)
        {
            if (context.Request.ContentLength <= MostSwallowedBytes) await SwallowAsync(context);
            string entry = context.Request.Path.Value![..^"/photo".Length];
            context.Response.StatusCode = StatusCodes.Status303SeeOther;
            context.Response.Headers.Location = $"{entry}?photo=big#photo-title";
            return false;
        }

        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } limit) limit.MaxRequestBodySize = MostPhotoBytes;
        return true;
    }

    [GeneratedRegex(@"\A/bench-log/[0-9a-f]{1,40}/photo\z", RegexOptions.IgnoreCase)]
    private static partial Regex PhotoAddress();

    private static Task SwallowAsync(HttpContext context)
    {
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } limit) limit.MaxRequestBodySize = MostSwallowedBytes;
        return context.Request.Body.CopyToAsync(Stream.Null, context.RequestAborted);
    }
}
