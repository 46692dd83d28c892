using System.Runtime.CompilerServices;
using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Retrieving;

/// <summary>A symmetric 3×3 matrix.</summary>
internal readonly record struct Symmetric3(double XX, double YY, double ZZ, double XY, double XZ, double YZ)
{
    public static Symmetric3 Diagonal(double value) => new(value, value, value, 0, 0, 0);

    /// <summary>a (1 - t tᵀ) + b t tᵀ for a unit vector t.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Symmetric3 About(Vector3D t, double across, double along)
    {
        double d = along - across;
        return new(across + d * t.X * t.X, across + d * t.Y * t.Y, across + d * t.Z * t.Z, d * t.X * t.Y, d * t.X * t.Z, d * t.Y * t.Z);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Symmetric3 operator +(in Symmetric3 a, in Symmetric3 b) =>
        new(a.XX + b.XX, a.YY + b.YY, a.ZZ + b.ZZ, a.XY + b.XY, a.XZ + b.XZ, a.YZ + b.YZ);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Symmetric3 operator -(in Symmetric3 a, in Symmetric3 b) =>
        new(a.XX - b.XX, a.YY - b.YY, a.ZZ - b.ZZ, a.XY - b.XY, a.XZ - b.XZ, a.YZ - b.YZ);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Symmetric3 operator *(double s, in Symmetric3 a) => new(s * a.XX, s * a.YY, s * a.ZZ, s * a.XY, s * a.XZ, s * a.YZ);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3D operator *(in Symmetric3 m, Vector3D v) => new(
        m.XX * v.X + m.XY * v.Y + m.XZ * v.Z, m.XY * v.X + m.YY * v.Y + m.YZ * v.Z, m.XZ * v.X + m.YZ * v.Y + m.ZZ * v.Z);

    /// <summary>The matrix must be positive definite.</summary>
    public Symmetric3 Inverse()
    {
        double a = YY * ZZ - YZ * YZ, b = XZ * YZ - XY * ZZ, c = XY * YZ - XZ * YY;
        double over = 1 / (XX * a + XY * b + XZ * c);
        return new(a * over, (XX * ZZ - XZ * XZ) * over, (XX * YY - XY * XY) * over, b * over, c * over, (XY * XZ - XX * YZ) * over);
    }

    /// <summary>K m K for a symmetric K.</summary>
    public static Symmetric3 Between(in Symmetric3 k, in Symmetric3 m)
    {
        Vector3D x = k * (m * new Vector3D(k.XX, k.XY, k.XZ)), y = k * (m * new Vector3D(k.XY, k.YY, k.YZ)), z = k * (m * new Vector3D(k.XZ, k.YZ, k.ZZ));
        return new(x.X, y.Y, z.Z, y.X, z.X, z.Y);
    }
}
