using System.Collections.Immutable;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Parts;

/// <summary>Closed-cell foam, cork or balsa, bound on to float.</summary>
internal sealed class Foam : Sleeve
{
    private static readonly Figure DiameterGapes = Figure.Guess("foam diameter", 0.6, "× gape", 0.5, 0.75, "what looks right on such a hook");
    private static readonly Figure Bluntness = Figure.Guess("bluntness of foam", 0.5, "1", 0.3, 0.8, "cut square or trimmed round");

    public override PartKind Kind => PartKind.Foam;

    public override string WithArticle => Word;

    public override string UsualMaterial => "closed-cell foam";

    public override ImmutableArray<string> SuitedMaterials => ["closed-cell foam", "cork", "balsa"];

    public override Figure NoseBluntness => Bluntness;

    public override IEnumerable<(string, Figure)> Figures => [DiameterGapes.Named, Bluntness.Named];

    public override bool CanHoldAir => true;

    internal override PartDimensions Measure(PartSpec part, ResolvedHook hook, AssumptionLog? log) =>
        Run.Of(part, hook, log, Run.DiameterM(part, hook, log, DiameterGapes, hook.GapeM));
}
