using TyingClass.Recipes.Model;

namespace TyingClass.Drawing.Flies;

/// <summary>Hair, feather or strip behind the body.</summary>
internal sealed class TailArt : PartArt
{
    public override PartKind Kind => PartKind.Tail;

    public override double? ThreadMm => 0.25;

    public override IEnumerable<Piece> Draw(Limb limb) => StrandArt.Draw(limb, wing: false);
}
