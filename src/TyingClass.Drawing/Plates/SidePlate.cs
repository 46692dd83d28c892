using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Drawing.Figures;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Labels;
using TyingClass.Drawing.Marks;
using TyingClass.Drawing.Words;
using TyingClass.Recipes.Reports;
using TyingClass.Telling;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Plates;

/// <summary>The fly from the side as it is towed: flow from the left, line to the upper left, marks, hinge line and keel height.</summary>
internal sealed class SidePlate : FlyPlate
{
    private readonly TowReport _tow;
    private readonly bool _isHeld;
    private readonly Point _pull;
    private HeightLine? _keel;
    private Point? _hinge;

    /// <param name="widthMm">A common width for several plates; null for this one's own.</param>
    /// <param name="at">Another attitude it can settle in at its own speed; null for the one it does.</param>
    /// <param name="held">Held the way up it is meant to ride, whether or not it would stay so.</param>
    public SidePlate(SolvedFly fly, DrawingOptions options, double? widthMm = null, StableAttitude? at = null, bool held = false)
        : base(fly, options)
    {
        _tow = State.Towed(options.SpeedMS);
        _isHeld = held && (!_tow.Settles || _tow.LeanDeg > SideWords.AskewDeg);
        if (_isHeld) _tow = _tow with { Settles = true, PitchDeg = _tow.SymmetricPitchDeg, LeanDeg = 0 };
        if (at is { } other) _tow = _tow with { Settles = true, PitchDeg = other.PitchDeg, LeanDeg = other.LeanDeg };
        _pull = Pull(_tow);
        View view = Seen(_tow);
        Scene = Draft(_tow);
        foreach ((MarkSet kind, string name, Vector3D? place) in Places)
            AddMark(view, kind, name, place);
        Content = options.FrameAllSpeeds
            ? State.Tow.Append(State.AtFishingSpeed).Aggregate(Box.Empty, (box, t) => box.With(Covered(t, Draft(t).Frame)))
            : Covered(_tow, Scene.Frame);
        Compose(widthMm ?? NaturalWidthMm);
    }

    public override string Kind => "side";

    public override string Title => $"{Fly.Recipe.Name}: side view, {FlyWords.State(State)}, at {Magnitudes.FishingSpeed.Say(_tow.SpeedMS, Options.Units)}";

    public override string Description => (_isHeld ? $"{Grammar.Capital(CaptionWords)}. " : "") + SideWords.Describe(Fly, State, _tow, Marks, Options.Units);

    protected override string? FlowWords => $"flow {Magnitudes.FishingSpeed.Say(_tow.SpeedMS, Options.Units)}";

    protected override string CaptionWords => _isHeld ? SideWords.Held(State, _tow, Report.Intent) : SideWords.Caption(State, _tow, Report.Intent);

    protected override void DrawBehind(Ink ink)
    {
        if (Shows(MarkSet.LineOfPull))
            LineArt.Draw(ink, Fly, _pull, LeaderMm);
    }

    protected override void DrawOver(Ink ink)
    {
        if (_hinge is { } aft)
            LineArt.Hinge(ink, HingeView.Name, new Point(0, 0), aft * ReachAftMm(aft), LetterMm);
        _keel?.Draw(ink, LetterMm);
    }

    protected override void Furnish(Occupancy occupancy, List<LabelWish> wishes, List<Box> kept)
    {
        double letter = LetterMm;
        if (Shows(MarkSet.KeelHeight) && SideWords.SettledKeel(Report.Intent, _tow) is { } height && Math.Abs(height) < 0.75 * Content.Width)
        {
            _keel = Keel(height, occupancy, letter);
            // Of the way up it rides; where that is not the one meant, the words say so, for texts speak of the one meant.
            string way = SideWords.Settled(Report.Intent, _tow) is var settled && settled == Report.Intent ? "" : FlyWords.Way(settled) + " ";
            double past = _keel.IsRoomy(letter) ? 0.2 * letter : 1.1 * letter;
            wishes.Add(
                new LabelWish($"keel height {way}{Magnitudes.KeelHeight.Say(Si.Mm(height), Options.Units)}", "keel height",
                    new Point(_keel.ColumnX, _keel.BottomY + past), 0.15 * letter)
                {
                    OrAnchor = new Point(_keel.ColumnX, _keel.TopY - past),
                });
            kept.Add(new Box(_keel.ColumnX - 0.35 * letter, _keel.TopY - past, _keel.ColumnX + 0.35 * letter, _keel.BottomY + past));
            // What the height is measured to, and the fly rolls about.
            _hinge = HingeView.Aft(_keel.From, height);
            if (_hinge is { } aft)
                wishes.Add(new LabelWish(HingeView.Name, HingeView.Name, aft * (0.97 * ReachAftMm(aft)), 0.15 * letter)
                {
                    OrAnchor = aft * (0.6 * ReachAftMm(aft)),
                });
        }

        if (!Shows(MarkSet.LineOfPull))
            return;
        wishes.Add(new LabelWish("line of pull", "line of pull", _pull * (0.75 * LeaderMm), 0.15 * letter));
        kept.AddRange(LineArt.Kept(Fly, _pull, LeaderMm, letter));
    }

    // To the edge of the window, but no longer than the content allows upward or downward.
    private double LeaderMm
    {
        get
        {
            double toEdge = _pull.X < -1e-6 ? Window.Left / _pull.X : double.MaxValue;
            double toTop = _pull.Y < -1e-6 ? Content.Top / _pull.Y : _pull.Y > 1e-6 ? Content.Bottom / _pull.Y : double.MaxValue;
            return Math.Max(Math.Min(toEdge, toTop), 3);
        }
    }

    // Through the fly and no farther: as long as the hook, or to the edge of the drawing.
    private double ReachAftMm(Point aft)
    {
        double hook = (Fly.Built.Hook.ShankM + Fly.Built.Hook.BendDepthM) * 1.2e3;
        double toEdge = aft.Y > 1e-6 ? Content.Bottom / aft.Y : aft.Y < -1e-6 ? Content.Top / aft.Y : double.MaxValue;
        return Math.Min(hook, Math.Min(toEdge, Window.Right / aft.X));
    }

    private IEnumerable<(MarkSet Kind, string Name, Vector3D? PlaceMm)> Places =>
    [
        (MarkSet.TowPoint, "tow point", Report.TowPointMm), (MarkSet.CenterOfBuoyancy, "center of buoyancy", State.CenterOfBuoyancyMm),
        (MarkSet.MassCenter, "mass center", Report.MassCenterMm), (MarkSet.BalancePoint, "balance point", State.BalancePointMm),
    ];

    private static Point Pull(TowReport t)
    {
        (double sin, double cos) = Math.SinCos(double.DegreesToRadians(t.LineAngleDeg));
        return new Point(-cos, -sin);
    }

    // The fly, its marks and a good piece of its leader at one speed.
    private Box Covered(TowReport t, Box frame)
    {
        double leader = Math.Clamp(0.2 * frame.Width, 5, 14), loop = 2.4 * LineArt.LoopHalfMm(Fly);
        View view = Seen(t);
        return Places.Where(p => Shows(p.Kind) && p.PlaceMm is not null).Aggregate(frame, (box, p) => box.With(view.At(p.PlaceMm!.Value)))
            .With(Pull(t) * leader).With(Box.Around(Pull(t) * (0.6 * LineArt.KnotMm(Fly)), loop, loop));
    }

    private View Seen(TowReport t) => new(Pose.Towed(t.PitchDeg, t.LeanDeg, Report.Intent), Report.TowPointMm, Facing.Side);

    private Scene Draft(TowReport t) => new(new Anatomy(Fly, Seen(t), Vector3D.UnitX));

    // The dimension line stands ahead of the fly or behind it, wherever its two level lines cross less of it.
    private HeightLine Keel(double height, Occupancy occupancy, double letter)
    {
        Point from = Seen(_tow).At(State.BalancePointMm ?? Report.MassCenterMm);
        HeightLine Standing(double x) => new("keel height", from, height, x);
        HeightLine ahead = Standing(Scene.Frame.Left - 0.9 * letter), behind = Standing(Scene.Frame.Right + 0.9 * letter);
        return Cost(ahead) <= Cost(behind) ? ahead : behind;

        double Cost(HeightLine d) => Math.Abs(d.ColumnX - from.X) / letter + 8 * occupancy.Share(d.Box.Grown(0.1)) + (MeetsLeader(d) ? 10 : 0);

        bool MeetsLeader(HeightLine d) => d.Box.Grown(letter).Meets(new Point(0, 0), _pull * LeaderMm);
    }
}
