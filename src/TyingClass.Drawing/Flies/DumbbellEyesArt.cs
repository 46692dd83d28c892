using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Geometry;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;

namespace TyingClass.Drawing.Flies;

/// <summary>Two painted barrels and the lashing between them.</summary>
internal sealed class DumbbellEyesArt : PartArt
{
    public override PartKind Kind => PartKind.DumbbellEyes;

    public override IEnumerable<Piece> Draw(Limb eyes)
    {
        double size = eyes.SizeMm;
        (double barrel, double reach, double waist) = DumbbellEyes.Shape(size, eyes.Fly.Hook);
        double x = (eyes.FrontMm + eyes.RearMm) / 2, z = eyes.SideSign() * (eyes.Fly.WireMm + waist) / 2;
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
        if (shape.Face(front: false, radius - edge) is not { } rim || shape.Face(front: false, 0.66 * radius) is not { } iris
            || shape.Face(front: false, 0.34 * radius) is not { } pupil)
            return;
        ink.Line(rim, 0.5);
        ink.Wash(iris, Tone.Iris);
        ink.Line(iris, 0.6);
        ink.Wash(pupil, Tone.Pupil);
        Point glint = shape.Outline.Aggregate(new Point(0, 0), (sum, p) => sum + p) * (1.0 / shape.Outline.Count) + new Point(-0.14 * radius, -0.16 * radius);
        ink.Wash(Turned.Spot(glint, 0.1 * radius), Tone.Gleam, 0.95);
    }
}
