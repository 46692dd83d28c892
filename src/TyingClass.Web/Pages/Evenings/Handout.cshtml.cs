using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Evenings;

namespace TyingClass.Web.Pages.Evenings;

public sealed class HandoutModel(EveningBook book) : PageModel
{
    public EveningView Evening { get; private set; } = null!;

    public IActionResult OnGet(int number)
    {
        if (book.Open(number) is not { } evening) return book.IsOfOthers(number) ? Forbid() : NotFound();
        Evening = evening;
        return Page();
    }
}
