using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Towing;

namespace TyingClass.Balance.Reports;

/// <summary>Everything the engine says of one fly. Units stand in the names; places are in the hook frame, mm.</summary>
public sealed record BalanceReport
{
    public required Intent Intent { get; init; }

    /// <summary>Dry, in air, g.</summary>
    public required double MassG { get; init; }

    /// <summary>Water the soaked dressing carries when cast, g.</summary>
    public required double HeldWaterG { get; init; }

    /// <summary>Solid volume, soaked, mm³.</summary>
    public required double DisplacedMm3 { get; init; }

    /// <summary>M - ρV soaked, g; negative when the fly floats.</summary>
    public required double WetWeightG { get; init; }

    public required Vector3D MassCenterMm { get; init; }

    /// <summary>Soaked.</summary>
    public required Vector3D CenterOfBuoyancyMm { get; init; }

    /// <summary>Soaked; null when |M - ρV| is under 5 % of M and the point runs away.</summary>
    public required Vector3D? BalancePointMm { get; init; }

    public required Vector3D TowPointMm { get; init; }

    /// <summary>Soaked; null where the balance point is.</summary>
    public required LevelLineKeel? LevelLineKeelMm { get; init; }

    public required HangReport Hang { get; init; }

    public required CastingReport Casting { get; init; }

    /// <summary>Fresh first, then soaked.</summary>
    public required ImmutableArray<StateReport> States { get; init; }

    public required Verdict Verdict { get; init; }

    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>The fly at the recipe's own speed after each soak, shortest first.</summary>
    public required ImmutableArray<SoakPoint> Soak { get; init; }

    /// <summary>After <see cref="ReportOptions.PartlySoakedS"/>; null when that was not asked for.</summary>
    public StateReport? PartlySoaked { get; init; }

    public StateReport Fresh => States[0];

    public StateReport Soaked => States[1];
}

/// <summary>
/// The trade's rule of thumb, mm: how far the weight lies on the keel side of a line through the eye parallel to the shank. Positive is below the pull.
/// </summary>
public readonly record struct LevelLineKeel(double PointDown, double PointUp)
{
    public double For(Intent intent) => intent == Intent.PointDown ? PointDown : PointUp;
}

/// <summary>Hung dry in air from the eye.</summary>
/// <param name="ShankFromPlumbDeg">Angle between the shank and the plumb line: 0 hangs straight down by the eye.</param>
public readonly record struct HangReport(double ShankFromPlumbDeg);

public enum WetState
{
    /// <summary>Fresh from the cast, all its air still in it.</summary>
    Fresh,

    /// <summary>Soaked through.</summary>
    Soaked,

    /// <summary>After so many seconds in the water.</summary>
    Partly,
}

/// <summary>The fly after some time under water.</summary>
/// <param name="SoakS">s.</param>
/// <param name="MassG">In air, with the water it has taken up, g.</param>
/// <param name="WetWeightG">M - ρV, g; negative while it floats.</param>
/// <param name="KeelHeightMm">Of the intent; null where undefined.</param>
/// <param name="PitchDeg">Towed, positive nose up.</param>
/// <param name="LeanDeg">Towed, 0 as intended.</param>
/// <param name="SinkRateMS">Positive down; null when it hangs still or finds no attitude to sink in.</param>
/// <param name="Verdict">By the attitude it settles in; the thousand flies are not asked again at every soak.</param>
public readonly record struct SoakPoint(
    double SoakS, double MassG, double WetWeightG, double? KeelHeightMm, double PitchDeg, double LeanDeg, double? SinkRateMS, VerdictKind Verdict);

/// <summary>One state of the dressing.</summary>
public sealed record StateReport
{
    public required WetState State { get; init; }

    /// <summary>Seconds under water: 0 fresh from the cast, null soaked through.</summary>
    public required double? SoakS { get; init; }

    /// <summary>M - ρV, g.</summary>
    public required double WetWeightG { get; init; }

    public required double DisplacedMm3 { get; init; }

    public required Vector3D CenterOfBuoyancyMm { get; init; }

    public required Vector3D? BalancePointMm { get; init; }

    public required LevelLineKeel? LevelLineKeelMm { get; init; }

    /// <summary>Towed at each speed of the range, slowest first; see <see cref="AtFishingSpeed"/> for the recipe's own.</summary>
    public required ImmutableArray<TowReport> Tow { get; init; }

    /// <summary>Towed at the recipe's own speed.</summary>
    public required TowReport AtFishingSpeed { get; init; }

    /// <summary>Pitch at the recipe's own speed if the leader were tied with a loop, degrees; null when it is.</summary>
    public required double? PitchOnALoopDeg { get; init; }

    /// <summary>Every stable attitude found at the recipe's own speed, the commonest first.</summary>
    public required ImmutableArray<StableAttitude> Attitudes { get; init; }

    /// <summary>Restoring moment against heel about the flow, pitch and yaw settled, from the intended attitude.</summary>
    public required RollCurve Roll { get; init; }

    /// <summary>Null when it hangs still in the water, or never settles.</summary>
    public required SinkReport? Sink { get; init; }

    /// <summary>Each part's share of the keel moment (keel height × wet weight) of the intended attitude, g·mm; sums to the total.</summary>
    public required ImmutableArray<LedgerEntry> Ledger { get; init; }

    /// <summary>
    /// Each part's share of the moment that heels it over when held upright, g·mm, positive to the left as it swims; the strongest first, none of a fly alike
    /// on both sides.
    /// </summary>
    public ImmutableArray<HeelingEntry> Heeling { get; init; } = [];

    public required ToleranceReport Tolerance { get; init; }

    public required Verdict Verdict { get; init; }
}

/// <summary>The fly towed at one speed.</summary>
public sealed record TowReport
{
    public required double SpeedMS { get; init; }

    /// <summary>False when the fly never comes to rest at this speed: it spins, and pitch and lean are only where it was last.</summary>
    public required bool Settles { get; init; }

    /// <summary>Positive nose up. Of the attitude it settles in from the intended one.</summary>
    public required double PitchDeg { get; init; }

    /// <summary>0 rides exactly as intended, 180 flipped.</summary>
    public required double LeanDeg { get; init; }

    /// <summary>Pitch of the symmetric attitude of the intent, stable or not.</summary>
    public required double SymmetricPitchDeg { get; init; }

    public required KeelHeight KeelHeightMm { get; init; }

    /// <summary>Along the flow, mN.</summary>
    public required double DragMN { get; init; }

    /// <summary>Positive up, mN; negative planes down.</summary>
    public required double LiftMN { get; init; }

    /// <summary>The line leaves the eye this far above the horizontal.</summary>
    public required double LineAngleDeg { get; init; }

    public required VerdictKind Verdict { get; init; }
}

/// <summary>Keel height of each intent, mm; null when undefined (hangs steeper than 60°, or no such attitude).</summary>
public readonly record struct KeelHeight(double? PointDown, double? PointUp)
{
    public double? For(Intent intent) => intent == Intent.PointDown ? PointDown : PointUp;
}

/// <param name="Share">Share of the releases that end here, 0 to 1.</param>
public readonly record struct StableAttitude(double PitchDeg, double LeanDeg, double Share);

/// <summary>Slack line, still water.</summary>
/// <param name="RateMS">Steady rate before the leader counts, m/s, positive down; negative rises.</param>
/// <param name="PitchDeg">Positive nose up.</param>
/// <param name="LeanDeg">0 as intended.</param>
/// <param name="DepthAfter5sM">From rest, the leader drawn down behind it, m.</param>
/// <param name="Depth">Depth against time, so too.</param>
public sealed record SinkReport(
    double RateMS, double PitchDeg, double LeanDeg, double DepthAfter5sM, ImmutableArray<DepthPoint> Depth)
{
    /// <summary>Mean rate over the first meter from rest, the leader drawn down behind it, m/s; null when it never gets there, or rises.</summary>
    public double? FirstMeterMS { get; init; }

    /// <summary>Every stable way to sink, the commonest first; the figures above are of the one that follows from the way it was fished.</summary>
    public ImmutableArray<SinkWay> Ways { get; init; } = [];

    /// <summary>Depth after a pause, m, between the reported points.</summary>
    /// <param name="pauseS">0 to the last reported time.</param>
    public double DepthAfterM(double pauseS)
    {
        Require.InRange(pauseS, 0, Depth[^1].TimeS, nameof(pauseS));
        int i = 1;
        while (Depth[i].TimeS < pauseS)
        {
            i++;
        }

        double share = (pauseS - Depth[i - 1].TimeS) / (Depth[i].TimeS - Depth[i - 1].TimeS);
        return Depth[i - 1].DepthM + share * (Depth[i].DepthM - Depth[i - 1].DepthM);
    }
}

public readonly record struct DepthPoint(double TimeS, double DepthM);

/// <summary>One stable way to sink.</summary>
/// <param name="Share">Share of the releases that end in it, 0 to 1.</param>
public readonly record struct SinkWay(double RateMS, double PitchDeg, double LeanDeg, double Share);

/// <param name="Part">As the recipe names it; "knot" for a cinched leader.</param>
/// <param name="KeelMomentGmm">Positive helps the intended attitude.</param>
public readonly record struct LedgerEntry(string Part, double KeelMomentGmm);

/// <param name="HeelingGmm">Positive to the left, as someone sees it who looks the way the fly swims.</param>
public readonly record struct HeelingEntry(string Part, double HeelingGmm);

/// <param name="Points">Heel from 0° to 180°, to <paramref name="Side"/>.</param>
/// <param name="RangeDeg">Heel up to which the moment still restores, to the side where that is less; 0 when it never does.</param>
/// <param name="Side">That side, as someone sees it who looks the way the fly swims.</param>
public sealed record RollCurve(ImmutableArray<RollPoint> Points, double RangeDeg, HeelSide Side = HeelSide.Either);

/// <param name="RestoringGmm">Positive turns the fly back, g·mm.</param>
public readonly record struct RollPoint(double HeelDeg, double RestoringGmm);

/// <summary>How steadily the fly is tied.</summary>
public enum TyingAccuracy { FirstSeason, Practiced, Production }

/// <summary>What a thousand flies tied alike would do.</summary>
/// <param name="AsIntended">Share within 30° of lean, 0 to 1, with its 95 % Wilson interval.</param>
/// <param name="Leaning">Share leaning 30° to 120°.</param>
/// <param name="Flipped">Share leaning over 120°.</param>
/// <param name="LeanHistogram">Flies in each 10° of lean, 18 bins.</param>
public sealed record ToleranceReport(
    TyingAccuracy Accuracy, int Flies, double AsIntended, double AsIntendedLow, double AsIntendedHigh,
    double Leaning, double Flipped, ImmutableArray<int> LeanHistogram)
{
    private const int BinsTheRightWayUp = 6;

    /// <summary>Flies that lean less than 60°: the right way up, if not level.</summary>
    public int FliesTheRightWayUp => LeanHistogram.Take(BinsTheRightWayUp).Sum();

    /// <summary>Their share, 0 to 1.</summary>
    public double TheRightWayUp => FliesTheRightWayUp / (double)Flies;
}

public enum VerdictKind
{
    RidesAsIntended,
    Leans,
    RidesOnItsSide,
    Flips,
    Undecided,
    Hangs,
    Floats,

    /// <summary>The right way up, but not level: too few flies tied like it ride within 30° of the intended attitude, yet hardly one leans over 60°.</summary>
    Tilts,
}

/// <summary>What it would do, with the state and the circumstances it was found in. The figures stand in the state's report; its ledger is the cause.</summary>
public sealed record Verdict(VerdictKind Kind, WetState State, double SpeedMS, Knot Knot);
