using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Shapes;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Parts;

/// <summary>
/// A ring of fibers of equal length standing off the shank, too thin to hide what is under it. Their drag is along the flow whichever way it comes, so one
/// element carries it.
/// </summary>
internal sealed class Hackle : KindOfPart
{
    private static readonly Figure DiameterGapes = Figure.Guess("hackle diameter", 1.8, "× gape", 1.5, 2.2, "what looks right on such a hook");

    // Fibers standing on each mm of shank, and the thickness of one.
    private static readonly Figure FibersPerMm = Figure.Guess("hackle fibers on each mm", 30, "1/mm", 20, 45, "two turns to a mm, sparse to dense");
    private static readonly Figure FiberMm = Figure.Guess("thickness of a hackle fiber", 0.05, "mm", 0.03, 0.08, "with its down, which differs by feather");

    // Of a stiff fiber among its neighbors, on its side view.
    private static readonly Figure FiberDrag =
        Figure.Guess("drag coefficient of a hackle fiber", 1, "1", 0.6, 1.5, "alone it would have more, among its neighbors less");

    public override PartKind Kind => PartKind.Hackle;

    public override string UsualMaterial => "feather";

    public override ImmutableArray<string> SuitedMaterials => ["deer hair", "marabou", "feather"];

    public override IEnumerable<(string, Figure)> Figures =>
    [
        DiameterGapes.Named, FibersPerMm.Named, FiberMm.Named,
        FiberDrag.Named,
    ];

    public override bool CanHoldAir => true;

    internal override ImmutableArray<string> OwnKeys => ["diameter", "mass", "to", "side"];

    internal override UsualPlace UsualPlace(TiedSoFar tied) => tied.BehindRing;

    internal override bool Uses(string figure) => figure is not ("side force share" or "width when flat");

    internal override string Instead(string key) => Sleeve.InsteadOf(key) ?? base.Instead(key);

    internal override PartDimensions Measure(PartSpec part, ResolvedHook hook, AssumptionLog? log) =>
        Run.Of(part, hook, log, Run.DiameterM(part, hook, log, DiameterGapes, hook.GapeM), hook.Guesses.Of(PartScale.CollarWires) * hook.WireM);

    internal override void Build(PartContext part, PartDraft draft)
    {
        PartDimensions d = part.Dimensions;
        double supple = part.Material.Suppleness.Value, fiberM = part.Of(FiberMm) * 1e-3;
        double rootM = part.Hook.WireM / 2, tipM = Math.Max(d.SizeM / 2, rootM + fiberM), lengthM = tipM - rootM;
        double fiberKg = part.DensityKgM3 * Cylinders.VolumeM3(fiberM, lengthM);
        double massKg = part.MassKg(() => fiberKg * part.Of(FibersPerMm) * 1e3 * d.LengthM, "from fibers along the shank, estimate");
        part.Log.AddFigure("fiber thickness", FiberMm);
        part.Log.AddFigure("fiber drag coefficient", FiberDrag);
        double fibers = massKg / fiberKg, sideViewM2 = fibers * fiberM * lengthM;

        double offM = part.SideSign() * (rootM + (1 - supple) * lengthM / 2);
        Vector3D centerM = new(part.MiddleM, 0, offM);
        // Fibers lie evenly along the radius: the mean of r² from root to tip, half of it on each axis across.
        double acrossM2 = offM == 0 ? (tipM * tipM + tipM * rootM + rootM * rootM) / 6 : lengthM * lengthM / 12;
        draft.AddSolid(massKg, massKg / part.DensityKgM3, centerM, Vector3D.UnitX, new Spread(d.LengthM * d.LengthM / 12, acrossM2));
        draft.AddSoaking(massKg, part.Material, centerM);
        draft.AddDrag(DragElement.Streamer(
            centerM, (1 - supple) * part.Of(FiberDrag) * sideViewM2 + supple * part.Material.StreamerCoefficient.Value * Math.PI * sideViewM2));
    }

    // None: fibers that stand apart let the water through.
    internal override void AddSideForce(PartContext part, PartDraft draft)
    {
    }
}
