using System.Globalization;
using TyingClass.Recipes.Text;

namespace TyingClass.Web.Bench;

/// <summary>One quantity to be pulled about: a range and a number that say the same.</summary>
/// <param name="Path">In the recipe: "parts[0].size"; "soak" for the time in the water, which belongs to no recipe.</param>
/// <param name="Unit">As shown and as written into the recipe; empty for a count.</param>
/// <param name="Value">In that unit.</param>
public sealed record Slider(string Path, string Label, string Unit, double Low, double High, double Step, double Value)
{
    public const string RangePrefix = "s:";
    public const string NumberPrefix = "v:";
    public const string Soak = "soak";

    public string RangeName => RangePrefix + Path;

    public string NumberName => NumberPrefix + Path;

    public string Id => "slide-" + string.Concat(Path.Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-'));

    /// <summary>How much of SI one of its unit is, for the script that pulls the picture about.</summary>
    public string SiText => (Unit is "m/s" or "ft/s" ? Units.ToSi(1, Dimension.Speed, Unit) : 1).ToString("R", CultureInfo.InvariantCulture);

    public string LowText => Text(Low);

    public string HighText => Text(High);

    public string StepText => Text(Step);

    /// <summary>Where the handle stands: a browser would move it to a whole step by itself, and a moved handle must be one that someone moved.</summary>
    public string RangeText => Text(Math.Clamp(Low + Math.Round((Value - Low) / Step) * Step, Low, High));

    public string NumberText => Text(Value);

    /// <summary>What was asked for, when either of the two was changed.</summary>
    public double? Asked(string? range, string? number) =>
        Changed(number, NumberText) ?? Changed(range, RangeText);

    /// <summary>The value as a recipe writes it.</summary>
    public string Written(double value) => Unit.Length == 0 || Unit == "°" ? Text(value) + Unit : $"{Text(value)} {Unit}";

    public static string Text(double value) => Units.Rounded(Math.Round(value, 6)).ToString("0.####", CultureInfo.InvariantCulture);

    private static double? Changed(string? typed, string shown) =>
        typed is { Length: > 0 and < 30 } && typed != shown && double.TryParse(typed, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value) ? value : null;
}
