using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Drawing.Figures;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Labels;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Plates;

/// <summary>The fly as it is towed, with the forces on it to one scale and the slope of its leader, which carries what lift leaves of the weight.</summary>
internal sealed class PulledPlate : FlyPlate
{
    // m/s², as the engine takes it.
    private const double Gravity = 9.80665;
    private const double LeastShare = 0.03;

    private readonly TowReport _tow;
    private readonly Point _pull, _at;
    private readonly (string Name, string Said, Point Force)[] _forces;

    /// <param name="widthMm">A common width for several plates; null for this one's own.</param>
    public PulledPlate(SolvedFly fly, DrawingOptions options, double? widthMm = null)
        : base(fly, options)
    {
        _tow = State.Towed(options.SpeedMS);
        (double sin, double cos) = Math.SinCos(double.DegreesToRadians(_tow.LineAngleDeg));
        _pull = new Point(-cos, -sin);
        View view = new(Pose.Towed(_tow.PitchDeg, _tow.LeanDeg, Report.Intent), Report.TowPointMm, Facing.Side);
        Scene = new Scene(new Anatomy(fly, view, Vector3D.UnitX));
        AddMark(view, MarkSet.TowPoint, "tow point", Report.TowPointMm);
        _at = view.At(State.BalancePointMm ?? Report.MassCenterMm);
        double weightMN = State.WetWeightG * Gravity, most = new[] { weightMN, _tow.DragMN, Math.Abs(_tow.LiftMN), 1e-9 }.Max();
        double reach = 0.5 * Math.Max(Scene.Frame.Width, Scene.Frame.Height);
        (string, double, double, Point)[] all =
        [
            ("weight in the water", weightMN, weightMN, new Point(0, 1)), ("drag", _tow.DragMN, _tow.DragMN, new Point(1, 0)),
            ("lift", _tow.LiftMN, Math.Abs(_tow.LiftMN), new Point(0, -Math.Sign(_tow.LiftMN))),
        ];
        _forces =
        [
            .. all.Where(f => f.Item3 > LeastShare * most)
                .Select(f => (f.Item1, $"{f.Item1} {Magnitudes.Drag.Say(f.Item2 / 1e3, options.Units)}", f.Item4 * (reach * f.Item3 / most))),
        ];
        Content = _forces.Aggregate(Scene.Frame.With(_pull * LeaderMm(Scene.Frame)), (box, f) => box.With(_at + f.Force));
        Compose(widthMm ?? NaturalWidthMm);
    }

    public override string Kind => "pulled";

    public override string Title =>
        $"{Fly.Recipe.Name}: what pulls at it, {FlyWords.State(State)}, at {Magnitudes.FishingSpeed.Say(_tow.SpeedMS, Options.Units)}";

    public override string Description =>
        $"{Title}. The leader leaves the eye {Slope}. Forces, to one scale: {string.Join(", ", _forces.Select(f => f.Said))}.";

    protected override string? FlowWords => $"flow {Magnitudes.FishingSpeed.Say(_tow.SpeedMS, Options.Units)}";

    protected override string CaptionWords => $"{FlyWords.State(State)}, leader {Slope}";

    private string Slope => $"{FlyWords.Degrees(Math.Abs(_tow.LineAngleDeg))} {(_tow.LineAngleDeg < 0 ? "below" : "above")} level";

    private double ArcMm => 0.7 * LeaderMm(Scene.Frame);

    private static double LeaderMm(Box frame) => Math.Clamp(0.45 * frame.Width, 6, 18);

    protected override void DrawBehind(Ink ink)
    {
        LineArt.Draw(ink, Fly, _pull, LeaderMm(Scene.Frame));
        LineArt.Rule(ink, new Ruling("fly-own-line", "level", 0.7, LineArt.Dashes(LetterMm)), new Point(0, 0), new Point(-LeaderMm(Scene.Frame), 0));
        LineArt.Arc(ink, "line angle", new Point(0, 0), ArcMm, new Point(-1, 0), _pull);
    }

    protected override void DrawOver(Ink ink)
    {
        foreach ((string name, string _, Point force) in _forces) Arrow.Draw(ink, name, _at, _at + force, 0.9 * LetterMm);
    }

    protected override void Furnish(Occupancy occupancy, List<LabelWish> wishes, List<Box> kept)
    {
        wishes.Add(new LabelWish(FlyWords.Degrees(Math.Abs(_tow.LineAngleDeg)), "line angle", (new Point(-1, 0) + _pull).Unit() * ArcMm, 0.2 * LetterMm));
        wishes.AddRange(_forces.Select(f => new LabelWish(f.Said, f.Name, _at + f.Force, 0.3 * LetterMm)));
        kept.AddRange(LineArt.Kept(Fly, _pull, LeaderMm(Scene.Frame), LetterMm));
        foreach ((string _, string _, Point force) in _forces)
        {
            for (int i = 1; i <= 6; i++) kept.Add(Box.Around(_at + force * (i / 6.0), 0.3 * LetterMm, 0.3 * LetterMm));
        }
    }
}
