using TyingClass.Recipes.Model;

namespace TyingClass.Drawing.Flies;

/// <summary>A clear drop drawn out along the shank.</summary>
internal sealed class ResinArt : SleeveArt
{
    public override PartKind Kind => PartKind.Resin;

    public override bool LeavesRoomForHead => true;

    protected override bool IsClear => true;

    protected override (double Front, double Rear, double Power) Ends(string material) => (0.35, 0.35, 2.0);
}
