using System.Globalization;
using System.Text.RegularExpressions;
using TyingClass.Recipes.Text;

namespace TyingClass.Telling.Figures;

/// <summary>
/// Figures that somebody wrote into a text in metric units (a prompt, a hint, a recipe's own words), for a reader of imperial ones: converted, with the
/// writer's
/// own behind them in parentheses, "0.016 in (0.4 mm)". For a metric reader, and for what is written in inches or ounces, texts stay as they are: sizes of the
/// trade, and "in" is a word. docs/decisions/0013 says why.
/// </summary>
public static partial class WrittenFigures
{
    /// <summary>With the writer's own figure in parentheses.</summary>
    public static string Beside(string text, UnitSystem units) => Convert(text, units, keep: true);

    /// <summary>As <see cref="Beside"/>, but what stands in “quotation marks” was typed by the reader and stays.</summary>
    public static string BesideOutsideQuotes(string text, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(text);
        return units == UnitSystem.Metric ? text : Quoted().Replace(text, m => m.Value[0] == '“' ? m.Value : Beside(m.Value, units));
    }

    /// <summary>The reader's figure alone: for a placeholder, and for what this program wrote and not an author.</summary>
    public static string Instead(string text, UnitSystem units) => Convert(text, units, keep: false);

    /// <summary>As <see cref="Beside"/>, in the text of HTML; tags, code and recipes stay as they are.</summary>
    public static string BesideInHtml(string html, UnitSystem units) => units == UnitSystem.Metric || html.Length == 0
        ? html
        : Markup().Replace(html, m => m.Groups["text"].Success ? Beside(m.Value, units) : m.Value);

    private static string Convert(string text, UnitSystem units, bool keep)
    {
        ArgumentNullException.ThrowIfNull(text);
        return units == UnitSystem.Metric ? text : Token().Replace(text, m => Told(m, keep));
    }

    private static string Told(Match match, bool keep)
    {
        string unit = match.Groups["unit"].Value, own = match.Groups["own"].Value;
        if (own.Length > 0) return keep ? $"{own} ({match.Groups["figure"].Value})" : own;
        if (DimensionOf(unit) is not { } dimension || Number(match.Groups["last"].Value) is not { } last) return match.Value;
        double lastSi = Units.ToSi(last, dimension, unit);
        string told = Stated.Say(lastSi, dimension, UnitSystem.Imperial);
        if (match.Groups["first"].Success)
        {
            if (Number(match.Groups["first"].Value) is not { } first) return match.Value;
            string firstTold = Stated.Say(Units.ToSi(first, dimension, unit), dimension, UnitSystem.Imperial),
                symbol = Units.SymbolFor(lastSi, dimension, UnitSystem.Imperial);
            told = (firstTold.EndsWith(" " + symbol, StringComparison.Ordinal) ? firstTold[..^(symbol.Length + 1)] : firstTold) + match.Groups["between"].Value
                + told;
        }

        return keep ? $"{told} ({match.Groups["figure"].Value})" : told;
    }

    private static double? Number(string text) =>
        double.TryParse(text.Replace('−', '-'), NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value) ? value : null;

    private static Dimension? DimensionOf(string unit) => unit switch
    {
        "mm" or "cm" or "m" => Dimension.Length,
        "g" or "mg" => Dimension.Mass,
        "m/s" or "cm/s" or "mm/s" => Dimension.Speed,
        "g·mm" => Dimension.Moment,
        "mm³" => Dimension.Volume,
        "°C" => Dimension.Temperature,
        "mN" => Dimension.Force,
        "kg/m³" => Dimension.Density,
        _ => null,
    };

    // "0.4 mm"; "0.20 and 0.25 mm"; "0.64 mm (0.025 in)", which has the reader's figure already. A figure in parentheses behind an imperial one is its own.
    [GeneratedRegex(
        @"(?<![\w.,/(−-])(?<figure>(?:(?<first>[−-]?[0-9]{1,9}(?:\.[0-9]{1,9})?)(?<between> (?:and|or|to) |\s?[–…]\s?))?"
        + @"(?<last>[−-]?[0-9]{1,9}(?:\.[0-9]{1,9})?)[ \u00A0]?(?<unit>mm³|mm/s|mm|cm/s|cm|mg|g·mm|g|m/s|mN|m|kg/m³|°C))"
        + @"(?![\w·/³²^])(?: \((?<own>[0-9./ ]+ (?:in|gr|oz|ft))\))?",
        RegexOptions.None, 1000)]
    private static partial Regex Token();

    [GeneratedRegex(@"“[^”]*”?|[^“]+", RegexOptions.None, 1000)]
    private static partial Regex Quoted();

    [GeneratedRegex(@"<(?<kept>code|pre|svg|math)\b[\s\S]*?</\k<kept>>|<[^>]*>|(?<text>[^<]+)", RegexOptions.None, 1000)]
    private static partial Regex Markup();
}
