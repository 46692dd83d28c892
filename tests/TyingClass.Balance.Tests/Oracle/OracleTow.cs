using MathNet.Numerics.LinearAlgebra;
using TyingClass.Balance.Bodies;

namespace TyingClass.Balance.Tests.Oracle;

/// <summary>
/// A fly held at its tow point in a steady flow along world +x, z up: free to turn, damped by the water and by a made-up drag on turning that no attitude of
/// rest feels.
/// </summary>
internal sealed class OracleTow : OracleRelease
{
    private const double DampingPerS = 20;

    private readonly OracleFly _fly;
    private readonly OracleVector _tow;
    private readonly double[,] _inertia;
    private readonly double[,] _inverse;
    private readonly OracleClock _clock;
    private readonly double[] _y = new double[7];

    public OracleTow(OracleFly fly)
    {
        _fly = fly;
        _tow = OracleVector.Of(fly.Body.TowPointM);
        Matrix<double> inertia = fly.Inertia(_tow);
        _inertia = inertia.ToArray();
        _inverse = inertia.Inverse().ToArray();
        _clock = new OracleClock(7, Derivative, [1e-5, 1e-5, 1e-5, 1e-5, 1e-3, 1e-3, 1e-3]);
    }

    /// <summary>Everything that turns the fly about its tow point, N·m, hook frame.</summary>
    public OracleVector Moment(OracleVector flow, OracleVector up, OracleVector omega)
    {
        (OracleVector drag, OracleVector moment) = _fly.Drag(_fly.Conditions.SpeedMS * flow, omega, _tow);
        moment += _fly.WeightMoment(_tow, up);
        return _fly.Conditions.Knot == Knot.Cinched ? moment + KnotMoment(drag, up) : moment;
    }

    protected override void Begin(OracleQuaternion from)
    {
        (_y[0], _y[1], _y[2], _y[3]) = from;
        Array.Clear(_y, 4, 3);
    }

    protected override void Advance(double seconds) => _clock.Advance(_y, seconds, Normalize);

    protected override OracleRest Now(bool settled) => new(settled, Attitude(_y).ToHook(new(1, 0, 0)), Attitude(_y).ToHook(new(0, 0, 1)), 0);

    protected override void Nudge(OracleQuaternion turn) => Begin((Attitude(_y) * turn).Unit());

    private static OracleQuaternion Attitude(double[] y) => new(y[0], y[1], y[2], y[3]);

    private static void Normalize(double[] y) => (y[0], y[1], y[2], y[3]) = Attitude(y).Unit();

    // M = 2 √(EI T) sin(ψ/2), turning the hook's forward axis toward the pull.
    private OracleVector KnotMoment(OracleVector drag, OracleVector up)
    {
        OracleVector pull = _fly.WetWeight * up - drag;
        OracleVector forward = new(-1, 0, 0);
        OracleVector turn = OracleVector.Cross(forward, pull);
        if (turn.Length == 0) return default;
        double psi = Math.Atan2(turn.Length, OracleVector.Dot(forward, pull));
        Leader leader = _fly.Conditions.Leader;
        double stiffness = leader.YoungsModulusPa * Math.PI * Math.Pow(leader.DiameterM, 4) / 64;
        return 2 * Math.Sqrt(stiffness * pull.Length) * Math.Sin(psi / 2) / turn.Length * turn;
    }

    private void Derivative(double[] y, double[] dy)
    {
        OracleQuaternion q = Attitude(y);
        OracleVector omega = new(y[4], y[5], y[6]);
        (dy[0], dy[1], dy[2], dy[3]) = q * new OracleQuaternion(0, omega.X / 2, omega.Y / 2, omega.Z / 2);
        OracleVector moment = Moment(q.ToHook(new(1, 0, 0)), q.ToHook(new(0, 0, 1)), omega);
        OracleVector spin = Apply(_inertia, omega);
        OracleVector rate = Apply(_inverse, moment - OracleVector.Cross(omega, spin) - DampingPerS * spin);
        (dy[4], dy[5], dy[6]) = rate;
    }

    private static OracleVector Apply(double[,] m, OracleVector v) => new(
        m[0, 0] * v.X + m[0, 1] * v.Y + m[0, 2] * v.Z,
        m[1, 0] * v.X + m[1, 1] * v.Y + m[1, 2] * v.Z,
        m[2, 0] * v.X + m[2, 1] * v.Y + m[2, 2] * v.Z);
}
