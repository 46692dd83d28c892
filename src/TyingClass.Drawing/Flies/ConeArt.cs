using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;

namespace TyingClass.Drawing.Flies;

/// <summary>Turned metal, nose forward.</summary>
internal sealed class ConeArt : PartArt
{
    public override PartKind Kind => PartKind.Cone;

    public override bool IsThreaded => true;

    public override IEnumerable<Piece> Draw(Limb cone)
    {
        double nose = 1e3 * Cone.NoseM(cone.SizeMm * 1e-3, cone.Fly.Hook) / 2, wide = cone.SizeMm / 2, lip = Math.Min(0.12 * cone.LengthMm, 0.5);
        double bore = 1e3 * Weight.BoreM(cone.SizeMm * 1e-3, 2e-3 * nose, cone.Fly.Hook) / 2;
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

            Turned.Bore(ink, shape, bore);
            Streak(ink, cone, nose, wide);
            ink.Line(shape.OutlinePath(), 1.1);
        });
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
}
