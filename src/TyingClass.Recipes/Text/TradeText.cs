using System.Text.RegularExpressions;

namespace TyingClass.Recipes.Text;

/// <summary>Numbers that the trade writes without a unit and means in inches. Common practice, no source.</summary>
internal static partial class TradeText
{
    /// <summary>Wire and line, as the spool says: ".015", "0.025".</summary>
    public static bool IsWire(string text) => Wire().IsMatch(text);

    /// <summary>Beads, cones and eyes, as the packet says: "7/64".</summary>
    public static bool IsFraction(string text) => Fraction().IsMatch(text);

    /// <summary>The decimals of a bare number just too thick for wire, ".15" or "0.15"; null for any other text.</summary>
    public static string? Decimals(string text) => BareDecimals().Match(text.Trim()) is { Success: true } match ? match.Groups["decimals"].Value : null;

    /// <summary>A size in words as shops say it: "medium" for "Med.", "extra small" for "x-small".</summary>
    public static string SizeWord(string text)
    {
        string plain = WordList.Plain(text).TrimEnd('.').Replace('-', ' ');
        return plain switch
        {
            "s" or "sm" or "sml" => "small",
            "m" or "med" or "md" => "medium",
            "l" or "lg" or "lrg" => "large",
            "xs" or "x small" or "xsmall" or "xsm" or "xtra small" or "ex small" => "extra small",
            "xl" or "x large" or "xlarge" or "xlg" or "xtra large" or "ex large" => "extra large",
            _ => plain,
        };
    }

    /// <summary>What "lead wire", "copper wire" and "brass bead" are made of; any other text as it is.</summary>
    public static string Metal(string text)
    {
        string plain = WordList.Plain(text);
        return Metals().Match(plain) is { Success: true } match ? match.Groups["metal"].Value : plain;
    }

    /// <summary>"silver tinsel", "olive marabou".</summary>
    public static bool HasColor(string text) => Colors().IsMatch(WordList.Plain(text));

    [GeneratedRegex(@"\A(?<metal>lead|tin|copper|brass|steel|tungsten|aluminum|glass|plastic) (?:wire|beads?|cones?|eyes?|tube)\z")]
    private static partial Regex Metals();

    [GeneratedRegex(@"\A(?:dark |light |hot |fluorescent )?(?:silver|gold|golden|black|white|gray|grey|brown|tan|cream|olive|green|chartreuse|yellow|orange"
        + @"|red|pink|purple|blue|pearl|natural|rust|ginger|dun) ")]
    private static partial Regex Colors();

    [GeneratedRegex(@"\A0?\.(?<decimals>[1-9][0-9]{1,2})\z")]
    private static partial Regex BareDecimals();

    [GeneratedRegex(@"\A0?\.0[0-9]{1,3}\z")]
    private static partial Regex Wire();

    [GeneratedRegex(@"\A(?:[0-9]{1,2} )?[0-9]{1,2}/[0-9]{1,3}\z")]
    private static partial Regex Fraction();
}
