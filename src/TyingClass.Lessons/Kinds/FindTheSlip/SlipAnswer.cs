using System.Globalization;
using System.Text.RegularExpressions;

namespace TyingClass.Lessons.Kinds.FindTheSlip;

/// <summary>An answer: "3; reason B", "3; reason 2" or the two on lines of their own. Attempts keep the number.</summary>
/// <param name="Step">From 1; null when none is said.</param>
/// <param name="Reason">From 1; null when none is said.</param>
public sealed partial record SlipAnswer(int? Step, int? Reason)
{
    /// <returns>Null for a text that is no such answer.</returns>
    public static SlipAnswer? Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Pattern().Match(text) is { Success: true } match ? new SlipAnswer(Number(match, "step"), ReasonSaid(match)) : null;
    }

    public override string ToString() => $"{Step}; reason {Reason}";

    /// <summary>How a reason is shown: "B" for 2; a number beyond the alphabet.</summary>
    public static string Letter(int reason) => reason is >= 1 and <= 26 ? $"{(char)('A' + reason - 1)}" : $"{reason}";

    private static int? ReasonSaid(Match match) =>
        match.Groups["letter"] is { Success: true, Value: [var letter] } ? char.ToUpperInvariant(letter) - 'A' + 1 : Number(match, "reason");

    private static int? Number(Match match, string group) =>
        match.Groups[group] is { Success: true, Value: var digits } ? int.Parse(digits, CultureInfo.InvariantCulture) : null;

    [GeneratedRegex(
        @"\A\s*(?:(?:step\s*:?\s*)?(?<step>[0-9]{1,3}))?\s*[;,]?\s*"
        + @"(?:(?:reason\s*:?\s*|(?<=[0-9][\s;,]+))(?<reason>[0-9]{1,3})|(?:reason\s*:?\s*|(?<=[0-9][\s;,]*))(?<letter>[a-z]))?\s*\z",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Pattern();
}
