using System.Globalization;
using System.Text.RegularExpressions;
using TyingClass.Recipes.Text;

namespace TyingClass.Telling.Figures;

/// <summary>
/// Figures that somebody wrote into a text in metric units (a lesson, a prompt, a hint, a recipe's own words), for a reader of imperial ones: converted, with
/// the writer's own behind them in parentheses, "0.016 in (0.4 mm)". For a metric reader, and for what is written in inches or ounces, texts stay as they are:
/// sizes of the trade, and "in" is a word. docs/decisions/0013 and 0030 say why.
/// </summary>
public static partial class WrittenFigures
{
    // What a writer puts behind a metric figure for readers of inches: "(1/8 in)", "(27.9 grains)", "(67 miles an hour)".
    private const string ImperialUnit =
        @"(?:in³|in|inch|inches|gr·in|gr/in|gr|grains?|oz|ounces?|ft/s|ft|feet|lb/ft³|lbs?|pounds?|miles\san\shour|miles|°F)";

    private const int MostMore = 4;

    // Estimate: a long streamer's wing is 4 in and a little more.
    private const double LongestIn = 5;

    private const string ForExample = ", for example ";

    /// <summary>With the writer's own figure in parentheses.</summary>
    public static string Beside(string text, UnitSystem units) => Convert(text, units, keep: true);

    /// <summary>As <see cref="Beside"/>, but what stands in “quotation marks” was typed by the reader and stays.</summary>
    public static string BesideOutsideQuotes(string text, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(text);
        return units == UnitSystem.Metric ? text
            : Quoted().Replace(NoUnit().Replace(text, InTheirUnit), m => m.Value[0] == '“' ? m.Value : Beside(m.Value, units));
    }

    // Whoever types a bare number thinks in the units of the page: −0.1 was inches, not −0.1 mm turned into inches.
    private static string InTheirUnit(Match match)
    {
        string number = match.Groups["number"].Value, unit = match.Groups["unit"].Value.Trim();
        // No dressing is so long in inches: whoever writes 7 means millimeters.
        if (unit == "mm" && Number(number) is >= LongestIn)
            return $"{match.Groups["head"].Value[..^ForExample.Length]}. Are millimeters meant? Then write “{number} mm”.";
        string theirs = unit switch { "mm" or "cm" => "in", "m" => "ft", "g" or "mg" => "gr", "m/s" => "ft/s", "°C" => "°F", _ => unit };
        return $"{match.Groups["head"].Value}“{number}{(theirs.StartsWith('°') && theirs.Length == 1 ? "" : " ")}{theirs}”.";
    }

    /// <summary>The reader's figure alone: for a placeholder, and for what this program wrote and not an author.</summary>
    public static string Instead(string text, UnitSystem units) => Convert(text, units, keep: false);

    /// <summary>As <see cref="Beside"/>, in the text of HTML; tags, code and recipes stay as they are.</summary>
    public static string BesideInHtml(string html, UnitSystem units) => units == UnitSystem.Metric || html.Length == 0
        ? html
        : Markup().Replace(html, m => m.Groups["text"].Success ? Beside(Signs(m.Value), units) : m.Value);

    // A degree sign or a small 3 may stand there as "&#176;", "&#179;".
    private static string Signs(string text) => LatinSign().Replace(text.Replace("&nbsp;", "\u00A0", StringComparison.Ordinal),
        m => ((char)int.Parse(m.Groups[1].ValueSpan, CultureInfo.InvariantCulture)).ToString());

    /// <summary>
    /// Two values that a recipe states, set against one another: exact where they were computed from another unit, "0.762 mm", they are told as a person would
    /// state them, in the reader's units, as finely as it takes to tell them apart.
    /// </summary>
    public static (string Before, string After) Apart(string before, string after, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        for (int more = 0; more < MostMore; more++)
        {
            if (Restate(before, units, more) is var was && Restate(after, units, more) is var now && was != now) return (was, now);
        }

        return (before, after);
    }

    /// <summary>What the program took for a value, "2.101 mm", as a person would state it, in the reader's units.</summary>
    public static string Restate(string text, UnitSystem units) => Restate(text, units, 0);

    private static string Restate(string text, UnitSystem units, int more) => Token().Replace(text, m =>
    {
        bool one = !m.Groups["first"].Success && !m.Groups["own"].Success;
        if (!one || DimensionOf(Gap().Replace(m.Groups["unit"].Value, " ")) is not { } of || Number(m.Groups["last"].Value) is not { } value)
            return units == UnitSystem.Metric ? m.Value : Told(m, text, keep: false);
        double si = of.Times * Units.ToSi(value, of.Dimension, of.Unit);
        return Stated.SayIn(units == UnitSystem.Metric ? of.Unit : Units.SymbolFor(si, of.Dimension, units), si, of.Dimension, more);
    });

    private static string Convert(string text, UnitSystem units, bool keep)
    {
        ArgumentNullException.ThrowIfNull(text);
        return units == UnitSystem.Metric ? text : Token().Replace(text, m => Told(m, text, keep));
    }

    private static string Told(Match match, string text, bool keep)
    {
        // "1.8 g (27.9 " and then a link to what a grain is: the writer says both.
        if (match.Groups["given"].Success) return match.Value;
        string figure = match.Groups["figure"].Value, own = match.Groups["own"].Value;
        if (own.Length > 0) return keep ? Pair(own, figure, match, text) : own;
        if (DimensionOf(Gap().Replace(match.Groups["unit"].Value, " ")) is not { } of || Number(match.Groups["last"].Value) is not { } last) return match.Value;
        Dimension dimension = of.Dimension;
        double lastSi = of.Times * Units.ToSi(last, dimension, of.Unit);
        string told = Stated.Say(lastSi, dimension, UnitSystem.Imperial);
        if (match.Groups["first"].Success)
        {
            if (Number(match.Groups["first"].Value) is not { } first) return match.Value;
            string firstTold = Stated.Say(of.Times * Units.ToSi(first, dimension, of.Unit), dimension, UnitSystem.Imperial),
                symbol = Units.SymbolFor(lastSi, dimension, UnitSystem.Imperial);
            told = (firstTold.EndsWith(" " + symbol, StringComparison.Ordinal) ? firstTold[..^(symbol.Length + 1)] : firstTold) + match.Groups["between"].Value
                + told;
        }

        // Nothing is nothing in any unit.
        bool nothing = last == 0 && dimension != Dimension.Temperature && !match.Groups["first"].Success;
        return keep && !nothing ? Pair(told, figure, match, text) : told;
    }

    // No parentheses within parentheses that hold nothing else: "(0.197 in, 5 mm)".
    private static string Pair(string told, string figure, Match match, string text)
    {
        int end = match.Index + match.Length;
        bool alone = match.Index > 0 && text[match.Index - 1] == '(' && end < text.Length && text[end] == ')';
        return alone ? $"{told}, {figure}" : $"{told} ({figure})";
    }

    private static double? Number(string text) =>
        double.TryParse(Gap().Replace(text.Replace('−', '-'), ""), NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
            && double.IsFinite(value) ? value : null;

    private static Written? DimensionOf(string unit) => unit switch
    {
        "mm" or "cm" or "m" => new(Dimension.Length, unit),
        "g" or "mg" => new(Dimension.Mass, unit),
        "m/s" or "cm/s" or "mm/s" => new(Dimension.Speed, unit),
        "g·mm" => new(Dimension.Moment, unit),
        "mm³" or "cm³" => new(Dimension.Volume, unit),
        "°C" => new(Dimension.Temperature, unit),
        "mN" => new(Dimension.Force, unit),
        "mg/mm" => new(Dimension.MassPerLength, unit),
        "kg in a cubic meter" => new(Dimension.Density, "kg/m³"),
        "kg/m³" or "g/cm³" => new(Dimension.Density, unit),
        "mg/mm³" or "g per cm³" => new(Dimension.Density, "g/cm³"),
        "g/mm³" => new(Dimension.Density, "g/cm³", 1000),
        _ => null,
    };

    /// <param name="Times">How many of a known unit the writer's unit is.</param>
    private readonly record struct Written(Dimension Dimension, string Unit, double Times = 1);

    // What a refusal says of a bare number: “-0.1” has no unit. …, for example -0.1 mm.
    [GeneratedRegex("(?<head>“(?<number>[^”]*)” has no unit\\. [^“]*, for example )\\k<number>(?<unit>[^“”]*?)\\.(?=$| )", RegexOptions.CultureInvariant)]
    private static partial Regex NoUnit();

    // Without a limit by the clock, which would end a page on a busy machine: each of these looks a bounded way ahead.
    // "0.4 mm"; "11 340 kg/m³"; "0.20 and 0.25 mm"; "0.64 mm (0.025 in)", which has the reader's figure already. A figure in parentheses behind an imperial one
    // is its own. A text may break its line anywhere, inside a figure too.
    [GeneratedRegex(
        @"(?<![\w.,/−-])(?<!" + ImperialUnit + @"\s\()(?<![0-9]\s)"
        + @"(?<figure>(?:(?<first>[−-]?[0-9]{1,9}(?:\.[0-9]{1,9})?)(?<between>\s(?:and|or|to|against)\s|\s?[–…]\s?))?"
        + @"(?<last>[−-]?(?:[0-9]{1,3}(?:\s[0-9]{3}){1,3}|[0-9]{1,9})(?:\.[0-9]{1,9})?)\s?"
        + @"(?<unit>mm³|mm/s|mm|cm³|cm/s|cm|mg/mm³|mg/mm|mg|g·mm|g/cm³|g/mm³|g\sper\scm³|g|m/s|mN|m|kg/m³|kg\sin\sa\scubic\smeter|°C))"
        + @"(?![\w·/³²^])(?<given>\s\((?:about\s)?[0-9./\s]+\z)?(?:\s\((?<own>(?:about\s)?[0-9][0-9./\s]*\s" + ImperialUnit + @")\))?",
        RegexOptions.CultureInvariant)]
    private static partial Regex Token();

    [GeneratedRegex(@"\s")]
    private static partial Regex Gap();

    [GeneratedRegex(@"“[^”]*”?|[^“]+", RegexOptions.CultureInvariant)]
    private static partial Regex Quoted();

    // Above the signs that HTML itself needs.
    [GeneratedRegex("&#(1[6-9][0-9]|2[0-4][0-9]|25[0-5]);", RegexOptions.CultureInvariant)]
    private static partial Regex LatinSign();

    [GeneratedRegex(@"<(?<kept>code|pre|svg|math)\b[\s\S]*?</\k<kept>>|<[^>]*>|(?<text>[^<]+)", RegexOptions.CultureInvariant)]
    private static partial Regex Markup();
}
