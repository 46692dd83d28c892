using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Reports;

namespace TyingClass.Drawing.Plates;

/// <summary>Two side views to one scale, the first above the second, so that both stay legible on a phone.</summary>
internal sealed class PairPlate : Plate
{
    private readonly SidePlate _before, _after;
    private readonly double _gap;

    public PairPlate(SolvedFly before, SolvedFly after, DrawingOptions options)
        : base(options)
    {
        double width = Math.Max(new SidePlate(before, options).NaturalWidthMm, new SidePlate(after, options).NaturalWidthMm);
        (_before, _after) = (new SidePlate(before, options, width), new SidePlate(after, options, width));
        _gap = 2.2 * LetterShare * width;
        Window = new Box(0, 0, width, _before.Window.Height + _after.Window.Height + 2 * _gap);
    }

    public override string Kind => "pair";

    public override string Title => $"Before: {_before.Title}. After: {_after.Title}";

    public override string Description => $"Before: {_before.Description} After: {_after.Description}";

    public override void DrawInside(SvgCanvas canvas)
    {
        OpenPage(canvas);
        Half(canvas, _before, "before", 0);
        canvas.Element("line", ("class", "fly-divider"), ("x1", SvgCanvas.N(LetterMm)), ("x2", SvgCanvas.N(Window.Right - LetterMm)),
            ("y1", SvgCanvas.N(_gap + _before.Window.Height + 0.25 * _gap)), ("y2", SvgCanvas.N(_gap + _before.Window.Height + 0.25 * _gap)),
            ("stroke-width", SvgCanvas.Exact(0.6 * PenMm)));
        Half(canvas, _after, "after", _gap + _before.Window.Height);
        canvas.Close();
    }

    private void Half(SvgCanvas canvas, SidePlate plate, string name, double top)
    {
        Say(canvas, name, new Point(LetterMm, top + 0.75 * _gap), "start", name, "fly-label fly-strong");
        canvas.Open("svg", ("class", "fly-half"), ("data-half", name), ("x", "0"), ("y", SvgCanvas.N(top + _gap)),
            ("width", SvgCanvas.N(plate.Window.Width)), ("height", SvgCanvas.N(plate.Window.Height)), ("viewBox", ViewBox(plate.Window)));
        plate.DrawInside(canvas);
        canvas.Close();
    }
}
