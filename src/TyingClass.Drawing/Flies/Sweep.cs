using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;

namespace TyingClass.Drawing.Flies;

/// <summary>A cubic curve in the hook frame: the line that a strand follows. A parallel view of it is again a cubic, so it is drawn exactly.</summary>
internal readonly record struct Sweep(Vector3D A, Vector3D B, Vector3D C, Vector3D D)
{
    /// <summary>From a tie-in, leaving along its own direction and bending, the more the suppler, into the direction it trails.</summary>
    public static Sweep Trailing(Vector3D root, Vector3D own, Vector3D trail, double lengthMm, double supple)
    {
        Vector3D end = Mixed(own, trail, supple), middle = Mixed(own, trail, 0.6 * supple);
        double first = lengthMm * (0.34 - 0.16 * supple), last = 0.36 * lengthMm;
        Vector3D b = root + first * own, c = b + (lengthMm - first - last) * middle;
        return new Sweep(root, b, c, c + last * end);
    }

    public Vector3D At(double t)
    {
        double u = 1 - t;
        return u * u * u * A + 3 * u * u * t * B + 3 * u * t * t * C + t * t * t * D;
    }

    public Vector3D Tangent(double t)
    {
        double u = 1 - t;
        Vector3D d = u * u * (B - A) + 2 * u * t * (C - B) + t * t * (D - C);
        return d.Length > 1e-9 ? d.Normalized() : (D - A).Normalized();
    }

    public Sweep Shifted(Vector3D a, Vector3D b, Vector3D c, Vector3D d) => new(A + a, B + b, C + c, D + d);

    /// <summary>The same line cut short at a share of it (de Casteljau).</summary>
    public Sweep Cut(double t)
    {
        static Vector3D Mid(Vector3D p, Vector3D q, double t) => p + t * (q - p);
        Vector3D ab = Mid(A, B, t), bc = Mid(B, C, t), cd = Mid(C, D, t), abc = Mid(ab, bc, t), bcd = Mid(bc, cd, t);
        return new Sweep(A, ab, abc, Mid(abc, bcd, t));
    }

    public void DrawOn(PathText path, View view) => path.Move(view.At(A)).Cubic(view.At(B), view.At(C), view.At(D));

    private static Vector3D Mixed(Vector3D a, Vector3D b, double share)
    {
        Vector3D sum = (1 - share) * a + share * b;
        return sum.Length > 1e-6 ? sum.Normalized() : a;
    }
}
