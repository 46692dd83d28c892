using System.Collections.Immutable;
using System.Globalization;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tying;
using TyingClass.Lessons.Reference;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;
using TyingClass.Web.Hosting;
using TyingClass.Web.Preferences;

namespace TyingClass.Web.Pages.Model;

/// <summary>What is computed and how, what is left out, and every estimate in it.</summary>
public sealed class IndexModel(FormulaShelf shelf, ReaderUnits units) : PageModel
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

    /// <summary>"0.28 to 0.42", with its unit for a reader of another; nothing for what is not guessed.</summary>
    public string Range(Figure figure)
    {
        if (figure.Name is null) return "";
        string range = $"{Number(figure.Low)} to {Number(figure.High)}", written = $"{range} {figure.Unit}";
        return WrittenFigures.Beside(written, units.Now) is var told && told != written ? told : range;
    }

    /// <summary>"0.18 mm", or "0.007 in (0.18 mm)".</summary>
    public string Value(Figure figure) =>
        figure.Unit == "1" ? Number(figure.Value) : WrittenFigures.Beside($"{Number(figure.Value)} {figure.Unit}", units.Now);

    /// <summary>A figure whose unit stands in the head of its column, or beside it for a reader of another.</summary>
    public string Cell(double value, string unit) =>
        units.Now == UnitSystem.Metric ? Number(value) : WrittenFigures.Beside($"{Number(value)} {unit}", units.Now);

    /// <summary>A figure of such a column with its range, in the reader's unit alone.</summary>
    public string InUnit(Figure figure) => figure.Name is null || units.Now == UnitSystem.Metric ? WithRange(figure)
        : WrittenFigures.Instead($"{Number(figure.Value)} {figure.Unit} ({Number(figure.Low)} to {Number(figure.High)} {figure.Unit})", units.Now);

    /// <summary>"0.5 (0.35 to 0.65)".</summary>
    public string WithRange(Figure figure) => figure.Name is null ? Number(figure.Value) : $"{Number(figure.Value)} ({Range(figure)})";

    /// <summary>A number as written: no needless zeros, no exponent.</summary>
    public string Number(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);
}
