using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Labels;
using TyingClass.Drawing.Marks;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Reports;

namespace TyingClass.Drawing.Plates;

/// <summary>What every picture of a whole fly shares: marks, labels, and the foot with flow, scale and words.</summary>
internal abstract class FlyPlate(SolvedFly fly, DrawingOptions options) : Plate(options)
{
    protected SolvedFly Fly => fly;

    protected BalanceReport Report => fly.Report;

    protected StateReport State { get; } = fly.Report.State(options.State);

    protected Scene Scene { get; set; } = null!;

    protected List<Mark> Marks { get; } = [];

    /// <summary>Everything that must be in view, before words.</summary>
    protected Box Content { get; set; }

    private Ring? _ring;

    // Letters of room for words above and below a frame that must not depend on where they fall.
    private const double FixedGutter = 4.5;

    protected virtual double MarkRadiusMm => MarkShare * LetterMm;

    /// <summary>How far below the drawing the scale stands, in letters.</summary>
    protected virtual double StripLetters => 1.2;

    /// <summary>Words beside the flow arrow; null where no water flows.</summary>
    protected virtual string? FlowWords => null;

    protected abstract string CaptionWords { get; }

    /// <summary>The content with a letter or so on each side, and never much narrower than tall.</summary>
    public virtual double NaturalWidthMm => Math.Max(Math.Max(Content.Width / (1 - LetterShare * 4.6), 1.05 * Content.Height), 12);

    public override void DrawInside(SvgCanvas canvas)
    {
        OpenPage(canvas);
        Ink ink = new(canvas, PenMm);
        DrawBehind(ink);
        canvas.Open("g", ("class", "fly-body"));
        Scene.Draw(ink);
        canvas.Close();
        DrawOver(ink);
        _ring?.Draw(ink, LetterMm);
        foreach (Mark mark in Marks)
            mark.Draw(ink, MarkRadiusMm);
        DrawLabels(canvas);
        DrawFoot(ink);
        canvas.Close();
    }

    protected bool Shows(MarkSet kind) => Options.Marks.HasFlag(kind);

    protected abstract void DrawBehind(Ink ink);

    protected abstract void DrawOver(Ink ink);

    /// <summary>Words beyond the marks' own names, and places that no words may cover. Called once the width, so the letter, is known.</summary>
    protected abstract void Furnish(Occupancy occupancy, List<LabelWish> wishes, List<Box> kept);

    protected void AddMark(View view, MarkSet kind, string name, Vector3D? hookMm)
    {
        if (Shows(kind) && hookMm is { } at)
            Marks.Add(new Mark(name, kind, view.At(at)));
    }

    protected void Compose(double width)
    {
        double letter = LetterShare * width, left = Content.Left - (width - Content.Width) / 2, right = left + width;
        Window = new Box(left, Content.Top, right, Content.Bottom);
        Occupancy occupancy = new(Content.Grown(letter), 0.4 * letter, Scene.Pieces.SelectMany(p => p.Covered));
        List<LabelWish> wishes = [];
        List<Box> kept = [];
        Furnish(occupancy, wishes, kept);
        if (Options.TurnsOn is { } on && Ring.Of(on, Scene, letter) is { } ring)
        {
            _ring = ring;
            wishes.Add(new LabelWish(on.Words, "turns on", new Point(ring.Box.Center.X, ring.Box.Bottom), 0.15 * letter)
            {
                OrAnchor = new Point(ring.Box.Center.X, ring.Box.Top),
            });
            Content = Content.With(ring.Box);
            kept.AddRange(ring.Kept(letter));
        }

        wishes.AddRange(Marks.Select(m => new LabelWish(m.Name, m.Name, m.At, 1.1 * MarkRadiusMm)));
        double gutter = (Options.FrameAllSpeeds ? FixedGutter : 12) * letter;
        Box page = new(left + 0.3 * letter, Content.Top - gutter, right - 0.3 * letter, Content.Bottom + gutter);
        Labels = new LabelPlacer(Content, page, letter, occupancy, kept).Place(wishes);
        Box all = Options.FrameAllSpeeds ? page : Labels.Aggregate(kept.Aggregate(Content, (box, k) => box.With(k)), (box, l) => box.With(l.Box));
        Window = new Box(left, all.Top - 0.8 * letter, right, all.Bottom + 0.6 * letter + FootHeight(letter));
    }

    private bool HasStrip => (Shows(MarkSet.Flow) && FlowWords is not null) || Shows(MarkSet.ScaleBar);

    // In letters: a plate is as many letters wide whatever its size.
    private const double CaptionRoom = 1 / LetterShare - 2;

    // Frames of one movement keep one height, whichever words each of them needs.
    private int CaptionLines => Options.FrameAllSpeeds ? 2 : Wrapped(CaptionWords, CaptionRoom).Count;

    private double FootHeight(double letter) => (HasStrip ? StripLetters + 0.7 : 0.2) * letter + (Options.Caption ? (1.6 + 1.3 * CaptionLines) * letter : 0);

    private void DrawFoot(Ink ink)
    {
        double letter = LetterMm, y = Window.Bottom - FootHeight(letter) + StripLetters * letter;
        if (Shows(MarkSet.Flow) && FlowWords is { } flow)
            Strip.DrawFlow(ink, new Point(Window.Left + letter, y), letter, flow);
        if (Shows(MarkSet.ScaleBar))
            Strip.DrawScaleBar(ink, new Point(Window.Right - letter, y), Window.Width, letter, Options.Units);
        if (!Options.Caption)
            return;
        double x = Window.Center.X, line = Window.Bottom - (0.8 + 1.3 * CaptionLines) * letter;
        Say(ink.Canvas, Fitted(fly.Recipe.Name, CaptionRoom), new Point(x, line), "middle", "name", "fly-label fly-name");
        foreach (string words in Wrapped(CaptionWords, CaptionRoom))
            Say(ink.Canvas, words, new Point(x, line += 1.3 * letter), "middle", "caption", "fly-label fly-caption");
    }
}
