using System.Collections.Immutable;
using TyingClass.Balance.Shapes;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;

namespace TyingClass.Recipes.Supplies;

/// <summary>What it takes to tie some flies, added up. The same bead written as 1/8 in and as 3.2 mm is one line.</summary>
public static class SupplyList
{
    // Two digits: what a packet says. 1/8 in is 3.175 mm and sold as 3.2 mm (common practice, no source).
    private const int Digits = 2;

    /// <param name="flies">Recipes and how many of each.</param>
    /// <param name="spares">Recipes whose parts are wanted besides, without a hook, and how many of each.</param>
    /// <exception cref="ArgumentException">As <see cref="FlyBuilder.Build(Recipe, int)"/>.</exception>
    public static ImmutableArray<Supply> For(IEnumerable<(Recipe Recipe, int Count)> flies, IEnumerable<(Recipe Recipe, int Count)>? spares = null)
    {
        ArgumentNullException.ThrowIfNull(flies);
        return [.. Of(flies).Concat(Of(spares ?? []).Where(s => s.Kind != SupplyKind.Hook))
            .GroupBy(s => (s.Kind, s.Item))
            .Select(g => g.Aggregate((a, b) => a.Plus(b)))
            .OrderBy(s => s.Item.What, StringComparer.Ordinal).ThenBy(s => s.Item.Substance, StringComparer.Ordinal).ThenBy(s => s.Item.SizeM)];
    }

    private static IEnumerable<Supply> Of(IEnumerable<(Recipe Recipe, int Count)> many) =>
        many.Where(f => f.Count > 0).SelectMany(f => Of(f.Recipe).Select(s => s.Times(f.Count)));

    private static IEnumerable<Supply> Of(Recipe recipe)
    {
        BuiltFly built = FlyBuilder.Build(recipe);
        yield return new Supply(SupplyKind.Hook, HookItem(recipe.Hook), 1, 0, 0, 0);
        for (int i = 0; i < recipe.Parts.Length; i++)
        {
            // The first part of a built body is the hook.
            double massKg = built.Body.Parts[i + 1].Masses.Sum(m => m.MassKg);
            PartSpec part = recipe.Parts[i];
            yield return KindsOfPart.Of(part).Supply(part, PartDimensions.Of(part, built.Hook), massKg);
        }
    }

    /// <summary>Something bought by the piece.</summary>
    internal static Supply Piece(SupplyKind bought, KindOfPart kind, PartSpec part, double sizeM) =>
        new(bought, Substance(kind.Word, part) with { SizeM = OnPacketM(sizeM) }, 1, 0, 0, 0);

    /// <summary>Something bought by the spool.</summary>
    internal static Supply Wire(KindOfPart kind, PartSpec part, PartDimensions wire, double massKg)
    {
        double wireM = massKg / (PartSubstance.DensityKgM3(part) * Cylinders.SectionM2(wire.SizeM));
        return new Supply(SupplyKind.Wire, Substance(kind.Word, part) with { SizeM = OnPacketM(wire.SizeM) }, 0, wire.Turns, wireM, 0);
    }

    internal static SupplyItem Substance(string what, PartSpec part) => part is { Material: null, DensityKgM3: { } density }
        ? new SupplyItem(what) { DensityKgM3 = density }
        : new SupplyItem(what) { Substance = PartSubstance.Of(part).Name };

    /// <summary>A dressing is asked for by what it is made of.</summary>
    internal static SupplyItem Dressing(PartSpec part) => part is { Material: null, DensityKgM3: { } density }
        ? new SupplyItem("") { DensityKgM3 = density }
        : new SupplyItem(PartSubstance.Of(part).Name);

    private static SupplyItem HookItem(HookSpec hook)
    {
        // Weight and shape of the bend are what this hook happened to have, not what one asks for in a shop.
        IEnumerable<string> said = RecipeWriter.HookFields(hook).Where(f => f.Key is not ("mass" or "bend")).Select(f => $"{f.Key} {f.Value}");
        return new SupplyItem(string.Join(", ", said.Prepend("hook"))) { Hook = hook with { MassKg = null, Bend = BendKind.Round } };
    }

    internal static double OnPacketM(double lengthM)
    {
        double unitM = Math.Pow(10, Math.Floor(Math.Log10(1e3 * lengthM)) - Digits + 1) * 1e-3;
        return Units.Rounded(Math.Round(Units.Rounded(lengthM / unitM), MidpointRounding.AwayFromZero) * unitM);
    }
}
