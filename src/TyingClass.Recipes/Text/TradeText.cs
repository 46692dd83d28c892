using System.Text.RegularExpressions;

namespace TyingClass.Recipes.Text;

/// <summary>Numbers that the trade writes without a unit and means in inches. Common practice, no source.</summary>
internal static partial class TradeText
{
    /// <summary>Wire and line, as the spool says: ".015", "0.025".</summary>
    public static bool IsWire(string text) => Wire().IsMatch(text);

    /// <summary>Beads, cones and eyes, as the packet says: "7/64".</summary>
    public static bool IsFraction(string text) => Fraction().IsMatch(text);

    [GeneratedRegex(@"\A0?\.0[0-9]{1,3}\z")]
    private static partial Regex Wire();

    [GeneratedRegex(@"\A(?:[0-9]{1,2} )?[0-9]{1,2}/[0-9]{1,3}\z")]
    private static partial Regex Fraction();
}
