using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Shapes;
using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Supplies;

namespace TyingClass.Recipes.Parts;

/// <summary>A ball with a bore, threaded on.</summary>
internal sealed class Bead : Weight
{
    private static readonly Figure SizeGapes = Figure.Guess("bead size", 0.62, "× gape", 0.55, 0.7, "charts differ by a size up or down on such a hook");

    public override PartKind Kind => PartKind.Bead;

    internal override ImmutableArray<string> OtherNames => ["beadhead", "bead head", "ball"];

    public override string UsualMaterial => "brass";

    public override ImmutableArray<string> SuitedMaterials => [.. MaterialNames.Metals, "bismuth", "glass", "plastic"];

    public override IEnumerable<(string, Figure)> Figures => [SizeGapes.Named];

    internal override ImmutableArray<string> OwnKeys => ["size", "mass"];

    public override FieldWording? FieldFor(string key) => key == "size" ? new FieldWording("Size", "7/64 or 2.8 mm") : null;

    internal override ShankHold Hold => ShankHold.Solid;

    internal override UsualPlace UsualPlace(TiedSoFar tied) => tied.AtRing;

    internal override string Instead(string key) => key == "diameter" ? "Write its widest diameter as “size” instead." : base.Instead(key);

    internal override PartDimensions Measure(PartSpec part, ResolvedHook hook, AssumptionLog? log)
    {
        double sizeM = SizeM(part, log, SizeGapes, hook, BoredSphere.VolumeM3(1, hook.Guesses.Of(PartScale.BoreShare)));
        double lengthM = BoredSphere.LengthM(sizeM, BoreM(sizeM, sizeM, hook));
        return new PartDimensions(part.AtM, part.AtM + lengthM, sizeM, lengthM, 0);
    }

    internal override double PlayM(PartDimensions dimensions, ResolvedHook hook) => PlayM(BoreM(dimensions.SizeM, dimensions.SizeM, hook), hook);

    internal override Sheath? SheathOf(int owner, PartSpec part, PartDimensions dimensions, Sheaths under) =>
        new Sheath(owner, dimensions.FrontM, dimensions.RearM, dimensions.SizeM, IsSeat: false) { Outline = Outline.Ball };

    internal override void Build(PartContext part, PartDraft draft)
    {
        double sizeM = part.Dimensions.SizeM, boreM = BoreM(sizeM, sizeM, part.Hook);
        LogBore(part, boreM);
        double massKg = part.MassKg(() => part.DensityKgM3 * BoredSphere.VolumeM3(sizeM, boreM), FromOutline);
        Vector3D centerM = new(part.MiddleM, 0, 0);
        draft.AddSolid(massKg, massKg / part.DensityKgM3, centerM, Vector3D.UnitX, BoredSphere.SpreadOf(sizeM, boreM));
        draft.AddDrag(DragElement.Sphere(centerM, sizeM));
    }

    // What a wire bent to half the gape rises within the bore, the sagitta of a chord (geometry), and a seventh of the wire for a barb pressed flat (estimate).
    internal override IEnumerable<string> FitCodes(PartSpec part, ResolvedHook hook)
    {
        double sizeM = Measure(part, hook, null).SizeM, boreM = hook.Guesses.Of(PartScale.BoreShare) * sizeM, lengthM = BoredSphere.LengthM(sizeM, boreM);
        return hook.Eye == EyeKind.Jig ? ["slotted"] : boreM < 1.15 * hook.WireM + lengthM * lengthM / (4 * hook.GapeM) ? ["bore"] : [];
    }

    // A ball alone has none; touching a body, it is that body's nose.
    internal override void AddSideForce(PartContext part, PartDraft draft) => draft.AddSideForce(part.Sheaths.Round(part.Hook).Steps(part.Index));

    internal override void Advise(PartChange change)
    {
        change.Sizes();
        change.Materials();
    }

    public override IEnumerable<Dial> Dials(PartSpec part, ResolvedHook hook) => [SizeDial(part, hook)];

    internal override Supply Supply(PartSpec part, PartDimensions dimensions, double massKg) =>
        SupplyList.Piece(SupplyKind.Bead, this, part, dimensions.SizeM);
}
