using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;
using Fractions;

namespace TyingClass.Recipes.Text;

/// <summary>Splits "1 1/4 in" into its number and the rest. Fractions are exact until the last step.</summary>
internal static partial class NumberText
{
    /// <summary>Longer than any sensible number with its unit; keeps hostile text away from the arithmetic.</summary>
    private const int Longest = 60;

    private static readonly (string Sign, string Fraction)[] VulgarFractions =
    [
        ("½", "1/2"), ("⅓", "1/3"), ("⅔", "2/3"), ("¼", "1/4"), ("¾", "3/4"), ("⅛", "1/8"), ("⅜", "3/8"), ("⅝", "5/8"), ("⅞", "7/8"),
    ];

    /// <summary>The number and what follows it, or a sentence that says what is wrong.</summary>
    public static bool TrySplit(string text, string example, out double number, out string rest, [NotNullWhen(false)] out string? error)
    {
        (number, rest) = (0, "");
        string trimmed = Normalize(text);
        error = Problem(text, trimmed, example);
        if (error is not null) return false;

        Match match = Number().Match(trimmed);
        number = Value(match)!.Value;
        rest = match.Groups["rest"].Value.Trim();
        return true;
    }

    private static string? Problem(string text, string trimmed, string example)
    {
        string quoted = WordList.Quote(text.Trim());
        if (trimmed.Length > Longest) return $"{quoted} is too long for a number. Write it like {example}.";
        if (NotFinite().IsMatch(trimmed)) return $"{quoted} is not a finite number. Write a plain number like {example}.";
        if (Comma().IsMatch(trimmed)) return CommaError(quoted, trimmed);
        Match match = Number().Match(trimmed);
        if (!match.Success) return $"{quoted} does not begin with a number that can be read. Write it like {example}.";
        return Value(match) switch
        {
            null => $"{quoted} divides by zero. Write it like {example}.",
            { } value when !double.IsFinite(value) => $"{quoted} is not a finite number. Write a plain number like {example}.",
            _ => null,
        };
    }

    private static string CommaError(string quoted, string trimmed) =>
        Thousands().IsMatch(trimmed)
            ? $"{quoted} has a comma in its number. Use a point for decimals (8.5) and nothing between thousands (8500)."
            : $"{quoted} has a comma in its number. Write the decimal with a point: {Comma().Replace(trimmed, "$1.$2")}.";

    private static string Normalize(string text)
    {
        string result = text.Trim().Replace('\u2212', '-').Replace('\u2044', '/');
        foreach ((string sign, string fraction) in VulgarFractions) result = result.Replace(sign, " " + fraction, StringComparison.Ordinal);
        return Gaps().Replace(result, " ").Trim();
    }

    private static double? Value(Match match)
    {
        double sign = match.Groups["sign"].Value == "-" ? -1 : 1;
        if (!match.Groups["over"].Success) return sign * double.Parse(match.Groups["decimal"].Value, NumberStyles.Float, CultureInfo.InvariantCulture);

        long over = Whole(match, "over");
        if (over == 0) return null;
        Fraction fraction = new Fraction(Whole(match, "whole")) + new Fraction(Whole(match, "top"), over);
        return sign * fraction.ToDouble();
    }

    private static long Whole(Match match, string group) =>
        match.Groups[group].Success ? long.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture) : 0;

    [GeneratedRegex(@"^(?<sign>[-+])? ?(?:(?:(?<whole>[0-9]{1,9})[ -])?(?<top>[0-9]{1,9}) ?/ ?(?<over>[0-9]{1,9})|(?<decimal>(?:[0-9]+\.?[0-9]*|\.[0-9]+)(?:[eE][-+]?[0-9]+)?))(?![0-9./])(?<rest>.*)$",
        RegexOptions.Singleline)]
    private static partial Regex Number();

    [GeneratedRegex(@"^[-+]?\.?(nan|inf|infinity|∞)\b|^[-+]?∞", RegexOptions.IgnoreCase)]
    private static partial Regex NotFinite();

    [GeneratedRegex(@"([0-9]),([0-9])")]
    private static partial Regex Comma();

    [GeneratedRegex(@"[0-9],[0-9]{3}(?![0-9])")]
    private static partial Regex Thousands();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Gaps();
}
