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
        .. Named("hook", HookScale.Estimates),
        new("hook", "wire density", HookScale.WireDensity),
        .. KindsOfPart.All.SelectMany(k => k.Figures).Select(f => new CatalogueFigure("parts", f.What, f.Figure)),
        .. Named("parts", [KindOfPart.UsualBluntness, .. PartScale.Estimates]),
        new("fishing", "water temperature", FishingScale.Temperature),
        new("fishing", "salt of sea water", FishingScale.SeaSalinity),
        new("fishing", "speed", FishingScale.Speed),
        new("fishing", "leader diameter", FishingScale.LeaderDiameter),
        .. Named("fishing", FishingScale.Estimates),
        new("fishing", "density of nylon", FishingScale.NylonDensity),
        new("fishing", "density of fluorocarbon", FishingScale.FluorocarbonDensity),
        new("warnings", "a fly heavy enough for the casting warning", Cautions.HeavyFly),
    ];

    private static IEnumerable<CatalogueFigure> Named(string group, IEnumerable<Figure> figures) =>
        figures.Select(f => new CatalogueFigure(group, f.Name!, f));
}
