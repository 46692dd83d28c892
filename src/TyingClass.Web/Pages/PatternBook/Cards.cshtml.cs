using System.Collections.Immutable;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Editing;
using TyingClass.Web.Patterns;

namespace TyingClass.Web.Pages.PatternBook;

public sealed class CardsModel(PatternCards book, FlySheets sheets) : PageModel
{
    public ImmutableArray<PrintCard> Cards { get; private set; } = [];

    public void OnGet() => Cards = [.. book.All().Select(sheets.Print)];
}
