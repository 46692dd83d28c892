using System.Collections.Immutable;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Web.Editing;
using TyingClass.Web.Patterns;

namespace TyingClass.Web.Pages.PatternBook;

/// <summary>The pattern book to be printed on both sides, folded once and stapled: two pages beside each other on a sheet, in the order of folding.</summary>
public sealed class BookletModel(PatternCards book, FlySheets sheets) : PageModel
{
    public ImmutableArray<PrintCard> Cards { get; private set; } = [];

    public string Class { get; private set; } = "";

    /// <summary>Each side of a sheet: the numbers of its left and right page, from 1.</summary>
    public ImmutableArray<(int Left, int Right)> Sides { get; private set; } = [];

    /// <summary>The cover and the list of flies come first.</summary>
    public const int FirstCard = 3;

    public void OnGet()
    {
        (Cards, Class) = ([.. book.All().Select(sheets.Print)], book.Class?.Name ?? "");
        Sides = BookletOrder.Of(Cards.IsEmpty ? 0 : Cards.Length + FirstCard - 1);
    }
}
