using TyingClass.Recipes.Text;

namespace TyingClass.Web.Preferences;

public enum Theme
{
    /// <summary>As the reader's system says.</summary>
    Auto,
    Light,
    Dark,
}

/// <summary>How this browser wants its pages; kept in a cookie of plain words.</summary>
public readonly record struct Look(UnitSystem Units, Theme Theme)
{
    public const string CookieName = "tying-look";

    /// <summary>Anything unknown counts as the default.</summary>
    public static Look Of(HttpRequest request)
    {
        string[] words = (request.Cookies[CookieName] ?? "").Split('.');
        return new Look(
            words.Contains("imperial") ? UnitSystem.Imperial : UnitSystem.Metric,
            words.Contains("dark") ? Theme.Dark : words.Contains("light") ? Theme.Light : Theme.Auto);
    }

    public void Write(HttpContext context) => context.Response.Cookies.Append(CookieName, ToString(), new CookieOptions
    {
        HttpOnly = true,
        IsEssential = true,
        SameSite = SameSiteMode.Lax,
        Secure = context.Request.IsHttps,
        MaxAge = TimeSpan.FromDays(400),
    });

    /// <summary>For the root element: "auto" leaves the choice to the reader's system.</summary>
    public string ThemeAttribute => Theme.ToString().ToLowerInvariant();

    public override string ToString() => $"{Units}.{Theme}".ToLowerInvariant();
}
