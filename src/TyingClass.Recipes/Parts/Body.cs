using System.Collections.Immutable;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Parts;

/// <summary>Dubbing, floss, chenille … wound round the shank, or foam and the like laid along it.</summary>
internal sealed class Body : Sleeve
{
    public override PartKind Kind => PartKind.Body;

    public override string UsualMaterial => "fur dubbing";

    public override ImmutableArray<string> SuitedMaterials =>
    [
        "plastic", "nylon wire", "fur dubbing", "synthetic dubbing", "wool", "chenille", "floss", "tinsel", "deer hair",
        "closed-cell foam", "cork", "balsa", "uv resin", "epoxy resin",
    ];

    public override bool CanHoldAir => true;

    internal override PartDimensions Measure(PartSpec part, ResolvedHook hook, AssumptionLog? log) => Run.Of(part, hook, log, DiameterM(part, hook, log));

    private static double DiameterM(PartSpec part, ResolvedHook hook, AssumptionLog? log)
    {
        if (part.DiameterM is { } statedM) return statedM;
        if (part.MassKg is not { } massKg) return Run.DiameterM(part, hook, log, PartScale.BodyDiameterWires, hook.WireM);

        double lengthM = Run.Of(part, hook, null, 0).LengthM;
        double bulkKgM3 = PartSubstance.DensityKgM3(part, hook.Guesses) * (1 - PartSubstance.Of(part, hook.Guesses).VoidShare.Value);
        double diameterM = Math.Sqrt(hook.WireM * hook.WireM + massKg / (bulkKgM3 * lengthM) * 4 / Math.PI);
        log?.AddLength("diameter", diameterM, "from its mass and the bulk density of its material, estimate");
        return diameterM;
    }
}
