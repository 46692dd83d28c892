using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Reports;

namespace TyingClass.Drawing.Plates;

/// <summary>Two side views to one scale, the first above the second, so that both stay legible on a phone.</summary>
internal sealed class PairPlate : Plate
{
    private readonly SidePlate before, after;
    private readonly double gap;

    public PairPlate(SolvedFly before, SolvedFly after, DrawingOptions options)
        : base(options)
    {
        double width = Math.Max(new SidePlate(before, options).NaturalWidthMm, new SidePlate(after, options).NaturalWidthMm);
        (this.before, this.after) = (new SidePlate(before, options, width), new SidePlate(after, options, width));
        gap = 2.2 * LetterShare * width;
        Window = new Box(0, 0, width, this.before.Window.Height + this.after.Window.Height + 2 * gap);
    }

    public override string Kind => "pair";

    public override string Title => $"Before: {before.Title}. After: {after.Title}";

    public override string Description => $"Before: {before.Description} After: {after.Description}";

    public override void DrawInside(SvgCanvas canvas)
    {
        OpenPage(canvas);
        Half(canvas, before, "before", 0);
        canvas.Element("line", ("class", "fly-divider"), ("x1", SvgCanvas.N(LetterMm)), ("x2", SvgCanvas.N(Window.Right - LetterMm)),
            ("y1", SvgCanvas.N(gap + before.Window.Height + 0.25 * gap)), ("y2", SvgCanvas.N(gap + before.Window.Height + 0.25 * gap)), ("stroke-width", SvgCanvas.Exact(0.6 * PenMm)));
        Half(canvas, after, "after", gap + before.Window.Height);
        canvas.Close();
    }

    private void Half(SvgCanvas canvas, SidePlate plate, string name, double top)
    {
        Say(canvas, name, new Point(LetterMm, top + 0.75 * gap), "start", name, "fly-label fly-strong");
        canvas.Open("svg", ("class", "fly-half"), ("data-half", name), ("x", "0"), ("y", SvgCanvas.N(top + gap)),
            ("width", SvgCanvas.N(plate.Window.Width)), ("height", SvgCanvas.N(plate.Window.Height)), ("viewBox", ViewBox(plate.Window)));
        plate.DrawInside(canvas);
        canvas.Close();
    }
}
