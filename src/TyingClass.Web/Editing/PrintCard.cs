using System.Collections.Immutable;
using Microsoft.AspNetCore.Html;
using TyingClass.Recipes.Catalogue;
using TyingClass.Web.Bench;

namespace TyingClass.Web.Editing;

/// <summary>One fly on one printed page: what Shared/_PrintCard shows.</summary>
/// <param name="Parts">The recipe in tying order.</param>
/// <param name="Picture">From the side; null when it cannot be drawn.</param>
/// <param name="Sentence">What it would do, in words; empty when it cannot be solved.</param>
public sealed record PrintCard(RecipeCard Parts, IHtmlContent? Picture, string Sentence, ImmutableArray<Bench.Figure> Figures, ImmutableArray<Caution> Cautions)
{
    /// <returns>Null when the layout of the text is broken.</returns>
    public static PrintCard? Of(string recipeText, BenchSolver solver, Recipes.Text.UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(solver);
        if (RecipeCard.Of(recipeText) is not { } parts) return null;
        if (solver.Solve(recipeText, 0).Fly is not { } fly) return new PrintCard(parts, null, "", [], []);
        Balance.Reports.StateReport soaked = fly.Report.Soaked;
        string svg = Drawing.FlyDrawing.Side(fly, new Drawing.DrawingOptions { IdPrefix = "card", Units = units, WidthPx = 640 });
        return new PrintCard(parts, new HtmlString(svg), Lessons.Grading.FlyInWords.Verdict(fly.Report.Intent, soaked, units), BenchFigures.Of(fly.Report, soaked, units), Recipes.Catalogue.Cautions.For(fly.Recipe));
    }
}
