using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Shapes;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Bodies;

/// <summary>Body, foam and resin as tubes or rods along the shank; hackle as a ring of fibers.</summary>
internal static class SleeveBuilder
{
    public static void AddSleeve(PartContext part, PartDraft draft)
    {
        PartDimensions d = part.Dimensions;
        int side = part.SideSign(Side.Around);
        double outlineM3 = Cylinders.VolumeM3(d.SizeM, d.LengthM), innerM = side == 0 ? Math.Min(part.Hook.WireM, d.SizeM) : 0;
        double ownM3 = side == 0
            ? Math.Max(outlineM3 - part.Sheaths.FilledVolumeM3(part.Index, d.FrontM, d.RearM), PartScale.LeastSkinShare.Value * outlineM3)
            : outlineM3;
        double massKg = part.MassKg(() => part.DensityKgM3 * (1 - part.Material.VoidShare.Value) * ownM3, "from its outline and bulk density, estimate");

        double seatM = side * (part.Sheaths.SeatRadiusM(part.Index, d.FrontM, d.RearM) + d.SizeM / 2);
        Vector3D centerM = new(part.MiddleM, 0, seatM);
        draft.AddSolid(massKg, massKg / part.DensityKgM3, centerM, Vector3D.UnitX, Cylinders.SpreadOf(d.SizeM, d.LengthM, innerM));
        double roomM3 = Math.Max(0, ownM3 - massKg / part.DensityKgM3);
        if (1e-3 * part.Material.CaughtAir.Value * massKg > roomM3) part.Log.AddNumber("caught air", 1e9 * roomM3, "mm³", "no more than the room its fibers leave");
        draft.AddSoaking(massKg, part.Material, centerM, roomM3);
        if (side == 0)
        {
            part.AddSheathDrag(draft, d.SizeM);
            return;
        }

        part.Log.AddFigure("nose bluntness", PartScale.NoseBluntness(part.Spec.Kind));
        Vector3D half = new(d.LengthM / 2, 0, 0);
        draft.AddStraightDrag(
            centerM - half, centerM + half, d.SizeM, d.LengthM / d.SizeM, part.Refinement, PartScale.NoseBluntness(part.Spec.Kind).Value);
    }

    /// <summary>Fibers of equal length standing off the shank. Their drag is along the flow whichever way it comes, so one element carries it.</summary>
    public static void AddHackle(PartContext part, PartDraft draft)
    {
        PartDimensions d = part.Dimensions;
        double supple = part.Material.Suppleness.Value, fiberM = PartScale.HackleFiberMm.Value * 1e-3;
        double rootM = part.Hook.WireM / 2, tipM = Math.Max(d.SizeM / 2, rootM + fiberM), lengthM = tipM - rootM;
        double fiberKg = part.DensityKgM3 * Cylinders.VolumeM3(fiberM, lengthM);
        double massKg = part.MassKg(() => fiberKg * PartScale.HackleFibersPerMm.Value * 1e3 * d.LengthM, "from fibers along the shank, estimate");
        part.Log.AddFigure("fiber thickness", PartScale.HackleFiberMm);
        part.Log.AddFigure("fiber drag coefficient", PartScale.HackleFiberDrag);
        double fibers = massKg / fiberKg, sideViewM2 = fibers * fiberM * lengthM;

        double offM = part.SideSign(Side.Around) * (rootM + (1 - supple) * lengthM / 2);
        Vector3D centerM = new(part.MiddleM, 0, offM);
        // Fibers lie evenly along the radius: the mean of r² from root to tip, half of it on each axis across.
        double acrossM2 = offM == 0 ? (tipM * tipM + tipM * rootM + rootM * rootM) / 6 : lengthM * lengthM / 12;
        draft.AddSolid(massKg, massKg / part.DensityKgM3, centerM, Vector3D.UnitX, new Spread(d.LengthM * d.LengthM / 12, acrossM2));
        draft.AddSoaking(massKg, part.Material, centerM);
        draft.AddDrag(DragElement.Streamer(
            centerM, (1 - supple) * PartScale.HackleFiberDrag.Value * sideViewM2 + supple * part.Material.StreamerCoefficient.Value * Math.PI * sideViewM2));
    }
}
