using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Shapes;
using TyingClass.Recipes.Catalogue;

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

    public static void AddStrand(PartContext part, PartDraft draft, StrandRun run, bool flat = false)
    {
        double supple = part.Material.Suppleness.Value, stiffM = (1 - supple) * run.LengthM;
        double outlineM = OutlineDiameterM(part, run.MassKg, run.LengthM);
        Vector3D pointM = run.TieM + stiffM / 2 * run.Direction;
        draft.AddSolid(run.MassKg, run.MassKg / part.DensityKgM3, pointM, run.Direction, Cylinders.SpreadOf(outlineM, stiffM));
        draft.AddSoaking(run.MassKg, part.Material, pointM);
        // A plate brings its own drag (SideForce).
        if (!flat) draft.AddStraightDrag(run.TieM, run.TieM + stiffM * run.Direction, outlineM, run.LengthM / outlineM, part.Refinement);
        double wettedM2 = Math.PI * outlineM * supple * run.LengthM;
        if (wettedM2 > 0) draft.AddDrag(DragElement.Streamer(pointM, part.Material.StreamerCoefficient.Value * wettedM2));
    }

    // Bound down at both ends, so it cannot trail: stiff whatever it is made of.
    public static void AddBound(PartContext part, PartDraft draft, StrandRun run, bool flat)
    {
        double lengthM = run.LengthM, outlineM = OutlineDiameterM(part, run.MassKg, lengthM);
        Vector3D rearM = run.TieM + lengthM * run.Direction;
        draft.AddSolid(run.MassKg, run.MassKg / part.DensityKgM3, run.TieM + lengthM / 2 * run.Direction, run.Direction, Cylinders.SpreadOf(outlineM, lengthM));
        draft.AddSoaking(run.MassKg, part.Material, run.TieM + lengthM / 2 * run.Direction);
        if (flat) return;
        part.Log.AddFigure("nose bluntness", part.Kind.NoseBluntness);
        draft.AddStraightDrag(run.TieM, rearM, outlineM, lengthM / outlineM, part.Refinement, part.Of(part.Kind.NoseBluntness));
    }

    /// <summary>Its stiff share as a round body, or as a plate when it is flat.</summary>
    public static IEnumerable<SideForceElement> SideForce(PartContext part, StrandRun run, bool flat)
    {
        double stiff = run.IsBound ? 1 : 1 - part.Material.Suppleness.Value, stiffM = stiff * run.LengthM;
        Vector3D endM = run.TieM + stiffM * run.Direction;
        if (!flat)
        {
            // What trails pushes no water aside: the stub pushes with the share of the bundle that stands.
            double outlineM = OutlineDiameterM(part, run.MassKg, run.LengthM), share = stiff * part.Material.SideForceShare.Value;
            return SideForceElement.Rod(run.TieM, endM, outlineM, run.LengthM / outlineM, share, part.Of(PartScale.RearShare));
        }

        if (stiffM <= 0) return [];
        Vector3D normal = part.Material.StandsOnEdge ? Vector3D.UnitY : Vector3D.UnitZ;
        double widthM = part.Material.FlatWidth.Value * part.Dimensions.LengthM;
        PlateLaw law = new(part.Of(PartScale.PlateEdge), part.Of(PartScale.PlateStallDeg) * Math.PI / 180, part.Of(PartScale.PlateCenter));
        return [SideForceElement.Plate((run.TieM + endM) / 2, run.Direction, normal, stiffM, widthM, law)];
    }
}

/// <summary>A stretch of stuff of one strand: from its tie on, or between two ties.</summary>
internal readonly record struct StrandRun(double MassKg, double LengthM, Vector3D TieM, Vector3D Direction, bool IsBound);
