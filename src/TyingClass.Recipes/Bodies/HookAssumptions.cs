using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Bodies;

/// <summary>Lists what of the hook was not measured.</summary>
internal static class HookAssumptions
{
    private const string Scale = "generic hook scale, estimate";

    public static void Add(HookSpec spec, ResolvedHook hook, AssumptionLog log)
    {
        log.Part = "hook";
        if (spec.ShankM is null) log.AddLength("shank", hook.ShankM, Scale);
        if (spec.GapeM is null) log.AddLength("gape", hook.GapeM, Scale);
        if (spec.WireM is null) log.AddLength("wire", hook.WireM, Scale);
        if (spec.EyeAngleRad is null && spec.Eye != EyeKind.Straight)
        {
            log.AddFigure("eye angle", spec.Eye == EyeKind.Jig ? HookScale.DefaultJigAngleDeg : HookScale.DefaultEyeAngleDeg);
        }

        log.AddLength("eye leg", hook.EyeLegM, Scale, spec.Eye == EyeKind.Jig ? HookScale.JigLegWires : HookScale.EyeLegWires);
        log.AddLength("eye ring, outside", hook.RingOuterM, Scale, HookScale.RingOuterWires);
        log.AddLength("bend depth", hook.BendDepthM, Scale, HookScale.DepthGapes(spec.Bend));
        log.AddLength("spear", hook.SpearM, Scale, HookScale.SpearGapes);
        log.AddFigure("density", HookScale.WireDensity);
    }
}

/// <summary>Lists what of a part's substance came from the materials table.</summary>
internal static class SubstanceAssumptions
{
    public static void Add(PartSpec spec, AssumptionLog log)
    {
        Material material = PartSubstance.Of(spec);
        if (spec.Material is null && spec.DensityKgM3 is null) log.Add("material", material.Name, "usual for such a part, estimate");
        foreach ((string what, Figure figure) in material.Figures)
        {
            bool stated = what == "density" && spec.DensityKgM3 is not null;
            // Mass per length is spoken of where it is used, with the mass it gave.
            if (figure.Value != 0 && !stated && what != "mass per length") log.AddFigure(what, figure);
        }
    }
}
