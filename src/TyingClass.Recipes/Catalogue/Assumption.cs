using System.Globalization;

namespace TyingClass.Recipes.Catalogue;

/// <summary>A number the recipe left out and the catalogue filled in.</summary>
/// <param name="What">"hook wire", "wing length".</param>
/// <param name="Value">With its unit, as a reader sees it.</param>
/// <param name="Why">Where it comes from, with a source or the word estimate.</param>
public sealed record Assumption(string What, string Value, string Why);

/// <summary>Collects assumptions while a fly is put together; <see cref="Part"/> names the part at hand.</summary>
internal sealed class AssumptionLog
{
    private readonly List<Assumption> _all = [];

    public string Part { get; set; } = "";

    /// <summary>Nobody reads it: a draw among hundreds.</summary>
    public bool IsOff { get; init; }

    public IReadOnlyList<Assumption> All => _all;

    public void AddLength(string what, double lengthM, string why) => AddNumber(what, lengthM * 1e3, "mm", why);

    public void AddLength(string what, double lengthM, string why, Figure figure)
    {
        if (!IsOff) AddLength(what, lengthM, string.Create(CultureInfo.InvariantCulture, $"{why} ({figure.Value} {figure.Unit}), {figure.Source}"));
    }

    public void AddFigure(string what, Figure figure) => AddNumber(what, figure.Value, figure.Unit == "1" ? "" : figure.Unit, figure.Source);

    public void AddNumber(string what, double value, string unit, string why)
    {
        if (!IsOff) Add(what, $"{FourDigits(value)} {unit}".TrimEnd(), why);
    }

    public void Add(string what, string value, string why)
    {
        if (!IsOff) _all.Add(new Assumption($"{Part} {what}".TrimStart(), value, why));
    }

    // Four significant digits and no exponent: "17800", "0.7788".
    private static string FourDigits(double value)
    {
        if (value == 0 || !double.IsFinite(value)) return value.ToString(CultureInfo.InvariantCulture);
        int decimals = Math.Clamp(3 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 12);
        return value.ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);
    }
}
