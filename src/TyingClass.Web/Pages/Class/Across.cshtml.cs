using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Classes;

namespace TyingClass.Web.Pages.Class;

[Authorize(ClassPolicies.Deputy)]
public sealed class AcrossModel(ClassAccess access, ExerciseAcross across) : PageModel
{
    public AcrossView View { get; private set; } = null!;

    public IActionResult OnGet(string id, int part = 1)
    {
        if (access.Current is not { } room || across.Of(room, id, part) is not { } view) return NotFound();
        View = view;
        return Page();
    }
}
