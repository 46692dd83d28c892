using System.Collections.Immutable;
using System.Globalization;
using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Marks;
using TyingClass.Drawing.Plates;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Figures;

/// <summary>How the weight below or above the hinge line turns a fly over: the same fly at several heels, seen along that line.</summary>
internal sealed class Turning : TeachingFigure
{
    public override string Kind => "turning over";

    public override ImmutableArray<FigurePanel> Draw(FigureRequest request, DrawingOptions options) => Alone(new TurningPlate(One(request), options));
}

internal sealed class TurningPlate : Plate
{
    private static readonly int[] Heels = [160, 90, 30, 0];

    private readonly SolvedFly _fly;
    private readonly HingeView _hinge;
    private readonly Scene _scene;
    private readonly Point _balance;
    private readonly ImmutableArray<(string Words, Point At)> _named;
    private readonly double _halfMm;

    public TurningPlate(SolvedFly fly, DrawingOptions options)
        : base(options)
    {
        (_fly, _hinge) = (fly, HingeView.Of(fly));
        View view = _hinge.EndOn(fly);
        _scene = new Scene(new Anatomy(fly, view, Vector3D.UnitX));
        _balance = view.At(fly.Report.BalancePointMm!.Value);
        _named = [("bend", view.At(HookPlaces.Find("barb", fly.Built.Hook)!.Value)), .. Weights(fly, view)];
        _halfMm = 1.12 * Math.Max(_scene.Pieces.SelectMany(p => p.Outline).Max(p => p.Length), 3);
        Window = new Box(0, 0, 4 * _halfMm, 4 * _halfMm + 2 * 2.6 * LetterShare * 4 * _halfMm);
    }

    public override string Kind => "turning";

    public override string Title => $"{_fly.Recipe.Name}: how its weight turns it over";

    public override string Description =>
        "Four pictures of one fly, seen from ahead along its hinge line. " + string.Join(" ", Heels.Select(h =>
            $"Heeled by {FlyWords.Degrees(h)}: {Outcome(h)}."));

    public override void DrawInside(SvgCanvas canvas)
    {
        OpenPage(canvas);
        Ink ink = new(canvas, PenMm);
        double row = 2 * _halfMm + 2.6 * LetterMm;
        for (int i = 0; i < Heels.Length; i++)
        {
            Point middle = new((i % 2 * 2 + 1) * _halfMm, i / 2 * row + _halfMm);
            canvas.Open("g", ("class", "fly-cell"), ("data-heel-deg", Heels[i].ToString(CultureInfo.InvariantCulture)),
                ("transform", $"translate({SvgCanvas.Exact(middle.X)} {SvgCanvas.Exact(middle.Y)})"));
            canvas.Open("g", ("class", "fly-body"), ("transform", $"rotate({SvgCanvas.Exact(Heels[i])})"));
            _scene.Draw(ink);
            canvas.Close();
            LineArt.Rule(ink, new Ruling("fly-plumb", "plumb line", 0.7, LineArt.Dashes(LetterMm)), new Point(0, -0.95 * _halfMm), new Point(0,
                0.95 * _halfMm));
            Point at = Heeled(Heels[i]);
            Arrow.Draw(ink, "weight", at, at + new Point(0, 0.5 * _halfMm), 0.8 * LetterMm);
            new Mark("balance point", MarkSet.BalancePoint, at).Draw(ink, MarkShare * LetterMm);
            new Mark("tow point", MarkSet.TowPoint, new Point(0, 0)).Draw(ink, MarkShare * LetterMm);
            if (i == 0) Name(canvas);
            canvas.Close();
            Say(canvas, Outcome(Heels[i]), middle + new Point(0, _halfMm + 1.2 * LetterMm), "middle", "outcome " + (i
                + 1).ToString(CultureInfo.InvariantCulture));
        }

        canvas.Close();
    }

    // The weight pulls toward the lowest place: back to 0° with a keel, round to 180° without.
    private string Outcome(int heelDeg) => (heelDeg, _hinge.KeelMm > 0) switch
    {
        (0, true) => "it stays",
        (0, false) => "a hair tips it",
        (_, true) => heelDeg > 120 ? "it tips" : heelDeg > 60 ? "the weight turns it" : "nearly there",
        (_, false) => heelDeg > 120 ? "nearly over" : "the weight tips it on",
    };

    // Which is the bend and which the weight, once: all four pictures are of one fly.
    private void Name(SvgCanvas canvas)
    {
        foreach ((string words, Point place) in _named)
        {
            Point at = Heeled(place, Heels[0]);
            Point from = at + new Point(0.35 * LetterMm, 0), to = new Point(0.62 * _halfMm, at.Y);
            canvas.Element("line", ("class", "fly-leader"), ("x1", SvgCanvas.Exact(from.X)), ("x2", SvgCanvas.Exact(to.X)), ("y1", SvgCanvas.Exact(at.Y)),
                ("y2", SvgCanvas.Exact(at.Y)), ("stroke-width", SvgCanvas.Exact(0.8 * PenMm)));
            Say(canvas, words, to + new Point(0.2 * LetterMm, 0.3 * LetterMm), "start", words);
        }
    }

    // The barrel nearest the edge, where a line to it crosses the fewest others.
    private static IEnumerable<(string Words, Point At)> Weights(SolvedFly fly, View view) => fly.Built.Body.Parts
        .Where(p => p.IsWeight).OrderByDescending(p => p.Masses.Sum(m => m.MassKg)).Take(1)
        .Select(p => (p.Name.Replace("dumbbell ", "", StringComparison.Ordinal),
            p.Masses.Select(m => view.At(1e3 * m.PositionM)).MaxBy(at => Heeled(at, Heels[0]).X)));

    private Point Heeled(double heelDeg) => Heeled(_balance, heelDeg);

    private static Point Heeled(Point p, double heelDeg)
    {
        (double sin, double cos) = Math.SinCos(double.DegreesToRadians(heelDeg));
        return new Point(p.X * cos - p.Y * sin, p.X * sin + p.Y * cos);
    }
}
