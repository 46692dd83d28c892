using TyingClass.Recipes.Model;

namespace TyingClass.Drawing.Flies;

/// <summary>A block with rounded ends.</summary>
internal sealed class FoamArt : SleeveArt
{
    public override PartKind Kind => PartKind.Foam;

    internal static (double Front, double Rear, double Power) Block => (0.72, 0.72, 6.0);

    protected override (double Front, double Rear, double Power) Ends(string material) => Block;
}
