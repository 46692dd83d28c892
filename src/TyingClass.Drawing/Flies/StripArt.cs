using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;

namespace TyingClass.Drawing.Flies;

/// <summary>Fur on the hide: a strip of leather with underfur and darker guard hairs sloping off it.</summary>
internal static class StripArt
{
    private const int Fine = 80;

    /// <param name="stretch">0 a whole strip, 1 its bound part, 2 the free part behind.</param>
    public static IEnumerable<Piece> Draw(Limb limb, Sweep line, Vector3D outward, int stretch)
    {
        Seeded chance = limb.Chance("fur" + stretch);
        double length = (line.D - line.A).Length, pile = Math.Clamp(0.17 * limb.LengthMm, 2.5, 7), half = 0.9;
        int count = (int)Math.Clamp(length * 8, 60, 300);
        Vector3D across = limb.Direct(Vector3D.UnitY);
        List<Sweep> fur = [];
        for (int i = 0; i < count; i++)
        {
            double t = (i + chance.Next()) / count, side = chance.Between(-1, 1);
            Vector3D along = line.Tangent(t), up = (outward - Vector3D.Dot(outward, along) * along).Normalized();
            double tall = pile * chance.Between(0.6, 1.1) * (0.55 + 0.45 * Math.Min(1, 6 * t)), slope = chance.Between(0.5, 1.0);
            Vector3D root = line.At(t) + side * half * across;
            Vector3D stand = (slope * up + along + side * 0.3 * across).Normalized(), lie = (0.3 * slope * up + along + side * 0.2 * across).Normalized();
            Vector3D b = root + 0.4 * tall * stand, c = b + 0.3 * tall * stand;
            fur.Add(new Sweep(root, b, c, c + 0.3 * tall * lie));
        }

        Point[] outline = [.. fur.SelectMany(f => (Point[])[limb.View.At(f.A), limb.View.At(f.D)])];
        double depth = limb.View.Depth(line.At(0.4)) + 0.23;
        (double T, int Bend)? slit = Slit(limb, line);
        yield return new Piece(depth, limb.Name, outline, ink =>
        {
            PathText hide = new(), under = new(), guard = new(), light = new();
            line.DrawOn(hide, limb.View);
            for (int i = 0; i < fur.Count; i++)
            {
                fur[i].Cut(0.8).DrawOn(under, limb.View);
                if (i % 5 < 3)
                    fur[i].DrawOn(guard, limb.View);
                else if (i % 5 == 3)
                    fur[i].DrawOn(light, limb.View);
            }

            if (Envelope.Fits(limb.View, line))
                ink.Wash(Pile(limb, line, outward, pile), limb.Fly.Dye(1), 0.8);
            ink.Brush(under, limb.Fly.Dye(1), 1.6 * ink.PenMm, 0.9);
            ink.Brush(light, Tone.Gleam, 0.5 * ink.PenMm, 0.55);
            ink.Line(guard, 0.4, 0.85);
            ink.Line(hide, 2.6);
            ink.Brush(hide, Tone.Hide, 1.4 * ink.PenMm);
            if (slit is { } at) DrawSlit(ink, limb, line, at.T, at.Bend);
        });
    }

    /// <summary>Where the hide is slit for the bend to come through: on the strip, and on the bend's line. Null where the two do not meet.</summary>
    internal static (double T, int Bend)? Slit(Limb limb, Sweep line)
    {
        Vector3D[] bend = [.. HookArt.Bend(limb.Fly.Hook)];
        (double T, int Bend) best = (0, 0);
        double nearest = double.MaxValue;
        for (int i = 1; i <= Fine; i++)
        {
            Vector3D on = line.At(i / (double)Fine);
            for (int k = 1; k < bend.Length - 1; k++)
            {
                double away = (on - bend[k]).Length;
                if (away < nearest) (best, nearest) = ((i / (double)Fine, k), away);
            }
        }

        return nearest < 1.2 * limb.Fly.WireMm ? best : null;
    }

    // An opening in the hide, a little longer than the wire is thick, and the wire that comes out of it.
    private static void DrawSlit(Ink ink, Limb limb, Sweep line, double t, int at)
    {
        Vector3D middle = line.At(t), half = 1.6 * limb.Fly.WireMm * line.Tangent(t);
        Point front = limb.View.At(middle - half), rear = limb.View.At(middle + half), along = rear - front;
        Point side = along.Length > 1e-6 ? along.Unit().Turned() * (0.9 * limb.Fly.WireMm) : new Point(0, 0);
        PathText opening = new PathText().Move(front).Cubic(front + along * 0.3 + side, front + along * 0.7 + side, rear)
            .Cubic(front + along * 0.7 - side, front + along * 0.3 - side, front);
        ink.Wash(opening, Tone.Paper);
        ink.Line(opening, 0.9);
        Point[] wire = [.. HookArt.Bend(limb.Fly.Hook).Skip(at - 1).Take(4).Select(limb.View.At)];
        Point shift = new(-0.1 * limb.Fly.WireMm, -0.18 * limb.Fly.WireMm);
        ink.Wire(new PathText().Polyline(wire), Tone.Steel, limb.Fly.WireMm, new PathText().Polyline([.. wire.Select(p => p + shift)]));
    }

    // The mass of the fur, from the hide to a little under the tips.
    private static PathText Pile(Limb limb, Sweep line, Vector3D outward, double pile)
    {
        List<Point> tips = [], hide = [];
        for (int i = 0; i <= 10; i++)
        {
            double t = i / 10.0;
            Vector3D along = line.Tangent(t), up = (outward - Vector3D.Dot(outward, along) * along).Normalized();
            hide.Add(limb.View.At(line.At(t)));
            tips.Add(limb.View.At(line.At(t) + pile * (0.42 * Math.Min(1, 0.3 + 3 * t) * up + 0.5 * along)));
        }

        return new PathText().Smooth([.. hide, .. Enumerable.Reverse(tips)], closed: true);
    }
}
