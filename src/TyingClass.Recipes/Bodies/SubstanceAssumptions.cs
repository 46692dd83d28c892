using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;

namespace TyingClass.Recipes.Bodies;

/// <summary>Lists what of a part's substance came from the materials table.</summary>
internal static class SubstanceAssumptions
{
    public static void Add(PartSpec spec, AssumptionLog log)
    {
        Material material = PartSubstance.Of(spec);
        if (spec.Material is null && spec.DensityKgM3 is null) log.Add("material", material.Name, "usual for such a part, estimate");
        foreach ((string what, Figure figure) in material.Figures)
        {
            if (figure.Value != 0 && IsUsed(spec, what, figure)) log.AddFigure(what, figure);
        }
    }

    // Mass per length is spoken of with the mass it gave.
    private static bool IsUsed(PartSpec spec, string what, Figure figure) => what switch
    {
        "density" => spec.DensityKgM3 is null,
        "mass per length" => false,
        // That solids let no water through goes without saying.
        "side force share" => figure.IsEstimate && KindsOfPart.Of(spec).Uses(what),
        _ => KindsOfPart.Of(spec).Uses(what),
    };
}
