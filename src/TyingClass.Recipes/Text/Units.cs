using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace TyingClass.Recipes.Text;

/// <summary>Numbers with units, read and shown. A bare number is never guessed at.</summary>
public static class Units
{
    /// <summary>
    /// Reads "5/64 in", "1 1/4 in", "0.25 g", "-3 °C", … into SI (temperature into °C), rounded to 12 significant digits so
    /// that the same size typed in two units is the same number.
    /// </summary>
    /// <param name="error">One or two sentences for the user: what is wrong and what to write instead.</param>
    public static bool TryParse(string? text, Dimension dimension, out double si, [NotNullWhen(false)] out string? error)
    {
        si = 0;
        UnitGroup group = UnitTable.For(dimension);
        if (string.IsNullOrWhiteSpace(text))
        {
            error = $"Nothing is written here. Write {group.OneName} like {group.Example}.";
            return false;
        }

        if (!NumberText.TrySplit(text, group.Example, out double number, out string spelling, out error)) return false;
        error = group.Find(spelling) is { } unit
            ? Convert(text, number, unit, out si)
            : UnitError(text, spelling, group, dimension);
        return error is null;
    }

    /// <summary>"3.18 mm": a value as a recipe or a lesson writes it, in metric units, to be read back. What a reader sees is told by Telling.</summary>
    /// <param name="si">SI, temperature in °C.</param>
    /// <param name="significantDigits">1 … 15.</param>
    public static string Write(double si, Dimension dimension, int significantDigits = 3)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(significantDigits, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(significantDigits, 15);
        Unit unit = UnitTable.For(dimension).Get(UnitChoice.Symbol(si, dimension, UnitSystem.Metric));
        return Join(Digits(RoundedHalfUp(unit.FromSi(si), significantDigits), significantDigits), unit);
    }

    /// <summary>A value in one unit, unrounded.</summary>
    /// <param name="si">SI, temperature in °C.</param>
    public static double FromSi(double si, Dimension dimension, string symbol) => UnitTable.For(dimension).Get(symbol).FromSi(si);

    /// <summary>SI of so many of one unit; temperature in °C.</summary>
    public static double ToSi(double value, Dimension dimension, string symbol) => UnitTable.For(dimension).Get(symbol).ToSi(value);

    /// <summary>The unit that suits a value: the one that keeps the figure short.</summary>
    public static string SymbolFor(double si, Dimension dimension, UnitSystem system) => UnitChoice.Symbol(si, dimension, system);

    /// <summary>"5.6 mm": what a value of this dimension looks like.</summary>
    public static string Example(Dimension dimension) => UnitTable.For(dimension).Example;

    /// <summary>Rounded to 12 significant digits: enough for any caliper, and blind to the unit typed.</summary>
    public static double Rounded(double value) =>
        double.IsFinite(value) ? double.Parse(value.ToString("E11", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) + 0.0 : value;

    /// <summary>The shortest text in this unit that reads back as exactly the same value.</summary>
    internal static string Exact(double si, Dimension dimension, string symbol)
    {
        Unit unit = UnitTable.For(dimension).Get(symbol);
        double value = unit.FromSi(si);
        for (int digits = 10; digits < 17; digits++)
        {
            string text = Join(Digits(value, digits), unit);
            if (TryParse(text, dimension, out double back, out _) && back.Equals(si)) return text;
        }

        return Join(Digits(value, 17), unit);
    }

    internal static bool IsUnitOf(string spelling, Dimension dimension) => UnitTable.For(dimension).Find(spelling) is not null;

    private static string? Convert(string text, double number, Unit unit, out double si)
    {
        si = Rounded(unit.ToSi(number));
        return double.IsFinite(si) ? null : $"{WordList.Quote(text)} is not a finite number.";
    }

    private static string UnitError(string text, string spelling, UnitGroup group, Dimension wanted)
    {
        string number = text.Trim();
        if (spelling.Length == 0)
        {
            string unit = group.Example[(group.Example.LastIndexOfAny(['0', '1', '2', '3', '4', '5', '6', '7', '8', '9']) + 1)..];
            return $"{WordList.Quote(number)} has no unit. Write {group.Listed} after the number, for "
                + $"example {(number.Length <= 12 ? number + unit : group.Example)}.";
        }

        string why = UnitTable.DimensionOf(spelling) is { } other && other != wanted
            ? $"{WordList.Quote(spelling)} is a unit of {UnitTable.For(other).Name}, but {group.OneName} is needed"
            : $"{WordList.Quote(spelling)} is not a unit of {group.Name} known here";
        return $"{why}. Write {group.Listed} after the number, for example {group.Example}.";
    }

    // 3.175 is shown as 3.18, as on paper, although the nearest double lies a hair below.
    private static double RoundedHalfUp(double value, int significantDigits)
    {
        if (!double.IsFinite(value) || Math.Abs(value) is < 1e-10 or > 1e15) return value;
        decimal exact = (decimal)Rounded(value);
        int decimals = significantDigits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        return decimals < 0 ? value : (double)Math.Round(exact, Math.Min(decimals, 28), MidpointRounding.AwayFromZero);
    }

    private static string Join(string number, Unit unit) => unit.Symbol == "°" ? number + unit.Symbol : $"{number} {unit.Symbol}";

    // decimal spells out small numbers, where "G" would turn to exponents no tyer reads.
    private static string Digits(double value, int significantDigits)
    {
        string text = value.ToString("G" + significantDigits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return Math.Abs(value) is > 1e-10 and < 1e15 && decimal.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out decimal plain)
            ? plain.ToString("0.############################", CultureInfo.InvariantCulture)
            : text;
    }
}
