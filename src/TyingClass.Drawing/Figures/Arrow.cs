using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;

namespace TyingClass.Drawing.Figures;

/// <summary>A straight arrow: a force, or a way to go.</summary>
internal static class Arrow
{
    /// <param name="weight">Of the line, in pens.</param>
    public static void Draw(Ink ink, string name, Point tail, Point tip, double headMm, double weight = 1.6)
    {
        Point way = (tip - tail).Unit();
        double head = Math.Min(headMm, 0.7 * (tip - tail).Length);
        Point side = way.Turned() * (0.45 * head), neck = tip - way * head;
        ink.Canvas.Element("path", ("class", "fly-ink fly-arrow"), ("data-mark", name), ("d", new PathText().Move(tail).Line(neck).ToString()),
            ("stroke-width", SvgCanvas.Exact(weight * ink.PenMm)));
        ink.Solid(new PathText().Polyline([tip, neck + side, neck - side], closed: true));
    }
}
