using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Labels;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Plates;

/// <summary>The fly from the side as it falls on a slack line in still water, with the way it goes.</summary>
internal sealed class FallPlate : FlyPlate
{
    private const double LettersOfAMeterASecond = 14;
    private const double SlowestDrawnMS = 0.1;

    private readonly SinkReport? _sink;

    /// <param name="widthMm">A common width for several plates; null for this one's own.</param>
    public FallPlate(SolvedFly fly, DrawingOptions options, double? widthMm = null)
        : base(fly, options)
    {
        _sink = State.Sink;
        View view = new(Pose.Towed(_sink?.PitchDeg ?? 0, _sink?.LeanDeg ?? 0, Report.Intent), Report.TowPointMm, Facing.Side);
        Scene = new Scene(new Anatomy(fly, view, Vector3D.UnitZ));
        AddMark(view, MarkSet.TowPoint, "tow point", Report.TowPointMm);
        AddMark(view, MarkSet.CenterOfBuoyancy, "center of buoyancy", State.CenterOfBuoyancyMm);
        AddMark(view, MarkSet.BalancePoint, "balance point", State.BalancePointMm);
        Content = Marks.Aggregate(Scene.Frame, (box, m) => box.With(m.At)).With(new Point(-SlackMm, -SlackMm));
        Compose(widthMm ?? NaturalWidthMm);
    }

    public override string Kind => "fall";

    public override string Title => $"{Fly.Recipe.Name}: falling on a slack line, {FlyWords.State(State)}";

    public override string Description => _sink is { } sink
        ? $"From the side, {FlyWords.State(State)}, on a slack line in still water it {Goes(sink)} at "
            + $"{Magnitudes.SinkRate.Say(Math.Abs(sink.RateMS), Options.Units)}, {FlyWords.Pitch(sink.PitchDeg)}."
        : $"From the side, {FlyWords.State(State)}, on a slack line in still water it finds no attitude to fall in; it is drawn level.";

    protected override string CaptionWords => _sink is { } sink
        ? $"on a slack line, {FlyWords.State(State)}, {FlyWords.Pitch(sink.PitchDeg)}, {Rate}"
        : $"on a slack line, {FlyWords.State(State)}, never steady";

    private string Rate => $"{Goes(_sink!)} {Magnitudes.SinkRate.Say(Math.Abs(_sink!.RateMS), Options.Units)}";

    private double SlackMm => Math.Max(4, 0.12 * Math.Max(Scene.Frame.Width, Scene.Frame.Height));

    // By the size of the letters, so that two drawings beside one another have one scale of speed. It never grows past the drawing.
    private double ArrowMm(SinkReport sink) => Math.Min(LettersOfAMeterASecond * Math.Max(Math.Abs(sink.RateMS), SlowestDrawnMS) * LetterMm, Content.Height);

    private double ArrowX => Scene.Frame.Left - 1.2 * LetterMm;

    // A slack leader pulls nowhere: it hangs in a bight above the eye.
    internal Point[] Bight => [new(0, 0), new(-0.2 * SlackMm, -0.9 * SlackMm), new(-0.7 * SlackMm, -0.1 * SlackMm), new(-SlackMm, -SlackMm)];

    protected override void DrawBehind(Ink ink)
    {
        Point[] bight = Bight;
        string d = new PathText().Move(bight[0]).Cubic(bight[1], bight[2], bight[3]).ToString();
        double gauge = Math.Max(Fly.Built.Conditions.Leader.DiameterM * 1e3, 0.8 * ink.PenMm);
        ink.Canvas.Element("path", ("class", "fly-leader"), ("data-mark", "leader"), ("d", d), ("stroke-width", SvgCanvas.Exact(gauge)));
    }

    protected override void DrawOver(Ink ink)
    {
        if (_sink is not { } sink) return;
        double length = ArrowMm(sink), middle = Scene.Frame.Center.Y, way = Math.Sign(sink.RateMS), head = 0.5 * LetterMm;
        Point tip = new(ArrowX, middle + way * length / 2), tail = new(ArrowX, middle - way * length / 2);
        ink.Canvas.Element("line", ("class", "fly-fall"), ("data-mark", "fall"), ("x1", E(tail.X)), ("y1", E(tail.Y)), ("x2", E(tip.X)), ("y2", E(tip.Y)),
            ("stroke-width", E(1.4 * ink.PenMm)));
        ink.Solid(new PathText().Polyline([tip, tip + new Point(-0.6 * head, -way * head), tip + new Point(0.6 * head, -way * head)], closed: true));
    }

    protected override void Furnish(Occupancy occupancy, List<LabelWish> wishes, List<Box> kept)
    {
        kept.AddRange(Kept(Bight));
        if (_sink is null) return;
        double half = ArrowMm(_sink) / 2, middle = Scene.Frame.Center.Y;
        wishes.Add(new LabelWish(Rate, "fall", new Point(ArrowX, middle), 0.4 * LetterMm));
        kept.Add(new Box(ArrowX - 0.4 * LetterMm, middle - half, ArrowX + 0.4 * LetterMm, middle + half));
    }

    // Words keep off the leader.
    private IEnumerable<Box> Kept(Point[] bight)
    {
        for (int i = 1; i <= 12; i++)
        {
            double t = i / 12.0, u = 1 - t;
            yield return Box.Around(bight[1] * (3 * u * u * t) + bight[2] * (3 * u * t * t) + bight[3] * (t * t * t), 0.3 * LetterMm, 0.3 * LetterMm);
        }
    }

    private static string Goes(SinkReport sink) => sink.RateMS < 0 ? "rises" : "falls";

    private static string E(double v) => SvgCanvas.Exact(v);
}
