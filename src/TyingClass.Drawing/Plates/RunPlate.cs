using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Marks;
using TyingClass.Drawing.Svg;
using TyingClass.Drawing.Words;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Plates;

/// <summary>Every attitude over the solved speeds in one frame, for a slider to run through.</summary>
internal sealed class RunPlate : Plate
{
    // A pose is turned by at most half of this before the next one takes its place: supple stuff trails a little wrongly meanwhile.
    private const double NewPoseDeg = 9;

    private readonly SolvedFly _fly;
    private readonly StateReport _state;
    private readonly TowReport[] _run;
    private readonly List<(TowReport Tow, Scene Scene, Mark[] Marks)> _poses = [];

    public RunPlate(SolvedFly fly, DrawingOptions options)
        : base(options)
    {
        _fly = fly;
        _state = fly.Report.State(options.State);
        _run = [.. _state.Tow.OrderBy(t => t.SpeedMS)];
        foreach (TowReport tow in _run)
        {
            if (_poses.Count == 0 || Apart(_poses[^1].Tow, tow) > NewPoseDeg)
                _poses.Add((tow, new Scene(new Anatomy(fly, Seen(tow), Vector3D.UnitX)), Marked(Seen(tow))));
        }

        Box content = _poses.Aggregate(Box.Empty, (box, p) => p.Marks.Aggregate(box.With(p.Scene.Frame), (b, m) => b.With(m.At)));
        double width = 1.16 * Math.Max(content.Width, 1.05 * content.Height);
        Window = new Box(content.Center.X - width / 2, content.Top - 0.05 * width, content.Center.X + width / 2, content.Bottom + 0.05 * width);
    }

    public override string Kind => "run";

    public override string Title =>
        $"{_fly.Recipe.Name}: side view from {Magnitudes.FishingSpeed.Say(_run[0].SpeedMS, Options.Units)} "
        + $"to {Magnitudes.FishingSpeed.Say(_run[^1].SpeedMS, Options.Units)}, {FlyWords.State(_state)}";

    public override string Description =>
        string.Join(" ", _run.Select(t => $"At {Magnitudes.FishingSpeed.Say(t.SpeedMS, Options.Units)} {FlyWords.Pitch(t.PitchDeg)}, {SideWords.Leaning(t)}."));

    public override void DrawInside(SvgCanvas canvas)
    {
        OpenPage(canvas);
        Ink ink = new(canvas, PenMm);
        canvas.Open("g", ("class", "fly-run-line"), ("data-speeds-ms", List(t => t.SpeedMS)), ("data-pitches-deg", List(t => t.PitchDeg)),
            ("data-leans-deg", List(t => t.LeanDeg)), ("data-lines-deg", List(t => t.LineAngleDeg)));
        LineArt.Draw(ink, _fly, new Point(-1, 0), Math.Max(-Window.Left, 4));
        canvas.Close();
        foreach ((TowReport tow, Scene scene, Mark[] marks) in _poses)
        {
            canvas.Open("g", ("class", "fly-pose"), ("data-speed-ms", SvgCanvas.Exact(tow.SpeedMS)), ("data-pitch-deg", SvgCanvas.Exact(tow.PitchDeg)),
                ("data-lean-deg", SvgCanvas.Exact(tow.LeanDeg)));
            scene.Draw(ink);
            foreach (Mark mark in marks)
                mark.Draw(ink, MarkShare * LetterMm);
            canvas.Close();
        }

        canvas.Close();
    }

    private static double Apart(TowReport a, TowReport b) => Math.Max(Math.Abs(a.PitchDeg - b.PitchDeg), Math.Abs(a.LeanDeg - b.LeanDeg));

    private string List(Func<TowReport, double> value) => string.Join(' ', _run.Select(t => SvgCanvas.Exact(value(t))));

    private View Seen(TowReport t) => new(Pose.Towed(t.PitchDeg, t.LeanDeg, _fly.Report.Intent), _fly.Report.TowPointMm, Facing.Side);

    private Mark[] Marked(View view)
    {
        List<Mark> marks = [new("tow point", MarkSet.TowPoint, new Point(0, 0)), new("mass center", MarkSet.MassCenter, view.At(_fly.Report.MassCenterMm))];
        if (_state.BalancePointMm is { } balance)
            marks.Add(new Mark("balance point", MarkSet.BalancePoint, view.At(balance)));
        return [.. marks];
    }
}
