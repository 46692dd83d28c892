using System.Collections.Immutable;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Evenings;

namespace TyingClass.Web.Pages.Evenings;

public sealed class WallModel(EveningBook book) : PageModel
{
    public int Number { get; private set; }

    public int Count { get; private set; }

    /// <summary>From 1.</summary>
    public int At { get; private set; }

    public EveningStep Step { get; private set; } = null!;

    public IActionResult OnGet(int number, int step)
    {
        if (book.Open(number) is not { } evening) return book.IsOfOthers(number) ? Forbid() : NotFound();
        ImmutableArray<EveningStep> steps = EveningSteps.Of(evening);
        if (step > steps.Length) return RedirectToPage(new { number, step = steps.Length });
        (Number, Count, At, Step) = (number, steps.Length, step, steps[step - 1]);
        return Page();
    }
}
