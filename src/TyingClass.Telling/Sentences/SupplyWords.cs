using TyingClass.Recipes.Supplies;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Telling.Sentences;

/// <summary>What one asks for in a shop.</summary>
public static class SupplyWords
{
    /// <summary>"bead, brass, 3.2 mm" or "bead, brass, 1/8 in".</summary>
    public static string Of(Supply supply, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(supply);
        SupplyItem item = supply.Item;
        string? density = item.DensityKgM3 is { } kgM3 ? Stated.Say(kgM3, Dimension.Density, units) : null;
        string? size = item.SizeM is not { } sizeM ? null
            : supply.Kind == SupplyKind.Wire ? Stated.SayWireToBuy(sizeM, units)
            : Stated.SaySizeToBuy(sizeM, units);
        if (item.LengthM is { } lengthM) size += $" × {Stated.SaySizeToBuy(lengthM, units)}";
        return string.Join(", ", new[] { item.What, item.Substance, density, size, item.With }.Where(text => !string.IsNullOrEmpty(text)));
    }
}
