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
/// A film strip of the last round of a retrieve: flies at true places along its path, the rod to the left. A fly too small to be read beside its path is drawn
/// larger, and the caption says so. The page is in mm, the place where the round begins at its origin.
/// </summary>
internal sealed class FilmPlate : Plate
{
    // Poses nearer to one another than this hide one another; more than so many fill the page.
    private const double SpacingOfLength = 0.6;
    private const int MostPoses = 9;

    // Of a long pause the rest looks like its beginning.
    private const double LongestPauseS = 4;

    // Of the breadth or height of its path a fly should fill this much, and is drawn up to so many times its size.
    private const double ReadableShare = 0.14;
    private const int MostTimes = 5, MostTimesAbreast = 10;

    // A fly turned in the plane of the page is the same drawing; one that leans otherwise, or whose hair streams otherwise, is drawn anew.
    private const double AlikeLeanDeg = 15, AlikeStreamDeg = 45;

    private readonly SolvedFly _fly;
    private readonly RetrieveReport _report;
    private readonly RetrievePoint[] _round;
    private readonly List<FilmShape> _shapes = [];
    private readonly List<FilmPose> _poses = [];
    private readonly Point _start;
    private readonly double _lengthMm;
    private readonly double _suppleness;
    private readonly RetrievePoint? _marked;

    public FilmPlate(SolvedFly fly, DrawingOptions options, FilmScale? scale = null)
        : base(options)
    {
        (_fly, _report) = (fly, fly.Retrieve);
        _marked = FilmMark.Find(_report, options.FilmMark);
        _round = Shown();
        _start = _round.Length == 0 ? default : Place(_round[0]);
        _suppleness = new Anatomy(fly, new View(Pose.Vise, default, Facing.Side), Vector3D.UnitX).Limbs.Select(l => l.Suppleness).Append(0).Max();
        Times = scale?.Times ?? Readable(PathBox, MostTimes);
        _lengthMm = 1e3 * fly.Built.Hook.ShankM * Times;
        foreach (RetrievePoint point in WithMarked([.. Chosen()])) Add(point);
        Box content = _poses.Aggregate(Box.Empty, (box, p) => box.With(p.Frame.Grown(0.25 * _lengthMm)));
        if (_poses.Count == 0) content = new Box(0, 0, 100, 20);
        else if (options.DepthGoal is { } goal) content = content.With(content.Center with { Y = 1e3 * goal.DepthM - _start.Y });
        (WideMm, TopMm, BottomMm) = (content.Width, content.Top + _start.Y, content.Bottom + _start.Y);
        if (scale is not null && _poses.Count > 0) content = content with { Top = scale.TopMm - _start.Y, Bottom = scale.BottomMm - _start.Y };
        double width = scale?.WidthMm ?? WidthFor(content.Width, content.Height), letter = LetterShare * width;
        double left = content.Center.X - width / 2;
        Window = new Box(left, content.Top - 1.8 * letter, left + width, content.Bottom + (2 + 1.3 * Caption(width).Count) * letter);
    }

    /// <summary>
    /// One scale of the water and one ruler of depth for flies that stand side by side: each shows the depths of all. The flies are drawn as many times their
    /// size as each other, but where the nose is asked about each as large as it takes to see it.
    /// </summary>
    public static IReadOnlyList<FilmScale?> Common(IReadOnlyList<SolvedFly> flies, DrawingOptions options)
    {
        FilmPlate[] all = [.. flies.Select(f => new FilmPlate(f, options))], alone = [.. all.Where(p => p._poses.Count > 0)];
        if (alone.Length == 0) return [.. flies.Select(_ => (FilmScale?)null)];
        double Top(FilmPlate p) => p.PathBox.Top + p._start.Y;
        double Bottom(FilmPlate p) => p.PathBox.Bottom + p._start.Y;
        Box paths = new(0, alone.Min(Top), alone.Max(p => p.PathBox.Width), alone.Max(Bottom));
        int Own(FilmPlate p) => p.Readable(paths, MostTimesAbreast);
        int least = alone.Min(Own);
        int Drawn(FilmPlate p) => options.FilmMark == FilmMarkKind.Nose ? Own(p) : least;
        FilmPlate[] drawn = [.. alone.Select(p => Drawn(p) == p.Times ? p : new FilmPlate(p._fly, options, new FilmScale(100, Drawn(p), 0, 100)))];
        double top = drawn.Min(p => p.TopMm), bottom = drawn.Max(p => p.BottomMm), width = WidthFor(drawn.Max(p => p.WideMm), bottom - top);
        return [.. all.Select(p => new FilmScale(width, Drawn(p), top, bottom))];
    }

    // Of what is drawn: how wide, and between which depths, mm.
    private double WideMm { get; }

    private double TopMm { get; }

    private double BottomMm { get; }

    /// <summary>How many times its size the fly is drawn.</summary>
    public int Times { get; }

    public override string Kind => "film";

    public override string Title => $"{_fly.Recipe.Name}: the last round of the retrieve, at true spacing";

    public override string Description => string.Join(" ", RetrieveSentence.Of(_report, Options.Units));

    public override void DrawInside(SvgCanvas canvas)
    {
        OpenPage(canvas);
        Ink ink = new(canvas, PenMm);
        if (_poses.Count > 0)
        {
            FilmRuler ruler = new(Window, Within.Bottom, _start.Y, LetterMm, Options);
            FilmWords words = new(Within, LetterMm, ruler.LevelsMm);
            foreach (FilmPose pose in _poses) words.KeepOff(pose.Covered);
            words.KeepOff([[.. _round.Select(At)]]);
            foreach (FilmPose pose in _poses) words.KeepOff([Line(pose)]);
            Define(canvas);
            ruler.DrawGoal(ink, words);
            FilmMark? mark = Mark(words);
            // Words find their places before anything is drawn: a depth keeps off every time.
            (FilmPose Pose, string Time, Point At)[] times = [.. _poses.Select(p => (p, Since(p.Point), words.Beside(Since(p.Point), p.Frame)))];
            ruler.Draw(ink, words);
            DrawPath(ink);
            foreach ((FilmPose pose, string time, Point at) in times) DrawPose(ink, pose, time, at);
            mark?.Draw(ink);
            DrawMoving(canvas);
        }

        DrawCaption(canvas);
        canvas.Close();
    }

    private Box Within => Window with { Bottom = Window.Bottom - (0.8 + 1.3 * Caption(Window.Width).Count) * LetterMm };

    private static double WidthFor(double wideMm, double highMm) => 1.36 * Math.Max(wideMm, 0.9 * highMm);

    // As far as what is marked, however long its pause.
    private RetrievePoint[] Shown()
    {
        if (!_report.HasFigures) return [];
        TimedStep[] steps = FilmMark.LastRound(_report);
        double from = steps[0].StartS, to = Math.Min(steps[^1].EndS, _report.Strips[^1].Strip.EndS + LongestPauseS);
        if (Options.FilmMark == FilmMarkKind.Nose && _marked is { } marked) to = Math.Max(to, marked.TimeS);
        return [.. _report.Path.Where(p => p.TimeS >= from - 1e-9 && p.TimeS <= to + 1e-9)];
    }

    private Box PathBox => _round.Aggregate(Box.Empty, (box, p) => box.With(At(p)));

    private static Point Place(RetrievePoint p) => new(-1e3 * p.AlongM, 1e3 * p.DepthM);

    private Point At(RetrievePoint p) => Place(p) - _start;

    private string Since(RetrievePoint p) => Magnitudes.PointDownTime.Say(p.TimeS - _round[0].TimeS, Options.Units);

    private int Readable(Box path, int most)
    {
        if (_round.Length == 0) return 1;
        double share = LongestMm(Shape(_round[0])) / Math.Max(path.Width, path.Height);
        return (int)Math.Clamp(Math.Ceiling(ReadableShare / Math.Max(share, 1e-6) - 1e-9), 1, most);
    }

    private static double LongestMm(FilmShape shape) => new Point(shape.Scene.Frame.Width, shape.Scene.Frame.Height).Length;

    private IEnumerable<RetrievePoint> Chosen()
    {
        if (_round.Length == 0) yield break;
        double way = _round.Zip(_round.Skip(1)).Sum(pair => (At(pair.Second) - At(pair.First)).Length);
        double spacing = Math.Max(SpacingOfLength * Times * LongestMm(Shape(_round[0])), way / (MostPoses - 1)), gone = 0;
        yield return _round[0];
        for (int i = 1; i < _round.Length; i++)
        {
            gone += (At(_round[i]) - At(_round[i - 1])).Length;
            if (gone < spacing) continue;
            gone = 0;
            yield return _round[i];
        }
    }

    // A nose that is asked about is seen: its moment takes the place of the one next to it.
    private RetrievePoint[] WithMarked(RetrievePoint[] chosen)
    {
        if (Options.FilmMark != FilmMarkKind.Nose || _marked is not { } marked || chosen.Length == 0) return chosen;
        int next = chosen.Length == 1 ? 0 : 1 + Enumerable.Range(0, chosen.Length - 1).MinBy(i => Math.Abs(chosen[i + 1].TimeS - marked.TimeS));
        if (next > 0) chosen[next] = marked;
        return chosen.Length == 1 ? [.. chosen, marked] : chosen;
    }

    private void Add(RetrievePoint point)
    {
        FilmShape shape = Shape(point);
        Point at = At(point);
        (double sin, double cos) = Math.SinCos(double.DegreesToRadians(point.PitchDeg - shape.PitchDeg));
        Point OnPage(Point p) => at + (p * cos + p.Turned() * sin) * Times;
        Point[][] covered = [.. shape.Scene.Pieces.SelectMany(piece => piece.Covered).Select(outline => outline.Select(OnPage).ToArray())];
        _poses.Add(new FilmPose(point, shape, at, covered));
    }

    private FilmShape Shape(RetrievePoint point)
    {
        (int lean, int stream) = Look(point);
        if (_shapes.FirstOrDefault(s => s.Lean == lean && s.Stream == stream) is { } alike) return alike;
        View view = new(Pose.Towed(point.PitchDeg, point.LeanDeg, _fly.Recipe.Intent), 1e3 * _fly.Built.Body.TowPointM, Facing.Side);
        FilmShape shape = new(_shapes.Count, lean, stream, point.PitchDeg, new Scene(new Anatomy(_fly, view, Trail(point))));
        _shapes.Add(shape);
        return shape;
    }

    // What turning in the plane of the page cannot give: how it leans, and whereto its hair streams.
    private (int Lean, int Stream) Look(RetrievePoint point)
    {
        Vector3D trail = Trail(point);
        double streamDeg = Math.IEEERemainder(double.RadiansToDegrees(Math.Atan2(-trail.Z, trail.X)) - point.PitchDeg, 360);
        return ((int)Math.Round(point.LeanDeg / AlikeLeanDeg), (int)Math.Round(_suppleness * streamDeg / AlikeStreamDeg));
    }

    // Supple stuff streams out behind: against the way it goes, x away from the rod.
    private Vector3D Trail(RetrievePoint point)
    {
        int i = Array.IndexOf(_round, point), a = Math.Max(0, i - 1), b = Math.Min(_round.Length - 1, i + 1);
        Vector3D trail = new(_round[b].AlongM - _round[a].AlongM, 0, _round[b].DepthM - _round[a].DepthM);
        return trail.Length > 1e-6 ? trail.Normalized() : Vector3D.UnitX;
    }

    // Each shape is drawn once and pointed at.
    private void Define(SvgCanvas canvas)
    {
        canvas.Open("defs");
        foreach (FilmShape shape in _shapes)
        {
            canvas.Open("g", ("id", Name(shape)));
            shape.Scene.Draw(new Ink(canvas, PenMm / Times));
            canvas.Close();
        }

        canvas.Close();
    }

    private string Name(FilmShape shape) => $"{Options.IdPrefix}-shape-{shape.Index}";

    // Nothing is marked that the film does not show.
    private FilmMark? Mark(FilmWords words) => _marked is { } marked && _round.Contains(marked)
        ? FilmMark.Placed(marked, At(marked), (LetterMm, 0.95 * _lengthMm), Options, words) : null;

    private void DrawPath(Ink ink)
    {
        ink.Canvas.Open("g", ("class", "fly-path"), ("data-mark", "path"));
        ink.Hidden(new PathText().Polyline([.. _round.Select(At)]));
        ink.Canvas.Close();
    }

    private void DrawPose(Ink ink, FilmPose pose, string time, Point timeAt)
    {
        RetrievePoint point = pose.Point;
        SvgCanvas canvas = ink.Canvas;
        canvas.Open("g", ("class", "fly-film-pose"), ("data-time-s", SvgCanvas.Exact(point.TimeS)), ("data-pitch-deg", SvgCanvas.Exact(point.PitchDeg)),
            ("data-depth-m", SvgCanvas.Exact(point.DepthM)));
        DrawLine(ink, pose);
        canvas.Open("g", ("class", "fly-film-fly"), ("transform",
            $"translate({SvgCanvas.N(pose.At.X)} {SvgCanvas.N(pose.At.Y)}) rotate({SvgCanvas.N(point.PitchDeg - pose.Shape.PitchDeg)})"));
        canvas.Element("use", ("href", "#" + Name(pose.Shape)), ("transform", $"scale({Times})"));
        canvas.Close();
        Say(canvas, time, timeAt, "middle", "time");
        canvas.Close();
    }

    private Point[] Line(FilmPose pose)
    {
        double length = 0.9 * _lengthMm, radians = double.DegreesToRadians(pose.Point.LineDeg);
        return [pose.At, pose.At + new Point(-length * Math.Cos(radians), -length * Math.Sin(radians))];
    }

    // Taut it is straight; slack it hangs in a bight.
    private void DrawLine(Ink ink, FilmPose pose)
    {
        Point[] line = Line(pose);
        Point eye = line[0], end = line[1], along = end - eye, aside = along.Turned() * 0.28;
        string d = pose.Point.IsSlack
            ? new PathText().Move(eye).Cubic(eye + along * 0.3 + aside, eye + along * 0.7 + aside * -1, end).ToString()
            : new PathText().Move(eye).Line(end).ToString();
        ink.Canvas.Element("path", ("class", "fly-leader"), ("data-mark", pose.Point.IsSlack ? "slack line" : "taut line"), ("d", d),
            ("stroke-width", SvgCanvas.Exact(0.9 * PenMm)));
    }

    // For a script that moves it when asked: where and how it lies at each moment, and which of the poses comes nearest. Nothing is seen of it until then.
    private void DrawMoving(SvgCanvas canvas)
    {
        string List(Func<RetrievePoint, double> value) => string.Join(' ', _round.Select(p => SvgCanvas.N(value(p))));
        canvas.Open("g", ("class", "fly-film-moving"), ("visibility", "hidden"), ("aria-hidden", "true"),
            ("data-times-s", List(p => p.TimeS - _round[0].TimeS)), ("data-x-mm", List(p => At(p).X)), ("data-y-mm", List(p => At(p).Y)),
            ("data-pitches-deg", List(p => p.PitchDeg)), ("data-poses", string.Join(' ', _round.Select(Nearest))),
            ("data-pose-pitches-deg", string.Join(' ', _poses.Select(p => SvgCanvas.N(p.Shape.PitchDeg)))));
        canvas.Close();
    }

    private int Nearest(RetrievePoint point)
    {
        (int lean, int stream) = Look(point);
        return Enumerable.Range(0, _poses.Count).MinBy(i => 1000 * Math.Abs(_poses[i].Shape.Lean - lean) + 100 * Math.Abs(_poses[i].Shape.Stream - stream)
            + Math.Abs(_poses[i].Point.PitchDeg - point.PitchDeg));
    }

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
        string larger = Times == 1 ? "" : $", the fly drawn {Times} times its size";
        string deeper = _marked is { } marked && !_round.Contains(marked) ? $", then on down to {Magnitudes.Depth.Say(marked.DepthM, Options.Units)}" : "";
        string words = RetrieveSentence.Refusal(_report, Options.Units)
            ?? $"{RetrieveWords.Round(_report.Plan, Options.Units)}, the rod is to the left, times from the start of the strip{larger}{deeper}";
        return Wrapped(words, 0.94 * widthMm / (LetterShare * widthMm));
    }
}
