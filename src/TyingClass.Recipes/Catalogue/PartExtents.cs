using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;

namespace TyingClass.Recipes.Catalogue;

/// <summary>How much of the shank a part takes up.</summary>
public static class PartExtents
{
    /// <summary>Front and rear edge on the shank, m from its front. What is tied in at one place (wing, tail, legs) takes none: both are its tie-in.</summary>
    public static (double FrontM, double RearM) Of(PartSpec part, ResolvedHook hook)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(hook);
        PartDimensions dimensions = PartDimensions.Of(part, hook);
        return (dimensions.FrontM, dimensions.RearM);
    }

    /// <summary>How far off to the right a part sits, m: as stated, or as far as bore and wire allow when that is less.</summary>
    public static double SideOffsetM(PartSpec part, ResolvedHook hook)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(hook);
        if (part.SideOffsetM == 0) return 0;
        double playM = KindsOfPart.Of(part).PlayM(PartDimensions.Of(part, hook), hook);
        return Math.Clamp(part.SideOffsetM, -playM, playM);
    }
}
