using TyingClass.Drawing.Svg;

namespace TyingClass.Drawing.Flies;

/// <summary>Pen and brush. Weights are in pen widths: one is about a pixel when the plate is 390 px wide.</summary>
internal sealed class Ink(SvgCanvas canvas, double penMm)
{
    public SvgCanvas Canvas => canvas;

    public double PenMm => penMm;

    public void Line(PathText path, double weight = 1, double opacity = 1) => Stroke(path, "fly-ink", "currentColor", weight * penMm, opacity);

    /// <summary>Hatching: ink on light paper, but dark on dark paper too, so that shadows stay shadows.</summary>
    public void Hatch(PathText path, double weight = 0.5, double opacity = 0.75) => Stroke(path, "fly-hatching", "currentColor", weight * penMm, opacity);

    /// <summary>What cannot be seen but is there.</summary>
    public void Hidden(PathText path) => canvas.Element(
        "path", ("class", "fly-hidden"), ("d", path.ToString()), ("stroke-width", SvgCanvas.Exact(0.6 * penMm)), ("stroke-opacity", "0.8"),
        ("stroke-dasharray", $"{SvgCanvas.N(2.2 * penMm)} {SvgCanvas.N(2.2 * penMm)}"));

    /// <summary>A stroke of wash as wide as the thing itself.</summary>
    public void Brush(PathText path, Tone tone, double widthMm, double opacity = 1) =>
        Stroke(path, "fly-brush fly-stroke-" + tone.Name, tone.Color, widthMm, opacity);

    /// <summary>A wire seen from anywhere: outline, metal, gleam.</summary>
    public void Wire(PathText path, Tone tone, double gaugeMm, PathText gleam, string cap = "butt")
    {
        Stroke(path, "fly-ink fly-wire", "currentColor", gaugeMm, 1, cap);
        double core = gaugeMm - 1.6 * penMm;
        if (core < 0.25 * gaugeMm)
            return;
        Stroke(path, "fly-brush fly-stroke-" + tone.Name, tone.Color, core, 1, cap);
        Stroke(gleam, "fly-brush fly-stroke-gleam", Tone.Gleam.Color, Math.Min(0.28 * core, 1.2 * penMm), 0.85, cap);
    }

    public void Wash(PathText path, Tone tone, double opacity = 1)
    {
        if (path.IsEmpty)
            return;
        if (opacity < 1)
            canvas.Element("path", ("class", "fly-fill-" + tone.Name), ("d", path.ToString()), ("fill", tone.Color), ("stroke", "none"),
                ("fill-opacity", SvgCanvas.N(opacity)));
        else
            canvas.Element("path", ("class", "fly-fill-" + tone.Name), ("d", path.ToString()), ("fill", tone.Color), ("stroke", "none"));
    }

    public void Solid(PathText path) => canvas.Element("path", ("class", "fly-ink-fill"), ("d", path.ToString()), ("fill", "currentColor"), ("stroke", "none"));

    private void Stroke(PathText path, string css, string color, double widthMm, double opacity, string cap = "round")
    {
        if (path.IsEmpty)
            return;
        List<(string, string)> attributes =
            [("class", css), ("d", path.ToString()), ("stroke", color), ("stroke-width", SvgCanvas.Exact(widthMm)), ("stroke-linecap", cap)];
        if (opacity < 1)
            attributes.Add(("stroke-opacity", SvgCanvas.N(opacity)));
        canvas.Element("path", [.. attributes]);
    }
}
