using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Bench;
using TyingClass.Web.Editing;
using TyingClass.Web.Patterns;

namespace TyingClass.Web.Pages.Bench;

public sealed class CardModel(FlySheets sheets) : PageModel
{
    public PrintCard Card { get; private set; } = null!;

    /// <summary>Back to the bench with the same fly.</summary>
    public string Back { get; private set; } = "/bench";

    public IActionResult OnGet(string? r)
    {
        if (!Packed.TryUnpack(r, AnswerLimit.MostBytes, out string? text) || sheets.Print(text) is not { } card) return NotFound();
        (Card, Back) = (card, $"/bench?r={r}");
        return Page();
    }
}
