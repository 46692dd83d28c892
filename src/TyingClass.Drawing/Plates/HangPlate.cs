using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Labels;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Plates;

/// <summary>The fly hung from its eye in air against a plumb line: the test that anyone can do at the bench.</summary>
internal sealed class HangPlate : FlyPlate
{
    private const double SmallestArcDeg = 2;

    private readonly Point _down = new(0, 1);
    private readonly Point _shankFront, _shankWay;

    /// <param name="widthMm">A common width for several plates; null for this one's own.</param>
    public HangPlate(SolvedFly fly, DrawingOptions options, double? widthMm = null)
        : base(fly, options)
    {
        View view = new(Pose.Hung(Report.TowPointMm, Report.MassCenterMm), Report.TowPointMm, Facing.Side);
        Scene = new Scene(new Anatomy(fly, view, -Vector3D.UnitZ));
        _shankFront = view.At(Vector3D.Zero);
        _shankWay = view.Along(Vector3D.UnitX).Unit();
        AddMark(view, MarkSet.TowPoint, "tow point", Report.TowPointMm);
        AddMark(view, MarkSet.MassCenter, "mass center", Report.MassCenterMm);
        double knot = LineArt.KnotMm(fly), loop = LineArt.LoopHalfMm(fly);
        Content = Scene.Frame.With(new Point(0, -LeaderMm)).With(Box.Around(new Point(0, -0.6 * knot), 2.4 * loop, 2.4 * loop))
            .With(_shankFront + _shankWay * ReachMm).With(_shankFront + _down * ReachMm);
        Compose(widthMm ?? NaturalWidthMm);
    }

    public override string Kind => "hang";

    public override string Title => $"{Fly.Recipe.Name}: hung from its eye";

    public override string Description =>
        "Dry, in air, the fly hangs from its eye with the mass center plumb under the tow "
        + $"point, {Magnitudes.Place.Say(Si.Mm((Report.MassCenterMm - Report.TowPointMm).Length), Options.Units)} below it. "
        + $"The shank stands {Words} off the plumb line. It weighs {Magnitudes.Mass.Say(Si.G(Report.MassG), Options.Units)}.";

    protected override string CaptionWords => $"hung dry from its eye, shank {Words} off plumb";

    private string Words => FlyWords.Degrees(Report.Hang.ShankFromPlumbDeg);

    private double LeaderMm => LineArt.KnotMm(Fly) + Math.Max(4, 0.12 * Scene.Frame.Height);

    private double ReachMm => 1e3 * Fly.Built.Hook.ShankM * 1.25;

    private bool HasArc => Report.Hang.ShankFromPlumbDeg >= SmallestArcDeg;

    protected override void DrawBehind(Ink ink)
    {
        LineArt.Draw(ink, Fly, new Point(0, -1), LeaderMm);
        LineArt.Rule(ink, new Ruling("fly-plumb", "plumb line", 0.8, LineArt.Dashes(LetterMm)), new Point(0, 0), new Point(0, Content.Bottom));
    }

    protected override void DrawOver(Ink ink)
    {
        if (!HasArc)
            return;
        string fine = $"{Svg.SvgCanvas.N(0.3 * LetterMm)} {Svg.SvgCanvas.N(0.3 * LetterMm)}";
        LineArt.Rule(ink, new Ruling("fly-own-line", "shank", 0.7, fine), _shankFront, _shankFront + _shankWay * ReachMm);
        LineArt.Rule(ink, new Ruling("fly-own-line", "upright", 0.7, fine), _shankFront, _shankFront + _down * ReachMm);
        LineArt.Arc(ink, "shank from plumb", _shankFront, 0.92 * ReachMm, _down, _shankWay);
    }

    protected override void Furnish(Occupancy occupancy, List<LabelWish> wishes, List<Box> kept)
    {
        if (HasArc)
            wishes.Add(new LabelWish($"{Words} off plumb", "shank from plumb", _shankFront + (_down + _shankWay).Unit() * (0.92 * ReachMm), 0.2 * LetterMm));
        wishes.Add(new LabelWish("plumb line", "plumb line", new Point(0, 0.93 * Content.Bottom), 0.15 * LetterMm));
        kept.AddRange(LineArt.Kept(Fly, new Point(0, -1), LeaderMm, LetterMm));
        for (int i = 1; i <= 12; i++)
            kept.Add(Box.Around(new Point(0, Content.Bottom * i / 12), 0.25 * LetterMm, 0.25 * LetterMm));
    }
}
