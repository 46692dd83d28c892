using System.Collections.Immutable;
using Microsoft.AspNetCore.Html;
using TyingClass.Drawing;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling;
using TyingClass.Telling.Sentences;

namespace TyingClass.Web.Bench;

/// <summary>The fly stripped and let fall, as the bench shows it.</summary>
/// <param name="Round">What the hand does: "Strip 30 cm in 0.5 s, pause 1.5 s".</param>
/// <param name="Assumed">Keys the recipe leaves open; empty for none.</param>
public sealed record BenchRetrieve(string Round, ImmutableArray<string> Sentences, IHtmlContent Film, IHtmlContent Traces, string Assumed)
{
    public static BenchRetrieve Of(SolvedFly fly, string prefix, UnitSystem units)
    {
        DrawingOptions options = new() { IdPrefix = prefix, Units = units, WidthPx = 720 };
        return new BenchRetrieve(
            Grammar.Capital(RetrieveWords.Round(fly.Retrieve.Plan, units)),
            [.. RetrieveSentence.Of(fly.Retrieve, units)],
            BenchResult.Html(FlyDrawing.Film(fly, options)),
            BenchResult.Html(Curves.Retrieve(fly, options with { IdPrefix = prefix + "-traces" })),
            Grammar.And(RetrieveBuilder.Assumed(fly.Recipe.Fishing.Retrieve)));
    }

    /// <summary>What the model's guesses leave open; null for nothing. It takes longer than all the rest of the bench.</summary>
    public static string? Doubt(SolvedFly fly, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(fly);
        return fly.Retrieve.HasFigures ? RetrieveSentence.Doubt(fly.RetrieveDoubt, units) : null;
    }

    /// <summary>Two versions at one scale.</summary>
    public static (BenchRetrieve Kept, BenchRetrieve Now) Abreast(SolvedFly kept, SolvedFly now, UnitSystem units)
    {
        (string first, string second) = FlyDrawing.Films(kept, now, new DrawingOptions { IdPrefix = "kept-film", Units = units, WidthPx = 520 });
        return (
            Of(kept, "kept-retrieve", units) with { Film = BenchResult.Html(first) },
            Of(now, "now-retrieve", units) with { Film = BenchResult.Html(second) });
    }
}
