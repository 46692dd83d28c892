namespace TyingClass.Balance.Tests.Oracle;

/// <summary>
/// Lets go of a fly and waits until it is at rest: until it hardly moves in half as long again as it has had already, so that the slowest creep shows. Rest is
/// believed only when the fly, nudged 3° any way, comes back.
/// </summary>
internal abstract class OracleRelease
{
    private const double FirstWindowS = 0.5, MovedDeg = 0.02, NudgeRad = 3 * Math.PI / 180, BackDeg = 0.12, FlutterS = 200, FlutterDeg = 2;

    /// <summary>Seconds of the fly's time after which the oracle gives up.</summary>
    public double PatienceS { get; init; } = 50_000;

    /// <param name="random">For the nudges.</param>
    public OracleRest Run(OracleQuaternion from, Random random)
    {
        Begin(from);
        double time = 0, window = FirstWindowS;
        bool nudged = false;
        OracleRest? found = null;
        OracleRest last = Now(true);
        while (time < PatienceS)
        {
            Advance(window);
            time += window;
            window *= 1.5;
            OracleRest now = Now(true);
            double movedDeg = now.TurnToDeg(last);
            if (time > FlutterS && movedDeg > FlutterDeg && !nudged) break;
            nudged = false;
            bool still = movedDeg < MovedDeg && Math.Abs(now.RateMS - last.RateMS) < 1e-4 * Math.Abs(now.RateMS) + 1e-7;
            last = now;
            if (!still) continue;
            if (found is { } before && before.TurnToDeg(now) < BackDeg) return now;
            found = now;
            Nudge(OracleQuaternion.Turn(
                new(random.NextDouble() - 0.5, random.NextDouble() - 0.5, random.NextDouble() - 0.5), NudgeRad));
            last = Now(true);
            nudged = true;
        }

        return Now(false);
    }

    protected abstract void Begin(OracleQuaternion from);

    protected abstract void Advance(double seconds);

    protected abstract OracleRest Now(bool settled);

    protected abstract void Nudge(OracleQuaternion turn);
}
