using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Reports;
using TyingClass.Telling;

namespace TyingClass.Drawing.Plates;

/// <summary>Two views to one scale, the first above the second, so that both stay legible on a phone.</summary>
internal sealed class PairPlate : Plate
{
    private readonly FlyPlate _before, _after;
    private readonly (string First, string Second) _names;
    private readonly double _gap;

    public PairPlate(SolvedFly before, SolvedFly after, DrawingOptions options)
        : this(width => new SidePlate(before, options, width), width => new SidePlate(after, options, width), ("before", "after"), options)
    {
    }

    /// <param name="first">One of them at a width, mm; at its own where that is null.</param>
    /// <param name="names">What stands over each.</param>
    public PairPlate(Func<double?, FlyPlate> first, Func<double?, FlyPlate> second, (string First, string Second) names, DrawingOptions options)
        : base(options)
    {
        double width = Math.Max(first(null).NaturalWidthMm, second(null).NaturalWidthMm);
        (_before, _after, _names) = (first(width), second(width), names);
        _gap = 2.2 * LetterShare * width;
        Window = new Box(0, 0, width, _before.Window.Height + _after.Window.Height + 2 * _gap);
    }

    public override string Kind => "pair";

    public override string Title => $"{Grammar.Capital(_names.First)}: {_before.Title}. {Grammar.Capital(_names.Second)}: {_after.Title}";

    public override string Description => $"{Grammar.Capital(_names.First)}: {_before.Description} {Grammar.Capital(_names.Second)}: {_after.Description}";

    public override void DrawInside(SvgCanvas canvas)
    {
        OpenPage(canvas);
        Half(canvas, _before, _names.First, "before", 0);
        canvas.Element("line", ("class", "fly-divider"), ("x1", SvgCanvas.N(LetterMm)), ("x2", SvgCanvas.N(Window.Right - LetterMm)),
            ("y1", SvgCanvas.N(_gap + _before.Window.Height + 0.25 * _gap)), ("y2", SvgCanvas.N(_gap + _before.Window.Height + 0.25 * _gap)),
            ("stroke-width", SvgCanvas.Exact(0.6 * PenMm)));
        Half(canvas, _after, _names.Second, "after", _gap + _before.Window.Height);
        canvas.Close();
    }

    private void Half(SvgCanvas canvas, FlyPlate plate, string words, string name, double top)
    {
        Say(canvas, Fitted(words, 1 / LetterShare - 2), new Point(LetterMm, top + 0.75 * _gap), "start", name, "fly-label fly-strong");
        canvas.Open("svg", ("class", "fly-half"), ("data-half", name), ("x", "0"), ("y", SvgCanvas.N(top + _gap)),
            ("width", SvgCanvas.N(plate.Window.Width)), ("height", SvgCanvas.N(plate.Window.Height)), ("viewBox", ViewBox(plate.Window)));
        plate.DrawInside(canvas);
        canvas.Close();
    }
}
