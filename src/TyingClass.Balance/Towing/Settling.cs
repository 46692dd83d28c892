using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Towing;

/// <summary>Where a released fly comes to rest.</summary>
public readonly record struct Rest(Attitude Attitude, Linearized Loads, bool IsStable);

/// <summary>Follows the overdamped motion of a towed fly to rest and polishes the end with Newton's method.</summary>
/// <remarks>Implicit Euler steps (I/h - J) δ = M. Where J is not yet stable, h is kept under 1/‖J‖ so that a step never runs back to the unstable attitude it left; where it is, h grows as the moment falls and the steps turn into Newton's (pseudo-transient continuation: Kelley and Keyes, SIAM J. Numer. Anal. 35 (1998) 508).</remarks>
public static class Settling
{
    private const int MostSteps = 300;
    private const double LongestStepRad = 0.35;

    /// <summary>The moment that counts as none: 10⁻¹⁰ of W' × shank length, or what rounding leaves of the drag's own moment.</summary>
    public static double ResidualNM(TowedFly fly, double dragN)
    {
        ArgumentNullException.ThrowIfNull(fly);
        return Math.Max(1e-10 * Math.Abs(fly.WetWeightN) * fly.ShankLengthM, 1e-13 * (dragN * fly.ShankLengthM + fly.MomentScaleNM));
    }

    /// <summary>Lets go of the fly at an attitude. False when it has not come to rest after 300 steps: it spins.</summary>
    public static bool TryFindRest(TowedFly fly, double speedMS, Attitude from, out Rest rest)
    {
        ArgumentNullException.ThrowIfNull(fly);
        Attitude attitude = from;
        Linearized loads = fly.Linearize(attitude, speedMS);
        double size = loads.MomentNM.Length;
        double scale = Math.Max(fly.MomentScaleNM, size);
        double rate = 2 * Stiffness(loads.Turning);
        for (int step = 0; step < MostSteps && double.IsFinite(size); step++)
        {
            bool stable = loads.Turning.IsStable;
            if (size <= ResidualNM(fly, loads.DragN.Length))
            {
                rest = new Rest(attitude, loads, stable);
                return true;
            }

            double floor = stable ? 0 : Stiffness(loads.Turning);
            rate = Math.Max(rate, floor);
            Vector3D turn = Step(loads, rate);
            double length = turn.Length;
            if (length > LongestStepRad)
            {
                turn *= LongestStepRad / length;
            }

            Attitude next = attitude.Turned(turn);
            Linearized there = fly.Linearize(next, speedMS);
            double sizeThere = there.MomentNM.Length;
            // The moment may grow on the way down from an unstable attitude; only a stable approach must shrink it.
            if (stable && sizeThere > 2 * size && length < LongestStepRad && rate < 1e6 * scale)
            {
                rate = Math.Max(4 * rate, 0.1 * Stiffness(loads.Turning));
                continue;
            }

            rate = stable ? rate * Math.Clamp(sizeThere / size, 0.02, 2) : rate;
            if (stable && sizeThere < 0.05 * size)
            {
                rate = 0;
            }
            else if (rate == 0 && sizeThere > 0.5 * size)
            {
                rate = 0.5 * Stiffness(there.Turning);
            }

            (attitude, loads, size) = (next, there, sizeThere);
        }

        rest = new Rest(attitude, loads, false);
        return false;
    }

    private static Vector3D Step(in Linearized loads, double rate)
    {
        Matrix3 j = loads.Turning;
        Matrix3 system = new Matrix3(-j.Column0, -j.Column1, -j.Column2).PlusDiagonal(rate);
        return system.TrySolve(loads.MomentNM, out Vector3D turn) ? turn : loads.MomentNM / Stiffness(j);
    }

    // Frobenius norm: bounds every eigenvalue.
    private static double Stiffness(in Matrix3 m) =>
        Math.Sqrt(m.Column0.LengthSquared + m.Column1.LengthSquared + m.Column2.LengthSquared) + double.Epsilon;
}
