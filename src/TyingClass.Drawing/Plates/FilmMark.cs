using TyingClass.Balance.Retrieving;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Plates;

/// <summary>What a film strip points at: the deepest place of the last round, or the nose where it points most steeply down in the pause.</summary>
/// <param name="ReachMm">How long the two legs of an angle are.</param>
internal sealed record FilmMark(FilmMarkKind Kind, RetrievePoint Point, Point At, double LetterMm, double ReachMm)
{
    private string Words { get; init; } = "";

    private Point Foot { get; init; }

    public static TimedStep[] LastRound(RetrieveReport report) => [.. report.Steps.Where(s => s.Round == report.Strips[^1].Strip.Round)];

    /// <summary>The moment that is marked; null where there is none.</summary>
    public static RetrievePoint? Find(RetrieveReport report, FilmMarkKind kind)
    {
        if (!report.HasFigures) return null;
        TimedStep[] steps = LastRound(report);
        RetrievePoint[] round = [.. report.Path.Where(p => p.TimeS >= steps[0].StartS - 1e-9 && p.TimeS <= steps[^1].EndS + 1e-9)];
        if (kind == FilmMarkKind.Deepest) return round.Length == 0 ? null : round.MaxBy(p => p.DepthM);
        RetrievePoint[] paused =
            [.. round.Where(p => steps.Any(s => !s.Step.IsStrip && p.TimeS >= s.StartS - 1e-9 && p.TimeS <= s.EndS + 1e-9))];
        return paused.Length == 0 ? null : paused.MinBy(p => p.PitchDeg);
    }

    /// <summary>The mark, and where its words are free to stand.</summary>
    /// <param name="size">Of the letters and of the fly, mm.</param>
    public static FilmMark Placed(RetrievePoint point, Point at, (double LetterMm, double FlyMm) size, DrawingOptions options, FilmWords words)
    {
        FilmMark mark = new(options.FilmMark, point, at, size.LetterMm, size.FlyMm);
        string said = mark.Kind == FilmMarkKind.Deepest ? $"deepest {Magnitudes.Depth.Say(point.DepthM, options.Units)}" : FlyWords.Pitch(point.PitchDeg);
        Box from = mark.Kind == FilmMarkKind.Deepest ? Box.Around(at, size.LetterMm, size.LetterMm)
            : Box.Around(at + (new Point(1, 0) + mark.Shank).Unit() * size.FlyMm, size.LetterMm, size.LetterMm);
        if (mark.Kind == FilmMarkKind.Nose) words.KeepOff([[at, at + new Point(size.FlyMm, 0)]]);
        return mark with { Words = said, Foot = words.Beside(said, from) };
    }

    // From the eye along the shank: nose down, the tail stands above it.
    private Point Shank
    {
        get
        {
            (double sin, double cos) = Math.SinCos(double.DegreesToRadians(Point.PitchDeg));
            return new Point(cos, sin);
        }
    }

    public void Draw(Ink ink)
    {
        SvgCanvas canvas = ink.Canvas;
        if (Kind == FilmMarkKind.Deepest)
        {
            canvas.Element("circle", ("class", "fly-ink-fill"), ("data-mark", "deepest"), ("data-depth-m", SvgCanvas.Exact(Point.DepthM)),
                ("cx", SvgCanvas.N(At.X)), ("cy", SvgCanvas.N(At.Y)), ("r", SvgCanvas.Exact(0.25 * LetterMm)), ("fill", "currentColor"), ("stroke", "none"));
        }
        else
        {
            LineArt.Rule(ink, new Ruling("fly-pull", "level", 0.9, LineArt.Dashes(LetterMm)), At, At + new Point(1.15 * ReachMm, 0));
            LineArt.Rule(ink, new Ruling("fly-pull", "shank line", 0.9, "none"), At, At + Shank * (1.15 * ReachMm));
            LineArt.Arc(ink, "nose", At, 0.8 * ReachMm, new Point(1, 0), Shank);
        }

        // Clears the paper round the letters: they may have to lie on the fly.
        canvas.Words("text", Words, ("class", "fly-label fly-halo"), ("data-label", "mark"), ("x", SvgCanvas.N(Foot.X)), ("y", SvgCanvas.N(Foot.Y)),
            ("text-anchor", "middle"), ("fill", "currentColor"), ("stroke", Tone.Paper.Color), ("stroke-width", "0.25em"), ("paint-order", "stroke"));
    }
}
