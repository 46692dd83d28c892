using System.Collections.Immutable;
using Microsoft.AspNetCore.Html;
using TyingClass.Balance.Reports;
using TyingClass.Drawing;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;
using TyingClass.Telling.Sentences;

namespace TyingClass.Web.Bench;

/// <summary>A figure of the version kept and of the one on the bench.</summary>
public sealed record FigurePair(string Label, string Kept, string Now)
{
    public bool Differs => Kept != Now;
}

/// <summary>The version kept beside the one on the bench: what was changed, and what it did.</summary>
public sealed record Comparison(
    string KeptWords, string NowWords, ImmutableArray<RecipeChange> Changes, ImmutableArray<FigurePair> Figures)
{
    /// <summary>Towed, at one scale.</summary>
    public required (IHtmlContent Kept, IHtmlContent Now) Towed { get; init; }

    /// <summary>On a slack line, at one scale: there another knot or other water tells. Null where one of them finds no way to fall.</summary>
    public required (IHtmlContent Kept, IHtmlContent Now)? Falling { get; init; }

    public required (BenchRetrieve Kept, BenchRetrieve Now) Retrieves { get; init; }

    /// <summary>One fly, stripped in two ways: towed and on a slack line there is nothing to compare.</summary>
    public bool OnlyTheRetrieveDiffers => !Changes.IsEmpty && Changes.All(c => RetrieveBuilder.IsOfRetrieve(c.Path));

    public static Comparison Of(SolvedFly kept, SolvedFly now, bool soaked, UnitSystem units)
    {
        StateReport State(SolvedFly fly) => soaked ? fly.Report.Soaked : fly.Report.PartlySoaked ?? fly.Report.Fresh;
        (IHtmlContent, IHtmlContent) Draw(FlyView view, string prefix)
        {
            (SolvedFly, DrawingOptions) Looked(SolvedFly fly) =>
                (fly, new DrawingOptions { IdPrefix = prefix, Units = units, State = State(fly).State, WidthPx = 520 });
            (string first, string second) = FlyDrawing.Pair(view, Looked(kept), Looked(now));
            return (BenchResult.Html(first), BenchResult.Html(second));
        }

        ImmutableArray<FigureRow> was = [.. BenchFigures.Of(kept.Report, State(kept), units), .. BenchFigures.Retrieved(kept, units)],
            isNow = [.. BenchFigures.Of(now.Report, State(now), units), .. BenchFigures.Retrieved(now, units)];
        return new Comparison(
            VerdictSentence.Of(kept.Report.Intent, State(kept), units), VerdictSentence.Of(now.Report.Intent, State(now), units),
            ChangeList.Between(kept.Recipe, now.Recipe),
            [.. was.Zip(isNow, (a, b) => new FigurePair(a.Label, a.Value, b.Value))])
        {
            Towed = Draw(FlyView.Towed, "both-towed"),
            Falling = State(kept).Sink is not null && State(now).Sink is not null ? Draw(FlyView.Falling, "both-falling") : null,
            Retrieves = BenchRetrieve.Abreast(kept, now, units),
        };
    }
}
