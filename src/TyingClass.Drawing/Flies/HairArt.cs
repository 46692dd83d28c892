using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;

namespace TyingClass.Drawing.Flies;

/// <summary>What a bunch looks like.</summary>
/// <param name="Spread">How far the tips fan out, share of the length.</param>
internal readonly record struct Bunch(int Strands, double Spread, Tone Tone)
{
    public bool Shiny { get; init; }
}

/// <summary>A bunch of hair: a soft wash under many single strokes, straddling whatever it is tied over.</summary>
internal static class HairArt
{
    public static IEnumerable<Piece> Draw(Limb limb, Sweep line, Vector3D outward, Bunch bunch)
    {
        Seeded chance = limb.Chance("hair");
        Vector3D across = limb.Direct(Vector3D.UnitY);
        double length = (line.D - line.A).Length, thick = Math.Clamp(0.022 * length, 0.2, 0.8);
        Sweep[] hairs = [.. Enumerable.Range(0, bunch.Strands).Select(_ =>
        {
            double side = chance.Bell(), up = chance.Bell(), curl = chance.Bell();
            Vector3D at(double fan) => fan * (side * 0.8 * across + up * outward);
            return line.Shifted(
                at(0.4 * thick), at(0.8 * thick + 0.3 * bunch.Spread * length), at(0.7 * thick + 0.65 * bunch.Spread * length),
                at(0.5 * thick + 0.75 * bunch.Spread * length) + curl * 0.018 * length * outward).Cut(chance.Between(0.72, 1));
        })];
        foreach (bool near in (bool[])[false, true])
        {
            Sweep[] half = [.. hairs.Where(h => Vector3D.Dot(h.At(0.5) - line.At(0.5), limb.View.Toward) >= 0 == near)];
            if (half.Length == 0)
                continue;
            Point[] outline = [.. half.SelectMany(h => Enumerable.Range(0, 6).Select(i => limb.View.At(h.At(i / 5.0))))];
            double depth = half.Average(h => limb.View.Depth(h.At(0.4))) + (near ? 0.22 : -0.02);
            yield return new Piece(depth, limb.Name, outline, ink => Strokes(ink, limb, line, half, bunch, near));
        }
    }

    private static void Strokes(Ink ink, Limb limb, Sweep line, Sweep[] hairs, Bunch bunch, bool near)
    {
        PathText broad = new(), fine = new(), light = new();
        for (int i = 0; i < hairs.Length; i++)
        {
            hairs[i].Cut(0.97).DrawOn(broad, limb.View);
            hairs[i].DrawOn(i % 5 == 1 ? light : fine, limb.View);
        }

        if (!bunch.Shiny && hairs.Length > 4 && Envelope.Fits(limb.View, line))
            ink.Wash(Envelope.Of(limb.View, line, hairs, 0.8), bunch.Tone, near ? 0.9 : 0.75);
        ink.Brush(broad, bunch.Tone, (bunch.Shiny ? 1.1 : 1.5) * ink.PenMm, near ? 0.95 : 0.8);
        ink.Line(fine, near ? 0.4 : 0.5, near ? 0.85 : 0.7);
        ink.Brush(light, Tone.Gleam, (bunch.Shiny ? 0.9 : 0.5) * ink.PenMm, bunch.Shiny ? 0.95 : 0.6);
    }
}
