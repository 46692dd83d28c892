using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Editing;
using TyingClass.Web.Patterns;

namespace TyingClass.Web.Pages.Patterns;

public sealed class CardModel(PatternCards book, FlySheets sheets) : PageModel
{
    public CardView Card { get; private set; } = null!;

    public PrintCard Print { get; private set; } = null!;

    public IActionResult OnGet(string id, int? revision)
    {
        if (book.Find(id, revision) is not { } card) return NotFound();
        (Card, Print) = (card, sheets.Print(card));
        return Page();
    }
}
