using System.Collections.Immutable;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Sinking;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Labels;
using TyingClass.Drawing.Plates;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Figures;

namespace TyingClass.Drawing.Figures;

/// <summary>A fly held level on its way down: where its weight pulls and where the water pushes back.</summary>
internal sealed class PullAndPush : TeachingFigure
{
    public override string Kind => "pull and push";

    public override ImmutableArray<FigurePanel> Draw(FigureRequest request, DrawingOptions options) => Alone(new PullAndPushPlate(One(request), options));
}

internal sealed class PullAndPushPlate : FlyPlate
{
    private readonly Point _pull, _push;
    private readonly double _reach, _aheadMm;

    /// <exception cref="ArgumentException">The fly does not sink.</exception>
    public PullAndPushPlate(SolvedFly fly, DrawingOptions options)
        : base(fly, options with { Caption = false, State = Balance.Reports.WetState.Soaked, Marks = MarkSet.ScaleBar | MarkSet.BalancePoint })
    {
        if (Report.BalancePointMm is not { } balance
            || PushPoint.BehindFrontM(fly.Built.Body, fly.Built.Conditions, Report.Intent) is not { } push)
            throw new ArgumentException($"{fly.Recipe.Name} does not sink, so nothing pushes back at it.");

        View view = new(Pose.Towed(0, 0, Report.Intent), Report.TowPointMm, Facing.Side);
        Scene = new Scene(new Anatomy(fly, view, new Vector3D(0, 0, Report.Intent == Balance.Bodies.Intent.PointUp ? -1 : 1)));
        _aheadMm = 1e3 * push - balance.X;
        (_pull, _push) = (view.At(balance), view.At(balance with { X = 1e3 * push, Y = 0 }));
        AddMark(view, MarkSet.BalancePoint, "balance point", balance);
        _reach = 0.36 * Math.Max(Scene.Frame.Height, 0.6 * Scene.Frame.Width);
        Content = Scene.Frame.With(_pull + new Point(0, _reach)).With(_push + new Point(0, -_reach));
        Compose(NaturalWidthMm);
    }

    public override string Kind => "pull and push";

    public override string Title => $"{Fly.Recipe.Name}: held level on its way down";

    public override string Description =>
        $"The fly is held level while it sinks. Its weight in the water pulls down at the balance point. The water pushes up as hard at the push point, "
        + $"{Magnitudes.MassCenterX.Say(Math.Abs(_aheadMm) / 1e3, Options.Units)} {(_aheadMm > 0 ? "farther back" : "farther forward")}. "
        + $"Let go, {(_aheadMm > 0 ? "the nose goes" : "the tail goes")} down.";

    protected override string CaptionWords => "";

    protected override void DrawBehind(Ink ink)
    {
    }

    protected override void DrawOver(Ink ink)
    {
        foreach ((string name, Point at, double way) in Forces)
        {
            Point tip = at + new Point(0, way * _reach);
            ink.Brush(new Svg.PathText().Move(at).Line(tip), Tone.Paper, 0.6 * LetterMm, 0.85);
            Arrow.Draw(ink, name, at, tip, 0.9 * LetterMm);
        }

        ink.Solid(new Svg.PathText().Polyline([.. Enumerable.Range(0, 12).Select(i =>
        {
            (double sin, double cos) = Math.SinCos(i * Math.PI / 6);
            return _push + new Point(cos, sin) * (0.3 * LetterMm);
        })], closed: true));
    }

    protected override void Furnish(Occupancy occupancy, List<LabelWish> wishes, List<Box> kept)
    {
        wishes.Add(new LabelWish("push point", "push point", _push, 0.5 * LetterMm));
        wishes.Add(new LabelWish("pull of the weight", "pull", _pull + new Point(0, 0.95 * _reach), 0.3 * LetterMm));
        wishes.Add(new LabelWish("push of the water", "push", _push + new Point(0, -0.95 * _reach), 0.3 * LetterMm));
        foreach ((string _, Point at, double way) in Forces)
        {
            for (int i = 1; i <= 6; i++) kept.Add(Box.Around(at + new Point(0, way * _reach * i / 6), 0.35 * LetterMm, 0.35 * LetterMm));
        }
    }

    private IEnumerable<(string Name, Point At, double Way)> Forces => [("pull", _pull, 1), ("push", _push, -1)];
}
