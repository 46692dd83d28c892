using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Labels;
using TyingClass.Drawing.Plates;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Reports;
using TyingClass.Telling;
using TyingClass.Telling.Figures;

namespace TyingClass.Drawing.Figures;

/// <summary>A fly laid across a finger at its mass center, the weight of each part as an arrow.</summary>
internal sealed class Finger : TeachingFigure
{
    public override string Kind => "balance on a finger";

    public override ImmutableArray<FigurePanel> Draw(FigureRequest request, DrawingOptions options) => Alone(new FingerPlate(One(request), options));
}

internal sealed class FingerPlate : FlyPlate
{
    private const double LongestArrow = 0.42;

    private readonly ImmutableArray<(string Name, double MassG, Point At)> _weights;
    private readonly Point _center;
    private readonly double _scale, _fingertipY;

    public FingerPlate(SolvedFly fly, DrawingOptions options)
        : base(fly, options with { Caption = false, Marks = MarkSet.ScaleBar | MarkSet.MassCenter })
    {
        View view = new(Pose.Vise, Report.TowPointMm, Facing.Side);
        Anatomy anatomy = new(fly, view, Vector3D.UnitX);
        Scene = new Scene(anatomy);
        _fingertipY = view.At(new Vector3D(0, 0, -anatomy.GirthMm(Report.MassCenterMm.X))).Y;
        AddMark(view, MarkSet.MassCenter, "mass center", Report.MassCenterMm);
        _center = view.At(Report.MassCenterMm);
        _weights = [.. fly.Built.Body.Parts.Select(p => Weight(p, view))];
        double tall = Math.Max(Scene.Frame.Height, 0.4 * Scene.Frame.Width);
        _scale = LongestArrow * tall / _weights.Max(w => w.MassG);
        Content = _weights.Aggregate(Scene.Frame, (box, w) =>
            box.With(w.At + new Point(0, _scale * w.MassG))).With(new Point(_center.X, Scene.Frame.Bottom + 0.55 * tall));
        Compose(NaturalWidthMm);
    }

    public override string Kind => "finger";

    public override string Title => $"{Fly.Recipe.Name}: balanced on a finger";

    public override string Description =>
        $"The fly lies level across a fingertip that stands under its mass center, "
        + $"{Magnitudes.MassCenterX.Say(Si.Mm(Report.MassCenterMm.X), Options.Units)} behind the "
        + $"front of the shank. Arrows show the weight of each part where it acts: {Grammar.And(_weights.Select(Said))}.";

    protected override string CaptionWords => "";

    protected override void DrawBehind(Ink ink)
    {
        double half = 0.9 * LetterMm, top = _fingertipY;
        PathText tip = new PathText().Move(new Point(_center.X - half, Content.Bottom)).Line(new Point(_center.X - half, top + half))
            .Cubic(new Point(_center.X - half, top), new Point(_center.X + half, top), new Point(_center.X + half, top + half)).Line(new Point(_center.X
                + half, Content.Bottom));
        ink.Wash(tip, Tone.Hide);
        ink.Line(tip, 1.2);
        LineArt.Rule(ink, new Ruling("fly-plumb", "plumb line", 0.8, LineArt.Dashes(LetterMm)), new Point(_center.X, Scene.Frame.Top), new Point(_center.X,
            Content.Bottom));
    }

    protected override void DrawOver(Ink ink)
    {
        // Laid over hair and body, an arrow is seen only on a strip of paper.
        foreach ((string name, double mass, Point at) in _weights)
        {
            Point tip = at + new Point(0, _scale * mass);
            ink.Brush(new PathText().Move(at).Line(tip), Tone.Paper, 0.6 * LetterMm, 0.85);
            Arrow.Draw(ink, "weight of " + name, at, tip, 0.7 * LetterMm);
        }
    }

    protected override void Furnish(Occupancy occupancy, List<LabelWish> wishes, List<Box> kept)
    {
        foreach ((string Name, double MassG, Point At) weight in _weights)
        {
            wishes.Add(new LabelWish(Said(weight), weight.Name, weight.At + new Point(0, _scale * weight.MassG), 0.2 * LetterMm));
            kept.Add(Box.Around(weight.At + new Point(0, _scale * weight.MassG / 2), 0.5 * LetterMm, _scale * weight.MassG));
        }

        kept.Add(new Box(_center.X - LetterMm, _fingertipY, _center.X + LetterMm, Content.Bottom));
    }

    private string Said((string Name, double MassG, Point At) weight) => $"{weight.Name} {Magnitudes.PartMass.Say(Si.G(weight.MassG), Options.Units)}";

    private static (string Name, double MassG, Point At) Weight(BodyPart part, View view)
    {
        double kg = part.Masses.Sum(m => m.MassKg);
        Vector3D moment = part.Masses.Aggregate(Vector3D.Zero, (sum, m) => sum + m.MassKg * m.PositionM);
        return (part.Name, 1e3 * kg, view.At(1e3 / kg * moment));
    }
}
