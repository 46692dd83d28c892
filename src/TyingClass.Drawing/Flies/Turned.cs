using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;

namespace TyingClass.Drawing.Flies;

/// <summary>What beads, cones and other turned things share: bore, gleam and spot.</summary>
internal static class Turned
{
    public static void Bore(Ink ink, Lathe shape, double radius)
    {
        foreach (bool front in (bool[])[true, false])
        {
            if (shape.Face(front, radius) is not { } hole)
                continue;
            ink.Wash(hole, Tone.Pupil, 0.85);
            ink.Line(hole, 0.6);
        }
    }

    public static void Gleam(Ink ink, View view, Vector3D center, double radius)
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

    public static PathText Spot(Point at, double radius) => new PathText().Smooth(
        [.. Enumerable.Range(0, 8).Select(k => at + new Point(Math.Cos(k * Math.PI / 4), Math.Sin(k * Math.PI / 4)) * radius)], closed: true);
}
