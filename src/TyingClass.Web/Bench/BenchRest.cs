using System.Collections.Immutable;
using Microsoft.AspNetCore.Html;
using TyingClass.Balance.Reports;
using TyingClass.Drawing;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;

namespace TyingClass.Web.Bench;

/// <summary>A curve with the words below it.</summary>
public sealed record BenchCurve(string Title, IHtmlContent Picture);

/// <summary>What is looked at once the fly is left alone: the other views, the curves, figures and cautions.</summary>
public sealed record BenchRest(
    IHtmlContent Front, IHtmlContent Hang, IHtmlContent Tip, ImmutableArray<BenchCurve> Curves, ImmutableArray<FigureRow> Figures,
    ImmutableArray<Caution> Cautions)
{
    /// <summary>How far to trust it, soaked.</summary>
    public required string Doubt { get; init; }

    public required string? Mostly { get; init; }

    public required BenchRetrieve Retrieve { get; init; }

    public static BenchRest Of(SolvedFly fly, StateReport state, double tipDeg, UnitSystem units)
    {
        DrawingOptions Named(string prefix) => BenchResult.Options(prefix, state, units);
        BenchCurve Curve(string title, string prefix, Func<SolvedFly, DrawingOptions, string> draw) =>
            new(title, BenchResult.Html(draw(fly, Named(prefix) with { ShowDoubt = true })));
        BenchCurve Soak(string title, SoakFigure figure) =>
            Curve(title, $"soak-{figure}".ToLowerInvariant(), (f, o) => Drawing.Curves.AgainstSoak(f, figure, o));
        return new BenchRest(
            BenchResult.Html(FlyDrawing.Front(fly, Named("front"))),
            BenchResult.Html(FlyDrawing.Hang(fly, Named("hang"))),
            BenchResult.Html(FlyDrawing.Tip(fly, Tipping.From(state.Roll, tipDeg), Named("tip"))),
            [
                Curve("Pitch against speed", "pitch", Drawing.Curves.PitchAgainstSpeed),
                Curve("Keel height against speed", "keel", Drawing.Curves.KeelHeightAgainstSpeed),
                Curve("Righting curve", "righting", Drawing.Curves.Righting),
                Curve("Depth in a pause", "depth", Drawing.Curves.DepthInPause),
                Curve("A thousand flies tied like it", "lean", Drawing.Curves.LeanHistogram),
                // A fly without air is the same at all times.
                .. Soaks(fly.Report) ? [Soak("Keel height as it soaks", SoakFigure.KeelHeight), Soak("Sink rate as it soaks", SoakFigure.SinkRate)]
                    : (ImmutableArray<BenchCurve>)[],
            ],
            state.State == WetState.Soaked ? BenchFigures.WithDoubt(fly, units) : BenchFigures.Of(fly.Report, state, units),
            TyingClass.Recipes.Catalogue.Cautions.For(fly.Recipe, fly.Built.Body))
        {
            Doubt = DoubtSentence.Of(fly.Doubt),
            Mostly = DoubtSentence.Mostly(fly.Doubt),
            Retrieve = BenchRetrieve.Of(fly, "bench-retrieve", units),
        };
    }

    private static bool Soaks(BalanceReport report) => report.Soak is [var first, .., var last] && first.WetWeightG != last.WetWeightG;
}
