using TyingClass.Recipes.Model;

namespace TyingClass.Drawing.Flies;

/// <summary>A spindle of dressing, or a rod of foam.</summary>
internal sealed class BodyArt : SleeveArt
{
    public override PartKind Kind => PartKind.Body;

    protected override (double Front, double Rear, double Power) Ends(string material) => material switch
    {
        "closed-cell foam" or "cork" or "balsa" => FoamArt.Block,
        "floss" or "tinsel" or "nylon wire" => (0.9, 0.7, 4.0),
        "chenille" or "wool" => (0.8, 0.8, 5.0),
        _ => (0.5, 0.42, 2.4),
    };
}
