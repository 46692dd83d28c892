using TyingClass.Recipes.Model;

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
}
