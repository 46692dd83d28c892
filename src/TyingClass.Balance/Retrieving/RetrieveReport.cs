using System.Collections.Immutable;

namespace TyingClass.Balance.Retrieving;

/// <summary>The fly at one moment of a retrieve.</summary>
/// <param name="AlongM">Toward the rod from where it landed, m.</param>
/// <param name="DepthM">Of the eye, m.</param>
/// <param name="PitchDeg">Positive nose up.</param>
/// <param name="LeanDeg">0 as intended, 180 over.</param>
/// <param name="TensionMN">Pull of the leader at the eye, mN, the mean since the point before.</param>
/// <param name="LineDeg">Where the leader leaves the eye, seen from the side with the rod to the left: degrees above the horizontal.</param>
public readonly record struct RetrievePoint(
    double TimeS, double AlongM, double DepthM, double PitchDeg, double LeanDeg, double TensionMN, double LineDeg)
{
    // A twentieth of a gram's weight: no hand feels it, and no leader is straightened by it.
    private const double SlackMN = 0.5;

    public bool IsSlack => TensionMN < SlackMN;
}

/// <summary>One strip and what came of it before the next.</summary>
/// <param name="FromDepthM">Where it began, m.</param>
/// <param name="ShallowestM">Until the next one begins, m.</param>
/// <param name="DeepestM">Until the next one begins, from its end, m.</param>
/// <param name="SteepestDeg">Pitch in the pause after it where the nose points most steeply down; null without a pause.</param>
/// <param name="DownAfterS">Into the pause, until the nose points down; null when it does not.</param>
public readonly record struct StripOutcome(
    TimedStep Strip, double FromDepthM, double ShallowestM, double DeepestM, double? SteepestDeg, double? DownAfterS)
{
    public double HopM => Math.Max(0, FromDepthM - ShallowestM);
}

/// <summary>Why a retrieve has no figures, or not all.</summary>
public enum RetrieveLimit
{
    None,

    /// <summary>The line was in before all rounds were made.</summary>
    LineIsIn,

    /// <summary>No strip could be made at all.</summary>
    NothingToStrip,

    /// <summary>Over <see cref="RetrieveEngine.LongestS"/> long.</summary>
    TooLong,

    /// <summary>The motion could not be followed.</summary>
    NotFollowed,
}

/// <summary>What a fly does over a whole retrieve.</summary>
public sealed record RetrieveReport
{
    /// <summary>A nose at or under this pitch points down, degrees.</summary>
    public const double DownDeg = -20;

    public required RetrievePlan Plan { get; init; }

    public required RetrieveLimit Limit { get; init; }

    /// <summary>At equal times from landing to the end of the last round.</summary>
    public required ImmutableArray<RetrievePoint> Path { get; init; }

    public required ImmutableArray<TimedStep> Steps { get; init; }

    public required ImmutableArray<StripOutcome> Strips { get; init; }

    /// <summary>Depth when the first strip begins, m.</summary>
    public required double CountedDepthM { get; init; }

    /// <summary>Of the last round, m.</summary>
    public required double DeepestM { get; init; }

    /// <summary>Of the last round, m.</summary>
    public required double ShallowestM { get; init; }

    /// <summary>How far the highest strip of the last round lifts it, m.</summary>
    public required double HopM { get; init; }

    /// <summary>How much deeper the last round went than the one before, m; null with one round.</summary>
    public required double? DriftM { get; init; }

    /// <summary>The steepest pitch in the pauses of the last round, degrees, positive nose up; null without a pause.</summary>
    public required double? DivePitchDeg { get; init; }

    /// <summary>Shares of the time from the first strip on: within 30° of riding as intended, leaning to 120°, over.</summary>
    public required RideShares Ride { get; init; }

    /// <summary>How long a pause must be until the nose points down, s; null when <see cref="LongestPauseS"/> is not enough.</summary>
    public required double? SettleS { get; init; }

    /// <summary>Where it first touches the bottom; null when it does not, or there is none.</summary>
    public required RetrievePoint? TouchesBottom { get; init; }

    /// <summary>A pause tried for <see cref="SettleS"/>, s.</summary>
    public const double LongestPauseS = 10;

    public bool HasFigures => HasDepth && !Strips.IsEmpty;

    /// <summary>It was followed, strips or none.</summary>
    public bool HasDepth => Limit is RetrieveLimit.None or RetrieveLimit.LineIsIn;

    /// <summary>Deeper than a hand's breadth at no time.</summary>
    public bool StaysOnTop => Path.All(p => p.DepthM < 0.05);

    /// <summary>How many strips lift it to a depth or over it; null when none of those made does.</summary>
    public int? StripsUntilAt(double depthM)
    {
        for (int i = 0; i < Strips.Length; i++)
        {
            if (Strips[i].ShallowestM <= depthM) return i + 1;
        }

        return null;
    }
}

/// <param name="Upright">0 to 1, as are the others.</param>
public readonly record struct RideShares(double Upright, double Leaning, double Over);
