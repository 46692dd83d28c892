using System.Collections.Immutable;
using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Marks;
using TyingClass.Drawing.Plates;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Reports;
using TyingClass.Telling;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Figures;

/// <summary>Hooks that differ in the eye, to one scale: how
/// far each ring stands above or below the line of the shank, the way the fly is meant to ride.</summary>
internal sealed class Rings : TeachingFigure
{
    public override string Kind => "eyes and rings";

    public override ImmutableArray<FigurePanel> Draw(FigureRequest request, DrawingOptions options) => Alone(new RingsPlate(request.Flies, options));
}

internal sealed class RingsPlate : Plate
{
    private const int Columns = 2;
    private const double OnTheLineMm = 0.3;

    private readonly ImmutableArray<(string Name, SolvedFly Fly, Scene Scene, View View)> _hooks;
    private readonly double _cellMm, _rowMm;

    public RingsPlate(ImmutableArray<FigureFly> flies, DrawingOptions options)
        : base(options)
    {
        _hooks = [.. flies.Select(f => Seen(f.Name, f.Fly))];
        // Of all hooks laid ring on ring: every cell is cut to it, so that the rings stand one below another.
        Box all = _hooks.Aggregate(Box.Empty, (box, h) => box.With(h.Scene.Frame).With(new Point(0, Front(h).Y))).Grown(0.6);
        _cellMm = 1.1 * all.Width;
        double letter = LetterShare * Columns * _cellMm;
        _rowMm = all.Height + 3.9 * letter;
        Window = new Box(0, 0, Columns * _cellMm, _rowMm * ((_hooks.Length + Columns - 1) / Columns) + 0.4 * letter);
        Inner = all;
    }

    public override string Kind => "rings";

    public override string Title => "Eyes of hooks and where their rings stand";

    public override string Description =>
        $"Hooks {FlyWords.Way(_hooks[0].Fly.Report.Intent)}, the shank level, to one scale: {Grammar.And(_hooks.Select(h => $"{h.Name}, ring {Height(h)}"))}.";

    private Box Inner { get; }

    public override void DrawInside(SvgCanvas canvas)
    {
        OpenPage(canvas);
        Ink ink = new(canvas, PenMm);
        for (int i = 0; i < _hooks.Length; i++)
        {
            (string name, SolvedFly _, Scene scene, View _) = _hooks[i];
            double left = i % Columns * _cellMm, top = i / Columns * _rowMm, x = left + 0.05 * _cellMm - Inner.Left, y = top + 0.6 * LetterMm - Inner.Top;
            canvas.Open("g", ("class", "fly-cell"), ("data-name", name), ("transform", $"translate({SvgCanvas.Exact(x)} {SvgCanvas.Exact(y)})"));
            Point front = Front(_hooks[i]);
            LineArt.Rule(ink, new Ruling("fly-own-line", "line of the shank", 0.9, LineArt.Dashes(LetterMm)), new Point(Inner.Left, front.Y),
                new Point(Inner.Right, front.Y));
            scene.Draw(ink);
            canvas.Element("line", ("class", "fly-dimension-line"), ("data-mark", "ring height"), ("x1", "0"), ("x2", "0"), ("y1", "0"), ("y2",
                SvgCanvas.Exact(front.Y)),
                ("stroke-width", SvgCanvas.Exact(1.8 * PenMm)));
            new Mark("tow point", MarkSet.TowPoint, new Point(0, 0)).Draw(ink, MarkShare * LetterMm);
            canvas.Close();
            double middle = left + _cellMm / 2, foot = top + 0.6 * LetterMm + Inner.Height;
            Say(canvas, Fitted(name, 12), new Point(middle, foot + 1.2 * LetterMm), "middle", "name", "fly-label fly-name");
            Say(canvas, Fitted($"ring {Height(_hooks[i])}", 12.4), new Point(middle, foot + 2.5 * LetterMm), "middle", "height");
        }

        canvas.Close();
    }

    private static (string Name, SolvedFly Fly, Scene Scene, View View) Seen(string name, SolvedFly fly)
    {
        View view = new(Pose.Towed(0, 0, fly.Report.Intent), fly.Report.TowPointMm, Facing.Side);
        return (name, fly, new Scene(new Anatomy(fly, view, Vector3D.UnitX)), view);
    }

    private static Point Front((string Name, SolvedFly Fly, Scene Scene, View View) hook) => hook.View.At(Vector3D.Zero);

    // The ring is the origin: the shank lies as far below it as its front does.
    private string Height((string Name, SolvedFly Fly, Scene Scene, View View) hook)
    {
        double mm = Front(hook).Y;
        return Math.Abs(mm) < OnTheLineMm ? "on the line" : $"{Magnitudes.KeelHeight.Say(Si.Mm(Math.Abs(mm)), Options.Units)} {(mm > 0 ? "above" : "below")}";
    }
}
