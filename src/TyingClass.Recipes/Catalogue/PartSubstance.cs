using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;

namespace TyingClass.Recipes.Catalogue;

/// <summary>What a part is made of, once the recipe and the table have both been asked.</summary>
internal static class PartSubstance
{
    /// <summary>The named material, or the kind's usual one.</summary>
    public static Material Of(PartSpec part, Guesses? guesses = null) =>
        (guesses ?? Guesses.Usual).Of(Materials.Find(part.Material ?? KindsOfPart.Of(part).UsualMaterial));

    /// <summary>A stated density wins over the table's, kg/m³.</summary>
    public static double DensityKgM3(PartSpec part, Guesses? guesses = null) => part.DensityKgM3 ?? Of(part, guesses).DensityKgM3;
}
