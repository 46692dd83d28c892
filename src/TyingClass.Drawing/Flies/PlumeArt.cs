using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;

namespace TyingClass.Drawing.Flies;

/// <summary>Feathers: marabou as a cloud of downy plumes, others as a stem with a vane of barbs.</summary>
internal static class PlumeArt
{
    public static IEnumerable<Piece> Marabou(Limb limb, Sweep line, Vector3D outward)
    {
        Seeded chance = limb.Chance("marabou");
        Vector3D across = limb.Direct(Vector3D.UnitY);
        double length = (line.D - line.A).Length;
        List<Sweep> down = [], stems = [];
        for (int i = 0; i < 11; i++)
        {
            double side = chance.Bell(), up = chance.Bell(), wave = chance.Bell();
            Vector3D fan = side * 0.7 * across + up * outward;
            Sweep stem = line.Shifted(
                0.015 * length * fan, 0.05 * length * fan + wave * 0.03 * length * outward,
                0.085 * length * fan - wave * 0.05 * length * outward, 0.075 * length * fan + wave * 0.05 * length * outward).Cut(chance.Between(0.72, 1));
            stems.Add(stem);
            for (int k = 0; k < 44; k++)
            {
                double t = 0.1 + 0.9 * (k + chance.Next()) / 44, hand = k % 2 == 0 ? 1 : -1;
                Vector3D along = stem.Tangent(t), off = (hand * outward + chance.Between(-0.9, 0.9) * across).Normalized();
                double barb = 0.14 * length * chance.Between(0.5, 1.2) * (1.1 - 0.5 * t), slant = chance.Between(0.18, 0.5);
                Vector3D root = stem.At(t), b = root + 0.45 * barb * (along + slant * off).Normalized();
                down.Add(new Sweep(root, b, b + 0.25 * barb * along, b + 0.6 * barb * (along + chance.Between(-0.2, 0.5) * off).Normalized()));
            }
        }

        Point[] outline = [.. stems.SelectMany(s => Enumerable.Range(0, 5).Select(i => limb.View.At(s.At(i / 4.0)))), .. down.Select(d => limb.View.At(d.D))];
        yield return new Piece(limb.View.Depth(line.At(0.4)) + 0.22, limb.Name, outline, ink =>
        {
            PathText soft = new(), fine = new(), light = new(), stem = new();
            for (int i = 0; i < down.Count; i++)
                down[i].DrawOn(i % 9 == 0 ? light : i % 9 < 5 ? soft : fine, limb.View);
            foreach (Sweep s in stems)
                s.DrawOn(stem, limb.View);
            if (Envelope.Fits(limb.View, line))
                ink.Wash(Envelope.Of(limb.View, line, stems, 0.85), limb.Fly.Dye(1), 0.55);
            ink.Brush(soft, limb.Fly.Dye(1), 1.3 * ink.PenMm, 0.8);
            ink.Line(fine, 0.32, 0.7);
            ink.Line(stem, 0.4, 0.6);
            ink.Brush(light, Tone.Gleam, 0.45 * ink.PenMm, 0.6);
        });
    }

    public static IEnumerable<Piece> Feather(Limb limb, Sweep line, Vector3D outward)
    {
        Vector3D across = limb.Direct(Vector3D.UnitY);
        foreach (int hand in (int[])[-1, 1])
        {
            Seeded chance = limb.Chance("feather" + hand);
            double length = (line.D - line.A).Length, width = Math.Clamp(0.11 * length, 0.8, 4);
            Sweep stem = line.Shifted(0.15 * hand * across, 0.5 * hand * across, 0.9 * hand * across, 1.2 * hand * across + 0.03 * hand * length * outward);
            Vector3D[] upper = [.. Enumerable.Range(0, 15).Select(i => Rim(i / 14.0, 1))], lower = [.. Enumerable.Range(0, 15).Select(i => Rim(i / 14.0, -1))];
            Vector3D Rim(double t, int edge) => stem.At(t) + edge * width * Math.Pow(Math.Sin(Math.PI * Math.Pow(t, 0.7)), 0.7) * outward;
            Point[] outline = [.. upper.Select(limb.View.At), .. lower.Reverse().Select(limb.View.At)];
            Sweep[] barbs = [.. Enumerable.Range(0, 76).Select(k =>
            {
                double t = 0.05 + 0.9 * (k / 2 + chance.Next()) / 38;
                int edge = k % 2 == 0 ? 1 : -1;
                Vector3D root = stem.At(t), tip = Rim(Math.Min(1, t + 0.1), edge) + chance.Between(-0.05, 0.2) * width * edge * outward;
                Vector3D bow = root + 0.5 * (tip - root) - 0.12 * width * stem.Tangent(t);
                return new Sweep(root, bow, bow, tip);
            })];
            yield return new Piece(limb.View.Depth(stem.At(0.5)) + 0.22, limb.Name, outline, ink =>
            {
                PathText fine = new(), light = new(), quill = new();
                for (int i = 0; i < barbs.Length; i++)
                    barbs[i].DrawOn(i % 5 == 0 ? light : fine, limb.View);
                stem.DrawOn(quill, limb.View);
                ink.Wash(new PathText().Smooth(outline, closed: true), limb.Fly.Dye(1), 0.85);
                ink.Line(fine, 0.38, 0.8);
                ink.Brush(light, Tone.Gleam, 0.6 * ink.PenMm, 0.6);
                ink.Line(quill, 1.1);
            });
        }
    }
}
