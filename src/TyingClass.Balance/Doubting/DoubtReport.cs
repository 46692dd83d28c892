using System.Collections.Immutable;
using TyingClass.Balance.Reports;

namespace TyingClass.Balance.Doubting;

/// <summary>
/// What the model's own guesses leave open: the soaked fly at its own speed, tied perfectly, worked out anew for each draw of every estimate. How steadily a
/// person ties has no part in it.
/// </summary>
public sealed record DoubtReport
{
    /// <summary>Draws that could be worked out.</summary>
    public required int Draws { get; init; }

    /// <summary>Of the intent; null when fewer than nine draws in ten have one.</summary>
    public required Interval? KeelHeightMm { get; init; }

    /// <summary>Where it settles, positive nose up.</summary>
    public required Interval PitchDeg { get; init; }

    /// <summary>Positive down; null when fewer than nine draws in ten have one.</summary>
    public required Interval? SinkRateMS { get; init; }

    /// <summary>Share of the draws that lie as the fly of the table does, 0 to 1.</summary>
    public required double SameVerdict { get; init; }

    /// <summary>
    /// Share of the draws' variance of keel height (of pitch where there is none) that goes with each estimate, the squared correlation, the largest first.
    /// </summary>
    public required ImmutableArray<EstimateShare> Shares { get; init; }

    /// <summary>The estimate that matters most; null when none carries a tenth of the variance.</summary>
    public string? MostlyBy => Shares.IsEmpty || Shares[0].Share < DoubtRules.ShareWorthNaming ? null : Shares[0].Estimate;

    /// <summary>Nine in ten draws lie alike.</summary>
    public bool IsSure => SameVerdict >= DoubtRules.Sure;
}

/// <summary>From the 5 % to the 95 % quantile of the draws: nine draws in ten lie within.</summary>
public readonly record struct Interval(double Low, double High);

/// <param name="Share">0 to 1.</param>
public readonly record struct EstimateShare(string Estimate, double Share);

/// <summary>One draw's fly at its own speed.</summary>
/// <param name="KeelHeightMm">Of the intent; null where undefined.</param>
/// <param name="SinkRateMS">Null when it, or the fly of the table, finds no stable way to sink.</param>
/// <param name="Verdict">By attitude alone.</param>
public readonly record struct DrawnFly(double? KeelHeightMm, double PitchDeg, double? SinkRateMS, VerdictKind Verdict);

/// <summary>Where doubt begins to be told.</summary>
public static class DoubtRules
{
    /// <summary>Share of draws that must agree.</summary>
    public const double Sure = 0.9;

    /// <summary>Share of the variance from which an estimate is named.</summary>
    public const double ShareWorthNaming = 0.1;
}
