using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Drawing.Flies;

/// <summary>Beads, cones and dumbbell eyes: turned metal with a bore, hatched on the side away from the lamp.</summary>
internal static class WeightArt
{
    public static IEnumerable<Piece> Bead(Limb bead)
    {
        double bore = 1e3 * PartDimensions.BoreM(bead.SizeMm * 1e-3, bead.SizeMm * 1e-3, bead.Fly.Hook);
        Vector3D front = bead.Place(bead.FrontMm, 0, 0), center = bead.Place((bead.FrontMm + bead.RearMm) / 2, 0, 0);
        Lathe shape = new(bead.View, front, Vector3D.UnitX, Lathe.Ball(bead.SizeMm, bore));
        Tone tone = Tone.Of(bead.Material);
        bool glass = tone == Tone.Glass;
        yield return new Piece(shape.NearMm, bead.Name, shape.Outline, ink =>
        {
            ink.Wash(shape.OutlinePath(), tone, glass ? 0.8 : 1);
            ink.Wash(shape.Crescent(center, bead.SizeMm / 2, 1.25), Tone.Shade, glass ? 0.08 : 0.13);
            ink.Wash(shape.Crescent(center, bead.SizeMm / 2, 1.75), Tone.Shade, glass ? 0.1 : 0.16);
            ink.Hatch(shape.Crescents(center, bead.SizeMm / 2, 2.2 * ink.PenMm));
            Bore(ink, shape, bore / 2);
            Gleam(ink, bead.View, center, bead.SizeMm / 2);
            ink.Line(shape.OutlinePath(), 1.1);
        });
    }

    public static IEnumerable<Piece> Cone(Limb cone)
    {
        double nose = 1e3 * PartDimensions.ConeNoseM(cone.SizeMm * 1e-3) / 2, wide = cone.SizeMm / 2, lip = Math.Min(0.12 * cone.LengthMm, 0.5);
        double bore = 1e3 * PartDimensions.BoreM(cone.SizeMm * 1e-3, 2e-3 * nose, cone.Fly.Hook) / 2;
        Lathe shape = new(
            cone.View, cone.Place(cone.FrontMm, 0, 0), Vector3D.UnitX,
            (0, nose), (cone.LengthMm - lip, wide - 0.02), (cone.LengthMm, wide));
        yield return new Piece(shape.NearMm, cone.Name, shape.Outline, ink =>
        {
            Tone tone = Tone.Of(cone.Material);
            ink.Wash(shape.OutlinePath(), tone);
            ink.Wash(shape.Shadow(-0.2), Tone.Shade, 0.12);
            ink.Wash(shape.Shadow(0.2), Tone.Shade, 0.16);
            ink.Hatch(shape.Rings(2 * ink.PenMm, 0.12, cone.Chance("hatch")));
            if (shape.Face(front: true, nose) is { } face)
            {
                ink.Wash(face, tone);
                ink.Line(face, 0.8);
            }

            if (shape.Face(front: false, wide) is { } back)
            {
                ink.Wash(back, Tone.Shade, 0.45);
                ink.Line(back, 0.8);
            }

            Bore(ink, shape, bore);
            Streak(ink, cone, nose, wide);
            ink.Line(shape.OutlinePath(), 1.1);
        });
    }

    public static IEnumerable<Piece> Dumbbell(Limb eyes)
    {
        double size = eyes.SizeMm, barrel = PartScale.EyeBarrelShare.Value * size, waist = PartScale.EyeWaistShare.Value * size, reach = PartScale.EyeReachShare.Value * size;
        double x = (eyes.FrontMm + eyes.RearMm) / 2, z = eyes.SideSign(Side.Top) * (eyes.Fly.WireMm + waist) / 2;
        Tone tone = Tone.Of(eyes.Material);
        Vector3D out1 = eyes.Direct(Vector3D.UnitY);
        Lathe bar = new(eyes.View, eyes.Place(x, -reach + barrel / 2, z), out1, (0, waist / 2), (2 * reach - barrel, waist / 2));
        yield return new Piece(eyes.View.Depth(eyes.Place(x, 0, z)) + waist / 2, eyes.Name, bar.Outline, ink =>
        {
            ink.Wash(bar.OutlinePath(), Tone.Thread);
            ink.Hatch(bar.Rings(1.5 * ink.PenMm, 2, eyes.Chance("lashing")), 0.6);
            ink.Line(bar.OutlinePath(), 0.9);
        });
        foreach (int hand in (int[])[-1, 1])
        {
            double edge = 0.09 * size;
            Lathe shape = new(
                eyes.View, eyes.Place(x, hand * (reach - barrel / 2), z), hand * out1,
                (0, size / 2 - edge), (edge, size / 2), (barrel - edge, size / 2), (barrel, size / 2 - edge));
            yield return new Piece(shape.NearMm, eyes.Name, shape.Outline, ink =>
            {
                ink.Wash(shape.OutlinePath(), tone);
                ink.Wash(shape.Shadow(0.05), Tone.Shade, 0.22);
                ink.Hatch(shape.Rings(1.8 * ink.PenMm, -0.1, eyes.Chance("hatch")));
                Iris(ink, shape, size / 2, edge);
                ink.Line(shape.OutlinePath(), 1.1);
            });
        }
    }

    private static void Iris(Ink ink, Lathe shape, double radius, double edge)
    {
        if (shape.Face(front: false, radius - edge) is not { } rim || shape.Face(front: false, 0.66 * radius) is not { } iris || shape.Face(front: false, 0.34 * radius) is not { } pupil)
            return;
        ink.Line(rim, 0.5);
        ink.Wash(iris, Tone.Iris);
        ink.Line(iris, 0.6);
        ink.Wash(pupil, Tone.Pupil);
        Point glint = shape.Outline.Aggregate(new Point(0, 0), (sum, p) => sum + p) * (1.0 / shape.Outline.Count) + new Point(-0.14 * radius, -0.16 * radius);
        ink.Wash(Spot(glint, 0.1 * radius), Tone.Gleam, 0.95);
    }

    private static void Bore(Ink ink, Lathe shape, double radius)
    {
        foreach (bool front in (bool[])[true, false])
        {
            if (shape.Face(front, radius) is not { } hole)
                continue;
            ink.Wash(hole, Tone.Pupil, 0.85);
            ink.Line(hole, 0.6);
        }
    }

    private static void Gleam(Ink ink, View view, Vector3D center, double radius)
    {
        Vector3D half = (view.Light + view.Toward).Normalized();
        Point at = view.At(center + 0.92 * radius * half), tilt = (at - view.At(center)).Unit();
        Point[] ring = [.. Enumerable.Range(0, 14).Select(k =>
        {
            (double sin, double cos) = Math.SinCos(k * Math.PI / 7);
            return at + tilt * (cos * 0.13 * radius) + tilt.Turned() * (sin * 0.22 * radius);
        })];
        ink.Wash(new PathText().Smooth(ring, closed: true), Tone.Gleam, 0.9);
    }

    // The bright line down a cone, where its side faces halfway between lamp and onlooker.
    private static void Streak(Ink ink, Limb cone, double nose, double wide)
    {
        Vector3D half = (cone.View.Light + cone.View.Toward).Normalized();
        Vector3D outward = new Vector3D(0, half.Y, half.Z);
        if (outward.Length < 0.3)
            return;
        outward = outward.Normalized();
        Point At(double share, double turn)
        {
            Vector3D o = outward.RotatedAbout(Vector3D.UnitX, turn);
            double r = nose + (wide - nose) * share;
            return cone.View.At(cone.Place(cone.FrontMm + share * cone.LengthMm, r * o.Y, r * o.Z));
        }

        ink.Wash(new PathText().Polyline([At(0.1, 0), At(0.9, 0.07), At(0.9, -0.07)], closed: true), Tone.Gleam, 0.8);
    }

    private static PathText Spot(Point at, double radius) => new PathText().Smooth(
        [.. Enumerable.Range(0, 8).Select(k => at + new Point(Math.Cos(k * Math.PI / 4), Math.Sin(k * Math.PI / 4)) * radius)], closed: true);
}
