using System.Collections.Immutable;
using System.Globalization;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.Files;
using TyingClass.Web.Evenings;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Problems;

/// <summary>What is shown when a page cannot be. Reached by re-executing the request that failed; what was typed into its form is handed back.</summary>
public sealed class ProblemModel(LentBoard board) : PageModel, IKeepsTyped
{
    public ProblemWords Words { get; private set; } = null!;

    /// <summary>Only where nobody could send it in: everywhere else the form itself is shown again, or one goes back to it.</summary>
    public ImmutableArray<TypedField> Typed { get; private set; } = [];

    /// <summary>What a deputy who was turned away may run instead.</summary>
    public LentView? Lent { get; private set; }

    /// <summary>For someone whose sign-in ended while they typed.</summary>
    public string? SignInAgain { get; private set; }

    /// <summary>Their form, for whoever is signed in again.</summary>
    public PutBack? Back { get; private set; }

    public void OnGet(int status) => Prepare(status);

    public void OnPost(int status) => Prepare(status);

    // The request that failed carried nothing out, so its token does not matter here.
    public IActionResult ShowAgain()
    {
        Prepare(int.Parse((string)RouteData.Values["status"]!, CultureInfo.InvariantCulture));
        return Page();
    }

    private void Prepare(int status)
    {
        Exception? error = HttpContext.Features.Get<IExceptionHandlerFeature>()?.Error;
        status = error switch
        {
            BadHttpRequestException bad => bad.StatusCode,
            StorageException => StatusCodes.Status503ServiceUnavailable,
            _ => status,
        };
        Response.StatusCode = status is >= 400 and <= 599 ? status : StatusCodes.Status404NotFound;
        Typed = TypedFields.Kept(HttpContext);
        if (Response.StatusCode == StatusCodes.Status403Forbidden) Lent = board.Mine();
        if (Response.StatusCode == StatusCodes.Status401Unauthorized)
        {
            SignInAgain = "/sign-in?next=" + Uri.EscapeDataString(HttpContext.Features.Get<IStatusCodeReExecuteFeature>()?.OriginalPath ?? "/");
            Back = TypedFields.Whole(HttpContext);
        }

        Words = ProblemWords.For(Response.StatusCode, !Typed.IsEmpty, Lent is not null);
    }
}
