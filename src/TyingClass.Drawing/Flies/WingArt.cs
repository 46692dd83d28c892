using TyingClass.Recipes.Model;

namespace TyingClass.Drawing.Flies;

/// <summary>Hair, feather or strip along the body.</summary>
internal sealed class WingArt : PartArt
{
    public override PartKind Kind => PartKind.Wing;

    public override double? ThreadMm => 0.55;

    public override IEnumerable<Piece> Draw(Limb limb) => StrandArt.Draw(limb, wing: true);
}
