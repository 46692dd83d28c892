using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Bodies;

/// <summary>Lists what of the hook was not measured.</summary>
internal static class HookAssumptions
{
    private const string Scale = "generic hook scale, estimate";
    private const string Generic = "generic hook";

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

        log.AddLength("eye leg", hook.EyeLegM, Generic, spec.Eye == EyeKind.Jig ? HookScale.JigLegWires : HookScale.EyeLegWires);
        log.AddLength("eye ring, outside", hook.RingOuterM, Generic, HookScale.RingOuterWires);
        log.AddLength("bend depth", hook.BendDepthM, Generic, HookScale.DepthGapes(spec.Bend));
        log.AddLength("spear", hook.SpearM, Generic, HookScale.SpearGapes);
        log.AddFigure("density", HookScale.WireDensity);
    }
}
