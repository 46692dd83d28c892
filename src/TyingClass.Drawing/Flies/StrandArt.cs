using TyingClass.Balance.Geometry;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;

namespace TyingClass.Drawing.Flies;

/// <summary>
/// Wings and tails. Supple stuff streams where the water (or, hung up, its weight) takes it; that is the artist's reading of the material, the figures do not
/// depend on it.
/// </summary>
internal static class StrandArt
{
    /// <param name="wing">It lies on the body and leaves it at an angle.</param>
    public static IEnumerable<Piece> Draw(Limb limb, bool wing)
    {
        int side = limb.SideSign();
        double rise = side * (limb.Fly.SeatMm(limb.Index, limb.FrontMm) + 0.25);
        Vector3D outward = limb.Direct(new Vector3D(0, 0, side == 0 ? 1 : side));
        if (limb.Spec.Tied == TieDown.BothEnds)
            return Bound(limb, rise, outward);

        double angle = wing ? side * double.DegreesToRadians(Wing.AngleDeg.Value) : 0;
        Vector3D own = limb.Direct(new Vector3D(Math.Cos(angle), 0, Math.Sin(angle)));
        Sweep line = Sweep.Trailing(limb.Place(limb.FrontMm, 0, rise), own, Clear(limb, outward, wing), limb.LengthMm, limb.Suppleness);
        return Stuff(limb, Lifted(limb, line, outward, wing ? side : 0), outward);
    }

    /// <summary>What the strand is: each kind has its own hand.</summary>
    private static IEnumerable<Piece> Stuff(Limb limb, Sweep line, Vector3D outward) => limb.Material switch
    {
        "fur strip" => StripArt.Draw(limb, line, outward, 0),
        "marabou" => PlumeArt.Marabou(limb, line, outward),
        "feather" => PlumeArt.Feather(limb, line, outward),
        "rubber" or "silicone rubber" =>
            LegsArt.Rubber(limb, [line, line.Shifted(Vector3D.Zero, Vector3D.Zero, 0.06 * limb.LengthMm * outward, 0.14 * limb.LengthMm * outward)]),
        "flash" or "tinsel" => HairArt.Draw(limb, line, outward, new Bunch(16, 0.05, Tone.Bright) { Shiny = true }),
        "synthetic hair" or "wool" => HairArt.Draw(limb, line, outward, new Bunch(84, 0.055, limb.Fly.Dye(1))),
        _ => HairArt.Draw(limb, line, outward, new Bunch(80, 0.065, limb.Fly.Dye(1))),
    };

    // Bound down at both ends: along the back of the body, then free behind the rear tie.
    private static IEnumerable<Piece> Bound(Limb limb, double rise, Vector3D outward)
    {
        double run = limb.RearMm - limb.FrontMm, bound = Math.Min(run, limb.LengthMm), free = limb.LengthMm - bound;
        double girth = Enumerable.Range(0, 5).Max(i => limb.Fly.GirthMm(limb.FrontMm + bound * i / 4)) + 0.2 - Math.Abs(rise);
        Vector3D a = limb.Place(limb.FrontMm, 0, rise), d = limb.Place(limb.FrontMm + bound, 0, rise), lift = Math.Max(girth, 0.15) * 1.25 * outward;
        Sweep over = new(a, a + 0.3 * (d - a) + lift, a + 0.7 * (d - a) + lift, d);
        Vector3D trail = Clear(limb, outward, true);
        Sweep? rest = free > 0.5 ? Sweep.Trailing(d, limb.Direct(Vector3D.UnitX), trail, free, limb.Suppleness) : null;
        if (limb.Material == "fur strip")
            return [.. StripArt.Draw(limb, over, outward, 1), .. rest is { } r ? StripArt.Draw(limb, r, outward, 2) : []];
        return [.. HairArt.Draw(limb, over, outward, new Bunch(34, 0.02, limb.Fly.Dye(1))), .. rest is { } f ? Stuff(limb, f, outward) : []];
    }

    // The trail as far as the shank leaves it free: a wing lies on the body, it does not stream through it.
    private static Vector3D Clear(Limb limb, Vector3D outward, bool wing)
    {
        Vector3D trail = limb.Fly.Trail;
        double into = Vector3D.Dot(trail, outward);
        if (!wing || into >= 0)
            return trail;
        Vector3D along = trail - into * outward;
        return along.Length > 0.2 ? along.Normalized() : limb.Direct(Vector3D.UnitX);
    }

    private static Sweep Lifted(Limb limb, Sweep line, Vector3D outward, int side)
    {
        if (side == 0)
            return line;
        double Short(Vector3D p) => Math.Max(0, limb.Fly.GirthMm(p.X) * 0.9 - Vector3D.Dot(p, outward));
        double b = Short(line.At(0.3)), c = Short(line.At(0.6));
        return line.Shifted(Vector3D.Zero, 1.2 * Math.Max(b, 0.6 * c) * outward, c * outward, 0.4 * c * outward);
    }
}
