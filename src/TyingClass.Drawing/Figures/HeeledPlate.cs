using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Labels;
using TyingClass.Drawing.Marks;
using TyingClass.Drawing.Plates;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Figures;

/// <summary>A fly tipped about its hinge line and seen along it: the line is a point, and heel is a plain turn of the picture.</summary>
internal sealed class HeeledPlate : SchemePlate
{
    private readonly SolvedFly _fly;
    private readonly double _heelDeg;
    private readonly HingeView _hinge;
    private readonly Scene _scene;
    private readonly Point _b, _left;
    private readonly double _reach;

    public HeeledPlate(SolvedFly fly, double heelDeg, DrawingOptions options)
        : base(options)
    {
        (_fly, _heelDeg, _hinge) = (fly, heelDeg, HingeView.Of(fly));
        View view = _hinge.EndOn(fly);
        _scene = new Scene(new Anatomy(fly, view, Vector3D.UnitX));
        (_b, _left) = (Heeled(view.At(fly.Report.CenterOfBuoyancyMm)), Heeled(view.At(fly.Report.BalancePointMm!.Value)));
        IReadOnlyList<Point>[] outlines = [.. _scene.Pieces.SelectMany(p => p.Covered).Select(o => (IReadOnlyList<Point>)[.. o.Select(Heeled)])];
        Box frame = outlines.SelectMany(o => o).Aggregate(Box.Empty, (box, p) => box.With(p)).With(new Point(0, 0));
        _reach = Math.Max(0.4 * Math.Max(frame.Height, frame.Width), 2);
        Box content = frame.With(new Point(0, -_reach)).With(_left + new Point(0, _reach)).With(new Point(0, _left.Y + 0.5 * _reach));
        double letter = LetterShare * Math.Max(content.Width / 0.55, 0.9 * content.Height);
        List<LabelWish> wishes =
        [
            new("hinge line, end on", "hinge line", new Point(0, 0), 0.5 * letter), new("B", "B", _b, MarkShare * letter),
            new("balance point", "balance point", _left, MarkShare * letter),
            new(ArmWords, "arm", new Point(_left.X / 2, _left.Y), 0.2 * letter), new("weight left in water", "weight", _left + new Point(0, 0.9 * _reach),
                0.3 * letter),
            new("hold of leader and water", "hold", new Point(0, -0.9 * _reach), 0.3 * letter),
        ];
        Compose(content, outlines, wishes,
        [
            .. Along(_left, _left + new Point(0, _reach), letter), .. Along(new Point(0, 0), new Point(0, -_reach), letter),
            .. Along(_left, new Point(0, _left.Y), letter),
        ], 0.55);
    }

    public override string Kind => "heeled";

    public override string Title => $"{_fly.Recipe.Name}: heeled by {FlyWords.Degrees(_heelDeg)}";

    public override string Description =>
        $"From ahead, along its hinge line, heeled by {FlyWords.Degrees(_heelDeg)}. The weight that is left in water, "
        + $"{Magnitudes.WetWeight.Say(Si.G(_fly.Report.WetWeightG), Options.Units)}, pulls down at the balance point. That point lies "
        + $"{Magnitudes.KeelHeight.Say(Si.Mm(Math.Abs(_hinge.KeelMm)), Options.Units)} "
        + $"{(_hinge.KeelMm > 0 ? "below" : "above")} the hinge line when the fly is upright, "
        + $"and now {Magnitudes.KeelHeight.Say(Si.Mm(Math.Abs(_left.X)), Options.Units)} to the side of it: the {ArmWords}, which "
        + $"{(_hinge.KeelMm > 0 ? "rolls it back" : "rolls it over")}. "
        + "As much force holds the fly up at the hinge line, from the leader and the water. "
        + "B is the center of buoyancy; it stays where it is in the fly, for all of the fly is under water.";

    private string ArmWords => _hinge.KeelMm > 0 ? "righting arm" : "upsetting arm";

    public override void DrawInside(SvgCanvas canvas)
    {
        OpenPage(canvas);
        Ink ink = new(canvas, PenMm);
        canvas.Open("g", ("class", "fly-body"), ("transform", $"rotate({SvgCanvas.Exact(_heelDeg)})"));
        _scene.Draw(ink);
        canvas.Close();
        LineArt.Rule(ink, new Ruling("fly-plumb", "plumb line", 0.8, LineArt.Dashes(LetterMm)), new Point(0, -_reach), new Point(0, _left.Y + 0.5 * _reach));
        // One force turns nothing: what holds the fly up acts at the hinge line, and is as great as the weight.
        Arrow.Draw(ink, "hold", new Point(0, 0), new Point(0, -_reach), 0.9 * LetterMm);
        Arrow.Draw(ink, "weight", _left, _left + new Point(0, _reach), 0.9 * LetterMm);
        canvas.Element("line", ("class", "fly-dimension-line"), ("data-mark", "arm"), ("x1", SvgCanvas.Exact(_left.X)), ("x2", "0"), ("y1",
            SvgCanvas.Exact(_left.Y)),
            ("y2", SvgCanvas.Exact(_left.Y)), ("stroke-width", SvgCanvas.Exact(2.6 * PenMm)));
        new Mark("center of buoyancy", MarkSet.CenterOfBuoyancy, _b).Draw(ink, MarkShare * LetterMm);
        new Mark("balance point", MarkSet.BalancePoint, _left).Draw(ink, MarkShare * LetterMm);
        new Mark("tow point", MarkSet.TowPoint, new Point(0, 0)).Draw(ink, MarkShare * LetterMm);
        DrawLabels(canvas);
        canvas.Close();
    }

    private Point Heeled(Point p)
    {
        (double sin, double cos) = Math.SinCos(double.DegreesToRadians(_heelDeg));
        return new Point(p.X * cos - p.Y * sin, p.X * sin + p.Y * cos);
    }
}
