namespace TyingClass.Balance.Shapes;

/// <summary>
/// A cone with its tip cut off, bored through along its axis: front radius R1, rear radius R2, length L, bore radius a. All integrals are of the polynomial
/// r(x) = R1 + (R2 - R1) x/L; with R1 = a = 0 they give the cone's L³-textbook values (volume π R² L/3, centroid L/4 from the base).
/// </summary>
public readonly record struct BoredFrustum
{
    private readonly double _r1, _r2, _l, _a;

    /// <exception cref="ArgumentOutOfRangeException">A length is not positive, or the bore is wider than the narrow end.</exception>
    public BoredFrustum(double frontDiameterM, double rearDiameterM, double lengthM, double boreM)
    {
        _r1 = Require.NotNegative(frontDiameterM, nameof(frontDiameterM)) / 2;
        _r2 = Require.NotNegative(rearDiameterM, nameof(rearDiameterM)) / 2;
        _l = Require.Positive(lengthM, nameof(lengthM));
        _a = Require.InRange(boreM, 0, 2 * Math.Min(_r1, _r2), nameof(boreM)) / 2;
    }

    public double LengthM => _l;

    public double BoreM => 2 * _a;

    /// <summary>π L [(R1² + R1 R2 + R2²)/3 - a²], m³.</summary>
    public double VolumeM3 => Math.PI * _l * ((_r1 * _r1 + _r1 * _r2 + _r2 * _r2) / 3 - _a * _a);

    /// <summary>From the front face, m: π L² [(R1² + 2 R1 R2 + 3 R2²)/12 - a²/2] / V.</summary>
    public double CentroidM =>
        Math.PI * _l * _l * ((_r1 * _r1 + 2 * _r1 * _r2 + 3 * _r2 * _r2) / 12 - _a * _a / 2) / VolumeM3;

    /// <summary>
    /// Along: π L³ [(R1² + 3 R1 R2 + 6 R2²)/30 - a²/3] / V less the centroid squared. Across: π L [(R1⁴ + R1³R2 + R1²R2² + R1R2³ + R2⁴)/5 - a⁴]/4 V.
    /// </summary>
    public Spread SpreadM2
    {
        get
        {
            double along = Math.PI * _l * _l * _l * ((_r1 * _r1 + 3 * _r1 * _r2 + 6 * _r2 * _r2) / 30 - _a * _a / 3) / VolumeM3;
            double r1Squared = _r1 * _r1, r2Squared = _r2 * _r2;
            double fourth = (r1Squared * r1Squared + r1Squared * _r1 * _r2 + r1Squared * r2Squared + _r1 * _r2 * r2Squared + r2Squared * r2Squared) / 5;
            return new Spread(along - CentroidM * CentroidM, Math.PI * _l * (fourth - Math.Pow(_a, 4)) / (4 * VolumeM3));
        }
    }

    /// <summary>The centroid of its side view (a trapezoid), from the front face, m: L (R1 + 2 R2)/(3 (R1 + R2)). The flow across it acts there.</summary>
    public double SideCentroidM => _l * (_r1 + 2 * _r2) / (3 * (_r1 + _r2));
}
