using TyingClass.Balance.Doubting;
using TyingClass.Drawing.Plots;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing;

/// <summary>What a soak curve shows.</summary>
public enum SoakFigure
{
    /// <summary>Of the intended way up.</summary>
    KeelHeight,

    SinkRate,

    /// <summary>In air, with the water taken up: what has to be cast.</summary>
    Mass,
}

/// <summary>The curves of a report as SVG. Each carries a title and a description that say in words what it shows.</summary>
public static class Curves
{
    /// <summary>Pitch of the attitude the fly settles in, fresh and soaked, at every solved speed.</summary>
    public static string PitchAgainstSpeed(SolvedFly fly, DrawingOptions options) =>
        PitchPlot.Draw(fly.Recipe.Name, fly.Report, Bands(fly, options), options);

    /// <summary>Keel height of the intended way up, fresh and soaked; speeds where it means nothing are left out.</summary>
    public static string KeelHeightAgainstSpeed(SolvedFly fly, DrawingOptions options) =>
        KeelPlot.Draw(fly.Recipe.Name, fly.Report, Bands(fly, options), options);

    /// <summary>Restoring moment against heel, its range marked, in the state the options ask for.</summary>
    public static string Righting(SolvedFly fly, DrawingOptions options) =>
        RightingPlot.Draw(fly.Recipe.Name, fly.Report, options);

    /// <summary>Depth reached on a slack line, fresh and soaked.</summary>
    public static string DepthInPause(SolvedFly fly, DrawingOptions options) =>
        DepthPlot.Draw(fly.Recipe.Name, fly.Report, Bands(fly, options), options);

    /// <summary>Depth and nose over the whole retrieve on one axis of time, the strips marked.</summary>
    public static string Retrieve(SolvedFly fly, DrawingOptions options)
    {
        ArgumentNullException.ThrowIfNull(fly);
        return RetrievePlot.Draw(fly.Recipe.Name, fly.Retrieve, options);
    }

    /// <summary>Depth over the last round of the retrieve, large enough to read figures off.</summary>
    public static string LastRound(SolvedFly fly, DrawingOptions options)
    {
        ArgumentNullException.ThrowIfNull(fly);
        return LastRoundPlot.Draw(fly.Recipe.Name, fly.Retrieve, options);
    }

    /// <summary>Keel height, sink rate or mass against the time under water, at the recipe's own speed.</summary>
    public static string AgainstSoak(SolvedFly fly, SoakFigure figure, DrawingOptions options) =>
        SoakPlot.Draw(fly.Recipe.Name, fly.Report, figure, options);

    /// <summary>Lean of the sampled flies, in the state the options ask for.</summary>
    public static string LeanHistogram(SolvedFly fly, DrawingOptions options) =>
        LeanPlot.Draw(fly.Recipe.Name, fly.Report, options);

    /// <summary>Each part's share of the keel moment as a signed bar, in the state the options ask for.</summary>
    public static string Ledger(SolvedFly fly, DrawingOptions options) =>
        LedgerPlot.Draw(fly, options);

    /// <summary>Sink rates timed in a tub against those computed, one mark a fly.</summary>
    public static string SinkTimedAgainstComputed(string title, IReadOnlyList<TimedSink> flies, DrawingOptions options) =>
        AgreementPlot.Draw(title, flies, options);

    /// <summary>A figure and how far the model's own guesses leave it open, as a thin bar for the row of a table. Its words stand beside it.</summary>
    public static string DoubtBar(SaidRange range, double si, UnitSystem units) => DoubtMark.Draw(range, si, units);

    private static DoubtBands? Bands(SolvedFly fly, DrawingOptions options) => options.ShowDoubt ? fly.DoubtBands : null;
}
