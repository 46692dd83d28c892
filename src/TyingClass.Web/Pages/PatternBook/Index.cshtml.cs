using System.Collections.Immutable;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Patterns;

namespace TyingClass.Web.Pages.PatternBook;

public sealed class IndexModel(PatternCards book) : PageModel
{
    public ImmutableArray<CardView> Cards { get; private set; } = [];

    public string? Class { get; private set; }

    public void OnGet() => (Cards, Class) = (book.All(), book.Class?.Name);
}
