using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Towing;
using TyingClass.Balance.Tying;

namespace TyingClass.Balance.Reports;

/// <summary>Single lines of the full report, the very same figures, without the rest of the work.</summary>
public static class PartialReports
{
    /// <summary><see cref="StateReport.AtFishingSpeed"/> of one state.</summary>
    public static TowReport Tow(FlyBody body, FishingConditions conditions, WetState state, ReportOptions? options = null) =>
        Towed(body, conditions, SoakS(state, options)).Report;

    /// <summary><see cref="StateReport.Sink"/> of one state, without the other ways it could sink, which take most of the time.</summary>
    public static SinkReport? Sink(FlyBody body, FishingConditions conditions, WetState state, ReportOptions? options = null)
    {
        double soakS = SoakS(state, options);
        return StateCalculation.Sink(body, conditions, soakS, Towed(body, conditions, soakS), withWays: false);
    }

    /// <summary><see cref="StateReport.Tolerance"/> of one state.</summary>
    public static ToleranceReport Tolerance(FlyBody body, FishingConditions conditions, WetState state, ReportOptions? options = null)
    {
        options ??= ReportOptions.Default;
        double soakS = SoakS(state, options);
        Towed towed = Towed(body, conditions, soakS);
        return StateCalculation.Tolerance(body, conditions, soakS, options, towed, ThousandFlies.Deviates(body, options.Flies, options.Seed));
    }

    /// <summary><see cref="StateReport.Verdict"/> of one state.</summary>
    public static VerdictKind Verdict(FlyBody body, FishingConditions conditions, WetState state, ReportOptions? options = null) =>
        StateCalculation.Verdict(body, conditions, SoakS(state, options), options ?? ReportOptions.Default);

    /// <summary>The share of <see cref="ToleranceReport.AsIntended"/>, asked again and again with other errors.</summary>
    internal static Func<double[], double> AsIntended(FlyBody body, FishingConditions conditions, WetState state, ReportOptions options)
    {
        double soakS = SoakS(state, options);
        Towed towed = Towed(body, conditions, soakS);
        return deviates => StateCalculation.Tolerance(body, conditions, soakS, options, towed, deviates).AsIntended;
    }

    /// <summary><see cref="StateReport.Ledger"/> of one state.</summary>
    public static ImmutableArray<LedgerEntry> Ledger(FlyBody body, FishingConditions conditions, WetState state, ReportOptions? options = null)
    {
        double soakS = SoakS(state, options);
        return StateCalculation.Ledger(body, conditions, soakS, TowedFly.From(body, conditions, soakS), Towed(body, conditions, soakS));
    }

    /// <summary><see cref="StateReport.Roll"/> of one state.</summary>
    public static RollCurve Roll(FlyBody body, FishingConditions conditions, WetState state, ReportOptions? options = null)
    {
        double soakS = SoakS(state, options);
        return StateCalculation.Roll(TowedFly.From(body, conditions, soakS), Towed(body, conditions, soakS), conditions.SpeedMS);
    }

    private static double SoakS(WetState state, ReportOptions? options) =>
        StateCalculation.SoakS(state, options ?? ReportOptions.Default);

    private static Towed Towed(FlyBody body, FishingConditions conditions, double soakS)
    {
        ArgumentNullException.ThrowIfNull(body);
        return TowCalculation.AtSpeed(TowedFly.From(body, conditions, soakS), body.Intent, conditions.SpeedMS, null);
    }
}
