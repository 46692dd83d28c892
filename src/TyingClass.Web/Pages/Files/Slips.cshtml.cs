using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Classes;
using TyingClass.Web.Exchange;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Pages.Files;

public sealed class SlipsModel(PassphraseSlips slips, Visitor visitor, ClassAccess access) : PageModel
{
    public SlipSheet? Sheet { get; private set; }

    public string? OpenClassId => access.Current?.Id;

    public IActionResult OnGet(string? ticket)
    {
        Sheet = slips.Find(ticket, visitor.Person?.Id);
        if (Sheet is null) Response.StatusCode = StatusCodes.Status410Gone;
        Response.Headers.CacheControl = "no-store";
        return Page();
    }
}
