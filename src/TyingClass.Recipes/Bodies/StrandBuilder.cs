using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Shapes;

namespace TyingClass.Recipes.Bodies;

/// <summary>
/// Elements of stuff tied in at one place. A strand of suppleness s is a stiff stub of the first (1 - s) of its length, which carries all its weight, and a
/// streamer for the rest: what pulls on a supple strand reaches the hook at its tie-in.
/// </summary>
internal static class StrandBuilder
{
    public static Vector3D Toward(double upRad, double rightRad) =>
        new(Math.Cos(upRad) * Math.Cos(rightRad), Math.Sin(rightRad), Math.Sin(upRad));

    public static double MassKg(PartContext part) => part.MassKg(
        () => part.Material.LinearDensity.Value is > 0 and var mgPerMm
            ? 1e-3 * mgPerMm * part.Dimensions.LengthM
            : part.DensityKgM3 * Cylinders.VolumeM3(part.Hook.WireM, part.Dimensions.LengthM),
        "from its length and the usual mass per length of its material, estimate");

    // Pressed together under the thread, as if all fiber and no air.
    public static double CompactDiameterM(PartContext part, double massKg) =>
        Math.Sqrt(4 / Math.PI * massKg / (part.DensityKgM3 * part.Dimensions.LengthM));

    // Spread out in the water, air or water between the fibers and all.
    private static double OutlineDiameterM(PartContext part, double massKg, double lengthM) =>
        Math.Sqrt(4 / Math.PI * massKg / (part.DensityKgM3 * (1 - part.Material.VoidShare.Value) * lengthM));

    public static void AddStrand(PartContext part, PartDraft draft, double massKg, double lengthM, Vector3D tieM, Vector3D direction)
    {
        double supple = part.Material.Suppleness.Value, stiffM = (1 - supple) * lengthM;
        double outlineM = OutlineDiameterM(part, massKg, lengthM);
        Vector3D pointM = tieM + stiffM / 2 * direction;
        draft.AddSolid(massKg, massKg / part.DensityKgM3, pointM, direction, Cylinders.SpreadOf(outlineM, stiffM));
        draft.AddSoaking(massKg, part.Material, pointM);
        draft.AddStraightDrag(tieM, tieM + stiffM * direction, outlineM, lengthM / outlineM, part.Refinement);
        double wettedM2 = Math.PI * outlineM * supple * lengthM;
        if (wettedM2 > 0) draft.AddDrag(DragElement.Streamer(pointM, part.Material.StreamerCoefficient.Value * wettedM2));
    }

    // Bound down at both ends, so it cannot trail: stiff whatever it is made of.
    public static void AddBound(PartContext part, PartDraft draft, double massKg, Vector3D frontM, Vector3D rearM)
    {
        part.Log.AddFigure("nose bluntness", part.Kind.NoseBluntness);
        double lengthM = (rearM - frontM).Length, outlineM = OutlineDiameterM(part, massKg, lengthM);
        Vector3D middleM = (frontM + rearM) / 2;
        draft.AddSolid(massKg, massKg / part.DensityKgM3, middleM, Vector3D.UnitX, Cylinders.SpreadOf(outlineM, lengthM));
        draft.AddSoaking(massKg, part.Material, middleM);
        draft.AddStraightDrag(
            frontM, rearM, outlineM, lengthM / outlineM, part.Refinement, part.Of(part.Kind.NoseBluntness));
    }
}
