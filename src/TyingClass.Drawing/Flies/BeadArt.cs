using TyingClass.Balance.Geometry;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;

namespace TyingClass.Drawing.Flies;

/// <summary>Turned metal or glass with a bore, hatched on the side away from the lamp.</summary>
internal sealed class BeadArt : PartArt
{
    public override PartKind Kind => PartKind.Bead;

    public override bool IsThreaded => true;

    public override IEnumerable<Piece> Draw(Limb bead)
    {
        double bore = 1e3 * Weight.BoreM(bead.SizeMm * 1e-3, bead.SizeMm * 1e-3, bead.Fly.Hook);
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
            Turned.Bore(ink, shape, bore / 2);
            Turned.Gleam(ink, bead.View, center, bead.SizeMm / 2);
            ink.Line(shape.OutlinePath(), 1.1);
        });
    }
}
