using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Labels;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Figures;

namespace TyingClass.Drawing.Plates;

/// <summary>
/// The fly as it sits in the vise, shank level: what was tied and to what scale, and nothing of what it would do. One that is tied crooked is seen from ahead,
/// since from the side nobody would see it.
/// </summary>
internal sealed class VisePlate : FlyPlate
{
    // A hair off the middle, and a degree about the shank, are no more than any hand is off.
    private const double MiddleM = 1e-4, StraightRad = Math.PI / 180;

    // How far the middle line stands out above the fly, in shares of its height.
    private const double PlumbBeyond = 0.12;

    private readonly bool _fromAhead;

    /// <param name="widthMm">A common width for several plates; null for this one's own.</param>
    public VisePlate(SolvedFly fly, DrawingOptions options, double? widthMm = null)
        : base(fly, options with { Marks = options.Marks & MarkSet.ScaleBar })
    {
        _fromAhead = fly.Recipe.Parts.Any(p => Math.Abs(p.SideOffsetM) > MiddleM || Math.Abs(p.ClockedRad) > StraightRad);
        Scene = new Scene(new Anatomy(fly, new View(Pose.Vise, Report.TowPointMm, _fromAhead ? Facing.Front : Facing.Side), Vector3D.UnitX));
        Content = Scene.Frame;
        if (_fromAhead) Content = Content.With(new Point(0, Content.Top - PlumbBeyond * Content.Height)).With(new Point(0, Content.Bottom));
        Compose(widthMm ?? NaturalWidthMm);
    }

    public override string Kind => "vise";

    public override string Title => $"{Fly.Recipe.Name}: in the vise";

    public override string Description =>
        $"The fly as it sits in the vise, shank level, {(_fromAhead ? "seen from ahead with the eye toward you" : "eye to the left")}, "
        + "before anything is said of how it swims. The shank "
        + $"is {Magnitudes.Place.Say(Si.Mm(1e3 * Fly.Built.Hook.ShankM), Options.Units)} long. In tying "
        + $"order: {string.Join(", ", FlyBuilder.Names(Fly.Recipe.Parts).DefaultIfEmpty("a bare hook"))}.";

    // Two abreast on a phone the scale's letters are set twice as large, to be read at all.
    protected override double StripLetters => 2;

    protected override string CaptionWords => _fromAhead ? "in the vise, from ahead, before it swims" : "in the vise, before it swims";

    // What stands off the middle is seen against the middle.
    protected override void DrawBehind(Ink ink)
    {
        if (_fromAhead)
            LineArt.Rule(ink, new Ruling("fly-plumb", "middle line", 0.7, LineArt.Dashes(LetterMm)), new Point(0, Content.Top), new Point(0, Content.Bottom));
    }

    protected override void DrawOver(Ink ink)
    {
    }

    protected override void Furnish(Occupancy occupancy, List<LabelWish> wishes, List<Box> kept)
    {
    }
}
