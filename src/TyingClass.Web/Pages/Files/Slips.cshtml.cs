using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Exchange;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Pages.Files;

public sealed class SlipsModel(HandedSlips slips, Visitor visitor) : PageModel
{
    public SlipSheet? Sheet { get; private set; }

    public IActionResult OnGet(string? ticket)
    {
        Sheet = slips.Find(ticket, visitor.Person?.Id);
        if (Sheet is null) Response.StatusCode = StatusCodes.Status410Gone;
        Response.Headers.CacheControl = "no-store";
        return Page();
    }
}
