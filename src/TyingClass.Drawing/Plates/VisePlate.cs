using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Labels;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Figures;

namespace TyingClass.Drawing.Plates;

/// <summary>The fly as it sits in the vise, shank level: what was tied and to what scale, and nothing of what it would do.</summary>
internal sealed class VisePlate : FlyPlate
{
    /// <param name="widthMm">A common width for several plates; null for this one's own.</param>
    public VisePlate(SolvedFly fly, DrawingOptions options, double? widthMm = null)
        : base(fly, options with { Marks = options.Marks & MarkSet.ScaleBar })
    {
        Scene = new Scene(new Anatomy(fly, new View(Pose.Vise, Report.TowPointMm, Facing.Side), Vector3D.UnitX));
        Content = Scene.Frame;
        Compose(widthMm ?? NaturalWidthMm);
    }

    public override string Kind => "vise";

    public override string Title => $"{Fly.Recipe.Name}: in the vise";

    public override string Description =>
        "The fly as it sits in the vise, shank level, eye to the left, before anything is said of how it swims. The shank "
        + $"is {Magnitudes.Place.Say(Si.Mm(1e3 * Fly.Built.Hook.ShankM), Options.Units)} long. In tying "
        + $"order: {string.Join(", ", FlyBuilder.Names(Fly.Recipe.Parts).DefaultIfEmpty("a bare hook"))}.";

    protected override string CaptionWords => "in the vise, before it swims";

    protected override void DrawBehind(Ink ink)
    {
    }

    protected override void DrawOver(Ink ink)
    {
    }

    protected override void Furnish(Occupancy occupancy, List<LabelWish> wishes, List<Box> kept)
    {
    }
}
