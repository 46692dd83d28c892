using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Shapes;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Supplies;
using TyingClass.Recipes.Text;

namespace TyingClass.Recipes.Parts;

/// <summary>One loop of stiff monofilament, or two side by side, from the bend round its outside, under the point and forward to the eye.</summary>
internal sealed class WeedGuard : KindOfPart
{
    private static readonly Figure LineMm = Figure.Guess("line of a weed guard", 0.45, "mm", 0.35, 0.55, "common practice, lines in use");
    private static readonly Figure UsualLoops = new(1, "loops", Figure.Estimate);
    private static readonly Figure ClearGapes =
        Figure.Guess("shank to a weed guard at the point", 1.15, "× gape", 1.05, 1.3, "so that it clears the point and no more than it must");
    private static readonly Figure SplayDeg = Figure.Guess("how far two loops splay to each side", 15, "°", 8, 25, "nobody measures it");

    private static readonly Limit Lines = new(Dimension.Length, "0.1 mm", "1.5 mm", "0.45 mm");

    public override PartKind Kind => PartKind.WeedGuard;

    public override string Word => "weed guard";

    internal override ImmutableArray<string> OtherNames => ["weedguard", "guard", "mono guard"];

    public override string UsualMaterial => "nylon";

    public override ImmutableArray<string> SuitedMaterials => ["nylon", "fluorocarbon"];

    public override IEnumerable<(string, Figure)> Figures =>
    [
        LineMm.Named, ("loops of a weed guard", UsualLoops), ClearGapes.Named,
        SplayDeg.Named,
    ];

    internal override ImmutableArray<string> OwnKeys => ["diameter", "loops", "mass", "to"];

    internal override Limit LimitOf(string key) => key == "diameter" ? Lines : base.LimitOf(key);

    internal override string Instead(string key) => key == "side" ? "It always stands on the point side." : Sleeve.InsteadOf(key) ?? base.Instead(key);

    internal override UsualPlace UsualPlace(TiedSoFar tied) => tied.BehindRing;

    internal override bool IsInInches(string key, string text) => key == "diameter" && TradeText.IsWire(text);

    internal override bool Uses(string figure) => figure == "density";

    public override FieldWording? FieldFor(string key) => key switch
    {
        "diameter" => new FieldWording("Line", "0.45 mm"),
        "loops" => new FieldWording("Loops", "1 or 2"),
        _ => null,
    };

    internal override PartDimensions Measure(PartSpec part, ResolvedHook hook, AssumptionLog? log)
    {
        double lineM = part.DiameterM ?? 1e-3 * hook.Guesses.Of(LineMm);
        if (part.DiameterM is null) log?.AddFigure("line", LineMm);
        if (part.Loops is null) log?.AddFigure("loops", UsualLoops);
        return Run.Of(part, hook, log, lineM);
    }

    /// <summary>
    /// Each loop as two arcs, center + cos t · U + sin t · V, t from <c>FromRad</c> on: half a circle from the rear tie round the outside of the
    /// bend, then a quarter of an ellipse from below the point to the front tie.
    /// </summary>
    internal static IEnumerable<GuardArc> Arcs(PartSpec part, PartDimensions dimensions, ResolvedHook hook)
    {
        // Deep enough to clear the point where the point is; a loop much shorter than the hook cannot.
        double share = Math.Clamp((dimensions.RearM - hook.PointM.X) / dimensions.LengthM, 0, 1);
        double depthM = hook.Guesses.Of(ClearGapes) * hook.GapeM / Math.Max(0.5, Math.Sqrt(1 - share * share));
        double splayRad = hook.Guesses.Of(SplayDeg) * Math.PI / 180;
        Vector3D rear = new(dimensions.RearM, 0, 0);
        foreach (double turnRad in part.Loops == 2 ? (double[])[-splayRad, splayRad] : [0])
        {
            Vector3D down = depthM * new Vector3D(0, Math.Sin(turnRad), -Math.Cos(turnRad));
            yield return new GuardArc(rear + down / 2, new(depthM / 2, 0, 0), down / 2, -Math.PI / 2, Math.PI / 2);
            yield return new GuardArc(rear, new(dimensions.LengthM, 0, 0), down, Math.PI / 2, Math.PI);
        }
    }

    internal override void Build(PartContext part, PartDraft draft)
    {
        GuardArc[] arcs = [.. Arcs(part.Spec, part.Dimensions, part.Hook)];
        int loops = arcs.Length / 2;
        part.Log.AddLength("depth", arcs[1].V.Length, "so that it clears the point", ClearGapes);
        if (loops > 1) part.Log.AddFigure("splay to each side", SplayDeg);
        part.Log.Add("bow", "kept", "the line is taken as too stiff for the water to bend, estimate");

        double lineM = part.Dimensions.SizeM, sectionM2 = Cylinders.SectionM2(lineM);
        WirePiece[] pieces = [.. arcs.SelectMany(a => WirePiece.Arc(a.CenterM, a.U, a.V, a.FromRad, a.ToRad, 10 * part.Refinement))];
        double lengthM = pieces.Sum(p => p.LengthM);
        double massKg = part.MassKg(() => part.DensityKgM3 * sectionM2 * lengthM, "from its line, loops and density");
        foreach (WirePiece piece in pieces)
        {
            double shareKg = massKg * piece.LengthM / lengthM;
            draft.AddSolid(shareKg, shareKg / part.DensityKgM3, piece.CentroidM, piece.Direction, Cylinders.SpreadOf(lineM, piece.LengthM));
        }

        double slender = lengthM / loops / lineM;
        foreach (WirePiece piece in arcs.SelectMany(a => WirePiece.ArcForDrag(a.CenterM, a.U, a.V, a.FromRad, a.ToRad, part.Refinement)))
        {
            draft.AddDrag(DragElement.Cylinder(piece.CentroidM, piece.Direction, piece.LengthM, lineM, 0, slender));
        }
    }

    // None: a bent line, as thin as the hook's wire.
    internal override void AddSideForce(PartContext part, PartDraft draft)
    {
    }

    public override IEnumerable<Dial> Dials(PartSpec part, ResolvedHook hook) =>
        [Dial.Length("diameter", "Line", 0.2e-3, 1e-3, PartDimensions.Of(part, hook).SizeM)];

    internal override Supply Supply(PartSpec part, PartDimensions dimensions, double massKg) =>
        SupplyList.Wire(this, part, dimensions, massKg);
}

/// <summary>A stretch of a loop: center, half axes at right angles, and from where to where, m and rad.</summary>
internal readonly record struct GuardArc(Vector3D CenterM, Vector3D U, Vector3D V, double FromRad, double ToRad);
