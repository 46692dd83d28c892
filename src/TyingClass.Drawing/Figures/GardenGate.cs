using System.Collections.Immutable;
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

/// <summary>A gate on a leaning post, and a fly with the hinge line it rolls about.</summary>
internal sealed class GardenGate : TeachingFigure
{
    public override string Kind => "garden gate";

    public override ImmutableArray<FigurePanel> Draw(FigureRequest request, DrawingOptions options)
    {
        SolvedFly fly = One(request);
        return [new FigurePanel("a gate on a leaning post", new GatePlate(options).ToSvg()), new FigurePanel(fly.Recipe.Name, new HingePlate(fly,
            Second(options)).ToSvg())];
    }
}

/// <summary>The gate where it comes to rest, its weight below the hinge line, and where it will not stay, above.</summary>
internal sealed class GatePlate : SchemePlate
{
    private const double LeanDeg = 28, Post = 62, From = 30, To = 58, Wide = 36;

    private static readonly Point Up = new(Math.Sin(double.DegreesToRadians(LeanDeg)), -Math.Cos(double.DegreesToRadians(LeanDeg)));
    private static readonly Point Low = Up.Turned();

    private readonly Point _rest = Up * ((From + To) / 2) + Low * (Wide / 2), _restless = Up * ((From + To) / 2) - Low * (Wide / 2);

    public GatePlate(DrawingOptions options)
        : base(options)
    {
        Box content = Gate(1).Concat(Gate(-1)).Append(Up * (Post + 12)).Append(new Point(0, 8)).Aggregate(Box.Empty, (box, p) => box.With(p));
        double letter = LetterShare * Math.Max(content.Width / 0.82, 0.9 * content.Height);
        Compose(content, [Gate(1), Gate(-1)],
        [
            new("hinge line", "hinge line", Up * (Post + 8), 0.2 * letter), new("weight below the line: it stays", "below", _rest, MarkShare * letter),
            new("weight above the line: it swings round", "above", _restless, MarkShare * letter),
        ], [.. Along(new Point(0, 0), Up * (Post + 12), letter), .. Along(new Point(content.Left, 0), new Point(content.Right, 0), letter)], 0.82);
    }

    public override string Kind => "gate";

    public override string Title => "A garden gate on a leaning post";

    public override string Description =>
        "The gate swings about the line through its two hinges, and that line leans with the post. On the low side the weight of the gate lies below the hinge "
        + "line, and there it stays. On the high side, drawn in broken lines, its weight lies above the hinge line, and from there it swings round.";

    public override void DrawInside(SvgCanvas canvas)
    {
        OpenPage(canvas);
        Ink ink = new(canvas, PenMm);
        ink.Brush(new PathText().Move(new Point(0, 0)).Line(Up * Post), Tone.Cork, 4);
        foreach (double bar in (double[])[0, 0.25, 0.5, 0.75, 1])
            ink.Line(new PathText().Move(At(bar, 0, 1)).Line(At(bar, 1, 1)), 1.6);
        ink.Line(new PathText().Polyline(Gate(1), closed: true), 2);
        ink.Line(new PathText().Move(At(0, 0, 1)).Line(At(1, 1, 1)), 1.6);
        ink.Hidden(new PathText().Polyline(Gate(-1), closed: true));
        LineArt.Rule(ink, new Ruling("fly-pull", "hinge line", 1.1, LineArt.Dashes(LetterMm)), Up * -6, Up * (Post + 12));
        canvas.Element("line", ("class", "fly-ink"), ("x1", SvgCanvas.N(Window.Left + LetterMm)), ("x2", SvgCanvas.N(Window.Right - LetterMm)), ("y1", "0"),
            ("y2", "0"),
            ("stroke-width", SvgCanvas.Exact(PenMm)));
        Arrow.Draw(ink, "weight", _rest, _rest + new Point(0, 12), 0.8 * LetterMm);
        foreach (double along in (double[])[From + 4, To - 4])
            canvas.Element("circle", ("class", "fly-ink-fill"), ("data-mark", "hinge"), ("cx", SvgCanvas.N((Up * along).X)), ("cy",
                SvgCanvas.N((Up * along).Y)), ("r", "1.8"),
                ("fill", "currentColor"), ("stroke", "none"));
        new Mark("weight at rest", MarkSet.BalancePoint, _rest).Draw(ink, MarkShare * LetterMm);
        new Mark("weight on the high side", MarkSet.BalancePoint, _restless).Draw(ink, MarkShare * LetterMm);
        DrawLabels(canvas);
        canvas.Close();
    }

    private static Point[] Gate(int side) => [At(0, 0, side), At(0, 1, side), At(1, 1, side), At(1, 0, side)];

    private static Point At(double high, double wide, int side) => Up * (From + (To - From) * high) + Low * (side * (2 + (Wide - 2) * wide));
}

/// <summary>The fly from the side, held as it was meant to ride, with its hinge line and the keel height below it.</summary>
internal sealed class HingePlate : FlyPlate
{
    private readonly HingeView _hinge;
    private readonly double _aftMm;

    public HingePlate(SolvedFly fly, DrawingOptions options)
        : base(fly, options with { Caption = false, Marks = MarkSet.ScaleBar | MarkSet.TowPoint | MarkSet.BalancePoint })
    {
        _hinge = HingeView.Of(fly);
        View view = _hinge.Beside(fly);
        Scene = new Scene(new Anatomy(fly, view, Vector3D.UnitX));
        AddMark(view, MarkSet.TowPoint, "ring", Report.TowPointMm);
        AddMark(view, MarkSet.BalancePoint, "balance point", Report.BalancePointMm);
        _aftMm = 1.1e3 * (fly.Built.Hook.ShankM + fly.Built.Hook.BendDepthM);
        Content = Marks.Aggregate(Scene.Frame, (box, m) => box.With(m.At)).With(_hinge.Above).With(End).With(ShankEnd);
        Compose(NaturalWidthMm);
    }

    public override string Kind => "hinge";

    public override string Title => $"{Fly.Recipe.Name}: its hinge line";

    public override string Description =>
        $"From the side, soaked, towed at {Magnitudes.FishingSpeed.Say(State.AtFishingSpeed.SpeedMS, Options.Units)} and held "
        + $"{FlyWords.Way(Report.Intent)}, {_hinge.Attitude}. "
        + $"The hinge line runs from the ring through the fly and {(_hinge.RiseDeg >= 0 ? "rises" : "drops")} toward the tail "
        + $"by {FlyWords.Degrees(Math.Abs(_hinge.RiseDeg))}. "
        + "The shank line, dotted, runs from the ring along the shank. "
        + $"The balance point lies "
        + $"{Magnitudes.KeelHeight.Say(Si.Mm(Math.Abs(_hinge.KeelMm)), Options.Units)} {(_hinge.KeelMm > 0 ? "below" : "above")} the hinge line, measured "
        + $"straight up and down: that is the keel height{(_hinge.KeelMm > 0 ? "" : ", and it is negative")}.";

    protected override string CaptionWords => "";

    private Point End => new Point(Math.Cos(double.DegreesToRadians(_hinge.RiseDeg)), -Math.Sin(double.DegreesToRadians(_hinge.RiseDeg))) * _aftMm;

    // Through the ring and parallel to the shank: what the rule of thumb goes by.
    private Point ShankEnd => _hinge.Beside(Fly).Along(Vector3D.UnitX) * _aftMm;

    private HeightLine Keel => new("keel height", _hinge.Balance, _hinge.KeelMm, _hinge.Balance.X);

    protected override void DrawBehind(Ink ink)
    {
    }

    protected override void DrawOver(Ink ink)
    {
        LineArt.Hinge(ink, HingeView.Name, End * -0.1, End, LetterMm);
        LineArt.Rule(ink, new Ruling("fly-own-line", "shank line", 0.8, $"{SvgCanvas.N(0.3 * LetterMm)} {SvgCanvas.N(0.3 * LetterMm)}"), new Point(0, 0),
            ShankEnd);
        Keel.Draw(ink, LetterMm);
    }

    protected override void Furnish(Occupancy occupancy, List<LabelWish> wishes, List<Box> kept)
    {
        wishes.Add(new LabelWish("hinge line", "hinge line", End * 0.96, 0.15 * LetterMm) { OrAnchor = End * 0.6 });
        wishes.Add(new LabelWish("shank line", "shank line", ShankEnd * 0.97, 0.15 * LetterMm) { OrAnchor = ShankEnd * 0.7 });
        wishes.Add(new LabelWish($"keel height {Magnitudes.KeelHeight.Say(Si.Mm(_hinge.KeelMm), Options.Units)}", "keel height",
            new Point(_hinge.Balance.X, _hinge.Balance.Y - _hinge.KeelMm / 2), 0.2 * LetterMm));
        kept.Add(Box.Around(new Point(_hinge.Balance.X, _hinge.Balance.Y - _hinge.KeelMm / 2), 0.6 * LetterMm, Math.Abs(_hinge.KeelMm)));
        for (int i = -1; i <= 16; i++)
            kept.Add(Box.Around(End * (i / 16.0), 0.3 * LetterMm, 0.3 * LetterMm));
    }
}
