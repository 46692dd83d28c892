using TyingClass.Recipes.Text;

namespace TyingClass.Telling.Figures;

/// <summary>Figures that a person set, typed or measured: told as finely as they were meant, up to what a good caliper and a good scale resolve.</summary>
public static class Stated
{
    private const int Digits = 3;
    private const int CountDecimals = 2;
    private const int PerInch = 64;
    private const double SmallIn3 = 1e-3;
    private const double HalfTenthM = 0.0500001e-3;

    /// <summary>Three digits, none finer than a tyer can measure (0.01 mm, 0.001 in, 1 mg).</summary>
    /// <param name="si">SI, temperature in °C.</param>
    public static string Say(double si, Dimension dimension, UnitSystem units)
    {
        return SayIn(Units.SymbolFor(si, dimension, units), si, dimension);
    }

    /// <summary>As <see cref="Say"/>, in one unit: a quantity that is told in centimeters is told so by whoever set it too.</summary>
    /// <param name="more">Places beyond those, where two that differ would read the same.</param>
    internal static string SayIn(string symbol, double si, Dimension dimension, int more = 0)
    {
        double shown = Units.FromSi(si, dimension, symbol);
        if (symbol == "in³" && Millionths(shown, new Fineness(symbol, Math.Abs(shown) < 1e-5 ? 1 : 0), more) is { } small) return small;
        int places = shown == 0 || !double.IsFinite(shown) ? 0 : Math.Clamp(Digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(shown))), 0, Finest(symbol));
        string number = Numbers.Write(shown, places + more);
        return symbol == "°" ? number + symbol : $"{number} {symbol}";
    }

    /// <summary>The air in a tuft of hair, "15 millionths of an in³": nobody reads 0.0000153. Null for what is larger, and for nothing.</summary>
    internal static string? Millionths(double in3, Fineness fineness, int more) =>
        in3 != 0 && Math.Abs(in3) < SmallIn3 ? $"{fineness.Write(1e6 * in3, more)} millionths of an in³" : null;

    /// <summary>A plain count has no unit.</summary>
    public static string SayCount(double count) => Numbers.Write(count, CountDecimals);

    /// <summary>A size as a shop sells it: "3.2 mm", or the sixty-fourths of an inch that it stands for, "1/8 in"; three decimals where none fits.</summary>
    public static string SaySizeToBuy(double sizeM, UnitSystem units)
    {
        if (units == UnitSystem.Metric) return Say(sizeM, Dimension.Length, units);
        int parts = (int)Math.Round(PerInch * Units.FromSi(sizeM, Dimension.Length, "in")), of = PerInch;
        // A packet rounds to a tenth of a millimeter: 1/8 in is sold as 3.2 mm.
        if (parts is 0 or > PerInch || Math.Abs(Units.ToSi(parts / (double)PerInch, Dimension.Length, "in") - sizeM) > HalfTenthM)
            return Say(sizeM, Dimension.Length, units);
        while (parts % 2 == 0 && of > 1) (parts, of) = (parts / 2, of / 2);
        return of == 1 ? $"{Numbers.Write(parts, 0)} in" : $"{Numbers.Write(parts, 0)}/{Numbers.Write(of, 0)} in";
    }

    /// <summary>A wire as a shop sells it. Spools are marked in inches everywhere, so a metric reader gets both: "0.38 mm (0.015 in)".</summary>
    public static string SayWireToBuy(double sizeM, UnitSystem units)
    {
        string inches = Say(sizeM, Dimension.Length, UnitSystem.Imperial);
        return units == UnitSystem.Imperial ? inches : $"{Say(sizeM, Dimension.Length, units)} ({inches})";
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
        "mm" or "m" or "m/s" or "ft" or "ft/s" or "g·mm" or "gr·in" or "gr/in" or "mN" or "lb/ft³" => 2,
        "in" or "g" or "gr" or "oz" => 3,
        "in³" => 5,
        "°" or "°C" or "°F" or "%" or "s" or "cm" => 1,
        _ => 12,
    };
}
