using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Towing;

/// <summary>Four vectors at once.</summary>
internal readonly struct Triple(Vector256<double> x, Vector256<double> y, Vector256<double> z)
{
    private readonly Vector256<double> _x = x, _y = y, _z = z;

    public static Triple Of(Vector3D v) => new(Vector256.Create(v.X), Vector256.Create(v.Y), Vector256.Create(v.Z));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Triple operator +(in Triple a, in Triple b) => new(a._x + b._x, a._y + b._y, a._z + b._z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Triple operator *(Vector256<double> s, in Triple a) => new(s * a._x, s * a._y, s * a._z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<double> Dot(in Triple a, in Triple b) => Fused(a._x, b._x, Fused(a._y, b._y, a._z * b._z));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Triple Cross(in Triple a, in Triple b) => new(
        Fused(a._y, b._z, -(a._z * b._y)), Fused(a._z, b._x, -(a._x * b._z)), Fused(a._x, b._y, -(a._y * b._x)));

    /// <summary>a + s b.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Triple Add(in Triple a, Vector256<double> s, in Triple b) => new(Fused(s, b._x, a._x), Fused(s, b._y, a._y), Fused(s, b._z, a._z));

    // Rounded once: the same to the last digit on every machine.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Fused(Vector256<double> a, Vector256<double> b, Vector256<double> c) => Vector256.FusedMultiplyAdd(a, b, c);

    public Vector3D Sum() => new(Vector256.Sum(_x), Vector256.Sum(_y), Vector256.Sum(_z));

    /// <summary>Four neighbors of a row.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector256<double> Load(double[] row, int at) => Vector256.LoadUnsafe(ref MemoryMarshal.GetArrayDataReference(row), (nuint)at);
}
