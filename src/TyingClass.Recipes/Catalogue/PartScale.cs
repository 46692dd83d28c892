using TyingClass.Balance.Fluid;

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

    /// <summary>The narrowing rear of a body askew to the flow, where the flow parts from it, over what an ideal fluid would give it.</summary>
    public static readonly Figure RearShare = Figure.Guess(
        "share of its side force that a body's rear keeps", SlenderBody.RearShare, "1", 0.1, 0.7,
        "airship hulls keep about half, from memory; a rear cut off square next to nothing");

    public static readonly Figure PlateEdge = Figure.Guess(
        "edge part of a flat wing", PlateLaw.Usual.EdgePart, "1", 1.6, 3.1, "2 after Bollay 1939, π after Polhamus 1966, both from memory");

    public static readonly Figure PlateStallDeg = Figure.Guess(
        "angle at which a flat wing stalls", 45, "°", 35, 55, "a square plate pushes hardest at about 38°, Eiffel 1910, from memory; narrower ones later");

    public static readonly Figure PlateCenter = Figure.Guess(
        "where the lift of a square plate acts", PlateLaw.Usual.SquareCenter, "× length", 0.1, 0.2,
        "between the front edge of a narrow plate and the quarter point of a wide one");

    internal static IEnumerable<Figure> Estimates =>
        [BoreShare, ShelterReach, BodyDiameterWires, CollarWires, LeastSkinShare, RearShare, PlateEdge, PlateStallDeg, PlateCenter];
}
