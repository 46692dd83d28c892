using TyingClass.Recipes.Text;

namespace TyingClass.Telling.Figures;

/// <summary>Figures that a person set, typed or measured: told as finely as they were meant, up to what a good caliper and a good scale resolve.</summary>
public static class Stated
{
    private const int Digits = 3;

    /// <summary>Three digits, none finer than a tyer can measure (0.01 mm, 0.001 in, 1 mg).</summary>
    /// <param name="si">SI, temperature in °C.</param>
    public static string Say(double si, Dimension dimension, UnitSystem units)
    {
        string symbol = Units.SymbolFor(si, dimension, units);
        double shown = Units.FromSi(si, dimension, symbol);
        int places = shown == 0 || !double.IsFinite(shown) ? 0 : Math.Clamp(Digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(shown))), 0, Finest(symbol));
        string number = Numbers.Write(shown, places);
        return symbol == "°" ? number + symbol : $"{number} {symbol}";
    }

    /// <summary>A weight as a shop sells it: fractions of an ounce in imperial units where one fits ("1/50 oz"), else as <see cref="Say"/>.</summary>
    public static string SayWeightToBuy(double kg, UnitSystem units)
    {
        if (units == UnitSystem.Metric || !(kg > 0)) return Say(kg, Dimension.Mass, units);
        double parts = 1 / Units.FromSi(kg, Dimension.Mass, "oz"), whole = Math.Round(parts);
        return whole is >= 2 and <= 120 && Math.Abs(parts / whole - 1) < 0.005
            ? $"1/{Numbers.Write(whole, 0)} oz"
            : $"{Numbers.Write(1 / parts, 3)} oz";
    }

    // Estimates: a good caliper and a good scale.
    private static int Finest(string symbol) => symbol switch
    {
        "mm" or "m" or "m/s" or "ft" or "ft/s" or "g·mm" or "gr·in" or "mN" => 2,
        "in" or "g" or "gr" or "oz" => 3,
        "°" or "°C" or "°F" or "%" or "s" => 1,
        _ => 12,
    };
}
