using System.Globalization;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Drawing.Figures;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Marks;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Plates;

/// <summary>Along the hinge line heel is a plain turn of the picture, so one drawing of the fly serves at every heel.</summary>
internal sealed class TipPlate : Plate
{
    private const double CellShare = 1.05;

    private readonly SolvedFly _fly;
    private readonly IReadOnlyList<double> _heels;
    private readonly StateReport _state;
    private readonly TowReport _tow;
    private readonly HingeView? _hinge;
    private readonly View _view;
    private readonly Scene _scene;
    private readonly double _dialMm;

    public TipPlate(SolvedFly fly, IReadOnlyList<double> heelsDeg, DrawingOptions options)
        : base(options)
    {
        (_fly, _heels) = (fly, heelsDeg);
        _state = fly.Report.State(options.State);
        _tow = _state.AtFishingSpeed;
        _hinge = HingeView.Find(fly, _state);
        // The symmetric attitude, turned until the hinge line lies along the view; a fly that has none is seen along the flow.
        _view = _hinge?.EndOn(fly) ?? new View(Pose.Towed(_tow.SymmetricPitchDeg, 0, fly.Report.Intent), fly.Report.TowPointMm, Facing.Front);
        _scene = new Scene(new Anatomy(fly, _view, Vector3D.UnitX));
        // Round the origin the fly must clear the dial however it is turned.
        _dialMm = 1.1 * Math.Max(_scene.Pieces.SelectMany(p => p.Outline).Max(p => p.Length), 3);
        double half = 1.3 * _dialMm;
        Window = new Box(-half, -1.34 * _dialMm, half,
            1.34 * _dialMm + (_heels.Count > 0 ? 1.15 * 2 * half / Math.Max(_heels.Count, 3) + 2.6 * LetterShare * 2 * half : 0));
    }

    public override string Kind => "tip";

    public override string Title => $"{_fly.Recipe.Name}: tipped over, {FlyWords.State(_state)}";

    public override string Description => _heels.Count == 0
        ? $"Seen along {Seen} at {Magnitudes.FishingSpeed.Say(_tow.SpeedMS, Options.Units)}. {Range}."
        : $"Seen along {Seen} at {Magnitudes.FishingSpeed.Say(_tow.SpeedMS, Options.Units)}. {Range}. Tipped by {FlyWords.Degrees(_heels[0])} "
        + $"and let go it goes through {string.Join(", ", _heels.Select(FlyWords.Degrees))}: {Outcome}.";

    private string Seen => _hinge is null ? "the flow" : "the hinge line";

    private string Range =>
        _state.Roll.RangeDeg > 0 ? $"It comes back from up to {FlyWords.Degrees(_state.Roll.RangeDeg)}" : "It never comes back to the way it was meant to ride";

    private string Outcome => _heels[^1] < 30 ? "it comes back" : _heels[^1] > 150 ? "it turns over" : $"it stops {FlyWords.Degrees(_heels[^1])} over";

    public override void DrawInside(SvgCanvas canvas)
    {
        OpenPage(canvas);
        Ink ink = new(canvas, PenMm);
        DrawDial(ink);
        canvas.Open("g", ("class", "fly-tipping"), ("id", Options.IdPrefix + "-tipping"),
            ("data-heels-deg", List(p => p.HeelDeg)), ("data-restoring-gmm", List(p => p.RestoringGmm)),
            ("data-range-deg", SvgCanvas.Exact(_state.Roll.RangeDeg)));
        canvas.Open("g", ("class", "fly-body"), ("id", Options.IdPrefix + "-tipped"));
        ink.Line(new PathText().Move(new Point(0, 0)).Line(new Point(0, -_dialMm)), 1.1);
        _scene.Draw(ink);
        if (_state.BalancePointMm is { } balance)
            new Mark("balance point", MarkSet.BalancePoint, _view.At(balance)).Draw(ink, MarkShare * LetterMm);
        canvas.Close();
        canvas.Close();
        new Mark("tow point", MarkSet.TowPoint, new Point(0, 0)).Draw(ink, MarkShare * LetterMm);
        DrawSteps(canvas);
        canvas.Close();
    }

    private void DrawDial(Ink ink)
    {
        for (int heel = 0; heel <= 180; heel += 10)
        {
            Point way = Way(heel);
            bool named = heel % 30 == 0;
            ink.Line(new PathText().Move(way * _dialMm).Line(way * (_dialMm * (named ? 1.06 : 1.03))), named ? 1 : 0.6);
            if (named)
                Say(ink.Canvas, $"{heel}°", way * (_dialMm * 1.16) + new Point(0, 0.35 * LetterMm), heel is 0 or 180 ? "middle" : "start",
                    "heel " + heel.ToString(CultureInfo.InvariantCulture));
        }

        Sector(ink, 0, 180, 0.6);
        if (_state.Roll.RangeDeg > 0)
            Sector(ink, 0, _state.Roll.RangeDeg, 3.2, "fly-range-span");
        double left = Window.Left + 0.3 * LetterMm, top = Window.Top + 1.7 * LetterMm;
        Say(ink.Canvas, _state.Roll.RangeDeg > 0 ? "comes back from" : "never", new Point(left, top), "start", "range");
        Say(ink.Canvas, _state.Roll.RangeDeg > 0 ? $"up to {FlyWords.Degrees(_state.Roll.RangeDeg)}" : "comes back", new Point(left, top + 1.25 * LetterMm),
            "start", "range end");
    }

    private void Sector(Ink ink, double from, double to, double weight, string css = "fly-ink")
    {
        Point[] along = [.. Enumerable.Range(0, 37).Select(i => Way(from + (to - from) * i / 36) * _dialMm)];
        ink.Canvas.Element("path", ("class", css + " fly-arc"), ("d", new PathText().Smooth(along).ToString()),
            ("stroke-width", SvgCanvas.Exact(weight * PenMm)));
    }

    private void DrawSteps(SvgCanvas canvas)
    {
        if (_heels.Count == 0)
            return;
        double cell = Window.Width / Math.Max(_heels.Count, 3), scale = CellShare * cell / (2 * _dialMm), y = Window.Bottom - 1.9 * LetterMm - cell / 2;
        canvas.Open("g", ("class", "fly-steps"));
        for (int i = 0; i < _heels.Count; i++)
        {
            double x = Window.Left + cell * (i + 0.5);
            // A fly drawn once and pointed at.
            canvas.Element("use", ("href", $"#{Options.IdPrefix}-tipped"), ("data-heel-deg", SvgCanvas.Exact(_heels[i])),
                ("transform", $"translate({SvgCanvas.Exact(x)} {SvgCanvas.Exact(y)}) scale({SvgCanvas.Exact(scale)}) rotate({SvgCanvas.Exact(_heels[i])})"));
            Say(canvas, FlyWords.Degrees(_heels[i]), new Point(x, Window.Bottom - 0.7 * LetterMm), "middle",
                "step " + (i + 1).ToString(CultureInfo.InvariantCulture));
        }

        canvas.Close();
    }

    // 0 is up; heel runs clockwise as the onlooker sees it.
    private static Point Way(double heelDeg)
    {
        (double sin, double cos) = Math.SinCos(double.DegreesToRadians(heelDeg));
        return new Point(sin, -cos);
    }

    private string List(Func<RollPoint, double> value) => string.Join(' ', _state.Roll.Points.Select(p => SvgCanvas.Exact(value(p))));
}
