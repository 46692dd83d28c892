using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace TyingClass.Web.Pages.Files;

/// <summary>The address one would guess.</summary>
public sealed class BackupModel : PageModel
{
    public IActionResult OnGet() => Redirect("/class/files#backup");
}
