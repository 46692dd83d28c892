using System.Runtime.CompilerServices;

namespace TyingClass.Balance.Fluid;

/// <summary>A drag curve sampled once, so that the moment function needs no powers. Cubic Hermite pieces, 16 to each doubling of the Reynolds number, smooth to the first derivative; relative error under 10⁻⁶ between 2⁻¹⁰ and 2²⁰, the curve itself outside.</summary>
public sealed class DragTable
{
    private const int PiecesPerOctaveBits = 4;
    private const int LowestExponent = -10;
    private const int HighestExponent = 20;
    private const int MantissaShift = 52 - PiecesPerOctaveBits;
    private const long FirstKey = (1023L + LowestExponent) << PiecesPerOctaveBits;
    private const int PieceCount = (HighestExponent - LowestExponent) << PiecesPerOctaveBits;

    private readonly Func<double, double> _curve;
    private readonly double[] _coefficients = new double[4 * PieceCount];

    /// <param name="curve">Coefficient against Reynolds number, smooth and positive.</param>
    public DragTable(Func<double, double> curve)
    {
        ArgumentNullException.ThrowIfNull(curve);
        _curve = curve;
        for (int i = 0; i < PieceCount; i++)
        {
            double low = Edge(i), high = Edge(i + 1), width = high - low;
            double y0 = curve(low), y1 = curve(high);
            double s0 = Slope(low) * width, s1 = Slope(high) * width;
            _coefficients[4 * i] = y0;
            _coefficients[4 * i + 1] = s0;
            _coefficients[4 * i + 2] = 3 * (y1 - y0) - 2 * s0 - s1;
            _coefficients[4 * i + 3] = 2 * (y0 - y1) + s0 + s1;
        }
    }

    /// <summary>Long cylinder across the flow.</summary>
    public static DragTable Cylinder { get; } = new(CylinderDrag.CrossFlow);

    public static DragTable Sphere { get; } = new(SphereDrag.BrownLawler);

    /// <param name="reynolds">Over 0.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double At(double reynolds)
    {
        // The exponent and the first bits of the fraction of a double number the pieces; the rest of the fraction is the place in one.
        long bits = BitConverter.DoubleToInt64Bits(reynolds);
        long piece = (bits >> MantissaShift) - FirstKey;
        if ((ulong)piece >= PieceCount)
        {
            return _curve(reynolds);
        }

        double t = (bits & ((1L << MantissaShift) - 1)) * (1.0 / (1L << MantissaShift));
        int k = 4 * (int)piece;
        double[] c = _coefficients;
        return c[k] + t * (c[k + 1] + t * (c[k + 2] + t * c[k + 3]));
    }

    private static double Edge(int piece) => BitConverter.Int64BitsToDouble((FirstKey + piece) << MantissaShift);

    private double Slope(double x)
    {
        double h = 1e-4 * x;
        return (8 * (_curve(x + h) - _curve(x - h)) - (_curve(x + 2 * h) - _curve(x - 2 * h))) / (12 * h);
    }
}
