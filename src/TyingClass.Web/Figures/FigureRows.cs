using TyingClass.Recipes.Text;
using TyingClass.Storage.Attempts;
using TyingClass.Telling.Figures;

namespace TyingClass.Web.Figures;

/// <summary>An attempt's kept figures as rows of a table, in the reader's units.</summary>
public static class FigureRows
{
    /// <summary>Figures without a wording are left out: an older attempt may hold some.</summary>
    public static IEnumerable<(string Label, string Value)> Of(IEnumerable<KeptFigure> figures, UnitSystem units) =>
        figures.Select(f => KeptFigures.Say(f.Name, f.Value, units)).OfType<(string, string)>();
}
