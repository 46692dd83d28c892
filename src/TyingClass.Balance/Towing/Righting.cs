using System.Collections.Immutable;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;

namespace TyingClass.Balance.Towing;

/// <summary>Restoring moment at a heel, N·m.</summary>
/// <param name="HeelRad">To the side the curve is drawn for, 0 to π.</param>
/// <param name="RestoringNM">Positive turns the fly back toward upright.</param>
public readonly record struct RightingPoint(double HeelRad, double RestoringNM);

/// <summary>Which side a fly is heeled to, as someone sees it who looks the way it swims.</summary>
public enum HeelSide
{
    /// <summary>Both sides alike.</summary>
    Either,
    Left,
    Right,
}

/// <summary>The side to which a fly comes back from less.</summary>
public readonly record struct RightingRange(ImmutableArray<RightingPoint> Curve, double RangeRad, HeelSide Side);

/// <summary>
/// The righting curve: restoring moment against heel about the flow, pitch and yaw settled at every heel, as naval architects draw a ship's. Its slope at zero
/// is K.
/// </summary>
public static class Righting
{
    private const double SameRangeRad = 0.5 * Math.PI / 180;

    /// <summary>From 0 to π. Ends early where the fly no longer settles in pitch and yaw.</summary>
    /// <param name="upright">The symmetric attitude the heel is measured from.</param>
    /// <param name="steps">Equal steps of heel, 2 or more.</param>
    /// <param name="side">Left, where either will do.</param>
    public static ImmutableArray<RightingPoint> Curve(TowedFly fly, Attitude upright, double speedMS, int steps, HeelSide side = HeelSide.Left)
    {
        // A right-handed turn about the flow raises the side that is on the right as the fly swims.
        double sign = side == HeelSide.Right ? -1 : 1;
        ArgumentNullException.ThrowIfNull(fly);
        ArgumentOutOfRangeException.ThrowIfLessThan(steps, 2);
        ImmutableArray<RightingPoint>.Builder points = ImmutableArray.CreateBuilder<RightingPoint>(steps + 1);
        Settled nose = default;
        for (int i = 0; i <= steps; i++)
        {
            StopSignal.Heed();
            double heel = Math.PI * i / steps;
            if (!TrySettle(fly, upright, speedMS, sign * heel, ref nose, out double restoring))
            {
                break;
            }

            points.Add(new RightingPoint(heel, sign * restoring));
        }

        return points.ToImmutable();
    }

    /// <summary>
    /// Heeled both ways: the lesser range and its side; where the ranges are alike, the curve of the side that restores less. A lopsided fly comes back to
    /// where it lists, not to upright; its range on the low side is counted from upright all the same.
    /// </summary>
    public static RightingRange Lesser(TowedFly fly, Attitude upright, double speedMS, int steps)
    {
        ImmutableArray<RightingPoint> left = Curve(fly, upright, speedMS, steps, HeelSide.Left), right = Curve(fly, upright, speedMS, steps, HeelSide.Right);
        double toLeft = RangeFromListRad(left, right), toRight = RangeFromListRad(right, left);
        return Math.Abs(toLeft - toRight) < SameRangeRad
            ? new RightingRange(Weaker(left, right), Math.Min(toLeft, toRight), HeelSide.Either)
            : toLeft < toRight ? new RightingRange(left, toLeft, HeelSide.Left) : new RightingRange(right, toRight, HeelSide.Right);
    }

    // A lopsided fly with nothing to come back to has the same range both ways, none, and two curves: its mirror image has them the other way round.
    private static ImmutableArray<RightingPoint> Weaker(ImmutableArray<RightingPoint> left, ImmutableArray<RightingPoint> right)
    {
        int both = Math.Min(left.Length, right.Length);
        double more = left[..both].Sum(p => p.RestoringNM) - right[..both].Sum(p => p.RestoringNM);
        return more <= 1e-9 * left[..both].Sum(p => Math.Abs(p.RestoringNM)) ? left : right;
    }

    // Upright the moment pushes a listing fly over to its low side; there the curve first rises through zero, at the list, and the range ends where it next
    // falls through it.
    private static double RangeFromListRad(ImmutableArray<RightingPoint> curve, ImmutableArray<RightingPoint> otherSide)
    {
        if (curve.IsEmpty || otherSide.IsEmpty)
        {
            return 0;
        }

        double upright = curve[0].RestoringNM, scale = Math.Max(curve.Max(p => Math.Abs(p.RestoringNM)), otherSide.Max(p => Math.Abs(p.RestoringNM)));
        if (Math.Abs(upright) <= 1e-9 * scale)
        {
            return RangeRad(curve);
        }

        ImmutableArray<RightingPoint> low = upright < 0 ? curve : otherSide;
        int list = 1;
        while (list < low.Length && low[list].RestoringNM < 0)
        {
            list++;
        }

        // Lying over on its beam ends or worse, it does not come back to anything a tyer would call upright.
        return list >= low.Length || low[list].HeelRad > Math.PI / 2 ? 0
            : upright < 0 ? RangeRad(curve[list..])
            : RangeRad(curve);
    }

    /// <summary>The heel up to which the moment restores, rad: 0 when it never does, π when it always does.</summary>
    public static double RangeRad(ImmutableArray<RightingPoint> curve)
    {
        for (int i = 1; i < curve.Length; i++)
        {
            double before = curve[i - 1].RestoringNM, here = curve[i].RestoringNM;
            bool last = i == curve.Length - 1;
            if (here < 0 && !(last && curve[i].HeelRad > 3.1))
            {
                return before <= 1e-9 * -here ? 0 : curve[i - 1].HeelRad + (curve[i].HeelRad - curve[i - 1].HeelRad) * before / (before - here);
            }
        }

        return curve.IsEmpty ? 0 : curve[^1].HeelRad;
    }

    /// <summary>How far the nose has settled since upright.</summary>
    private record struct Settled(double PitchRad, double YawRad);

    private static bool TrySettle(TowedFly fly, Attitude upright, double speedMS, double heel, ref Settled nose, out double restoringNM)
    {
        double rate = 0;
        for (int step = 0; step < 200; step++)
        {
            Attitude at = Heeled(upright, heel, nose);
            Linearized loads = fly.Linearize(at, speedMS);
            double my = Vector3D.Dot(loads.MomentNM, at.Across), mz = Vector3D.Dot(loads.MomentNM, at.Up);
            restoringNM = -Vector3D.Dot(loads.MomentNM, at.Flow);
            double size = Math.Sqrt(my * my + mz * mz);
            if (size <= 10 * Settling.ResidualNM(fly, loads.DragN.Length))
            {
                return true;
            }

            // Turning on by world pitch and by yaw about the plumb line; the pitch axis itself yaws with the fly.
            (double sin, double cos) = Math.SinCos(nose.YawRad);
            Vector3D pitchAxis = cos * at.Across - sin * at.Flow;
            double yy = Component(at.Across, pitchAxis, at, loads), yz = Component(at.Across, at.Up, at, loads);
            double zy = Component(at.Up, pitchAxis, at, loads), zz = Component(at.Up, at.Up, at, loads);
            double stiffness = Math.Sqrt(yy * yy + yz * yz + zy * zy + zz * zz);
            bool stable = yy + zz < 0 && yy * zz - yz * zy > 0;
            rate = stable ? (size < 0.1 * stiffness ? 0 : stiffness * 0.2) : stiffness * 1.2;
            double a = rate - yy, d = rate - zz, determinant = a * d - yz * zy;
            if (determinant == 0 || !double.IsFinite(determinant))
            {
                break;
            }

            double dPitch = (my * d + yz * mz) / determinant, dYaw = (a * mz + zy * my) / determinant;
            double length = Math.Sqrt(dPitch * dPitch + dYaw * dYaw);
            double shorten = length > 0.3 ? 0.3 / length : 1;
            nose.PitchRad += shorten * dPitch;
            nose.YawRad += shorten * dYaw;
        }

        restoringNM = double.NaN;
        return false;
    }

    // R = R_z(yaw) R_y(pitch) R_x(heel) R_0, written as what the flow and up become in the hook frame.
    private static Attitude Heeled(Attitude upright, double heel, Settled nose)
    {
        return new Attitude(Back(Vector3D.UnitX), Back(Vector3D.UnitZ));

        Vector3D Back(Vector3D world)
        {
            Vector3D v = world
                .RotatedAbout(Vector3D.UnitZ, -nose.YawRad)
                .RotatedAbout(Vector3D.UnitY, -nose.PitchRad)
                .RotatedAbout(Vector3D.UnitX, -heel);
            return v.X * upright.Flow + v.Y * upright.Across + v.Z * upright.Up;
        }
    }

    private static double Component(Vector3D axis, Vector3D turnAxis, in Attitude attitude, in Linearized loads) =>
        Vector3D.Dot(axis, loads.Turning * turnAxis + Vector3D.Cross(turnAxis, loads.MomentNM));
}
