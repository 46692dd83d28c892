using Microsoft.Extensions.Primitives;

namespace TyingClass.Web.Security;

/// <summary>Nothing inline, nothing from elsewhere. No HSTS: a club room runs on plain HTTP.</summary>
public sealed class SecurityHeaders(RequestDelegate next)
{
    /// <summary>Scripts and styles only from files of our own: a style attribute in a page or drawing, or an inline script, has no effect.</summary>
    public const string ContentSecurityPolicy =
        "default-src 'none'; script-src 'self'; connect-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'; form-action 'self'; frame-ancestors "
        + "'none'; base-uri 'none'";

    private static readonly object Kept = new();

    /// <summary>For an answer that hands a passphrase back to whoever just typed it: no copy of it stays in the browser.</summary>
    public static void KeepNothing(HttpContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        context.Items[Kept] = true;
    }

    public Task InvokeAsync(HttpContext context)
    {
        context.Response.OnStarting(static state =>
        {
            HttpContext context = (HttpContext)state;
            HttpResponse response = context.Response;
            IHeaderDictionary headers = response.Headers;
            headers.ContentSecurityPolicy = ContentSecurityPolicy;
            headers.XContentTypeOptions = "nosniff";
            headers["Referrer-Policy"] = "same-origin";
            headers["Cross-Origin-Opener-Policy"] = "same-origin";
            headers["Permissions-Policy"] = "camera=(), microphone=(), geolocation=()";
            headers.XFrameOptions = "DENY";
            // Else not "no-store", which the form tokens ask for: that empties a form when one goes back to it.
            if (response.ContentType?.StartsWith("text/html", StringComparison.Ordinal) == true)
            {
                headers.CacheControl = context.Items.ContainsKey(Kept) || IsPrivate(context.Request.Path) ? "no-store" : "private, no-cache";
                headers.Pragma = StringValues.Empty;
            }

            return Task.CompletedTask;
        }, context);
        return next(context);
    }

    // Names, codes and people's work: Back after a sign-out on a shared machine must not bring them up again.
    internal static bool IsPrivate(PathString path) => path.StartsWithSegments("/class") || path.StartsWithSegments("/account");
}
