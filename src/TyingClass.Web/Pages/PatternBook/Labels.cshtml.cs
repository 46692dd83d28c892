using System.Collections.Immutable;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Patterns;

namespace TyingClass.Web.Pages.PatternBook;

/// <summary>Labels for fly boxes: those of the book, some of each.</summary>
public sealed class LabelsModel(PatternCards book) : PageModel
{
    public const int MostEach = 24;

    public ImmutableArray<CardView> Cards { get; private set; } = [];

    public int Each { get; private set; } = 1;

    public void OnGet(int each = 1) => (Cards, Each) = (book.All(), Math.Clamp(each, 1, MostEach));
}
