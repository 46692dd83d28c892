using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;

namespace TyingClass.Drawing.Marks;

/// <summary>A named place on a fly. Each has a shape of its own, so that none depends on color.</summary>
/// <param name="At">On the page, mm from the tow point.</param>
internal sealed record Mark(string Name, MarkSet Kind, Point At)
{
    /// <param name="radiusMm">Half the mark's size.</param>
    public void Draw(Ink ink, double radiusMm)
    {
        SvgCanvas canvas = ink.Canvas;
        string slug = Name.Replace(' ', '-');
        canvas.Open("g", ("class", "fly-mark fly-mark-" + slug), ("data-mark", Name),
            ("transform", $"translate({SvgCanvas.Exact(At.X)} {SvgCanvas.Exact(At.Y)})"));
        // Where marks fall on one another the smaller lies on top, and the larger still shows round it.
        double pen = 0.9 * ink.PenMm,
            r = radiusMm * Kind switch { MarkSet.CenterOfBuoyancy => 1.15, MarkSet.MassCenter => 1.08, MarkSet.BalancePoint => 0.68, _ => 1 };
        switch (Kind)
        {
            case MarkSet.MassCenter:
                Circle(canvas, r, "fly-mark-paper", Tone.Paper.Color, pen);
                canvas.Element("path", ("class", "fly-mark-ink"), ("fill", "currentColor"), ("stroke", "none"),
                    ("d", $"M0 0V{N(-r)}A{N(r)} {N(r)} 0 0 1 {N(r)} 0ZM0 0V{N(r)}A{N(r)} {N(r)} 0 0 1 {N(-r)} 0Z"));
                break;
            case MarkSet.CenterOfBuoyancy:
                Shape(canvas, "fly-mark-paper", Tone.Paper.Color, pen, new(0, -1.15 * r), new(1.05 * r, 0.7 * r), new(-1.05 * r, 0.7 * r));
                canvas.Element("circle", ("class", "fly-mark-ink"), ("r", N(0.2 * r)), ("fill", "currentColor"), ("stroke", "none"));
                break;
            case MarkSet.BalancePoint:
                Shape(canvas, "fly-mark-halo", Tone.Paper.Color, 2.6 * pen, new(0, -r), new(r, 0), new(0, r), new(-r, 0));
                Shape(canvas, "fly-mark-ink", "currentColor", pen, new(0, -r), new(r, 0), new(0, r), new(-r, 0));
                canvas.Element("circle", ("class", "fly-mark-paper"), ("r", N(0.32 * r)), ("fill", Tone.Paper.Color), ("stroke", "none"));
                break;
            default:
                Circle(canvas, 0.62 * r, "fly-mark-hollow", "none", pen);
                canvas.Element("path", ("class", "fly-mark-ink"), ("stroke-width", SvgCanvas.Exact(pen)),
                    ("d", $"M{N(-1.25 * r)} 0H{N(-0.62 * r)}M{N(0.62 * r)} 0H{N(1.25 * r)}M0 {N(-1.25 * r)}V{N(-0.62 * r)}M0 {N(0.62 * r)}V{N(1.25 * r)}"));
                break;
        }

        canvas.Close();
    }

    private static string N(double v) => SvgCanvas.Exact(v);

    private static void Circle(SvgCanvas canvas, double r, string css, string fill, double pen) => canvas.Element(
        "circle", ("class", css), ("r", N(r)), ("fill", fill), ("stroke-width", N(pen)));

    private static void Shape(SvgCanvas canvas, string css, string fill, double pen, params Point[] corners) => canvas.Element(
        "path", ("class", css), ("fill", fill), ("stroke", css == "fly-mark-halo" ? fill : "currentColor"), ("stroke-width", N(pen)),
        ("stroke-linejoin", "miter"),
        ("d", string.Concat(corners.Select((c, i) => $"{(i == 0 ? 'M' : 'L')}{N(c.X)} {N(c.Y)}")) + "Z"));
}
