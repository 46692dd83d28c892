using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Text;
using static TyingClass.Recipes.Text.Dimension;

namespace TyingClass.Drawing.Plates;

/// <summary>What stands at the foot of a plate: the flow, the scale bar, the words.</summary>
internal static class Strip
{
    /// <summary>A round length, 1, 2 or 5 times a power of ten (inches: halves and whole), about a fifth of the plate.</summary>
    public static (double Mm, string Words) ScaleBar(double plateMm, UnitSystem units)
    {
        (double Mm, string Words)[] bars = units == UnitSystem.Metric
            ? [(1, "1 mm"), (2, "2 mm"), (5, "5 mm"), (10, "10 mm"), (20, "20 mm"), (50, "50 mm")]
            : [Inches(16, "1/16 in"), Inches(8, "1/8 in"), Inches(4, "1/4 in"), Inches(2, "1/2 in"), Inches(1, "1 in"), Inches(0.5, "2 in")];
        return bars.LastOrDefault(b => b.Mm <= 0.22 * plateMm, bars[0]);
    }

    private static (double Mm, string Words) Inches(double parts, string words) => (1e3 * Units.ToSi(1 / parts, Length, "in"), words);

    public static void DrawScaleBar(Ink ink, Point rightFoot, double plateMm, double letterMm, UnitSystem units)
    {
        SvgCanvas canvas = ink.Canvas;
        (double mm, string words) = ScaleBar(plateMm, units);
        double h = 0.3 * letterMm, left = rightFoot.X - mm, y = rightFoot.Y;
        canvas.Open("g", ("class", "fly-scale-bar"), ("data-mark", "scale bar"), ("data-length-mm", SvgCanvas.Exact(mm)));
        canvas.Element("rect", ("class", "fly-mark-paper"), ("x", SvgCanvas.Exact(left)), ("y", SvgCanvas.Exact(y - h)), ("width", SvgCanvas.Exact(mm)),
            ("height", SvgCanvas.Exact(h)), ("fill", Tone.Paper.Color), ("stroke-width", SvgCanvas.Exact(0.8 * ink.PenMm)));
        for (int i = 0; i < 5; i += 2)
            canvas.Element("rect", ("class", "fly-ink-fill"), ("x", SvgCanvas.Exact(left + mm * i / 5)), ("y", SvgCanvas.Exact(y - h)),
                ("width", SvgCanvas.Exact(mm / 5)), ("height", SvgCanvas.Exact(h)), ("fill", "currentColor"), ("stroke", "none"));
        canvas.Words("text", words, ("class", "fly-label"), ("x", SvgCanvas.N(left - 0.5 * letterMm)), ("y", SvgCanvas.N(y + 0.1 * letterMm)),
            ("text-anchor", "end"), ("fill", "currentColor"), ("stroke", "none"));
        canvas.Close();
    }

    public static void DrawFlow(Ink ink, Point leftFoot, double letterMm, string words)
    {
        SvgCanvas canvas = ink.Canvas;
        double left = leftFoot.X, y = leftFoot.Y;
        canvas.Open("g", ("class", "fly-flow"), ("data-mark", "flow"), ("stroke", Tone.Water.Color));
        double length = 4.2 * letterMm;
        for (int i = 0; i < 3; i++)
        {
            double dy = (i - 1) * 0.42 * letterMm, start = left + (i == 1 ? 0 : 0.7 * letterMm), end = left + length - (i == 1 ? 0 : 0.9 * letterMm);
            PathText wave = new();
            Point a = new(start, y - 0.15 * letterMm + dy), b = new(end, a.Y);
            double third = (end - start) / 3, sway = 0.16 * letterMm;
            wave.Move(a).Cubic(a + new Point(third, -sway), b + new Point(-third, sway), b);
            canvas.Element("path", ("class", "fly-flow-line"), ("d", wave.ToString()), ("stroke-width", SvgCanvas.Exact(ink.PenMm)));
        }

        Point tip = new(left + length + 0.25 * letterMm, y - 0.15 * letterMm);
        canvas.Element(
            "path", ("class", "fly-flow-tip"), ("d", new PathText().Polyline(
                [tip, tip + new Point(-0.75 * letterMm, -0.3 * letterMm), tip + new Point(-0.55 * letterMm, 0),
                    tip + new Point(-0.75 * letterMm, 0.3 * letterMm)], closed: true).ToString()), ("fill", Tone.Water.Color), ("stroke", "none"));
        canvas.Words("text", words, ("class", "fly-label"), ("x", SvgCanvas.N(tip.X + 0.4 * letterMm)), ("y", SvgCanvas.N(y + 0.1 * letterMm)),
            ("text-anchor", "start"), ("fill", "currentColor"), ("stroke", "none"));
        canvas.Close();
    }
}
