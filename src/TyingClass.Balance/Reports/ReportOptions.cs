using System.Collections.Immutable;

namespace TyingClass.Balance.Reports;

/// <summary>What to work out and how finely.</summary>
public sealed record ReportOptions
{
    public static ReportOptions Default { get; } = new();

    /// <summary>How a fly lies at its own speed and nothing more: no curves, and no sample of flies that a verdict could be told from.</summary>
    public static ReportOptions AttitudeOnly { get; } = new() { SpeedsMS = [], Flies = 1, SoakTimesS = [] };

    /// <summary>The range a fisher uses, m/s, slowest first.</summary>
    public ImmutableArray<double> SpeedsMS { get; init; } = [0.1, 0.2, 0.3, 0.4, 0.6, 0.8, 1.1, 1.5];

    public TyingAccuracy Accuracy { get; init; } = TyingAccuracy.Practiced;

    /// <summary>Flies in the tolerance sample, 1 or more.</summary>
    public int Flies { get; init; } = 1000;

    /// <summary>Seed of the tolerance sample: the same seed, the same flies.</summary>
    public int Seed { get; init; } = 20260101;

    /// <summary>Seconds under water at which the soak curve is worked out, shortest first; none for no curve.</summary>
    public ImmutableArray<double> SoakTimesS { get; init; } = [0, 5, 10, 20, 30, 45, 60, 90, 120, 180, 240, 300];

    /// <summary>A state between fresh and soaked to report too, seconds in the water; null for none.</summary>
    public double? PartlySoakedS { get; init; }
}
