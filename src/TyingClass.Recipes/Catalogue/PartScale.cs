namespace TyingClass.Recipes.Catalogue;

/// <summary>
/// What several kinds of part look like when the recipe does not say: estimates all, in proportion to the hook or to the part itself. What one kind alone needs
/// stands with it, under Parts.
/// </summary>
public static class PartScale
{
    /// <summary>Bore of a bead or cone, share of its size.</summary>
    public static readonly Figure BoreShare = Figure.Guess("bore of a bead or cone", 0.35, "× size", 0.28, 0.42, "makes differ");

    /// <summary>
    /// The lee of a part shelters the nose of what stands behind it, the less the wider the gap: a share e^(-gap/ℓ), ℓ this much of the front part's diameter.
    /// </summary>
    public static readonly Figure ShelterReach = Figure.Guess(
        "how far a part shelters what is behind it", 1, "× diameter in front", 0.5, 2,
        "two bluff bodies in line, Koenig & Roshko, J. Fluid Mech. 156 (1985) 167, from memory");

    public static readonly Figure BodyDiameterWires = Figure.Guess("body diameter", 4, "× wire", 3, 6, "slim to stout");
    public static readonly Figure CollarWires = Figure.Guess("width of a hackle collar", 3, "× wire", 2, 5, "one turn to a few");

    /// <summary>However much wire lies under a body, at least this share of its outline is the body itself.</summary>
    public static readonly Figure LeastSkinShare =
        Figure.Guess("least share of a body that is the body itself", 0.1, "× outline", 0.05, 0.2, "how thin a skin of dubbing one still ties");

    internal static IEnumerable<Figure> Estimates => [BoreShare, ShelterReach, BodyDiameterWires, CollarWires, LeastSkinShare];
}
