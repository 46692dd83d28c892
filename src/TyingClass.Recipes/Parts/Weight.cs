using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Parts;

/// <summary>
/// What the solid weights have in common: an outline that is known, a stated mass that wins over the outline's, and its volume then mass over density.
/// </summary>
internal abstract class Weight : KindOfPart
{
    protected const string FromOutline = "from its outline and the density of its material, estimate";

    public sealed override bool IsWeight => true;

    internal sealed override bool Uses(string figure) => figure == "density";

    // A maker's size wins; else a stated mass fixes the size through the material; else the hook suggests one.
    protected static double SizeM(PartSpec part, AssumptionLog? log, Figure gapes, ResolvedHook hook, double volumeRatio)
    {
        if (part.SizeM is { } statedM) return statedM;
        if (part.MassKg is { } massKg)
        {
            double fromMassM = Math.Cbrt(massKg / (PartSubstance.DensityKgM3(part, hook.Guesses) * volumeRatio));
            log?.AddLength("size", fromMassM, "from its mass and the density of its material");
            return fromMassM;
        }

        double sizeM = hook.Guesses.Of(gapes) * hook.GapeM;
        log?.AddLength("size", sizeM, "usual on such a hook", gapes);
        return sizeM;
    }

    /// <summary>Bore of a bead or cone: the usual share of its size, or what the wire needs if that is more; never so wide that nothing is left.</summary>
    internal static double BoreM(double sizeM, double narrowM, ResolvedHook hook) =>
        Math.Min(Math.Max(hook.Guesses.Of(PartScale.BoreShare) * sizeM, hook.WireM), 0.95 * narrowM);

    protected static double PlayM(double boreM, ResolvedHook hook) => Math.Max(0, boreM - hook.WireM) / 2;

    protected static void LogBore(PartContext part, double boreM) =>
        part.Log.AddLength("bore", boreM, "generic, or the hook's wire if that is wider", PartScale.BoreShare);

    /// <summary>What a size slider runs over: from the smallest bead sold to twice the usual largest.</summary>
    protected static Dial SizeDial(PartSpec part, ResolvedHook hook)
    {
        (double frontM, double rearM) = PartExtents.Of(part, hook);
        return Dial.Length("size", "Size", 1.5e-3, 8e-3, part.SizeM ?? rearM - frontM);
    }
}
