using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Storage.Files;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Problems;

/// <summary>What is shown when a page cannot be. Reached by re-executing the request that failed.</summary>
public sealed class ProblemModel : PageModel, IKeepsTyped
{
    public ProblemWords Words { get; private set; } = null!;

    public void OnGet(int status) => Prepare(status);

    public void OnPost(int status) => Prepare(status);

    // The request that failed carried nothing out, so its token does not matter here.
    public Microsoft.AspNetCore.Mvc.IActionResult ShowAgain()
    {
        Prepare(int.Parse((string)RouteData.Values["status"]!, System.Globalization.CultureInfo.InvariantCulture));
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
        Words = ProblemWords.For(Response.StatusCode);
    }
}
