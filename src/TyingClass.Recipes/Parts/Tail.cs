using System.Collections.Immutable;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Parts;

/// <summary>Hair, feather or strip behind the body.</summary>
internal sealed class Tail : Strand
{
    private static readonly Figure Shanks = Figure.Guess("tail length", 1, "× shank", 0.8, 1.3, "what looks right on such a hook");

    public override PartKind Kind => PartKind.Tail;

    public override string UsualMaterial => "marabou";

    public override ImmutableArray<string> SuitedMaterials =>
    [
        "wool", "tinsel", "flash", "synthetic hair", "deer hair", "bucktail", "goat hair", "fur strip", "marabou", "feather", "rubber",
        "silicone rubber",
    ];

    public override IEnumerable<(string, Figure)> Figures => [Shanks.Named];

    protected override Figure LengthShanks => Shanks;

    // Fibers for a tail are a bunch; a pair of whole feathers on edge is a wing.
    protected override bool IsFlat(Material material) => material.FlatWidth.Value > 0 && !material.StandsOnEdge;

    internal override UsualPlace UsualPlace(TiedSoFar tied) => tied.AtBend;
}
