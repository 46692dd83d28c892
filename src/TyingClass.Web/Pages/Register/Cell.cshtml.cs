using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Progress;

namespace TyingClass.Web.Pages.Register;

public sealed class CellModel(ClassRegister register) : PageModel
{
    public CellView Cell { get; private set; } = null!;

    public IActionResult OnGet(string personId, string exerciseId)
    {
        if (register.Cell(personId, exerciseId) is not { } cell) return NotFound();
        Cell = cell;
        return Page();
    }
}
