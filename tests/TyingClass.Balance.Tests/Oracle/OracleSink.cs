using MathNet.Numerics.LinearAlgebra;

namespace TyingClass.Balance.Tests.Oracle;

/// <summary>A fly let go in still water on a slack line and a loop knot: six degrees of freedom about its mass center.</summary>
internal sealed class OracleSink : OracleRelease
{
    private readonly bool _headingHeld;
    private readonly double _dampingPerS;
    private readonly OracleFly _fly;
    private readonly double[,] _inertia;
    private readonly double[,] _inverse;
    private readonly double _carried;
    private readonly OracleClock _clock;
    private readonly double[] _y = new double[10];

    /// <param name="headingHeld">True keeps the fly from spinning about the plumb line, by whatever moment that takes: the engine leaves that spin out (as a
    /// leader hard to twist would).</param>
    /// <param name="dampingPerS">A made-up drag on turning. Much of it takes the flutter from a fly that flutters; where it comes to rest does not depend on
    /// it.</param>
    public OracleSink(OracleFly fly, bool headingHeld, double dampingPerS = 10)
    {
        _dampingPerS = dampingPerS;
        _headingHeld = headingHeld;
        _fly = fly;
        Matrix<double> inertia = fly.Inertia(fly.MassCenter);
        _inertia = inertia.ToArray();
        _inverse = inertia.Inverse().ToArray();
        // Half the water displaced goes along, as with a sphere; steady sinking does not feel it.
        _carried = fly.Mass + 0.5 * fly.Rho * fly.Volume;
        _clock = new OracleClock(10, Derivative, [1e-5, 1e-5, 1e-5, 1e-5, 1e-3, 1e-3, 1e-3, 1e-5, 1e-5, 1e-5]);
    }

    protected override void Begin(OracleQuaternion from)
    {
        Array.Clear(_y);
        (_y[0], _y[1], _y[2], _y[3]) = from;
    }

    protected override void Advance(double seconds) => _clock.Advance(_y, seconds, Normalize);

    protected override OracleRest Now(bool settled) => new(settled, default, Attitude(_y).ToHook(new(0, 0, 1)), -_y[9]);

    protected override void Nudge(OracleQuaternion turn) => (_y[0], _y[1], _y[2], _y[3]) = (Attitude(_y) * turn).Unit();

    private static OracleQuaternion Attitude(double[] y) => new(y[0], y[1], y[2], y[3]);

    private static void Normalize(double[] y) => (y[0], y[1], y[2], y[3]) = Attitude(y).Unit();

    // y: attitude 0-3, turning (hook frame) 4-6, velocity of the mass center (world) 7-9.
    private void Derivative(double[] y, double[] dy)
    {
        OracleQuaternion q = Attitude(y);
        OracleVector omega = new(y[4], y[5], y[6]), velocity = new(y[7], y[8], y[9]);
        (dy[0], dy[1], dy[2], dy[3]) = q * new OracleQuaternion(0, omega.X / 2, omega.Y / 2, omega.Z / 2);
        (OracleVector drag, OracleVector moment) = _fly.Drag(-1 * q.ToHook(velocity), omega, _fly.MassCenter);
        moment += _fly.WeightMoment(_fly.MassCenter, q.ToHook(new(0, 0, 1)));
        OracleVector spin = Apply(_inertia, omega);
        OracleVector rate = Apply(_inverse, moment - OracleVector.Cross(omega, spin) - _dampingPerS * spin);
        if (_headingHeld)
        {
            OracleVector up = q.ToHook(new(0, 0, 1)), byHolding = Apply(_inverse, up);
            rate -= OracleVector.Dot(rate, up) / OracleVector.Dot(byHolding, up) * byHolding;
        }

        (dy[4], dy[5], dy[6]) = rate;
        OracleVector force = q.ToWorld(drag) - new OracleVector(0, 0, _fly.WetWeight);
        (dy[7], dy[8], dy[9]) = (1 / _carried) * force;
    }

    private static OracleVector Apply(double[,] m, OracleVector v) => new(
        m[0, 0] * v.X + m[0, 1] * v.Y + m[0, 2] * v.Z,
        m[1, 0] * v.X + m[1, 1] * v.Y + m[1, 2] * v.Z,
        m[2, 0] * v.X + m[2, 1] * v.Y + m[2, 2] * v.Z);
}
