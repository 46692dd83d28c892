using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Towing;

namespace TyingClass.Balance.Reports;

/// <summary>One speed worked out: the symmetric attitude of the intent, where the fly settles from it, and the report of both.</summary>
/// <param name="IsBalanced">False when no pitch balances the fly in the plane of its bend; the symmetric attitude is then level.</param>
internal sealed record Towed(Attitude Symmetric, bool IsBalanced, Rest Rest, TowReport Report);

/// <summary>Towing at one speed, and over the range by continuation.</summary>
internal static class TowCalculation
{
    private const double SteepRad = Math.PI / 3;

    /// <summary>Fast to slow: at speed the fly trails and the right pitch is near level; each slower one starts from the last.</summary>
    public static ImmutableArray<TowReport> OverSpeeds(TowedFly fly, Intent intent, ImmutableArray<double> speedsMS)
    {
        TowReport[] reports = new TowReport[speedsMS.Length];
        Pitches? from = null;
        for (int i = speedsMS.Length - 1; i >= 0; i--)
        {
            from = Pitches.At(fly, speedsMS[i], from);
            reports[i] = AtSpeed(fly, intent, speedsMS[i], from).Report;
        }

        return [.. reports];
    }

    public static Towed AtSpeed(TowedFly fly, Intent intent, double speedMS, Pitches? known)
    {
        StopSignal.Heed();
        Pitches pitches = known ?? Pitches.At(fly, speedMS, Pitches.At(fly, 3 * speedMS, null));
        double pitch = pitches.For(intent);
        Attitude symmetric = Attitude.Symmetric(intent, double.IsFinite(pitch) ? pitch : 0);
        (Rest rest, bool settles) = SettleFrom(fly, speedMS, symmetric);
        double lean = rest.Attitude.LeanRad(intent);
        double drag = Vector3D.Dot(rest.Loads.DragN, rest.Attitude.Flow), lift = Vector3D.Dot(rest.Loads.DragN, rest.Attitude.Up);
        TowReport report = new()
        {
            SpeedMS = speedMS,
            Settles = settles,
            PitchDeg = BalanceEngine.Degrees(rest.Attitude.PitchRad),
            LeanDeg = BalanceEngine.Degrees(lean),
            SymmetricPitchDeg = BalanceEngine.Degrees(symmetric.PitchRad),
            KeelHeightMm = new KeelHeight(KeelHeightMm(fly, Intent.PointDown, speedMS, pitches), KeelHeightMm(fly, Intent.PointUp, speedMS, pitches)),
            DragMN = 1e3 * drag,
            LiftMN = 1e3 * lift,
            LineAngleDeg = BalanceEngine.Degrees(Math.Atan2(fly.WetWeightN - lift, drag)),
            // A fly lighter than water floats, whether or not it ever lies still.
            Verdict = settles || fly.WetMassKg < 0 ? VerdictRules.ByAttitude(fly.WetMassKg, rest.Attitude.PitchRad, lean) : VerdictKind.Undecided,
        };
        return new Towed(symmetric, double.IsFinite(pitch), rest, report);
    }

    private static double? KeelHeightMm(TowedFly fly, Intent intent, double speedMS, Pitches pitches)
    {
        double pitch = pitches.For(intent);
        if (!double.IsFinite(pitch) || fly.WetMassKg <= 0 || fly.IsNearNeutral)
        {
            return null;
        }

        Attitude attitude = Attitude.Symmetric(intent, pitch);
        return Math.Abs(attitude.PitchRad) <= SteepRad && Math.Cos(pitch) > 0
            && Keel.TryStiffness(attitude, fly.Linearize(attitude, speedMS)) is { } stiffness
            ? 1e3 * stiffness.StiffnessNM / fly.WetWeightN
            : null;
    }

    private static (Rest At, bool Settles) SettleFrom(TowedFly fly, double speedMS, Attitude symmetric)
    {
        Linearized loads = fly.Linearize(symmetric, speedMS);
        // From an unstable balance the least heel decides; a lopsided fly brings its own.
        Attitude start = loads.Turning.IsStable ? symmetric : symmetric.Turned(fly.Hand * 0.02 * symmetric.Flow);
        bool settles = Settling.TryFindRest(fly, speedMS, start, out Rest rest);
        if (settles && !rest.IsStable)
        {
            settles = Settling.TryFindRest(fly, speedMS, rest.Attitude.Turned(fly.Hand * (0.05 * rest.Attitude.Flow + 0.02 * rest.Attitude.Up)), out rest);
        }

        return (rest, settles && rest.IsStable);
    }
}

/// <summary>The balanced symmetric pitch of either intent, rad; NaN where none was found.</summary>
internal sealed record Pitches(double PointDownRad, double PointUpRad)
{
    public double For(Intent intent) => intent == Intent.PointDown ? PointDownRad : PointUpRad;

    public static Pitches At(TowedFly fly, double speedMS, Pitches? from) => new(
        One(fly, Intent.PointDown, speedMS, from?.PointDownRad ?? 0),
        One(fly, Intent.PointUp, speedMS, from?.PointUpRad ?? 0));

    private static double One(TowedFly fly, Intent intent, double speedMS, double fromRad) =>
        SymmetricAttitude.TryFindPitch(fly, intent, speedMS, double.IsFinite(fromRad) ? fromRad : 0, out double pitch)
            ? Math.IEEERemainder(pitch, 2 * Math.PI)
            : double.NaN;
}
