namespace TyingClass.Recipes.Catalogue;

/// <summary>
/// What several kinds of part look like when the recipe does not say: estimates all, in proportion to the hook or to the part itself. What one kind alone needs
/// stands with it, under Parts.
/// </summary>
public static class PartScale
{
    /// <summary>Bore of a bead or cone, share of its size.</summary>
    public static readonly Figure BoreShare = new(0.35, "× size", Figure.Estimate);

    /// <summary>
    /// The lee of a part shelters the nose of what stands behind it, the less the wider the gap: a share e^(-gap/ℓ), ℓ this much of the front part's diameter.
    /// </summary>
    public static readonly Figure ShelterReach =
        new(1, "× diameter in front", Figure.Estimate + ", two bluff bodies in line, Koenig & Roshko, J. Fluid Mech. 156 (1985) 167, from memory");

    public static readonly Figure BodyDiameterWires = new(4, "× wire", Figure.Estimate);
    public static readonly Figure CollarWires = new(3, "× wire", Figure.Estimate);

    /// <summary>However much wire lies under a body, at least this share of its outline is the body itself.</summary>
    public static readonly Figure LeastSkinShare = new(0.1, "× outline", Figure.Estimate);
}
