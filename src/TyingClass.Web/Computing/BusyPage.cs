using System.Collections.Immutable;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using Microsoft.AspNetCore.Mvc.ViewFeatures;

namespace TyingClass.Web.Computing;

/// <summary>Why nothing was computed.</summary>
public sealed record BusyWords(string Title, string What)
{
    public static BusyWords NoTurn { get; } = new(
        "Many flies are being computed just now",
        "Yours had to wait too long, so nothing was done yet. Nothing you typed is lost: it travels with the button.");

    public static BusyWords TooLong { get; } = new(
        "This fly takes too long to compute",
        "The server gave it its time and stopped. Nothing you typed is lost: it travels with the button. If it happens again, take out some of its "
            + "parts, or ask for less at once, and look at what is unusual in it: a very small hook, a very stiff leader, a very slow strip.");
}

/// <param name="Address">Where it was sent.</param>
/// <param name="Fields">Every field of the form as it was sent, to be sent once more.</param>
/// <param name="IsForm">Whether it was a form at all, and not only a page to be read.</param>
public sealed record BusyPage(BusyWords Words, string Address, ImmutableArray<KeyValuePair<string, string>> Fields, bool IsForm)
{
    private const string View = "/Pages/Problems/Busy.cshtml";

    private const int RetryAfterS = 3;

    public static IActionResult Of(HttpContext http, BusyWords words)
    {
        HttpRequest request = http.Request;
        bool isForm = HttpMethods.IsPost(request.Method) && request.HasFormContentType;
        BusyPage page = new(
            words, request.PathBase + request.Path + request.QueryString,
            isForm ? [.. request.Form.SelectMany(f => f.Value, (f, value) => KeyValuePair.Create(f.Key, value ?? ""))] : [], isForm);
        http.Response.StatusCode = StatusCodes.Status503ServiceUnavailable;
        http.Response.Headers.RetryAfter = RetryAfterS.ToString(System.Globalization.CultureInfo.InvariantCulture);
        return new ViewResult
        {
            ViewName = View,
            StatusCode = StatusCodes.Status503ServiceUnavailable,
            ViewData = new ViewDataDictionary<BusyPage>(new EmptyModelMetadataProvider(), new ModelStateDictionary()) { Model = page },
        };
    }
}
