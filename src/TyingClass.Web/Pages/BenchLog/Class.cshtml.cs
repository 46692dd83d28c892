using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.BenchLog;

namespace TyingClass.Web.Pages.BenchLog;

public sealed class ClassModel(LogPages pages) : PageModel
{
    public ClassLog Log { get; private set; } = null!;

    public IActionResult OnGet()
    {
        if (pages.OfClass() is not { } log) return NotFound();
        Log = log;
        return Page();
    }
}
