using System.Collections.Immutable;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Calendar;
using TyingClass.Web.Evenings;
using TyingClass.Web.Security;

namespace TyingClass.Web.Pages.Evenings;

public sealed class IndexModel(EveningBook book) : PageModel, IKeepsTyped
{
    [BindProperty(Name = "first")]
    public string? First { get; set; }

    [BindProperty(Name = "every")]
    public int Every { get; set; } = 7;

    public string ClassName { get; private set; } = "";

    public ImmutableArray<EveningLine> Evenings { get; private set; }

    public bool Saved { get; private set; }

    public IActionResult OnGet(bool saved = false)
    {
        Saved = saved;
        return Show();
    }

    public IActionResult OnPost()
    {
        if (!ClassClock.TryRead(First, out DateTime? first) || first is null) ModelState.AddModelError("first", "Say when the first evening begins: a date with a time, as in 2026-01-14 19:00.");
        else if (Every is < 1 or > 60) ModelState.AddModelError("every", "Days between evenings: a whole number from 1 to 60.");
        else if (!book.Schedule(first.Value, Every)) ModelState.AddModelError("first", "Someone else changed an evening at the same moment. Look at the list and set the dates once more.");
        else return RedirectToPage(new { saved = true });
        Response.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return Show();
    }

    public IActionResult ShowAgain()
    {
        ModelState.AddModelError("first", "The form had gone stale and nothing was saved. Send it once more.");
        return Show();
    }

    private IActionResult Show()
    {
        if (book.Room is not { } room) return NotFound();
        (ClassName, Evenings) = (room.Name, book.All());
        First ??= Evenings.Select(e => e.Plan.StartsLocal).FirstOrDefault(s => s is not null) is { } starts ? ClassClock.Write(starts) : null;
        return Page();
    }
}
