using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Shapes;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Bodies;

/// <summary>Bead, cone, dumbbell eyes and wraps: solids of known outline. A stated mass wins over the outline's, and its volume is then mass over density.</summary>
internal static class WeightBuilder
{
    private const string FromOutline = "from its outline and the density of its material, estimate";

    public static void AddBead(PartContext part, PartDraft draft)
    {
        double sizeM = part.Dimensions.SizeM, boreM = PartDimensions.BoreM(sizeM, sizeM, part.Hook);
        LogBore(part, boreM);
        double massKg = part.MassKg(() => part.DensityKgM3 * BoredSphere.VolumeM3(sizeM, boreM), FromOutline);
        Vector3D centerM = new(part.MiddleM, 0, 0);
        draft.AddSolid(massKg, massKg / part.DensityKgM3, centerM, Vector3D.UnitX, BoredSphere.SpreadOf(sizeM, boreM));
        draft.AddDrag(DragElement.Sphere(centerM, sizeM));
    }

    /// <summary>A cone's nose is forward and its wide end toward the body.</summary>
    public static void AddCone(PartContext part, PartDraft draft)
    {
        double sizeM = part.Dimensions.SizeM, lengthM = part.Dimensions.LengthM, noseM = PartDimensions.ConeNoseM(sizeM);
        double boreM = PartDimensions.BoreM(sizeM, noseM, part.Hook);
        part.Log.AddLength("nose diameter", noseM, "generic cone", PartScale.ConeNoseShare);
        LogBore(part, boreM);
        BoredFrustum cone = new(noseM, sizeM, lengthM, boreM);
        double massKg = part.MassKg(() => part.DensityKgM3 * cone.VolumeM3, FromOutline);
        draft.AddSolid(
            massKg, massKg / part.DensityKgM3, new(part.Dimensions.FrontM + cone.CentroidM, 0, 0), Vector3D.UnitX, cone.SpreadM2);
        AddConeDrag(part, draft, noseM, sizeM, lengthM);
    }

    /// <summary>Two barrels side by side and the waist between them, lashed on top of the shank unless said otherwise.</summary>
    public static void AddDumbbell(PartContext part, PartDraft draft)
    {
        double sizeM = part.Dimensions.SizeM;
        double barrelM = PartScale.EyeBarrelShare.Value * sizeM, waistM = PartScale.EyeWaistShare.Value * sizeM;
        double reachM = PartScale.EyeReachShare.Value * sizeM, gapM = 2 * reachM - barrelM;
        double massKg = part.MassKg(() => part.DensityKgM3 * PartDimensions.DumbbellVolumeRatio * Math.Pow(sizeM, 3), FromOutline);
        double outlineM3 = PartDimensions.DumbbellVolumeRatio * Math.Pow(sizeM, 3);
        double seatM = part.SideSign(Side.Top) * (part.Hook.WireM + waistM) / 2;
        Vector3D middleM = new(part.MiddleM, 0, seatM);

        part.Log.AddLength("barrel", barrelM, "generic eyes", PartScale.EyeBarrelShare);
        part.Log.AddLength("reach", reachM, "generic eyes, middle to middle of each barrel", PartScale.EyeReachShare);
        part.Log.AddLength("waist", waistM, "generic eyes", PartScale.EyeWaistShare);
        double faceShare = PartScale.EyeFaceBluntness.Value;
        AddRod(middleM - reachM * Vector3D.UnitY, sizeM, barrelM, faceShare);
        AddRod(middleM, waistM, gapM, 0);
        AddRod(middleM + reachM * Vector3D.UnitY, sizeM, barrelM, faceShare);

        void AddRod(Vector3D centerM, double diameterM, double lengthM, double bluntShare)
        {
            double shareKg = massKg * Cylinders.VolumeM3(diameterM, lengthM) / outlineM3;
            draft.AddSolid(shareKg, shareKg / part.DensityKgM3, centerM, Vector3D.UnitY, Cylinders.SpreadOf(diameterM, lengthM));
            draft.AddDrag(DragElement.Cylinder(centerM, Vector3D.UnitY, lengthM, diameterM, bluntShare, lengthM / diameterM));
        }
    }

    /// <summary>Wire wound round the shank, or over earlier wraps, in layers when its turns do not fit side by side in the stated run.</summary>
    public static void AddWraps(PartContext part, PartDraft draft)
    {
        double coreM = part.Sheaths.CoreDiameterM(part.Index, part.Dimensions.FrontM, part.Dimensions.RearM);
        WrapLayer[] layers = [.. WrapLayer.Of(part.Dimensions, coreM)];
        double wireM = part.Dimensions.SizeM, woundM = layers.Sum(layer => layer.WireLengthM);
        double massKg = part.MassKg(() => part.DensityKgM3 * Cylinders.SectionM2(wireM) * woundM, "from its wire, turns and density");
        foreach (WrapLayer layer in layers)
        {
            double layerKg = massKg * layer.WireLengthM / woundM;
            draft.AddSolid(
                layerKg, layerKg / part.DensityKgM3, new(part.Dimensions.FrontM + layer.RunM / 2, 0, 0), Vector3D.UnitX,
                Helix.SpreadOf(layer.RadiusM, layer.RunM, wireM / 2));
        }

        part.AddSheathDrag(draft, WrapLayer.OuterDiameterM(part.Dimensions, coreM));
    }

    // Slices of equal length, each a cylinder of its mean diameter at the centroid of its side view; all of the face that meets the flow is put on the widest.
    private static void AddConeDrag(PartContext part, PartDraft draft, double noseM, double sizeM, double lengthM)
    {
        part.Log.AddFigure("nose bluntness", PartScale.NoseBluntness(PartKind.Cone));
        int slices = 2 * part.Refinement;
        double stepM = lengthM / slices, slender = lengthM / sizeM;
        for (int i = 0; i < slices; i++)
        {
            double front = noseM + (sizeM - noseM) * i / slices, rear = noseM + (sizeM - noseM) * (i + 1) / slices;
            double mean = (front + rear) / 2;
            double blunt = i == slices - 1 ? Math.Min(1, PartScale.NoseBluntness(PartKind.Cone).Value * sizeM * sizeM / (mean * mean)) : 0;
            double centroidM = new BoredFrustum(front, rear, stepM, 0).SideCentroidM;
            draft.AddDrag(DragElement.Cylinder(
                new(part.Dimensions.FrontM + i * stepM + centroidM, 0, 0), Vector3D.UnitX, stepM, mean, blunt, slender));
        }
    }

    private static void LogBore(PartContext part, double boreM) =>
        part.Log.AddLength("bore", boreM, "generic, or the hook's wire if that is wider", PartScale.BoreShare);
}
