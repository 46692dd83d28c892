using System.Collections.Immutable;
using TyingClass.Balance.Shapes;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;

namespace TyingClass.Recipes.Supplies;

/// <summary>What it takes to tie some flies, added up. The same bead written as 1/8 in and as 3.2 mm is one line.</summary>
public static class SupplyList
{
    // Two digits: what a packet says. 1/8 in is 3.175 mm and sold as 3.2 mm (common practice, no source).
    private const int Digits = 2;

    /// <param name="flies">Recipes and how many of each.</param>
    /// <exception cref="ArgumentException">As <see cref="FlyBuilder.Build"/>.</exception>
    public static ImmutableArray<Supply> For(IEnumerable<(Recipe Recipe, int Count)> flies)
    {
        ArgumentNullException.ThrowIfNull(flies);
        return [.. flies.Where(f => f.Count > 0)
            .SelectMany(f => Of(f.Recipe).Select(s => s.Times(f.Count)))
            .GroupBy(s => (s.Kind, s.Item))
            .Select(g => g.Aggregate((a, b) => a.Plus(b)))
            .OrderBy(s => s.Item, StringComparer.Ordinal)];
    }

    private static IEnumerable<Supply> Of(Recipe recipe)
    {
        BuiltFly built = FlyBuilder.Build(recipe);
        yield return new Supply(SupplyKind.Hook, HookItem(recipe.Hook), 1, 0, 0, 0);
        for (int i = 0; i < recipe.Parts.Length; i++)
        {
            // The first part of a built body is the hook.
            double massKg = built.Body.Parts[i + 1].Masses.Sum(m => m.MassKg);
            yield return Of(recipe.Parts[i], built.Hook, massKg);
        }
    }

    private static Supply Of(PartSpec part, ResolvedHook hook, double massKg)
    {
        string kind = Words.Parts.For(part.Kind);
        switch (part.Kind)
        {
            case PartKind.Bead or PartKind.Cone or PartKind.DumbbellEyes:
                SupplyKind pieces = part.Kind == PartKind.DumbbellEyes ? SupplyKind.Eyes : SupplyKind.Bead;
                return new Supply(pieces, $"{kind}, {Substance(part)}, {Millimeters(PartDimensions.Of(part, hook).SizeM)}", 1, 0, 0, 0);
            case PartKind.Wraps:
                PartDimensions wire = PartDimensions.Of(part, hook);
                double wireM = massKg / (PartSubstance.DensityKgM3(part) * Cylinders.SectionM2(wire.SizeM));
                return new Supply(SupplyKind.Wire, $"{kind}, {Substance(part)}, {Millimeters(wire.SizeM)} ({Units.Format(wire.SizeM, Dimension.Length, UnitSystem.Imperial, Digits)})", 0, wire.Turns, wireM, 0);
            default:
                return new Supply(SupplyKind.Dressing, Substance(part), 0, 0, 0, massKg);
        }
    }

    private static string HookItem(HookSpec hook)
    {
        // Weight and shape of the bend are what this hook happened to have, not what one asks for in a shop.
        IEnumerable<string> said = RecipeWriter.HookFields(hook).Where(f => f.Key is not ("mass" or "bend")).Select(f => $"{f.Key} {f.Value}");
        return string.Join(", ", said.Prepend("hook"));
    }

    private static string Substance(PartSpec part) =>
        part is { Material: null, DensityKgM3: { } density } ? Units.Format(density, Dimension.Density) : PartSubstance.Of(part).Name;

    private static string Millimeters(double lengthM) => Units.Format(lengthM, Dimension.Length, UnitSystem.Metric, Digits);
}
