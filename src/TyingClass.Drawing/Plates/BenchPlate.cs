using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Recipes.Reports;

namespace TyingClass.Drawing.Plates;

/// <summary>A fly in the vise, shank level and point down, with something measured on it.</summary>
internal abstract class BenchPlate : FlyPlate
{
    protected BenchPlate(SolvedFly fly, DrawingOptions options, MarkSet marks, double? widthMm)
        : base(fly, options with { Marks = options.Marks & (MarkSet.ScaleBar | marks) })
    {
        View = new View(Pose.Vise, Report.TowPointMm, Facing.Side);
        Scene = new Scene(new Anatomy(fly, View, Vector3D.UnitX));
        AddMark(View, MarkSet.MassCenter, "mass center", Report.MassCenterMm);
        Content = Marks.Aggregate(Scene.Frame, (box, mark) => box.With(mark.At));
        Compose(widthMm ?? NaturalWidthMm);
    }

    protected View View { get; }

    protected override void DrawBehind(Ink ink)
    {
    }

    protected override void DrawOver(Ink ink)
    {
    }

    /// <summary>The rectangle round one part on the page; null where nothing of it is drawn.</summary>
    protected Box? Around(params string[] parts)
    {
        Box box = Scene.Pieces.Where(p => parts.Contains(p.Part)).SelectMany(p => p.Outline).Aggregate(Box.Empty, (all, p) => all.With(p));
        return box.Width < 0 ? null : box;
    }
}
