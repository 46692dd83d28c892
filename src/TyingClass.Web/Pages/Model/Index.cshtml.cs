using System.Collections.Immutable;
using System.Globalization;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tying;
using TyingClass.Lessons.Reference;
using TyingClass.Recipes.Catalogue;
using TyingClass.Web.Hosting;

namespace TyingClass.Web.Pages.Model;

/// <summary>What is computed and how, what is left out, and every estimate in it.</summary>
public sealed class IndexModel(FormulaShelf shelf) : PageModel
{
    public ImmutableArray<FormulaPage> Formulas { get; } = shelf.Pages;

    public IEnumerable<IGrouping<string, CatalogueFigure>> Scales { get; } = CatalogueFigures.All.GroupBy(f => f.Group);

    public ImmutableArray<Material> Solids { get; } = [.. Materials.All.Where(m => m.LinearDensity.Value == 0)];

    public ImmutableArray<Material> Dressings { get; } = [.. Materials.All.Where(m => m.LinearDensity.Value > 0)];

    public ImmutableArray<(string Name, TyingSpread Spread)> Hands { get; } =
    [
        ("first season", TyingSpread.Of(TyingAccuracy.FirstSeason)),
        ("practiced", TyingSpread.Of(TyingAccuracy.Practiced)),
        ("production", TyingSpread.Of(TyingAccuracy.Production)),
    ];

    /// <summary>"0.28 to 0.42"; nothing for what is not guessed.</summary>
    public string Range(Figure figure) => figure.Name is null ? "" : $"{Number(figure.Low)} to {Number(figure.High)}";

    /// <summary>"0.5 (0.35 to 0.65)".</summary>
    public string WithRange(Figure figure) => figure.Name is null ? Number(figure.Value) : $"{Number(figure.Value)} ({Range(figure)})";

    /// <summary>A number as written: no needless zeros, no exponent.</summary>
    public string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);
}
