using TyingClass.Balance.Geometry;
using TyingClass.Balance.Retrieving;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Plates;

/// <summary>
/// A film strip of the last round of a retrieve: the fly at true size and true places along its path, the rod to the left. The page is in mm, the place where
/// the round begins at its origin.
/// </summary>
internal sealed class FilmPlate : Plate
{
    // Poses nearer to one another than this hide one another; more than so many fill the page.
    private const double SpacingOfLength = 0.6;
    private const int MostPoses = 9;

    // Of a long pause the rest looks like its beginning.
    private const double LongestPauseS = 4;

    private readonly SolvedFly _fly;
    private readonly RetrieveReport _report;
    private readonly RetrievePoint[] _round;
    private readonly List<(RetrievePoint Point, Scene Scene)> _poses = [];
    private readonly Point _start;
    private readonly double _lengthMm;

    /// <param name="widthMm">A common width for several strips; null for this one's own.</param>
    public FilmPlate(SolvedFly fly, DrawingOptions options, double? widthMm = null)
        : base(options)
    {
        (_fly, _report) = (fly, fly.Retrieve);
        _round = Shown(_report);
        _start = _round.Length == 0 ? default : Place(_round[0]);
        _lengthMm = 1e3 * fly.Built.Hook.ShankM;
        foreach (RetrievePoint point in Chosen()) Add(point);
        Box content = _poses.Aggregate(Box.Empty, (box, p) => box.With(Shift(p.Scene.Frame.Grown(0.25 * _lengthMm), At(p.Point))));
        if (_poses.Count == 0) content = new Box(0, 0, 100, 20);
        NaturalWidthMm = 1.36 * Math.Max(content.Width, 0.9 * content.Height);
        double width = widthMm ?? NaturalWidthMm, letter = LetterShare * width;
        double left = content.Center.X - width / 2;
        Window = new Box(left, content.Top - 2.2 * letter, left + width, content.Bottom + (2.4 + 1.3 * Caption(width).Count) * letter);
    }

    public double NaturalWidthMm { get; }

    public override string Kind => "film";

    public override string Title => $"{_fly.Recipe.Name}: the last round of the retrieve, at true spacing";

    public override string Description => string.Join(" ", RetrieveSentence.Of(_report, Options.Units));

    public override void DrawInside(SvgCanvas canvas)
    {
        OpenPage(canvas);
        Ink ink = new(canvas, PenMm);
        if (_poses.Count > 0)
        {
            DrawDepths(ink);
            DrawPath(ink);
            foreach ((RetrievePoint point, Scene scene) in _poses) DrawPose(ink, point, scene);
            DrawMoving(canvas);
        }

        DrawCaption(canvas);
        canvas.Close();
    }

    private Point TimeAbove => new(0, -0.32 * _lengthMm - 0.2 * LetterMm);

    private static RetrievePoint[] Shown(RetrieveReport report)
    {
        if (!report.HasFigures) return [];
        TimedStep[] steps = [.. report.Steps.Where(s => s.Round == report.Strips[^1].Strip.Round)];
        double from = steps[0].StartS, to = Math.Min(steps[^1].EndS, report.Strips[^1].Strip.EndS + LongestPauseS);
        return [.. report.Path.Where(p => p.TimeS >= from - 1e-9 && p.TimeS <= to + 1e-9)];
    }

    private static Box Shift(Box box, Point by) => new(box.Left + by.X, box.Top + by.Y, box.Right + by.X, box.Bottom + by.Y);

    private static Point Place(RetrievePoint p) => new(-1e3 * p.AlongM, 1e3 * p.DepthM);

    private Point At(RetrievePoint p) => Place(p) - _start;

    private IEnumerable<RetrievePoint> Chosen()
    {
        if (_round.Length == 0) yield break;
        double way = _round.Zip(_round.Skip(1)).Sum(pair => (At(pair.Second) - At(pair.First)).Length);
        double spacing = Math.Max(SpacingOfLength * _lengthMm, way / (MostPoses - 1)), gone = 0;
        yield return _round[0];
        for (int i = 1; i < _round.Length; i++)
        {
            gone += (At(_round[i]) - At(_round[i - 1])).Length;
            if (gone < spacing) continue;
            gone = 0;
            yield return _round[i];
        }
    }

    private void Add(RetrievePoint point)
    {
        View view = new(Pose.Towed(point.PitchDeg, point.LeanDeg, _fly.Recipe.Intent), 1e3 * _fly.Built.Body.TowPointM, Facing.Side);
        _poses.Add((point, new Scene(new Anatomy(_fly, view, Trail(point)))));
    }

    // Supple stuff streams out behind: against the way it goes, x away from the rod.
    private Vector3D Trail(RetrievePoint point)
    {
        int i = Array.IndexOf(_round, point), a = Math.Max(0, i - 1), b = Math.Min(_round.Length - 1, i + 1);
        Vector3D trail = new(_round[b].AlongM - _round[a].AlongM, 0, _round[b].DepthM - _round[a].DepthM);
        return trail.Length > 1e-6 ? trail.Normalized() : Vector3D.UnitX;
    }

    private void DrawDepths(Ink ink)
    {
        SvgCanvas canvas = ink.Canvas;
        double top = Window.Top + 1.6 * LetterMm, bottom = Window.Bottom - (1.2 + 1.3 * Caption(Window.Width).Count) * LetterMm;
        double low = Math.Max(0, 1e-3 * (top + _start.Y)), high = 1e-3 * (bottom + _start.Y), per = Magnitudes.Depth.Shown(1, Options.Units);
        Plots.Scale scale = Plots.Scale.Round(low * per, high * per, 4, 0, 1);
        canvas.Open("g", ("class", "fly-depths"), ("data-mark", "depth"));
        foreach (double tick in scale.Ticks)
        {
            double y = 1e3 * tick / per - _start.Y;
            if (y < top || y > bottom) continue;
            canvas.Element("line", ("class", tick == 0 ? "fly-flow" : "fly-ruling"), ("x1", SvgCanvas.N(Window.Left)), ("x2", SvgCanvas.N(Window.Right)),
                ("y1", SvgCanvas.N(y)), ("y2", SvgCanvas.N(y)), ("stroke-width", SvgCanvas.Exact((tick == 0 ? 1.6 : 0.6) * PenMm)),
                ("stroke-opacity", tick == 0 ? "1" : "0.35"));
            string words = tick == 0 ? "surface" : $"{Numbers.Write(tick, Math.Max(scale.Decimals, 1))} {Magnitudes.Depth.Symbol(Options.Units)} deep";
            // Above its line at the left, or at the right, or below it: where no fly and no time stands.
            double wide = 0.55 * LetterMm * words.Length, right = Window.Right - 0.3 * LetterMm, left = Window.Left + 0.3 * LetterMm;
            (double X, double Y, string Anchor)[] places =
            [
                (left, y - 0.25 * LetterMm, "start"), (right, y - 0.25 * LetterMm, "end"), (left, y + LetterMm, "start"), (right, y + LetterMm, "end"),
            ];
            Box Around((double X, double Y, string Anchor) p)
            {
                double from = p.Anchor == "start" ? p.X : p.X - wide;
                return new Box(from, p.Y - LetterMm, from + wide, p.Y + 0.3 * LetterMm);
            }

            (double x, double baseline, string anchor) = places.OrderBy(p => (MeetsTime(Around(p)) ? 2 : 0) + (MeetsFly(Around(p)) ? 1 : 0)).First();
            Say(canvas, words, new Point(x, baseline), anchor, "depth");
        }

        canvas.Close();
    }

    private bool MeetsTime(Box place) => _poses.Select(p => At(p.Point) + TimeAbove).Any(time =>
        place.Meets(new Box(time.X - 1.5 * LetterMm, time.Y - LetterMm, time.X + 1.5 * LetterMm, time.Y + 0.3 * LetterMm)));

    private bool MeetsFly(Box place) => _poses.Any(p => place.Meets(Shift(p.Scene.Frame, At(p.Point))));

    private void DrawPath(Ink ink)
    {
        ink.Canvas.Open("g", ("class", "fly-path"), ("data-mark", "path"));
        ink.Hidden(new PathText().Polyline([.. _round.Select(At)]));
        ink.Canvas.Close();
    }

    private void DrawPose(Ink ink, RetrievePoint point, Scene scene)
    {
        Point at = At(point);
        SvgCanvas canvas = ink.Canvas;
        canvas.Open("g", ("class", "fly-film-pose"), ("data-time-s", SvgCanvas.Exact(point.TimeS)), ("data-pitch-deg", SvgCanvas.Exact(point.PitchDeg)),
            ("data-depth-m", SvgCanvas.Exact(point.DepthM)));
        DrawLine(ink, point, at);
        canvas.Open("g", ("class", "fly-film-fly"), ("transform", $"translate({SvgCanvas.N(at.X)} {SvgCanvas.N(at.Y)})"));
        scene.Draw(ink);
        canvas.Close();
        string time = Magnitudes.PointDownTime.Say(point.TimeS - _round[0].TimeS, Options.Units);
        Say(canvas, time, at + TimeAbove, "middle", "time");
        canvas.Close();
    }

    // Taut it is straight; slack it hangs in a bight.
    private void DrawLine(Ink ink, RetrievePoint point, Point eye)
    {
        double length = 0.9 * _lengthMm, radians = double.DegreesToRadians(point.LineDeg);
        Point end = eye + new Point(-length * Math.Cos(radians), -length * Math.Sin(radians)), along = end - eye;
        Point aside = along.Turned() * 0.28;
        string d = point.IsSlack
            ? new PathText().Move(eye).Cubic(eye + along * 0.3 + aside, eye + along * 0.7 + aside * -1, end).ToString()
            : new PathText().Move(eye).Line(end).ToString();
        ink.Canvas.Element("path", ("class", "fly-leader"), ("data-mark", point.IsSlack ? "slack line" : "taut line"), ("d", d),
            ("stroke-width", SvgCanvas.Exact(0.9 * PenMm)));
    }

    // For a script that moves it when asked: where and how it lies at each moment, and which of the poses comes nearest. Nothing is seen of it until then.
    private void DrawMoving(SvgCanvas canvas)
    {
        string List(Func<RetrievePoint, double> value) => string.Join(' ', _round.Select(p => SvgCanvas.N(value(p))));
        canvas.Open("g", ("class", "fly-film-moving"), ("visibility", "hidden"), ("aria-hidden", "true"),
            ("data-times-s", List(p => p.TimeS - _round[0].TimeS)), ("data-x-mm", List(p => At(p).X)), ("data-y-mm", List(p => At(p).Y)),
            ("data-pitches-deg", List(p => p.PitchDeg)), ("data-poses", string.Join(' ', _round.Select(Nearest))),
            ("data-pose-pitches-deg", string.Join(' ', _poses.Select(p => SvgCanvas.N(p.Point.PitchDeg)))));
        canvas.Close();
    }

    private int Nearest(RetrievePoint point) => Enumerable.Range(0, _poses.Count)
        .MinBy(i => Math.Abs(_poses[i].Point.PitchDeg - point.PitchDeg) + 3 * Math.Abs(_poses[i].Point.LeanDeg - point.LeanDeg));

    private void DrawCaption(SvgCanvas canvas)
    {
        if (!Options.Caption) return;
        IReadOnlyList<string> lines = Caption(Window.Width);
        double first = Window.Bottom - (1.3 * lines.Count - 0.9) * LetterMm;
        for (int i = 0; i < lines.Count; i++)
            Say(canvas, lines[i], new Point(Window.Center.X, first + 1.3 * i * LetterMm), "middle", "caption", "fly-label fly-caption");
    }

    private IReadOnlyList<string> Caption(double widthMm)
    {
        if (!Options.Caption) return [];
        string words = RetrieveSentence.Refusal(_report, Options.Units)
            ?? $"{RetrieveWords.Round(_report.Plan, Options.Units)}, the rod is to the left, times from the start of the strip";
        return Wrapped(words, 0.94 * widthMm / (LetterShare * widthMm));
    }
}
