using System.Globalization;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;

namespace TyingClass.Drawing.Words;

/// <summary>Figures as words, in the units the reader prefers. A minus sign is a real one, so that it is read aloud as such.</summary>
internal static class Wording
{
    /// <summary>Under a tenth of a millimeter one more place, lest a fly on the edge read as one that is exactly at zero.</summary>
    public static string Length(double mm, UnitSystem units) =>
        units == UnitSystem.Metric ? Number(mm, Math.Abs(mm) < 0.095 ? 2 : 1) + " mm" : Number(mm / 25.4, 3) + " in";

    public static string Mass(double g, UnitSystem units) =>
        units == UnitSystem.Metric ? Number(g, 2) + " g" : Number(g / 0.06479891, 1) + " gr";

    public static string Speed(double ms, UnitSystem units) =>
        units == UnitSystem.Metric ? Number(ms, 2) + " m/s" : Number(ms / 0.3048, 2) + " ft/s";

    public static string Depth(double m, UnitSystem units) =>
        units == UnitSystem.Metric ? Number(m, 2) + " m" : Number(m / 0.3048, 1) + " ft";

    public static string Angle(double degrees) => Number(degrees, 0) + "°";

    public static string Number(double value, int decimals) => Written(value, decimals, "0." + new string('#', decimals));

    /// <summary>With its last zeros kept, for figures that stand in a column.</summary>
    public static string Fixed(double value, int decimals) => Written(value, decimals, "0." + new string('0', decimals));

    public static string Percent(double share) => Number(share * 100, 0) + " %";

    public static string State(StateReport state) => state.SoakS switch
    {
        0 => "fresh from the cast",
        null => "soaked",
        { } soakS => $"after {Number(soakS, 0)} s in the water",
    };

    /// <summary>For a legend, where there is room for a word or two.</summary>
    public static string StateInBrief(StateReport state) => state.SoakS switch
    {
        0 => "fresh",
        null => "soaked",
        { } soakS => $"after {Number(soakS, 0)} s",
    };

    /// <summary>At the head of a sentence.</summary>
    public static string StateAtHead(StateReport state)
    {
        string words = State(state);
        return char.ToUpperInvariant(words[0]) + words[1..];
    }

    public static string Way(Intent intent) => intent == Intent.PointDown ? "point down" : "point up";

    public static Intent Other(Intent intent) => intent == Intent.PointDown ? Intent.PointUp : Intent.PointDown;

    public static string Pitch(double degrees) => Math.Round(degrees) switch
    {
        0 => "level",
        > 0 => $"nose up {Angle(degrees)}",
        _ => $"nose down {Angle(-degrees)}",
    };

    private static string Written(double value, int decimals, string pattern)
    {
        double rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        string digits = Math.Abs(rounded).ToString(pattern, CultureInfo.InvariantCulture);
        return rounded < 0 ? "\u2212" + digits : digits;
    }
}
