using System.Collections.Immutable;
using Microsoft.AspNetCore.Html;
using TyingClass.Balance.Reports;
using TyingClass.Drawing;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;

namespace TyingClass.Web.Bench;

/// <summary>A figure of the version kept and of the one on the bench.</summary>
public sealed record FigurePair(string Label, string Kept, string Now)
{
    public bool Differs => Kept != Now;
}

/// <summary>The version kept beside the one on the bench: what was changed, and what it did.</summary>
public sealed record Comparison(
    string KeptWords, string NowWords, ImmutableArray<RecipeChange> Changes, ImmutableArray<FigurePair> Figures, IHtmlContent KeptPicture,
    IHtmlContent NowPicture)
{
    public required (BenchRetrieve Kept, BenchRetrieve Now) Retrieves { get; init; }

    public static Comparison Of(SolvedFly kept, SolvedFly now, bool soaked, UnitSystem units)
    {
        StateReport State(SolvedFly fly) => soaked ? fly.Report.Soaked : fly.Report.PartlySoaked ?? fly.Report.Fresh;
        IHtmlContent Draw(SolvedFly fly, string prefix) =>
            BenchResult.Html(FlyDrawing.Side(fly, new DrawingOptions { IdPrefix = prefix, Units = units, State = State(fly).State, WidthPx = 520 }));
        ImmutableArray<FigureRow> was = BenchFigures.Of(kept.Report, State(kept), units), isNow = BenchFigures.Of(now.Report, State(now), units);
        return new Comparison(
            VerdictSentence.Of(kept.Report.Intent, State(kept), units), VerdictSentence.Of(now.Report.Intent, State(now), units),
            ChangeList.Between(kept.Recipe, now.Recipe),
            [.. was.Zip(isNow, (a, b) => new FigurePair(a.Label, a.Value, b.Value))],
            Draw(kept, "kept-side"), Draw(now, "now-side"))
        {
            Retrieves = BenchRetrieve.Abreast(kept, now, units),
        };
    }
}
