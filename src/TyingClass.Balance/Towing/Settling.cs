using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Towing;

/// <summary>Where a released fly comes to rest.</summary>
/// <param name="Loads">Moment and drag at the attitude; their derivatives from within a thousandth of a radian of it.</param>
public readonly record struct Rest(Attitude Attitude, Linearized Loads, bool IsStable);

/// <summary>Follows the overdamped motion of a towed fly to rest and polishes the end with Newton's method.</summary>
/// <remarks>Implicit Euler steps (I/h - J) δ = M of bounded length. Where J has an eigenvalue λ of positive real part, 1/h is 2|λ|²/Re λ (twice a real one), so
/// that a step never runs back to the unstable attitude it left yet moves about as fast as the attitude falls away; where all are stable h is infinite and the
/// steps are Newton's, halved while they do not bring the moment down (pseudo-transient continuation: Kelley and Keyes, SIAM J. Numer. Anal. 35 (1998) 508).
/// Of many flies, one that crawls is held to what is left to turn instead (the natural test, restricted by a quarter: Deuflhard, Newton Methods for
/// Nonlinear Problems, 2004; from memory).
/// Roll is some hundred times less stiff than pitch and yaw: a fixed step would crawl.</remarks>
public static class Settling
{
    private const int MostSteps = 300;
    private const double LongestStepRad = 0.35;
    private const double NearRad = 1e-3;

    // Two whole rounds about the flow: what has rolled through every heel twice and met no rest meets none.
    private const double SpinRad = 4 * Math.PI;

    // One of many flies whose steps had to be halved so often crawls.
    private const int CrawlingSteps = 8;

    /// <summary>The moment that counts as none: 10⁻¹⁰ of W' × shank length, or what rounding leaves of the drag's own moment.</summary>
    public static double ResidualNM(TowedFly fly, double dragN)
    {
        ArgumentNullException.ThrowIfNull(fly);
        return Math.Max(1e-10 * Math.Abs(fly.WetWeightN) * fly.ShankLengthM, 1e-13 * (dragN * fly.ShankLengthM + fly.MomentScaleNM));
    }

    /// <summary>Lets go of the fly at an attitude. False when it has not come to rest after 300 steps: it spins.</summary>
    public static bool TryFindRest(TowedFly fly, double speedMS, Attitude from, out Rest rest) => Follow(fly, speedMS, from, Haste.None, out rest);

    /// <summary>
    /// As <see cref="TryFindRest"/>, but lets a fly go as soon as it is seen to spin, for who asks of many flies and not where a spinning one was last.
    /// </summary>
    public static bool TryFindRestUnlessItSpins(TowedFly fly, double speedMS, Attitude from, out Rest rest) =>
        Follow(fly, speedMS, from, Haste.NoSpin, out rest);

    /// <summary>
    /// As <see cref="TryFindRestUnlessItSpins"/>, but a fly that crawls goes on in longer steps, for who asks how a thousand flies lean: where two rests lie
    /// close, one of them may come to the other.
    /// </summary>
    public static bool TryFindRestOfOneOfMany(TowedFly fly, double speedMS, Attitude from, out Rest rest) =>
        Follow(fly, speedMS, from, Haste.NoCrawl, out rest);

    private enum Haste
    {
        None,
        NoSpin,
        NoCrawl,
    }

    private static bool Follow(TowedFly fly, double speedMS, Attitude from, Haste haste, out Rest rest)
    {
        ArgumentNullException.ThrowIfNull(fly);
        double rolled = 0;
        int halved = 0;
        Attitude attitude = from;
        Linearized loads = fly.Linearize(attitude, speedMS);
        double size = loads.MomentNM.Length;
        for (int step = 0; step < MostSteps && double.IsFinite(size); step++)
        {
            bool stable = loads.Turning.IsStable;
            if (size <= ResidualNM(fly, loads.DragN.Length))
            {
                rest = new Rest(attitude, loads, stable);
                return true;
            }

            (Vector3D turn, double rate) = BoundedStep(loads, stable ? 0 : loads.Turning.LeavingRate, size);
            if (stable && turn.Length <= NearRad)
            {
                if (TryFinish(fly, speedMS, ref attitude, loads, turn, out Wrench there))
                {
                    rest = new Rest(attitude, loads with { MomentNM = there.MomentNM, DragN = there.ForceN }, true);
                    return true;
                }

                loads = fly.Linearize(attitude, speedMS);
                size = loads.MomentNM.Length;
                continue;
            }

            Attitude next = attitude.Turned(turn);
            Linearized then = fly.Linearize(next, speedMS);
            double whole = turn.Length, share = 1;
            bool crawls = haste == Haste.NoCrawl && halved >= CrawlingSteps;
            for (int halving = 0; stable && halving < 5 && then.MomentNM.Length > size; halving++)
            {
                if (crawls && IsNearer(loads, rate, then.MomentNM, whole, share)) break;
                (turn, share) = (turn * 0.5, share * 0.5);
                next = attitude.Turned(turn);
                then = fly.Linearize(next, speedMS);
            }

            if (share < 1) halved++;
            rolled += Vector3D.Dot(turn, attitude.Flow);
            (attitude, loads, size) = (next, then, then.MomentNM.Length);
            if (haste != Haste.None && Math.Abs(rolled) > SpinRad) break;
        }

        rest = new Rest(attitude, loads, false);
        return false;
    }

    // The last steps, all within a thousandth of a radian of where the derivatives were taken, take them again: a moment alone costs less than half of new
    // ones.
    // False, at the attitude reached, when they no longer bring the moment down tenfold.
    private static bool TryFinish(TowedFly fly, double speedMS, ref Attitude attitude, in Linearized loads, Vector3D turn, out Wrench there)
    {
        double size = loads.MomentNM.Length;
        for (double turned = turn.Length; ; turned += turn.Length)
        {
            Attitude next = attitude.Turned(turn);
            there = fly.At(next, speedMS);
            double now = there.MomentNM.Length;
            attitude = next;
            if (now <= ResidualNM(fly, there.ForceN.Length))
            {
                return true;
            }

            if (now > 0.1 * size || turned > NearRad || !loads.Turning.TrySolve(-there.MomentNM, out turn))
            {
                return false;
            }

            size = now;
        }
    }

    // An overlong step is taken by a shorter time, not cut to length: where roll is nearly neutral (fast flow, a fly near neutral buoyancy) Newton's step is
    // all roll, and cut short it would never bring the nose round.
    private static (Vector3D Turn, double Rate) BoundedStep(in Linearized loads, double rate, double size)
    {
        Vector3D turn = Step(loads.Turning, rate, loads.MomentNM);
        // No stable turn is longer than this rate allows.
        double enough = size / LongestStepRad, least = rate;
        for (double share = 1.0 / 4096; turn.Length > LongestStepRad && share <= 1; share *= 4)
        {
            rate = least + share * enough;
            turn = Step(loads.Turning, rate, loads.MomentNM);
        }

        double length = turn.Length;
        return (length > LongestStepRad ? LongestStepRad / length * turn : turn, rate);
    }

    // By what is left to turn, not by the moment alone: along a stiff way a small turn is a large moment, and a fly that rolls slowly round would be held to
    // steps of a hundredth of a radian by its stiff yaw.
    private static bool IsNearer(in Linearized loads, double rate, Vector3D momentThere, double wholeRad, double share) =>
        Step(loads.Turning, rate, momentThere).Length <= (1 - 0.25 * share) * wholeRad;

    private static Vector3D Step(in Matrix3 turning, double rate, Vector3D moment)
    {
        Matrix3 system = new Matrix3(-turning.Column0, -turning.Column1, -turning.Column2).PlusDiagonal(rate);
        return system.TrySolve(moment, out Vector3D turn) ? turn : moment / Stiffness(turning);
    }

    // Frobenius norm: bounds every eigenvalue.
    private static double Stiffness(in Matrix3 m) =>
        Math.Sqrt(m.Column0.LengthSquared + m.Column1.LengthSquared + m.Column2.LengthSquared) + double.Epsilon;
}
