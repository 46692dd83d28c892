using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Model;

namespace TyingClass.Drawing.Flies;

/// <summary>Putty: a dull lump pressed to shape by fingers. Solder: a bright drop.</summary>
internal sealed class PuttyArt : PartArt
{
    public override PartKind Kind => PartKind.Putty;

    public override IEnumerable<Piece> Draw(Limb limb)
    {
        double radius = limb.SizeMm / 2, middle = (limb.FrontMm + limb.RearMm) / 2;
        int side = limb.SideSign();
        Vector3D center = limb.Place(middle, 0, side * (limb.Fly.SeatMm(limb.Index, middle) + radius));
        bool solder = limb.Material.EndsWith("solder", StringComparison.Ordinal);
        Lathe ball = new(limb.View, center - radius * Vector3D.UnitX, Vector3D.UnitX, Lathe.Ball(limb.SizeMm, 0));
        PathText outline = solder ? ball.OutlinePath() : Lump(limb, center, radius);
        yield return new Piece(ball.NearMm, limb.Name, ball.Outline, ink =>
        {
            ink.Wash(outline, solder ? Tone.Bright : Tone.Black);
            ink.Wash(ball.Crescent(center, 0.96 * radius, 1.4), Tone.Shade, 0.18);
            if (solder)
                Turned.Gleam(ink, limb.View, center, radius);
            else
                ink.Brush(Dents(limb, center, radius), Tone.Bright, 1.1 * ink.PenMm, 0.8);
            ink.Line(outline, 1.1);
        });
    }

    // A lump that fingers have been at, darker and rougher than any bead, the same in every picture of the fly.
    private static PathText Lump(Limb limb, Vector3D center, double radius)
    {
        Seeded chance = limb.Chance("lump");
        Point at = limb.View.At(center);
        return new PathText().Smooth(
            [.. Enumerable.Range(0, 11).Select(k =>
            {
                (double sin, double cos) = Math.SinCos(k * 2 * Math.PI / 11);
                return at + new Point(cos, sin) * (radius * chance.Between(0.84, 1.14));
            })],
            closed: true);
    }

    private static PathText Dents(Limb limb, Vector3D center, double radius)
    {
        Seeded chance = limb.Chance("dents");
        PathText path = new();
        Point at = limb.View.At(center);
        for (int i = 0; i < 9; i++)
        {
            double turn = chance.Next() * 2 * Math.PI, away = radius * chance.Between(0.1, 0.75), half = radius * chance.Between(0.1, 0.2);
            Point place = at + new Point(Math.Cos(turn), Math.Sin(turn)) * away, along = new Point(-Math.Sin(turn), Math.Cos(turn)) * half;
            Point bow = new Point(Math.Cos(turn), Math.Sin(turn)) * (0.5 * half);
            path.Move(place - along).Cubic(place - along * 0.4 + bow, place + along * 0.4 + bow, place + along);
        }

        return path;
    }
}
