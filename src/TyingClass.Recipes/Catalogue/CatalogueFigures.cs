using System.Collections.Immutable;
using TyingClass.Recipes.Parts;

namespace TyingClass.Recipes.Catalogue;

/// <summary>One number of the catalogue, for a reader.</summary>
/// <param name="Group">"hook", "parts", "fishing", "warnings".</param>
/// <param name="What">"eye leg of a jig hook".</param>
public readonly record struct CatalogueFigure(string Group, string What, Figure Figure);

/// <summary>The catalogue's numbers in one list, so that a page can show every estimate. Materials have their own table, <see cref="Materials.All"/>.</summary>
public static class CatalogueFigures
{
    public static ImmutableArray<CatalogueFigure> All { get; } =
    [
        new("hook", "eye angle, up and down eyes", HookScale.DefaultEyeAngleDeg),
        new("hook", "eye angle, jig eyes", HookScale.DefaultJigAngleDeg),
        new("hook", "eye leg", HookScale.EyeLegWires),
        new("hook", "eye leg of a jig hook", HookScale.JigLegWires),
        new("hook", "eye ring, outside", HookScale.RingOuterWires),
        new("hook", "spear", HookScale.SpearGapes),
        new("hook", "depth of a round bend", HookScale.RoundDepthGapes),
        new("hook", "depth of a long bend", HookScale.LongDepthGapes),
        new("hook", "depth of a square bend", HookScale.SquareDepthGapes),
        new("hook", "wire density", HookScale.WireDensity),
        .. KindsOfPart.All.SelectMany(k => k.Figures).Select(f => new CatalogueFigure("parts", f.What, f.Figure)),
        new("parts", "bore of a bead or cone", PartScale.BoreShare),
        new("parts", "how far a part shelters what is behind it", PartScale.ShelterReach),
        new("parts", "body diameter", PartScale.BodyDiameterWires),
        new("parts", "width of a hackle collar", PartScale.CollarWires),
        new("parts", "least share of a body that is the body itself", PartScale.LeastSkinShare),
        new("fishing", "water temperature", FishingScale.Temperature),
        new("fishing", "salt of sea water", FishingScale.SeaSalinity),
        new("fishing", "speed", FishingScale.Speed),
        new("fishing", "leader diameter", FishingScale.LeaderDiameter),
        new("fishing", "breaking stress of nylon", FishingScale.BreakingStress),
        new("fishing", "breaking stress of fluorocarbon", FishingScale.FluorocarbonBreakingStress),
        new("fishing", "stiffness E of nylon", FishingScale.NylonModulus),
        new("fishing", "stiffness E of fluorocarbon", FishingScale.FluorocarbonModulus),
        new("fishing", "density of nylon", FishingScale.NylonDensity),
        new("fishing", "density of fluorocarbon", FishingScale.FluorocarbonDensity),
        new("warnings", "a fly heavy enough for the casting warning", Cautions.HeavyFly),
    ];
}
