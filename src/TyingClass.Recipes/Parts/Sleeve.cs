using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Shapes;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Parts;

/// <summary>What body, foam and resin have in common: a tube round the shank, or a rod on one side of it.</summary>
internal abstract class Sleeve : KindOfPart
{
    internal override ImmutableArray<string> OwnKeys => ["diameter", "mass", "to", "side"];

    internal override bool IsInRow => true;

    internal override string Instead(string key) => InsteadOf(key) ?? base.Instead(key);

    /// <summary>For whatever has a diameter and runs from one place to another.</summary>
    internal static string? InsteadOf(string key) => key switch
    {
        "size" => "Write “diameter” instead.",
        "length" => "Say where it ends with “to” instead.",
        _ => null,
    };

    // What sits on top of or under the shank leaves it bare to the water on the other side.
    internal override Sheath? SheathOf(int owner, PartSpec part, PartDimensions dimensions, Sheaths under) => part.Side is null or Side.Around
        ? new Sheath(owner, dimensions.FrontM, dimensions.RearM, dimensions.SizeM, IsSeat: true)
        : null;

    internal override void Build(PartContext part, PartDraft draft)
    {
        PartDimensions d = part.Dimensions;
        int side = part.SideSign();
        double outlineM3 = Cylinders.VolumeM3(d.SizeM, d.LengthM), innerM = side == 0 ? Math.Min(part.Hook.WireM, d.SizeM) : 0;
        double ownM3 = side == 0
            ? Math.Max(outlineM3 - part.Sheaths.FilledVolumeM3(part.Index, d.FrontM, d.RearM), part.Of(PartScale.LeastSkinShare) * outlineM3)
            : outlineM3;
        double massKg = part.MassKg(() => part.DensityKgM3 * (1 - part.Material.VoidShare.Value) * ownM3, "from its outline and bulk density, estimate");

        Vector3D centerM = CenterM(part, side);
        draft.AddSolid(massKg, massKg / part.DensityKgM3, centerM, Vector3D.UnitX, Cylinders.SpreadOf(d.SizeM, d.LengthM, innerM));
        double roomM3 = Math.Max(0, ownM3 - massKg / part.DensityKgM3);
        if (1e-3 * part.Material.CaughtAir.Value * massKg > roomM3)
            part.Log.AddNumber("caught air", 1e9 * roomM3, "mm³", "no more than the room its fibers leave");
        draft.AddSoaking(massKg, part.Material, centerM, roomM3);
        if (side == 0)
        {
            part.AddSheathDrag(draft, d.SizeM);
            return;
        }

        part.Log.AddFigure("nose bluntness", NoseBluntness);
        Vector3D half = new(d.LengthM / 2, 0, 0);
        draft.AddStraightDrag(centerM - half, centerM + half, d.SizeM, d.LengthM / d.SizeM, part.Refinement, part.Of(NoseBluntness));
    }

    internal override void AddSideForce(PartContext part, PartDraft draft)
    {
        int side = part.SideOnShank();
        if (side == 0)
        {
            draft.AddSideForce(part.Sheaths.Round(part.Hook).Steps(part.Index));
            return;
        }

        PartDimensions d = part.Dimensions;
        Vector3D centerM = CenterM(part, side), half = new(d.LengthM / 2, 0, 0);
        draft.AddSideForce(SideForceElement.Rod(
            centerM - half, centerM + half, d.SizeM, d.LengthM / d.SizeM, part.Material.SideForceShare.Value, part.Of(PartScale.RearShare)));
    }

    private static Vector3D CenterM(PartContext part, int side) => new(
        part.MiddleM, 0, side * (part.Sheaths.SeatRadiusM(part.Index, part.Dimensions.FrontM, part.Dimensions.RearM) + part.Dimensions.SizeM / 2));
}
