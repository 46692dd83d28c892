using System.Runtime.CompilerServices;

namespace TyingClass.Balance.Geometry;

/// <summary>A vector in three dimensions, double precision. Units are those of the member that holds it.</summary>
public readonly record struct Vector3D(double X, double Y, double Z)
{
    public static readonly Vector3D Zero;
    public static readonly Vector3D UnitX = new(1, 0, 0);
    public static readonly Vector3D UnitY = new(0, 1, 0);
    public static readonly Vector3D UnitZ = new(0, 0, 1);

    public double LengthSquared => X * X + Y * Y + Z * Z;

    public double Length => Math.Sqrt(LengthSquared);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3D operator +(Vector3D a, Vector3D b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3D operator -(Vector3D a, Vector3D b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3D operator -(Vector3D a) => new(-a.X, -a.Y, -a.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3D operator *(double s, Vector3D a) => new(s * a.X, s * a.Y, s * a.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3D operator *(Vector3D a, double s) => s * a;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3D operator /(Vector3D a, double s) => new(a.X / s, a.Y / s, a.Z / s);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Dot(Vector3D a, Vector3D b) => a.X * b.X + a.Y * b.Y + a.Z * b.Z;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3D Cross(Vector3D a, Vector3D b) =>
        new(a.Y * b.Z - a.Z * b.Y, a.Z * b.X - a.X * b.Z, a.X * b.Y - a.Y * b.X);

    /// <summary>The unit vector along this one.</summary>
    /// <exception cref="InvalidOperationException">The length is zero or not finite.</exception>
    public Vector3D Normalized()
    {
        double length = Length;
        return length > 0 && double.IsFinite(length)
            ? this / length
            : throw new InvalidOperationException($"A vector of length {length} has no direction.");
    }

    /// <summary>Turns this vector by <paramref name="angleRad"/> about a unit <paramref name="axis"/>, right-handed (Rodrigues' formula).</summary>
    public Vector3D RotatedAbout(Vector3D axis, double angleRad)
    {
        (double sin, double cos) = Math.SinCos(angleRad);
        return cos * this + sin * Cross(axis, this) + (1 - cos) * Dot(axis, this) * axis;
    }
}
