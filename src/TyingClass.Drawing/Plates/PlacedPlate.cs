using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Labels;
using TyingClass.Drawing.Marks;
using TyingClass.Recipes.Reports;
using TyingClass.Telling;
using TyingClass.Telling.Figures;

namespace TyingClass.Drawing.Plates;

/// <summary>The fly in the vise with its mass center, and how far that lies from the shank and behind its front.</summary>
internal sealed class PlacedPlate(SolvedFly fly, DrawingOptions options, double? widthMm = null) : BenchPlate(fly, options, MarkSet.MassCenter, widthMm)
{
    private const string Shank = "line of the shank";

    private HeightLine? _height;

    public override string Kind => "placed";

    public override string Title => $"{Fly.Recipe.Name}: where its mass center lies";

    public override string Description => $"The fly in the vise, shank level, eye to the left. {Grammar.Capital(CaptionWords)}.";

    protected override string CaptionWords =>
        $"mass center {Say(Math.Abs(Report.MassCenterMm.Z))} {(Report.MassCenterMm.Z < 0 ? "toward the point" : "away from the point")}, "
        + $"{Say(Report.MassCenterMm.X)} behind the shank's front";

    private Point Front => View.At(Vector3D.Zero);

    protected override void DrawOver(Ink ink)
    {
        LineArt.Rule(ink, new Ruling("fly-own-line", Shank, 0.7, LineArt.Dashes(LetterMm)), new Point(Window.Left, Front.Y), new Point(Window.Right, Front.Y));
        _height?.Draw(ink, LetterMm);
    }

    protected override void Furnish(Occupancy occupancy, List<LabelWish> wishes, List<Box> kept)
    {
        Point center = View.At(Report.MassCenterMm);
        double letter = LetterMm;
        _height = new HeightLine("mass center, z", center, center.Y - Front.Y, Scene.Frame.Left - 0.9 * letter);
        double past = _height.IsRoomy(letter) ? 0.2 * letter : 1.1 * letter;
        wishes.Add(new LabelWish(Say(Math.Abs(Report.MassCenterMm.Z)), "mass center, z", new Point(_height.ColumnX, _height.BottomY + past), 0.15 * letter)
        {
            OrAnchor = new Point(_height.ColumnX, _height.TopY - past),
        });
        kept.Add(new Box(_height.ColumnX - 0.35 * letter, _height.TopY - past, _height.ColumnX + 0.35 * letter, _height.BottomY + past));
    }

    private string Say(double mm) => Magnitudes.Place.Say(Si.Mm(mm), Options.Units);
}
