using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Labels;
using TyingClass.Drawing.Marks;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Plates;

/// <summary>
/// The fly held with its shank level, the way up it is meant to ride, and the level line through its ring: what the level-line keel is measured on.
/// </summary>
internal sealed class LevelPlate : FlyPlate
{
    private const string LevelLine = "level line";

    private HeightLine? _keel;

    /// <param name="widthMm">A common width for several plates; null for this one's own.</param>
    public LevelPlate(SolvedFly fly, DrawingOptions options, double? widthMm = null)
        : base(fly, options)
    {
        View view = new(Pose.Towed(0, 0, Report.Intent), Report.TowPointMm, Facing.Side);
        Scene = new Scene(new Anatomy(fly, view, Vector3D.UnitX));
        AddMark(view, MarkSet.TowPoint, "tow point", Report.TowPointMm);
        AddMark(view, MarkSet.BalancePoint, "balance point", State.BalancePointMm);
        Content = Marks.Aggregate(Scene.Frame.With(new Point(0, 0)), (box, mark) => box.With(mark.At));
        Compose(widthMm ?? NaturalWidthMm);
    }

    public override string Kind => "level";

    public override string Title => $"{Fly.Recipe.Name}: held level, {FlyWords.State(State)}";

    public override string Description =>
        $"The fly held with its shank level, {FlyWords.Way(Report.Intent)} as it is meant to ride, {FlyWords.State(State)}. "
        + (State.BalancePointMm is null ? "There is no balance point to show: the fly is too near neutral buoyancy."
            : $"Its balance point lies {Magnitudes.KeelHeight.Say(Si.Mm(Math.Abs(BelowMm)), Options.Units)} {(BelowMm < 0 ? "above" : "below")} the level "
                + "line through the ring.");

    protected override string CaptionWords => $"held level, {FlyWords.Way(Report.Intent)} as meant, {FlyWords.State(State)}";

    // Two marks alone, and all of the question lies between them.
    protected override double MarkRadiusMm => 0.6 * LetterMm;

    // Down the page is down.
    private double BelowMm => Marks.FirstOrDefault(m => m.Kind == MarkSet.BalancePoint)?.At.Y ?? 0;

    protected override void DrawBehind(Ink ink)
    {
    }

    protected override void DrawOver(Ink ink)
    {
        LineArt.Rule(ink, new Ruling("fly-pull", LevelLine, 0.8, LineArt.Dashes(LetterMm)), new Point(Window.Left, 0), new Point(Window.Right, 0));
        _keel?.Draw(ink, LetterMm);
    }

    protected override void Furnish(Occupancy occupancy, List<LabelWish> wishes, List<Box> kept)
    {
        double letter = LetterMm;
        wishes.Add(new LabelWish(LevelLine, LevelLine, new Point(Scene.Frame.Right, 0), 0.15 * letter));
        kept.Add(new Box(Window.Left, -0.1 * letter, Window.Right, 0.1 * letter));
        if (Marks.FirstOrDefault(m => m.Kind == MarkSet.BalancePoint) is not { } balance) return;
        _keel = new HeightLine("level-line keel", balance.At, BelowMm, Scene.Frame.Left - 0.9 * letter);
        double past = _keel.IsRoomy(letter) ? 0.2 * letter : 1.1 * letter;
        wishes.Add(
            new LabelWish($"level-line keel {Magnitudes.KeelHeight.Say(Si.Mm(BelowMm), Options.Units)}", "level-line keel",
                new Point(_keel.ColumnX, _keel.BottomY + past), 0.15 * letter)
            {
                OrAnchor = new Point(_keel.ColumnX, _keel.TopY - past),
            });
        kept.Add(new Box(_keel.ColumnX - 0.35 * letter, _keel.TopY - past, _keel.ColumnX + 0.35 * letter, _keel.BottomY + past));
    }
}
