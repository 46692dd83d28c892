using TyingClass.Drawing.Svg;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Plots;

/// <summary>
/// A figure's range as a thin bar on a track: a tick where the figure stands, and a dotted stroke at zero. For the eye only; words stand beside it.
/// </summary>
internal static class DoubtMark
{
    private const double Width = 96, Height = 16, Margin = 4;

    public static string Draw(SaidRange range, double si, UnitSystem units)
    {
        double low = Shown(range.Low), high = Shown(range.High), at = Shown(si);
        Scale track = Scale.Exact(Math.Min(0, Math.Min(low, at)), Math.Max(0, Math.Max(high, at)), 1, Margin, Width - Margin);
        if (!(track.High > track.Low)) track = Scale.Exact(-1, 1, 1, Margin, Width - Margin);
        using SvgCanvas canvas = new();
        canvas.Open("svg",
            ("viewBox", $"0 0 {SvgCanvas.N(Width)} {SvgCanvas.N(Height)}"), ("width", SvgCanvas.N(Width)), ("height", SvgCanvas.N(Height)),
            ("class", "fly-curve fly-doubt-bar"), ("aria-hidden", "true"), ("fill", "none"), ("stroke", "currentColor"));
        Stroke(track.At(track.Low), track.At(track.High), Height / 2, 0.6, 0.5);
        Stroke(track.At(low), track.At(high), Height / 2, 4, 1);
        Upright(track.At(0), 1, "1 2");
        Upright(track.At(at), 2.2, "");
        canvas.Close();
        return canvas.Finish();

        double Shown(double figure) => range.What.Shown(figure, units);
        void Stroke(double from, double to, double y, double width, double opacity) => canvas.Element(
            "line", ("x1", SvgCanvas.N(from)), ("y1", SvgCanvas.N(y)), ("x2", SvgCanvas.N(to)), ("y2", SvgCanvas.N(y)),
            ("stroke-width", SvgCanvas.N(width)), ("stroke-opacity", SvgCanvas.N(opacity)));
        void Upright(double x, double width, string dash) => canvas.Element(
            "line", ("x1", SvgCanvas.N(x)), ("y1", "1.5"), ("x2", SvgCanvas.N(x)), ("y2", SvgCanvas.N(Height - 1.5)),
            ("stroke-width", SvgCanvas.N(width)), ("stroke-dasharray", dash.Length > 0 ? dash : "none"));
    }
}
