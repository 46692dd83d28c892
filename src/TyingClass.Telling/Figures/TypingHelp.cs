using System.Globalization;
using TyingClass.Recipes.Text;

namespace TyingClass.Telling.Figures;

/// <summary>How to write a figure of one kind, for whoever is about to type it.</summary>
public static class TypingHelp
{
    // A push of the water is typed as an answer; 12 lb, the table's example, is what a leader breaks at.
    private const double PushN = 0.8e-3;

    /// <summary>"0.25 g" or "3.86 gr": an example in the reader's units.</summary>
    public static string Example(Dimension dimension, UnitSystem units) =>
        dimension == Dimension.Force ? Stated.Say(PushN, dimension, units)
        : units == UnitSystem.Imperial && Units.TryParse(Units.Example(dimension), dimension, out double si, out _) ? Stated.Say(si, dimension, units)
        : Units.Example(dimension);

    /// <summary>A figure typed before, to stand in its field again: fine enough to read back as the same.</summary>
    /// <param name="si">SI, temperature in °C; null for a field left empty.</param>
    public static string Again(double? si, Dimension dimension, UnitSystem units)
    {
        if (si is not { } known) return "";
        string symbol = Units.SymbolFor(known, dimension, units);
        string number = Units.FromSi(known, dimension, symbol).ToString("G6", CultureInfo.InvariantCulture);
        return symbol == "°" ? number + symbol : $"{number} {symbol}";
    }

    /// <summary>"Any unit of its kind will do: 0.25 g and 3.86 gr are the same answer."</summary>
    /// <param name="dimension">Null for a plain count.</param>
    public static string SameAnswer(Dimension? dimension, UnitSystem units)
    {
        if (dimension is not { } known) return "A plain number.";
        string metric = Example(known, UnitSystem.Metric), imperial = Example(known, UnitSystem.Imperial);
        // A phone hides the sign for degrees.
        if (known == Dimension.Angle) return $"{metric} and {metric.Replace("°", " deg", StringComparison.Ordinal)} are the same answer.";
        if (metric == imperial) return $"With its unit, as in {metric}.";
        (string first, string second) = units == UnitSystem.Metric ? (metric, imperial) : (imperial, metric);
        return $"Any unit of its kind will do: {first} and {second} are the same answer.";
    }

    /// <summary>"With its unit, as in 0.25 g.", after what the quantity is where its name alone is no plain English.</summary>
    public static string AsIn(string name, string phrase, Dimension? dimension, UnitSystem units)
    {
        string how = dimension is { } known ? $"With its unit, as in {Example(known, units)}." : "A plain number.";
        return phrase == name ? how : $"{Grammar.Capital(phrase)}. {how}";
    }
}
