using System.Collections.Immutable;
using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Sinking;

/// <summary>Directions of up to let a sinking fly go from, spread evenly over the ball: a Fibonacci lattice (González, Math. Geosci. 42 (2010) 49).</summary>
internal static class SinkStarts
{
    private const int Count = 24;

    public static ImmutableArray<Vector3D> All { get; } = [.. Enumerable.Range(0, Count).Select(At)];

    private static Vector3D At(int i)
    {
        double x = 1 - (2 * i + 1.0) / Count, across = Math.Sqrt(1 - x * x), golden = Math.PI * (3 - Math.Sqrt(5));
        // An odd turn keeps every start off the plane of symmetry.
        (double sin, double cos) = Math.SinCos(golden * i + 0.4);
        return new Vector3D(x, across * sin, across * cos);
    }
}
