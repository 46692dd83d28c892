using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Labels;
using TyingClass.Drawing.Marks;
using TyingClass.Drawing.Plates;
using TyingClass.Drawing.Svg;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Figures;

/// <summary>
/// A box-shaped ship, heeled. The part under water is cut out of the hull and its middle found, so that B stands where it belongs; up to the heel at which the
/// deck's edge goes under, a box floats as deep as it does upright.
/// </summary>
internal sealed class ShipPlate : SchemePlate
{
    private const double HalfBeam = 35, Draft = 18, Freeboard = 15, WeightAboveKeel = 14;

    private readonly double _heelDeg;
    private readonly Point[] _hull, _sunk;
    private readonly Point _g, _b;

    public ShipPlate(double heelDeg, DrawingOptions options)
        : base(options)
    {
        _heelDeg = heelDeg;
        _hull = [.. ((Point[])[new(-HalfBeam, Draft), new(HalfBeam, Draft), new(HalfBeam, -Freeboard), new(-HalfBeam, -Freeboard)]).Select(Heeled)];
        _sunk = [.. BelowWater(_hull)];
        (_g, _b) = (Heeled(new Point(0, Draft - WeightAboveKeel)), Middle(_sunk));
        Box content = _hull.Aggregate(Box.Empty, (box, p) => box.With(p)).Grown(4).With(_b + new Point(0, -Reach)).With(_g + new Point(0, Reach));
        double letter = LetterShare * content.Width / 0.8;
        List<LabelWish> wishes =
        [
            new("G", "G", _g, 1.1 * MarkShare * letter), new("B", "B", _b, 1.1 * MarkShare * letter),
            new("righting arm", "arm", new Point((_g.X + _b.X) / 2, _g.Y), 0.2 * letter),
            new("weight", "weight", _g + new Point(0, 0.9 * Reach), 0.3 * letter), new("push of the water", "push", _b + new Point(0, -0.9 * Reach),
                0.3 * letter),
        ];
        Compose(content, [_hull], wishes,
            [.. Along(_g, _g + new Point(0, Reach), letter), .. Along(_b, _b + new Point(0, -Reach), letter), .. Along(_g, new Point(_b.X, _g.Y), letter)]);
    }

    public override string Kind => "ship";

    public override string Title => "A box-shaped ship, heeled";

    public override string Description =>
        $"From ahead, heeled by {FlyWords.Degrees(_heelDeg)}. Its weight pulls straight down "
        + "through G, the mass center, on the middle line of the hull. The hull "
        + "dips deeper on its low side, so B, the center of buoyancy in the middle of the part under water, has moved to that side, "
        + "and the water pushes up there. The level distance "
        + "between the two lines is the righting arm: it rolls the ship back.";

    private static double Reach => 26;

    public override void DrawInside(SvgCanvas canvas)
    {
        OpenPage(canvas);
        Ink ink = new(canvas, PenMm);
        ink.Wash(new PathText().Polyline(_hull, closed: true), Tone.Hide);
        ink.Wash(new PathText().Polyline(_sunk, closed: true), Tone.Water, 0.45);
        ink.Line(new PathText().Polyline(_hull, closed: true), 1.4);
        canvas.Element("line", ("class", "fly-flow"), ("data-mark", "water"), ("x1", SvgCanvas.N(Window.Left + LetterMm)), ("x2",
            SvgCanvas.N(Window.Right - LetterMm)),
            ("y1", "0"), ("y2", "0"), ("stroke", Tone.Water.Color), ("stroke-width", SvgCanvas.Exact(1.4 * PenMm)));
        LineArt.Rule(ink, new Ruling("fly-plumb", "middle line", 0.7, LineArt.Dashes(LetterMm)), Heeled(new Point(0, Draft)), Heeled(new Point(0,
            -Freeboard - 6)));
        Arrow.Draw(ink, "weight", _g, _g + new Point(0, Reach), 0.9 * LetterMm);
        Arrow.Draw(ink, "push", _b, _b + new Point(0, -Reach), 0.9 * LetterMm);
        canvas.Element("line", ("class", "fly-dimension-line"), ("data-mark", "arm"), ("x1", SvgCanvas.Exact(_g.X)), ("x2", SvgCanvas.Exact(_b.X)), ("y1",
            SvgCanvas.Exact(_g.Y)),
            ("y2", SvgCanvas.Exact(_g.Y)), ("stroke-width", SvgCanvas.Exact(2.6 * PenMm)));
        new Mark("center of buoyancy", MarkSet.CenterOfBuoyancy, _b).Draw(ink, MarkShare * LetterMm);
        new Mark("mass center", MarkSet.MassCenter, _g).Draw(ink, MarkShare * LetterMm);
        DrawLabels(canvas);
        canvas.Close();
    }

    // About the middle of the water line, the right side down.
    private Point Heeled(Point p)
    {
        (double sin, double cos) = Math.SinCos(double.DegreesToRadians(_heelDeg));
        return new Point(p.X * cos - p.Y * sin, p.X * sin + p.Y * cos);
    }

    // The polygon cut at the water line (Sutherland and Hodgman); down the page is below.
    private static IEnumerable<Point> BelowWater(Point[] hull)
    {
        for (int i = 0; i < hull.Length; i++)
        {
            Point a = hull[i], b = hull[(i + 1) % hull.Length];
            if (a.Y >= 0) yield return a;
            if ((a.Y < 0) != (b.Y < 0)) yield return a + (b - a) * (a.Y / (a.Y - b.Y));
        }
    }

    // Centroid of a polygon, by the shoelace formula.
    private static Point Middle(Point[] p)
    {
        double area = 0;
        Point sum = new(0, 0);
        for (int i = 0; i < p.Length; i++)
        {
            Point next = p[(i + 1) % p.Length];
            double cross = Point.Cross(p[i], next);
            area += cross;
            sum += (p[i] + next) * cross;
        }

        return sum * (1 / (3 * area));
    }
}
