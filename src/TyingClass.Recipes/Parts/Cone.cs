using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Shapes;
using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Supplies;
using TyingClass.Recipes.Text;

namespace TyingClass.Recipes.Parts;

/// <summary>A cone with a bore, threaded on, its nose forward and its wide end toward the body.</summary>
internal sealed class Cone : Weight
{
    private static readonly Figure SizeGapes =
        Figure.Guess("cone size", 0.6, "× gape", 0.53, 0.68, "packets go by 0.4 mm, so a size up or down on such a hook");
    private static readonly Figure LengthShare = Figure.Guess("cone length", 0.9, "× size", 0.75, 1.0, "cones are sold short and long");
    private static readonly Figure NoseShare = Figure.Guess("cone nose", 0.5, "× size", 0.4, 0.6, "cones are sold slim and stubby");
    private static readonly Figure Bluntness =
        Figure.Guess("bluntness of a cone", 0.4, "1", 0.2, 0.6, "a slope meets the flow less bluntly than a step and more than a round nose");

    // Sold hollow behind: a straight hole that takes the thread.
    private static readonly Figure HoleWidthShare =
        Figure.Guess("width of the hole in a cone's rear", 0.55, "× size", 0.4, 0.7, "none measured; from photographs in catalogs");
    private static readonly Figure HoleDepthShare =
        Figure.Guess("depth of the hole in a cone's rear", 0.45, "× length", 0, 0.7, "some are sold solid, some hollow nearly through");

    public override PartKind Kind => PartKind.Cone;

    internal override ImmutableArray<string> OtherNames => ["conehead", "cone head"];

    public override string UsualMaterial => "brass";

    public override ImmutableArray<string> SuitedMaterials => [.. MaterialNames.Metals, "bismuth", "plastic"];

    public override Figure NoseBluntness => Bluntness;

    public override IEnumerable<(string, Figure)> Figures =>
        [SizeGapes.Named, LengthShare.Named, NoseShare.Named, Bluntness.Named,
        HoleWidthShare.Named, HoleDepthShare.Named];

    internal override ImmutableArray<string> OwnKeys => ["size", "length", "mass"];

    internal override ShankHold Hold => ShankHold.Solid;

    internal override UsualPlace UsualPlace(TiedSoFar tied) => tied.AtRing;

    internal static double NoseM(double sizeM, ResolvedHook hook) => hook.Guesses.Of(NoseShare) * sizeM;

    internal override Limit LimitOf(string key) => key == "length" ? Limits.ConeLength : base.LimitOf(key);

    internal override string Instead(string key) => key == "diameter" ? "Write its widest diameter as “size” instead." : base.Instead(key);

    internal override PartDimensions Measure(PartSpec part, ResolvedHook hook, AssumptionLog? log)
    {
        double lengths = hook.Guesses.Of(LengthShare), ratio = Shape(1, lengths, hook.Guesses.Of(PartScale.BoreShare), hook).VolumeM3;
        double sizeM = SizeM(part, log, SizeGapes, hook, ratio);
        double lengthM = part.LengthM ?? lengths * sizeM;
        if (part.LengthM is null) log?.AddLength("length", lengthM, "generic cone", LengthShare);
        return new PartDimensions(part.AtM, part.AtM + lengthM, sizeM, lengthM, 0);
    }

    internal override double PlayM(PartDimensions dimensions, ResolvedHook hook) => PlayM(BoreM(dimensions.SizeM, NoseM(dimensions.SizeM, hook), hook), hook);

    internal override Sheath? SheathOf(int owner, PartSpec part, PartDimensions dimensions, Sheaths under) =>
        new Sheath(owner, dimensions.FrontM, dimensions.RearM, dimensions.SizeM, IsSeat: false) { Outline = Outline.Cone };

    internal override void Build(PartContext part, PartDraft draft)
    {
        double sizeM = part.Dimensions.SizeM, lengthM = part.Dimensions.LengthM, noseM = NoseM(sizeM, part.Hook);
        double boreM = BoreM(sizeM, noseM, part.Hook);
        part.Log.AddLength("nose diameter", noseM, "generic cone", NoseShare);
        LogBore(part, boreM);
        part.Log.AddLength("hole in its rear, width", part.Of(HoleWidthShare) * sizeM, "generic cone", HoleWidthShare);
        part.Log.AddLength("hole in its rear, depth", part.Of(HoleDepthShare) * lengthM, "generic cone", HoleDepthShare);
        HollowCone cone = Shape(sizeM, lengthM, boreM, part.Hook);
        double massKg = part.MassKg(() => part.DensityKgM3 * cone.VolumeM3, FromOutline);
        draft.AddSolid(
            massKg, massKg / part.DensityKgM3, new(part.Dimensions.FrontM + cone.CentroidM, 0, 0), Vector3D.UnitX, cone.SpreadM2);
        AddDrag(part, draft, noseM);
    }

    private static HollowCone Shape(double sizeM, double lengthM, double boreM, ResolvedHook hook) =>
        new(
            new BoredFrustum(NoseM(sizeM, hook), sizeM, lengthM, boreM), hook.Guesses.Of(HoleWidthShare) * sizeM, hook.Guesses.Of(HoleDepthShare) * lengthM);

    // Slices of equal length, each a cylinder of its mean diameter at the centroid of its side view; all of the face that meets the flow is put on the widest.
    private void AddDrag(PartContext part, PartDraft draft, double noseM)
    {
        part.Log.AddFigure("nose bluntness", NoseBluntness);
        double sizeM = part.Dimensions.SizeM, lengthM = part.Dimensions.LengthM;
        int slices = 2 * part.Refinement;
        double stepM = lengthM / slices, slender = lengthM / sizeM;
        for (int i = 0; i < slices; i++)
        {
            double front = noseM + (sizeM - noseM) * i / slices, rear = noseM + (sizeM - noseM) * (i + 1) / slices;
            double mean = (front + rear) / 2;
            double blunt = i == slices - 1 ? Math.Min(1, part.Of(NoseBluntness) * sizeM * sizeM / (mean * mean)) : 0;
            double centroidM = new BoredFrustum(front, rear, stepM, 0).SideCentroidM;
            draft.AddDrag(DragElement.Cylinder(
                new(part.Dimensions.FrontM + i * stepM + centroidM, 0, 0), Vector3D.UnitX, stepM, mean, blunt, slender));
        }
    }

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
