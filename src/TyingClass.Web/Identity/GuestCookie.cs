namespace TyingClass.Web.Identity;

/// <summary>The secret by which a browser finds its guest record again.</summary>
internal static class GuestCookie
{
    public const string Name = "tying-guest";

    public static string? Read(HttpRequest request) =>
        request.Cookies.TryGetValue(Name, out string? secret) && secret.Length is > 0 and <= 100 ? secret : null;

    public static void Forget(HttpContext context) => context.Response.Cookies.Delete(Name);

    public static void Write(HttpContext context, string secret) => context.Response.Cookies.Append(Name, secret, new CookieOptions
    {
        HttpOnly = true,
        IsEssential = true,
        SameSite = SameSiteMode.Lax,
        // A club room runs on plain HTTP; over HTTPS the cookie stays there.
        Secure = context.Request.IsHttps,
        MaxAge = TimeSpan.FromDays(400),
    });
}
