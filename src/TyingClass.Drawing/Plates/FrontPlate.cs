using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Labels;
using TyingClass.Drawing.Words;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Plates;

/// <summary>The fly from ahead, looking along the shank, so that lean is seen at its true angle whatever the pitch.</summary>
internal sealed class FrontPlate : FlyPlate
{
    private static readonly Point Up = new(0, -1);

    private readonly TowReport _tow;
    private readonly Point _own;

    /// <param name="widthMm">A common width for several plates; null for this one's own.</param>
    public FrontPlate(SolvedFly fly, DrawingOptions options, double? widthMm = null)
        : base(fly, options)
    {
        _tow = State.Towed(options.SpeedMS);
        View view = new(Pose.Towed(0, _tow.LeanDeg, Report.Intent), Report.TowPointMm, Facing.Front);
        _own = view.Along(Report.Intent == Intent.PointUp ? -Vector3D.UnitZ : Vector3D.UnitZ);
        Scene = new Scene(new Anatomy(fly, view, Vector3D.UnitX));
        AddMark(view, MarkSet.TowPoint, "tow point", Report.TowPointMm);
        AddMark(view, MarkSet.CenterOfBuoyancy, "center of buoyancy", State.CenterOfBuoyancyMm);
        AddMark(view, MarkSet.MassCenter, "mass center", Report.MassCenterMm);
        AddMark(view, MarkSet.BalancePoint, "balance point", State.BalancePointMm);
        Content = Marks.Aggregate(Scene.Frame, (box, m) => box.With(m.At));
        Content = Content.With(Up * ReachMm).With(_own * ReachMm);
        Compose(widthMm ?? NaturalWidthMm);
    }

    // Wide enough for the words on both sides of so narrow a view.
    public override double NaturalWidthMm => Math.Max(base.NaturalWidthMm, 2.1 * Content.Width);

    public override string Kind => "front";

    public override string Title =>
        $"{Fly.Recipe.Name}: seen from ahead along the shank, {FlyWords.State(State)}, at {Magnitudes.FishingSpeed.Say(_tow.SpeedMS, Options.Units)}";

    public override string Description => FrontWords.Describe(Fly, State, _tow, Marks, Options.Units);

    protected override string CaptionWords =>
        $"seen along the shank, {FlyWords.State(State)}, {Magnitudes.FishingSpeed.Say(_tow.SpeedMS, Options.Units)}, {SideWords.Leaning(_tow)}";

    // Along the shank all of them lie close together: small ones can be told apart.
    protected override double MarkRadiusMm => 0.28 * LetterMm;

    private double ReachMm => 1.12 * new[] { Scene.Frame.Width, Scene.Frame.Height, 6 }.Max() / 2 + 2;

    private bool Leans => _tow.LeanDeg >= 0.5;

    protected override void DrawBehind(Ink ink)
    {
        string dashes = LineArt.Dashes(LetterMm);
        LineArt.Rule(ink, new Ruling("fly-plumb", "plumb line", 0.7, dashes), Up * ReachMm, new Point(0, Content.Bottom));
        if (Leans)
            LineArt.Rule(ink, new Ruling("fly-own-line", "line of the fly", 0.9, dashes), _own * ReachMm,
                _own * -Math.Min(0.6 * ReachMm, 0.9 * Math.Abs((_own.Y < 0 ? Content.Bottom : Content.Top) / _own.Y)));
    }

    protected override void DrawOver(Ink ink)
    {
        if (Leans)
            LineArt.Arc(ink, "lean", new Point(0, 0), 0.82 * ReachMm, Up, _own);
    }

    protected override void Furnish(Occupancy occupancy, List<LabelWish> wishes, List<Box> kept)
    {
        Point middle = _tow.LeanDeg > 170 ? new Point(1, 0) : (Up + _own).Unit();
        wishes.Add(
            new LabelWish(Leans ? $"lean {FlyWords.Degrees(_tow.LeanDeg)}" : "plumb, no lean", "lean", Leans ? middle * (0.82 * ReachMm) : Up * (0.9 * ReachMm),
                0.2 * LetterMm));
        foreach (Point way in (Point[])[Up, _own])
        {
            for (int i = 1; i <= 8; i++)
                kept.Add(Box.Around(way * (ReachMm * i / 8), 0.3 * LetterMm, 0.3 * LetterMm));
        }
    }
}
