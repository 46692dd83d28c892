using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;

namespace TyingClass.Drawing.Flies;

/// <summary>A clear tube with round ends, its balls in sight, two bands of thread over it.</summary>
internal sealed class RattleArt : PartArt
{
    public override PartKind Kind => PartKind.Rattle;

    public override bool LeavesRoomForHead => true;

    public override IEnumerable<Piece> Draw(Limb limb)
    {
        double radius = limb.SizeMm / 2, off = limb.Fly.SeatMm(limb.Index, (limb.FrontMm + limb.RearMm) / 2) + radius;
        bool beside = limb.Spec.Side == Side.Beside;
        (double y, double z) = beside ? (off, 0.0) : (0.0, limb.SideSign() * off);
        Lathe tube = new(limb.View, limb.Place(limb.FrontMm, y, z), Vector3D.UnitX, [.. Capsule(limb.LengthMm, radius)]);
        double depth = limb.View.Depth(limb.Place((limb.FrontMm + limb.RearMm) / 2, y, z)) + 0.22;
        Tone tone = limb.Material == "plastic" ? Tone.Resin : Tone.Glass;
        yield return new Piece(depth, limb.Name, tube.Outline, ink =>
        {
            ink.Wash(tube.OutlinePath(), tone, 0.55);
            ink.Wash(tube.Shadow(0.2), Tone.Shade, 0.1);
            Balls(ink, limb, y, z);
            ink.Wash(Gleam(limb, y, z, radius), Tone.Gleam, 0.85);
            ink.Line(tube.OutlinePath(), 1);
        });
        foreach (double share in (double[])[0.2, 0.8])
            yield return Band(limb, share, y, z, depth + 0.01);
    }

    private static IEnumerable<(double, double)> Capsule(double length, double radius)
    {
        double end = Math.Min(radius, length / 2);
        for (int i = 0; i <= 8; i++)
            yield return (end * (1 - Math.Cos(i * Math.PI / 16)), Math.Max(0.02, radius * Math.Sin(i * Math.PI / 16)));
        for (int i = 8; i >= 0; i--)
            yield return (length - end * (1 - Math.Cos(i * Math.PI / 16)), Math.Max(0.02, radius * Math.Sin(i * Math.PI / 16)));
    }

    // Side by side in the middle, where the figures put them too.
    private static void Balls(Ink ink, Limb limb, double y, double z)
    {
        int count = Rattle.Balls(limb.Spec);
        double ball = Rattle.Inside(limb.SizeMm, limb.LengthMm, count, limb.Fly.Hook).Ball, middle = (limb.FrontMm + limb.RearMm) / 2;
        Tone tone = Tone.Of(limb.Spec.BallMaterial ?? "steel");
        for (int i = 0; i < count; i++)
        {
            Vector3D center = limb.Place(middle + (i - (count - 1) / 2.0) * ball, y, z);
            Lathe shape = new(limb.View, center - ball / 2 * Vector3D.UnitX, Vector3D.UnitX, Lathe.Ball(ball, 0));
            ink.Wash(shape.OutlinePath(), tone);
            ink.Wash(shape.Crescent(center, ball / 2, 1.5), Tone.Shade, 0.25);
            ink.Line(shape.OutlinePath(), 0.7);
            Turned.Gleam(ink, limb.View, center, ball / 2);
        }
    }

    private static PathText Gleam(Limb limb, double y, double z, double radius)
    {
        Vector3D half = (limb.View.Light + limb.View.Toward).Normalized(), outward = new(0, half.Y, half.Z);
        if (outward.Length < 0.3)
            return new PathText();
        outward = outward.Normalized();
        Point At(double share, double turn)
        {
            Vector3D o = outward.RotatedAbout(Vector3D.UnitX, turn);
            return limb.View.At(limb.Place(limb.FrontMm + share * limb.LengthMm, y, z) + 0.98 * radius * o);
        }

        return new PathText().Smooth([At(0.25, 0), At(0.5, 0.12), At(0.75, 0), At(0.5, -0.06)], closed: true);
    }

    private static Piece Band(Limb limb, double share, double y, double z, double depth)
    {
        double width = Math.Min(1, 0.1 * limb.LengthMm), x = limb.FrontMm + share * limb.LengthMm - width / 2, r = limb.SizeMm / 2 + 0.06;
        Lathe band = new(limb.View, limb.Place(x, y, z), Vector3D.UnitX, (0, r), (width, r));
        return new Piece(depth, limb.Name, band.Outline, ink =>
        {
            ink.Wash(band.OutlinePath(), Tone.Thread, 0.9);
            ink.Hatch(band.Rings(1.2 * ink.PenMm, 2, limb.Chance("band")), 0.45, 0.8);
            ink.Line(band.OutlinePath(), 0.7);
        });
    }
}
