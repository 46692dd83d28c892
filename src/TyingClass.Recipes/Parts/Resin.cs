using System.Collections.Immutable;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Parts;

/// <summary>Resin or cement over what is there, or as a head.</summary>
internal sealed class Resin : Sleeve
{
    public override PartKind Kind => PartKind.Resin;

    public override string WithArticle => Word;

    public override string UsualMaterial => "uv resin";

    public override ImmutableArray<string> SuitedMaterials => ["uv resin", "epoxy resin", "head cement"];

    internal override bool IsInRow => false;

    internal override UsualPlace UsualPlace(TiedSoFar tied) => tied.BehindRing;

    internal override PartDimensions Measure(PartSpec part, ResolvedHook hook, AssumptionLog? log) =>
        Run.Of(part, hook, log, Run.DiameterM(part, hook, log, PartScale.BodyDiameterWires, hook.WireM), hook.Guesses.Of(PartScale.CollarWires) * hook.WireM);
}
