using System.Collections.Immutable;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;

namespace TyingClass.Balance.Towing;

/// <summary>A stable attitude and the share of releases that end there, 0 to 1.</summary>
public readonly record struct Basin(Rest Rest, double Share);

/// <summary>Every attitude a towed fly can settle in, found by letting it go from all round.</summary>
public static class Releases
{
    private const double SameAttitudeRad = 0.01;

    /// <summary>
    /// The 24 turns that carry a cube onto itself, spread evenly over all attitudes, then turned together by an odd amount so that none starts in a plane of
    /// symmetry.
    /// </summary>
    public static ImmutableArray<Attitude> Starts { get; } = MakeStarts();

    /// <summary>Stable attitudes, the commonest first. Shares sum to under 1 when some releases never settle.</summary>
    public static ImmutableArray<Basin> StableAttitudes(TowedFly fly, double speedMS)
    {
        List<(Rest At, int Count)> found = [];
        foreach (Attitude start in Starts)
        {
            StopSignal.Heed();
            if (!Settling.TryFindRestUnlessItSpins(fly, speedMS, fly.Hand < 0 ? Mirrored(start) : start, out Rest rest) || !rest.IsStable)
            {
                continue;
            }

            int i = found.FindIndex(f => f.At.Attitude.AngleTo(rest.Attitude) < SameAttitudeRad);
            if (i < 0)
            {
                found.Add((rest, 1));
            }
            else
            {
                found[i] = (found[i].At, found[i].Count + 1);
            }
        }

        return [.. found.OrderByDescending(f => f.Count).Select(f => new Basin(f.At, f.Count / (double)Starts.Length))];
    }

    private static Attitude Mirrored(Attitude start) => new(Mirrored(start.Flow), Mirrored(start.Up));

    private static Vector3D Mirrored(Vector3D v) => v with { Y = -v.Y };

    private static ImmutableArray<Attitude> MakeStarts()
    {
        Vector3D[] axes = [Vector3D.UnitX, -Vector3D.UnitX, Vector3D.UnitY, -Vector3D.UnitY, Vector3D.UnitZ, -Vector3D.UnitZ];
        Vector3D odd = new(0.31, -0.23, 0.17);
        return [.. from flow in axes
                   from up in axes
                   where Vector3D.Dot(flow, up) == 0
                   select new Attitude(flow, up).Turned(odd)];
    }
}
