using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace TyingClass.Balance.Fluid;

/// <summary>
/// A drag curve sampled once, so that the moment function needs no powers. Cubic Hermite pieces, 16 to each doubling of the Reynolds number, smooth to the
/// first derivative; relative error under 10⁻⁶ between 2⁻¹⁰ and 2²⁰, the curve itself outside.
/// </summary>
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

    /// <summary>Four at once; nothing where the Reynolds number is 0.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector256<double> At(Vector256<double> reynolds)
    {
        if (!TryFind(reynolds, out Vector256<double> t, out Pieces c)) return OneByOne(reynolds, out _);
        return Vector256.FusedMultiplyAdd(t, Vector256.FusedMultiplyAdd(t, Vector256.FusedMultiplyAdd(t, c.D, c.C), c.B), c.A);
    }

    /// <summary>Four at once, with the growth Re dC/dRe of each.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector256<double> At(Vector256<double> reynolds, out Vector256<double> growth)
    {
        if (!TryFind(reynolds, out Vector256<double> t, out Pieces c)) return OneByOne(reynolds, out growth);
        // A piece is a sixteenth of its octave wide, so Re over its width is 16 times the fraction, 16 to 32.
        growth = Vector256.Create((double)(1 << PiecesPerOctaveBits)) * Fraction(reynolds, OctaveMask)
            * (c.B + t * (Vector256.Create(2.0) * c.C + t * (Vector256.Create(3.0) * c.D)));
        return Vector256.FusedMultiplyAdd(t, Vector256.FusedMultiplyAdd(t, Vector256.FusedMultiplyAdd(t, c.D, c.C), c.B), c.A);
    }

    private const long OctaveMask = (1L << 52) - 1;
    private const long PieceMask = (1L << MantissaShift) - 1;

    private readonly record struct Pieces(Vector256<double> A, Vector256<double> B, Vector256<double> C, Vector256<double> D);

    // The masked bits behind the exponent of 1: from 1 up.
    private static Vector256<double> Fraction(Vector256<double> reynolds, long mask) =>
        ((reynolds.AsInt64() & Vector256.Create(mask)) | Vector256.Create(1023L << 52)).AsDouble();

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private bool TryFind(Vector256<double> reynolds, out Vector256<double> t, out Pieces c)
    {
        Vector256<long> piece = Vector256.ShiftRightArithmetic(reynolds.AsInt64(), MantissaShift) - Vector256.Create(FirstKey);
        t = (Fraction(reynolds, PieceMask) - Vector256<double>.One) * Vector256.Create((double)(1 << PiecesPerOctaveBits));
        if (!Vector256.LessThanAll(piece.AsUInt64(), Vector256.Create((ulong)PieceCount)))
        {
            c = default;
            return false;
        }

        ref double all = ref MemoryMarshal.GetArrayDataReference(_coefficients);
        ref double c0 = ref Unsafe.Add(ref all, (nint)(4 * piece[0])), c1 = ref Unsafe.Add(ref all, (nint)(4 * piece[1]));
        ref double c2 = ref Unsafe.Add(ref all, (nint)(4 * piece[2])), c3 = ref Unsafe.Add(ref all, (nint)(4 * piece[3]));
        c = new Pieces(
            Vector256.Create(c0, c1, c2, c3),
            Vector256.Create(Unsafe.Add(ref c0, 1), Unsafe.Add(ref c1, 1), Unsafe.Add(ref c2, 1), Unsafe.Add(ref c3, 1)),
            Vector256.Create(Unsafe.Add(ref c0, 2), Unsafe.Add(ref c1, 2), Unsafe.Add(ref c2, 2), Unsafe.Add(ref c3, 2)),
            Vector256.Create(Unsafe.Add(ref c0, 3), Unsafe.Add(ref c1, 3), Unsafe.Add(ref c2, 3), Unsafe.Add(ref c3, 3)));
        return true;
    }

    // Off the table, or no cross-flow at all: rare enough to take slowly.
    private Vector256<double> OneByOne(Vector256<double> reynolds, out Vector256<double> growth)
    {
        (double c0, double g0) = One(reynolds[0]);
        (double c1, double g1) = One(reynolds[1]);
        (double c2, double g2) = One(reynolds[2]);
        (double c3, double g3) = One(reynolds[3]);
        growth = Vector256.Create(g0, g1, g2, g3);
        return Vector256.Create(c0, c1, c2, c3);
    }

    /// <summary>The coefficient and its growth Re dC/dRe; both 0 where there is no flow.</summary>
    public (double Coefficient, double Growth) One(double reynolds)
    {
        if (!(reynolds > 0)) return (0, 0);
        long bits = BitConverter.DoubleToInt64Bits(reynolds), piece = (bits >> MantissaShift) - FirstKey;
        if ((ulong)piece >= PieceCount) return (_curve(reynolds), reynolds * Slope(reynolds));
        double t = (bits & PieceMask) * (1.0 / (1L << MantissaShift));
        int k = 4 * (int)piece;
        double[] c = _coefficients;
        double perWidth = (1 << PiecesPerOctaveBits) * BitConverter.Int64BitsToDouble((bits & OctaveMask) | (1023L << 52));
        return (c[k] + t * (c[k + 1] + t * (c[k + 2] + t * c[k + 3])), perWidth * (c[k + 1] + t * (2 * c[k + 2] + t * 3 * c[k + 3])));
    }

    private static double Edge(int piece) => BitConverter.Int64BitsToDouble((FirstKey + piece) << MantissaShift);

    private double Slope(double x)
    {
        double h = 1e-4 * x;
        return (8 * (_curve(x + h) - _curve(x - h)) - (_curve(x + 2 * h) - _curve(x - 2 * h))) / (12 * h);
    }
}
