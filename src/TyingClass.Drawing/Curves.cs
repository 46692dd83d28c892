using TyingClass.Balance.Reports;
using TyingClass.Drawing.Plots;

namespace TyingClass.Drawing;

/// <summary>The curves of a report as SVG. Each carries a title and a description that say in words what it shows.</summary>
public static class Curves
{
    /// <summary>Pitch of the attitude the fly settles in, fresh and soaked, at every solved speed.</summary>
    /// <param name="name">The recipe's name, for the title; any text is safe.</param>
    public static string PitchAgainstSpeed(string name, BalanceReport report, DrawingOptions options) =>
        PitchPlot.Draw(name, report, options);

    /// <summary>Keel height of the intended way up, fresh and soaked; speeds where it means nothing are left out.</summary>
    public static string KeelHeightAgainstSpeed(string name, BalanceReport report, DrawingOptions options) =>
        KeelPlot.Draw(name, report, options);

    /// <summary>Restoring moment against heel, its range marked, in the state the options ask for.</summary>
    public static string Righting(string name, BalanceReport report, DrawingOptions options) =>
        RightingPlot.Draw(name, report, options);

    /// <summary>Depth reached on a slack line, fresh and soaked.</summary>
    public static string DepthInPause(string name, BalanceReport report, DrawingOptions options) =>
        DepthPlot.Draw(name, report, options);

    /// <summary>Lean of the sampled flies, in the state the options ask for.</summary>
    public static string LeanHistogram(string name, BalanceReport report, DrawingOptions options) =>
        LeanPlot.Draw(name, report, options);

    /// <summary>Each part's share of the keel moment as a signed bar, in the state the options ask for.</summary>
    public static string Ledger(string name, BalanceReport report, DrawingOptions options) =>
        LedgerPlot.Draw(name, report, options);
}
