using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Model;

namespace TyingClass.Drawing.Flies;

/// <summary>
/// Thread where something is bound down, and a head behind the eye when no bead or cone sits there. The recipe does not speak of thread and it weighs next to
/// nothing; without it wings would seem to float.
/// </summary>
internal static class ThreadArt
{
    public static IEnumerable<Piece> Bindings(Limb limb)
    {
        if (limb.Art.ThreadMm is not { } threadMm)
            yield break;
        // Bound down over or under a body, the few turns are lost in it.
        if (limb.Fly.GirthMm(limb.FrontMm) > limb.Fly.WireMm)
            yield break;
        double girth = limb.Fly.SeatMm(limb.Index, limb.FrontMm) + threadMm;
        yield return Band(limb.Fly, limb.Name, limb.FrontMm - 0.35, 1.3, girth, limb.Chance("thread"));
        if (limb.Spec.Tied == TieDown.BothEnds && limb.Fly.GirthMm(limb.RearMm) <= limb.Fly.WireMm)
            yield return Band(limb.Fly, limb.Name, limb.RearMm - 0.6, 1.2, limb.Fly.SeatMm(limb.Index, limb.RearMm) + 0.5, limb.Chance("thread"));
    }

    public static IEnumerable<Piece> Head(Anatomy fly)
    {
        double first = fly.Limbs.Where(l => !l.Art.LeavesRoomForHead).Select(l => l.FrontMm).DefaultIfEmpty(0).Min();
        if (fly.Limbs.IsEmpty || first < 0.7)
            yield break;
        double length = Math.Min(first, 3.2 * fly.WireMm + 0.4), start = Math.Max(0.1, first - length - 0.05);
        Lathe shape =
            new(fly.View, new Vector3D(start, 0, 0), Vector3D.UnitX, (0, 0.62 * fly.WireMm), (0.6 * length, 1.15 * fly.WireMm), (length, 1.1 * fly.WireMm));
        yield return Drawn(fly, "thread", shape, new Seeded(fly.Seed + "/head"));
    }

    /// <summary>The collar that holds a bead or cone at the ring, where bare steel would lie behind it: no recipe lists it.</summary>
    public static IEnumerable<Piece> Collars(Anatomy fly) => fly.Limbs
        .Where(l => l.Art.IsThreaded && fly.GirthMm(l.RearMm + 0.3) <= 0.6 * fly.WireMm)
        .Select(l => Band(fly, "thread", l.RearMm - 0.1, 1.2, 1.15 * fly.WireMm, new Seeded(fly.Seed + "/collar")));

    private static Piece Band(Anatomy fly, string name, double from, double length, double radius, Seeded chance)
    {
        Lathe shape =
            new(fly.View, new Vector3D(from, 0, 0), Vector3D.UnitX, (0, 0.75 * radius), (0.3 * length, radius), (0.7 * length, radius), (length, 0.8 * radius));
        return Drawn(fly, name, shape, chance);
    }

    private static Piece Drawn(Anatomy fly, string name, Lathe shape, Seeded chance)
    {
        double depth = fly.View.Depth(shape.Surface(0, 0).Place) + 0.25;
        return new Piece(depth, name, shape.Outline, ink =>
        {
            ink.Wash(shape.OutlinePath(), Tone.Thread);
            ink.Hatch(shape.Rings(1.2 * ink.PenMm, 2, chance), 0.45, 0.8);
            ink.Line(shape.OutlinePath(), 0.8);
        });
    }
}
