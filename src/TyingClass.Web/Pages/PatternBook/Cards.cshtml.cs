using System.Collections.Immutable;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Patterns;

namespace TyingClass.Web.Pages.PatternBook;

public sealed class CardsModel(PatternCards book) : PageModel
{
    public ImmutableArray<CardView> Cards { get; private set; } = [];

    public void OnGet() => Cards = book.All();
}
