using System.Collections.Immutable;
using System.Security.Cryptography;
using Microsoft.AspNetCore.DataProtection;

namespace TyingClass.Web.Identity;

/// <summary>
/// Browsers that opened an account once are known by a sealed cookie, which opens nothing: it only keeps others' wrong tries at the same name from making this
/// browser wait (OWASP, “Slow down online guessing attacks with device cookies”).
/// </summary>
public sealed class KnownDevices(IDataProtectionProvider protection)
{
    private const string Cookie = "tying-known";

    // A family's laptop, or the club's.
    private const int MostPeople = 12;

    private readonly IDataProtector _seal = protection.CreateProtector("known device");

    /// <returns>The browser's own mark; null when this person never signed in here.</returns>
    public string? Of(HttpContext context, string personId)
    {
        ArgumentNullException.ThrowIfNull(context);
        return Read(context.Request) is [var device, .. var people] && people.Contains(personId) ? device : null;
    }

    public void Remember(HttpContext context, string personId)
    {
        ArgumentNullException.ThrowIfNull(context);
        ImmutableArray<string> known = Read(context.Request);
        string device = known is [var same, ..] ? same : RandomNumberGenerator.GetHexString(16, lowercase: true);
        IEnumerable<string> people = known.Skip(1).Where(p => p != personId).TakeLast(MostPeople - 1).Append(personId);
        context.Response.Cookies.Append(Cookie, _seal.Protect(string.Join(' ', people.Prepend(device))), new CookieOptions
        {
            HttpOnly = true,
            IsEssential = true,
            SameSite = SameSiteMode.Lax,
            Secure = context.Request.IsHttps,
            MaxAge = TimeSpan.FromDays(400),
            Path = "/sign-in",
        });
    }

    private ImmutableArray<string> Read(HttpRequest request)
    {
        if (!request.Cookies.TryGetValue(Cookie, out string? sealedText) || sealedText.Length > 4000) return [];
        try
        {
            return [.. _seal.Unprotect(sealedText).Split(' ', StringSplitOptions.RemoveEmptyEntries)];
        }
        catch (CryptographicException)
        {
            // Of another server, or made up.
            return [];
        }
    }
}
