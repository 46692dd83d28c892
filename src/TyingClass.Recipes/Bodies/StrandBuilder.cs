using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Shapes;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Bodies;

/// <summary>Wing, tail and legs. A strand of suppleness s is a stiff stub of the first (1 - s) of its length, which carries all its weight, and a streamer for the rest: what pulls on a supple strand reaches the hook at its tie-in.</summary>
internal static class StrandBuilder
{
    public static void AddWingOrTail(PartContext part, PartDraft draft)
    {
        PartDimensions d = part.Dimensions;
        double massKg = MassKg(part);
        int side = part.SideSign(part.Spec.Kind == PartKind.Wing ? Side.Top : Side.Around);
        double thickM = CompactDiameterM(part, massKg);
        double riseM = side * (part.Sheaths.SeatRadiusM(part.Index, d.FrontM, d.RearM) + thickM / 2);
        double angleRad = part.Spec.Kind == PartKind.Wing ? side * PartScale.WingAngleDeg.Value * Math.PI / 180 : 0;
        if (part.Spec.Tied != TieDown.BothEnds)
        {
            if (angleRad != 0) part.Log.AddFigure("angle from the shank", PartScale.WingAngleDeg);
            AddStrand(part, draft, massKg, d.LengthM, new(d.FrontM, 0, riseM), Toward(angleRad, 0));
            return;
        }

        double boundM = Math.Min(d.RearM - d.FrontM, d.LengthM), freeM = d.LengthM - boundM;
        double boundKg = massKg * boundM / d.LengthM;
        AddBound(part, draft, boundKg, new(d.FrontM, 0, riseM), new(d.FrontM + boundM, 0, riseM));
        if (freeM > 0) AddStrand(part, draft, massKg - boundKg, freeM, new(d.RearM, 0, riseM), Toward(0, 0));
    }

    /// <summary>As many legs to the left as to the right.</summary>
    public static void AddLegs(PartContext part, PartDraft draft)
    {
        PartDimensions d = part.Dimensions;
        double massKg = MassKg(part), splayRad = PartScale.LegAngleDeg.Value * Math.PI / 180;
        part.Log.AddFigure("splay to each side", PartScale.LegAngleDeg);
        double seatM = part.Sheaths.SeatRadiusM(part.Index, d.FrontM, d.RearM);
        int side = part.SideSign(Side.Around);
        foreach (int hand in (ReadOnlySpan<int>)[1, -1])
        {
            Vector3D tieM = new(d.FrontM, side == 0 ? hand * seatM : 0, side * seatM);
            AddStrand(part, draft, massKg / 2, d.LengthM, tieM, Toward(0, hand * splayRad));
        }
    }

    private static Vector3D Toward(double upRad, double rightRad) =>
        new(Math.Cos(upRad) * Math.Cos(rightRad), Math.Sin(rightRad), Math.Sin(upRad));

    private static double MassKg(PartContext part) => part.MassKg(
        () => part.Material.LinearDensity.Value is > 0 and var mgPerMm
            ? 1e-3 * mgPerMm * part.Dimensions.LengthM
            : part.DensityKgM3 * Cylinders.VolumeM3(part.Hook.WireM, part.Dimensions.LengthM),
        "from its length and the usual mass per length of its material, estimate");

    // Pressed together under the thread, as if all fiber and no air.
    private static double CompactDiameterM(PartContext part, double massKg) =>
        Math.Sqrt(4 / Math.PI * massKg / (part.DensityKgM3 * part.Dimensions.LengthM));

    // Spread out in the water, air or water between the fibers and all.
    private static double OutlineDiameterM(PartContext part, double massKg, double lengthM) =>
        Math.Sqrt(4 / Math.PI * massKg / (part.DensityKgM3 * (1 - part.Material.VoidShare.Value) * lengthM));

    private static void AddStrand(PartContext part, PartDraft draft, double massKg, double lengthM, Vector3D tieM, Vector3D direction)
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
    private static void AddBound(PartContext part, PartDraft draft, double massKg, Vector3D frontM, Vector3D rearM)
    {
        part.Log.AddFigure("nose bluntness", PartScale.NoseBluntness(part.Spec.Kind));
        double lengthM = (rearM - frontM).Length, outlineM = OutlineDiameterM(part, massKg, lengthM);
        Vector3D middleM = (frontM + rearM) / 2;
        draft.AddSolid(massKg, massKg / part.DensityKgM3, middleM, Vector3D.UnitX, Cylinders.SpreadOf(outlineM, lengthM));
        draft.AddSoaking(massKg, part.Material, middleM);
        draft.AddStraightDrag(
            frontM, rearM, outlineM, lengthM / outlineM, part.Refinement, PartScale.NoseBluntness(part.Spec.Kind).Value);
    }
}
