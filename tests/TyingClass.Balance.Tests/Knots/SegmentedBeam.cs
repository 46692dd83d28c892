using MathNet.Numerics.LinearAlgebra;

namespace TyingClass.Balance.Tests.Knots;

/// <summary>
/// An elastic line cut into straight segments with a spring at every joint, clamped at one end: written for the tests, from equilibrium alone, to check the
/// engine's closed forms.
/// </summary>
/// <remarks>The moment at a joint is EI times the change of angle over the distance between the middles of the segments it joins (half a segment at the clamp).
/// Equilibrium of everything beyond each joint gives as many equations as angles; Newton with a differenced Jacobian solves them.</remarks>
internal sealed class SegmentedBeam
{
    private readonly double[] _lengths;
    private readonly double _stiffness;
    private readonly Func<double, (double X, double Y)> _loadPerLength;

    /// <param name="lengths">Of the segments, clamp first.</param>
    /// <param name="stiffness">EI.</param>
    /// <param name="loadPerLength">Spread load on a piece at an angle.</param>
    public SegmentedBeam(double[] lengths, double stiffness, Func<double, (double X, double Y)>? loadPerLength = null)
    {
        _lengths = lengths;
        _stiffness = stiffness;
        _loadPerLength = loadPerLength ?? (_ => (0, 0));
        Angles = new double[lengths.Length];
    }

    /// <summary>Angle of each segment from the x axis; the start of the next solution.</summary>
    public double[] Angles { get; }

    public (double X, double Y) Tip
    {
        get
        {
            double x = 0, y = 0;
            for (int i = 0; i < _lengths.Length; i++)
            {
                x += _lengths[i] * Math.Cos(Angles[i]);
                y += _lengths[i] * Math.Sin(Angles[i]);
            }

            return (x, y);
        }
    }

    /// <summary>Angle at the very end: half a segment beyond the last middle, where no moment is left to bend it.</summary>
    public double TipAngle => Angles[^1];

    /// <summary>Moment of the clamp's spring, positive when it turns the line to greater angles.</summary>
    public double ClampMoment(double clampAngle) => _stiffness * (clampAngle - Angles[0]) / (_lengths[0] / 2);

    public (double X, double Y) TotalSpreadLoad()
    {
        double x = 0, y = 0;
        for (int i = 0; i < _lengths.Length; i++)
        {
            (double qx, double qy) = _loadPerLength(Angles[i]);
            x += _lengths[i] * qx;
            y += _lengths[i] * qy;
        }

        return (x, y);
    }

    public void Solve(double clampAngle, double tipX, double tipY)
    {
        int n = _lengths.Length;
        double[] residual = new double[n], moved = new double[n];
        for (int iteration = 0; iteration < 60; iteration++)
        {
            Residual(Angles, clampAngle, tipX, tipY, residual);
            Matrix<double> jacobian = Matrix<double>.Build.Dense(n, n);
            for (int j = 0; j < n; j++)
            {
                double kept = Angles[j];
                Angles[j] = kept + 1e-7;
                Residual(Angles, clampAngle, tipX, tipY, moved);
                Angles[j] = kept;
                for (int i = 0; i < n; i++) jacobian[i, j] = (moved[i] - residual[i]) / 1e-7;
            }

            Vector<double> step = jacobian.Solve(-Vector<double>.Build.Dense(residual));
            double largest = step.AbsoluteMaximum(), share = Math.Min(1, 0.3 / largest);
            for (int i = 0; i < n; i++) Angles[i] += share * step[i];
            if (largest < 1e-10) return;
        }

        throw new InvalidOperationException("The beam did not find its balance.");
    }

    private void Residual(double[] angles, double clampAngle, double tipX, double tipY, double[] residual)
    {
        // From the tip back: the force beyond each joint and its moment about it.
        double forceX = tipX, forceY = tipY, moment = 0;
        for (int i = _lengths.Length - 1; i >= 0; i--)
        {
            double length = _lengths[i], cos = Math.Cos(angles[i]), sin = Math.Sin(angles[i]);
            (double qx, double qy) = _loadPerLength(angles[i]);
            moment += length * (cos * forceY - sin * forceX) + length * length / 2 * (cos * qy - sin * qx);
            forceX += length * qx;
            forceY += length * qy;
            double before = i == 0 ? clampAngle : angles[i - 1], apart = i == 0 ? length / 2 : (length + _lengths[i - 1]) / 2;
            residual[i] = moment + _stiffness * (before - angles[i]) / apart;
        }
    }
}
