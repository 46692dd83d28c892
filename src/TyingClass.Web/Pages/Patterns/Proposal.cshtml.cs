using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Patterns;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Patterns;

/// <summary>A mentor's version beside one's own.</summary>
public sealed class ProposalModel(Proposals proposals) : PageModel, IKeepsTyped
{
    public ProposalView View { get; private set; } = null!;

    public string? Notice { get; private set; }

    public IActionResult OnGet(string id, string? review) => Show(id, review);

    public IActionResult OnPost(string id, string? review, int expected)
    {
        if (proposals.Take(id, review, expected) is not { } outcome) return NotFound();
        if (outcome.Saved) return LocalRedirect($"{PatternDesk.AddressOf(id)}?taken={outcome.Current.Revision - 1}");
        Notice = $"Revision {outcome.Current.Revision} was saved meanwhile, and nothing was taken over. Below the two stand side by side as they are now.";
        Response.StatusCode = StatusCodes.Status409Conflict;
        return Show(id, review);
    }

    public IActionResult ShowAgain()
    {
        Notice = "The page had gone stale and nothing was taken over. Press the button once more.";
        return Show((string)RouteData.Values["id"]!, Request.Query["review"]);
    }

    private IActionResult Show(string id, string? review)
    {
        if (proposals.Open(id, review) is not { } view) return NotFound();
        View = view;
        return Page();
    }
}
