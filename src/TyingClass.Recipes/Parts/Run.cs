using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Parts;

/// <summary>Measuring what runs along the shank.</summary>
internal static class Run
{
    /// <summary>Around the shank from `at` to `to`; without either `to` or a length, the usual run, or to the end of the shank.</summary>
    public static PartDimensions Of(PartSpec part, ResolvedHook hook, AssumptionLog? log, double diameterM, double usualRunM = double.PositiveInfinity)
    {
        double? statedRearM = part.ToM ?? (part.AtM + part.LengthM);
        double rearM = statedRearM ?? Math.Min(part.AtM + usualRunM, hook.ShankM);
        if (statedRearM is null) log?.AddLength("rear edge", rearM, double.IsPositiveInfinity(usualRunM) ? "the end of the shank" : "a short collar, estimate");
        return new PartDimensions(part.AtM, rearM, diameterM, rearM - part.AtM, 0);
    }

    public static double DiameterM(PartSpec part, ResolvedHook hook, AssumptionLog? log, Figure usual, double yardstickM)
    {
        if (part.DiameterM is { } statedM) return statedM;
        double diameterM = hook.Guesses.Of(usual) * yardstickM;
        log?.AddLength("diameter", diameterM, "usual on such a hook", usual);
        return diameterM;
    }
}
