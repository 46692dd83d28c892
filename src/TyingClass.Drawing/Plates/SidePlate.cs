using TyingClass.Recipes.Reports;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Labels;
using TyingClass.Drawing.Marks;
using TyingClass.Drawing.Svg;
using TyingClass.Drawing.Words;
using Attitude = TyingClass.Drawing.Geometry.Attitude;

namespace TyingClass.Drawing.Plates;

/// <summary>The fly from the side as it is towed: flow from the left, line to the upper left, marks and keel height.</summary>
internal sealed class SidePlate : Plate
{
    private readonly SolvedFly fly;
    private readonly BalanceReport report;
    private readonly StateReport state;
    private readonly TowReport tow;
    private readonly Scene scene;
    private readonly List<Mark> marks = [];
    private readonly Box content;
    private readonly Point pull;
    private Dimension? keel;

    /// <param name="widthMm">A common width for several plates; null for this one's own.</param>
    public SidePlate(SolvedFly fly, DrawingOptions options, double? widthMm = null)
        : base(options)
    {
        (this.fly, report) = (fly, fly.Report);
        state = report.State(options.State);
        tow = state.Towed(options.SpeedMS);
        View view = Seen(tow);
        scene = new Scene(new Anatomy(fly, view, Vector3D.UnitX));
        double lineAngle = double.DegreesToRadians(tow.LineAngleDeg);
        pull = new Point(-Math.Cos(lineAngle), -Math.Sin(lineAngle));
        AddMarks(view);
        double leader = Math.Clamp(0.2 * scene.Frame.Width, 5, 14);
        content = marks.Aggregate(scene.Frame, (box, m) => box.With(m.At)).With(pull * leader).With(Box.Around(pull * (6e3 * fly.Built.Hook.WireM), 3.4e3 * fly.Built.Hook.WireM, 1));
        if (options.FrameAllSpeeds)
            content = state.Tow.Aggregate(content, (box, t) => box.With(new Scene(new Anatomy(fly, Seen(t), Vector3D.UnitX)).Frame));
        Compose(widthMm ?? NaturalWidthMm);
    }

    public override string Kind => "side";

    public override string Title => $"{fly.Recipe.Name}: side view, {Wording.State(state.State)}, at {Wording.Speed(tow.SpeedMS, Options.Units)}";

    public override string Description => SideWords.Describe(fly, state, tow, marks, Options.Units);

    /// <summary>The content, the dimension column and a letter's margin on each side.</summary>
    public double NaturalWidthMm => Math.Max(Math.Max(content.Width / (1 - LetterShare * 5.2), 1.05 * content.Height), 12);

    private bool HasKeel => Options.Marks.HasFlag(MarkSet.KeelHeight) && SideWords.SettledKeel(report.Intent, tow) is { } h && Math.Abs(h) < 0.75 * content.Width;

    public override void DrawInside(SvgCanvas canvas)
    {
        OpenPage(canvas);
        Ink ink = new(canvas, PenMm);
        if (Options.Marks.HasFlag(MarkSet.LineOfPull))
            DrawLine(canvas);
        canvas.Open("g", ("class", "fly-body"));
        scene.Draw(ink);
        canvas.Close();
        if (Options.Marks.HasFlag(MarkSet.LineOfPull))
            DrawPull(canvas);
        keel?.Draw(ink, LetterMm);
        foreach (Mark mark in marks)
            mark.Draw(ink, MarkRadiusMm);
        DrawLabels(canvas);
        DrawFoot(canvas);
        canvas.Close();
    }

    private double MarkRadiusMm => 0.46 * LetterMm;

    private double FootTop => Window.Bottom - FootHeight;

    private double FootHeight => (Options.Caption ? 4.7 : Options.Marks.HasFlag(MarkSet.ScaleBar) || Options.Marks.HasFlag(MarkSet.Flow) ? 1.9 : 0.4) * LetterMm;

    private View Seen(TowReport t) => new(Attitude.Towed(t.PitchDeg, t.LeanDeg, report.Intent), report.TowPointMm, Facing.Side);

    private void AddMarks(View view)
    {
        void Add(MarkSet kind, string name, Vector3D? hook)
        {
            if (Options.Marks.HasFlag(kind) && hook is { } at)
                marks.Add(new Mark(name, kind, view.At(at)));
        }

        Add(MarkSet.TowPoint, "tow point", report.TowPointMm);
        Add(MarkSet.CenterOfBuoyancy, "center of buoyancy", state.CenterOfBuoyancyMm);
        Add(MarkSet.MassCenter, "mass center", report.MassCenterMm);
        Add(MarkSet.BalancePoint, "balance point", state.BalancePointMm);
    }

    private void Compose(double width)
    {
        double letter = LetterShare * width, left = content.Left - (width - content.Width) / 2, right = left + width;
        Window = new Box(left, content.Top, right, content.Bottom);
        Occupancy occupancy = new(content.Grown(letter), 0.4 * letter, scene.Pieces.Select(p => p.Outline));
        List<LabelWish> wishes = [];
        if (HasKeel)
        {
            keel = Keel(occupancy, letter);
            string words = $"keel height {Wording.Length(keel.HeightMm, Options.Units)}";
            // Beside the arrows when they stand within, past either of them when they stand without.
            wishes.Add(keel.IsRoomy(letter)
                ? new LabelWish(words, "keel height", keel.Middle, 0.35 * letter)
                : new LabelWish(words, "keel height", new Point(keel.ColumnX, keel.BottomY + 0.9 * letter), 0.15 * letter) { OrAnchor = new Point(keel.ColumnX, keel.TopY - 0.9 * letter) });
        }

        wishes.AddRange(marks.Select(m => new LabelWish(m.Name, m.Name, m.At, 1.1 * MarkRadiusMm)));
        if (Options.Marks.HasFlag(MarkSet.LineOfPull))
            wishes.Add(new LabelWish("line of pull", "line of pull", pull * (0.6 * LeaderMm(left)), 0.15 * letter));
        List<Box> kept = [];
        for (int i = 0; i < 16; i++)
            kept.Add(Box.Around(pull * (LeaderMm(left) * (i + 0.5) / 16), 0.4 * letter, 0.4 * letter));
        if (keel is { } k)
            kept.Add(new Box(k.ColumnX - 0.35 * letter, k.TopY - letter, k.ColumnX + 0.35 * letter, k.BottomY + letter));
        Labels = new LabelPlacer(content, left + 0.3 * letter, right - 0.3 * letter, letter, occupancy, kept).Place(wishes);
        Box all = Labels.Aggregate(content, (box, l) => box.With(l.Box));
        if (keel is { } d)
            all = all.With(d.Box.Grown(1.3 * letter));
        Window = new Box(left, all.Top - 0.8 * letter, right, all.Bottom + 0.6 * letter);
        Window = Window with { Bottom = Window.Bottom + FootHeight };
    }

    // The dimension line stands ahead of the fly or behind it, wherever its two level lines cross less of it.
    private Dimension Keel(Occupancy occupancy, double letter)
    {
        double height = SideWords.SettledKeel(report.Intent, tow)!.Value;
        Point from = marks.FirstOrDefault(m => m.Kind == MarkSet.BalancePoint)?.At
            ?? Seen(tow).At(state.BalancePointMm ?? report.MassCenterMm);
        Dimension Standing(double x) => new("keel height", from, height, x);
        Dimension ahead = Standing(scene.Frame.Left - 0.9 * letter), behind = Standing(scene.Frame.Right + 0.9 * letter);
        double Cost(Dimension d) => Math.Abs(d.ColumnX - from.X) / letter + 8 * occupancy.Share(new Box(Math.Min(d.ColumnX, from.X), d.TopY - 0.1, Math.Max(d.ColumnX, from.X), d.BottomY + 0.1))
            + (Crossing(d) ? 10 : 0);
        return Cost(ahead) <= Cost(behind) ? ahead : behind;

        bool Crossing(Dimension d) => d.ColumnX < 0 && pull.X < 0 && d.ColumnX * pull.Y / pull.X is var y && y > d.TopY - letter && y < d.BottomY + letter;
    }

    // To the edge of the window, but no longer than the content allows upward.
    private double LeaderMm(double left)
    {
        double toEdge = pull.X < -1e-6 ? left / pull.X : double.MaxValue;
        double toTop = pull.Y < -1e-6 ? content.Top / pull.Y : double.MaxValue;
        return Math.Max(Math.Min(toEdge, toTop), 3);
    }

    private void DrawLine(SvgCanvas canvas)
    {
        double length = LeaderMm(Window.Left), gauge = Math.Max(fly.Built.Conditions.Leader.DiameterM * 1e3, 0.8 * PenMm);
        double wire = fly.Built.Hook.WireM * 1e3, loop = fly.Built.Conditions.Knot == Knot.Loop ? 6 * wire : 1.2 * wire;
        Point side = pull.Turned() * (0.22 * loop), knot = pull * loop;
        PathText leader = new();
        if (fly.Built.Conditions.Knot == Knot.Loop)
            leader.Move(knot).Cubic(knot * 0.75 + side * 1.4, side * 1.6 + knot * 0.1, pull * -0.35 * 1 * wire).Cubic(side * -1.6 + knot * 0.1, knot * 0.75 - side * 1.4, knot);
        leader.Move(fly.Built.Conditions.Knot == Knot.Loop ? knot : new Point(0, 0)).Line(pull * length);
        canvas.Element("path", ("class", "fly-leader"), ("data-mark", "leader"), ("d", leader.ToString()), ("stroke-width", SvgCanvas.Exact(gauge)));
        Point a = knot - pull * (0.5 * wire), b = knot + pull * (1.1 * wire);
        canvas.Element("path", ("class", "fly-knot"), ("d", new PathText().Move(a).Line(b).ToString()), ("stroke-width", SvgCanvas.Exact(2.6 * gauge)));
    }

    private void DrawPull(SvgCanvas canvas)
    {
        Point end = pull * -ReachAft();
        canvas.Element("line", ("class", "fly-pull"), ("data-mark", "line of pull"),
            ("x1", "0"), ("y1", "0"), ("x2", SvgCanvas.Exact(end.X)), ("y2", SvgCanvas.Exact(end.Y)),
            ("stroke-width", SvgCanvas.Exact(0.8 * PenMm)), ("stroke-dasharray", $"{SvgCanvas.N(1.1 * LetterMm)} {SvgCanvas.N(0.35 * LetterMm)} {SvgCanvas.N(0.15 * LetterMm)} {SvgCanvas.N(0.35 * LetterMm)}"));
    }

    // Through the fly and no farther: as long as the hook, or to the edge of the drawing.
    private double ReachAft()
    {
        double hook = (fly.Built.Hook.ShankM + fly.Built.Hook.BendDepthM) * 1.25e3;
        double toBottom = pull.Y < -1e-6 ? (content.Bottom + LetterMm) / -pull.Y : double.MaxValue;
        double toRight = pull.X < -1e-6 ? Window.Right / -pull.X : double.MaxValue;
        return Math.Min(hook, Math.Min(toBottom, toRight));
    }

    private void DrawFoot(SvgCanvas canvas)
    {
        double letter = LetterMm, y = FootTop + 1.2 * letter, inset = letter;
        if (Options.Marks.HasFlag(MarkSet.Flow))
            Strip.DrawFlow(canvas, Window.Left + inset, y, letter, PenMm, $"flow {Wording.Speed(tow.SpeedMS, Options.Units)}");
        if (Options.Marks.HasFlag(MarkSet.ScaleBar))
            Strip.DrawScaleBar(canvas, Window.Right - inset, y, Window.Width, letter, PenMm, Options.Units);
        if (!Options.Caption)
            return;
        Point middle = Window.Center;
        double room = Window.Width / letter - 2;
        Say(canvas, Fitted(fly.Recipe.Name, room), new Point(middle.X, y + 1.7 * letter), "middle", "name", "fly-label fly-name");
        Say(canvas, Fitted(SideWords.Caption(state, tow, report.Intent), room), new Point(middle.X, y + 3 * letter), "middle", "caption", "fly-label fly-caption");
    }
}
