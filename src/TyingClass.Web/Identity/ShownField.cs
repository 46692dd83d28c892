using TyingClass.Web.Security;

namespace TyingClass.Web.Identity;

/// <summary>Whether a passphrase is shown while it is typed: on a phone, where thumbs miss, it is until someone hides it; elsewhere only on demand.</summary>
public sealed record ShownField(bool IsShown)
{
    /// <summary>Of the button that shows or hides.</summary>
    public const string Field = "show";

    public string Type => IsShown ? "text" : "password";

    /// <summary>What is shown is kept out of the browser's memory of what was typed; a password manager fills the hidden one.</summary>
    public string Completion(string hidden) => IsShown ? "off" : hidden;

    /// <summary>As the button says, else by the browser: those on phones say "Mobi" of themselves, as Mozilla's notes on browser detection advise to
    /// ask.</summary>
    public static ShownField Of(HttpRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        string? asked = request.HasFormContentType ? request.Form[Field].ToString() : null;
        string? before = request.HasFormContentType ? request.Form["shown"].ToString() : null;
        return new ShownField((asked, before) switch
        {
            ("true", _) => true,
            ("false", _) => false,
            (_, "true") => true,
            (_, "false") => false,
            _ => request.Headers.UserAgent.ToString().Contains("Mobi", StringComparison.Ordinal),
        });
    }

    /// <summary>
    /// What was typed, to stand in the field again: for whoever pressed the button, and after a refusal for whoever is choosing a new one, who
    /// would else choose it twice. Never one that opens an account already: the next at this browser could read it. No copy of the page is kept.
    /// </summary>
    public static string? Again(HttpContext context, string? typed, bool isChosenNow)
    {
        ArgumentNullException.ThrowIfNull(context);
        if (!WasAsked(context.Request) && !(isChosenNow && context.Response.StatusCode == StatusCodes.Status422UnprocessableEntity)) return null;
        SecurityHeaders.KeepNothing(context);
        return typed;
    }

    /// <summary>The button was pressed, and nothing else is to be done.</summary>
    public static bool WasAsked(HttpRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return request.HasFormContentType && request.Form[Field].ToString().Length > 0;
    }
}
