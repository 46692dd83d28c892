using System.Globalization;
using TyingClass.Recipes.Text;

namespace TyingClass.Telling.Figures;

/// <summary>Bare numbers. A minus sign is a real one, so that it is read aloud as such; what rounds to nothing has none.</summary>
public static class Numbers
{
    // Beyond this a decimal holds no more digits than a double has.
    private const double Largest = 1e15;

    /// <summary>Rounded half away from zero, its last zeros dropped: "0.7", "−2".</summary>
    public static string Write(double value, int decimals) => Write(value, decimals, '#');

    /// <summary>With its last zeros kept, for figures that stand in a column.</summary>
    public static string Fixed(double value, int decimals) => Write(value, decimals, '0');

    /// <summary>"92 %"; nearer than one in a hundred to none or all one more place, lest "practically all" read as all.</summary>
    public static string Percent(double share) => Magnitudes.RidesAsIntended.Say(share, UnitSystem.Metric);

    /// <summary>For a sum that is shown beside its terms and does not add up as shown.</summary>
    public const string EachRounded = "each figure rounded";

    /// <summary>Whether figures as they are told, "+0.13 g·mm" or "0.2 g", make up the told sum to its last digit.</summary>
    public static bool Adds(IEnumerable<string> terms, string sum)
    {
        ArgumentNullException.ThrowIfNull(terms);
        return terms.Sum(Shown) == Shown(sum);

        static decimal Shown(string told)
        {
            string number = string.Concat(told.Replace('−', '-').TakeWhile(c => char.IsAsciiDigit(c) || c is '-' or '+' or '.'));
            return decimal.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out decimal value) ? value : 0;
        }
    }

    private static string Write(double value, int decimals, char place)
    {
        if (!double.IsFinite(value) || Math.Abs(value) > Largest) return value.ToString("G6", CultureInfo.InvariantCulture).Replace('-', '−');
        // 3.175 is told as 3.18, as on paper, although the nearest double lies a hair below.
        decimal rounded = Math.Round((decimal)Units.Rounded(value), decimals, MidpointRounding.AwayFromZero);
        string digits = Math.Abs(rounded).ToString("0." + new string(place, decimals), CultureInfo.InvariantCulture);
        return rounded < 0 ? "−" + digits : digits;
    }
}
