using System.Collections.Immutable;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Parts;

/// <summary>Closed-cell foam, cork or balsa, bound on to float.</summary>
internal sealed class Foam : Sleeve
{
    private static readonly Figure DiameterGapes = new(0.6, "× gape", Figure.Estimate);
    private static readonly Figure Bluntness = new(0.5, "1", Figure.Estimate);

    public override PartKind Kind => PartKind.Foam;

    public override string WithArticle => Word;

    public override string UsualMaterial => "closed-cell foam";

    public override ImmutableArray<string> SuitedMaterials => ["closed-cell foam", "cork", "balsa"];

    public override Figure NoseBluntness => Bluntness;

    public override IEnumerable<(string, Figure)> Figures => [("foam diameter", DiameterGapes), ("bluntness of foam", Bluntness)];

    public override bool CanHoldAir => true;

    internal override PartDimensions Measure(PartSpec part, ResolvedHook hook, AssumptionLog? log) =>
        Run.Of(part, hook, log, Run.DiameterM(part, log, DiameterGapes, hook.GapeM));
}
