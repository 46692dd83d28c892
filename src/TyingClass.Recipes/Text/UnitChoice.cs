namespace TyingClass.Recipes.Text;

/// <summary>Which unit suits a value: the one that keeps the figure short.</summary>
internal static class UnitChoice
{
    // Shown in feet or meters from a yard up: depths, not flies.
    private const double LongM = 0.9;

    // Grains up to 1/100 oz, the smallest dumbbell; the trade counts in ounces above.
    private const double OneHundredthOunceKg = 0.00028;

    /// <summary>Decimals that still mean something at a tying bench, by unit; null where three digits are few enough. Estimates: a good caliper and a good scale.</summary>
    public static int? Finest(string symbol) => symbol switch
    {
        "mm" or "m" or "m/s" or "ft" or "ft/s" or "g·mm" or "mN" => 2,
        "in" or "g" or "gr" or "oz" => 3,
        "°" or "°C" or "°F" or "%" or "s" => 1,
        _ => null,
    };

    public static string Symbol(double si, Dimension dimension, UnitSystem system) => (dimension, system) switch
    {
        (Dimension.Length, UnitSystem.Metric) => Math.Abs(si) < LongM ? "mm" : "m",
        (Dimension.Length, _) => Math.Abs(si) < LongM ? "in" : "ft",
        (Dimension.Mass, UnitSystem.Metric) => "g",
        (Dimension.Mass, _) => Math.Abs(si) < OneHundredthOunceKg ? "gr" : "oz",
        (Dimension.Angle, _) => "°",
        (Dimension.Speed, UnitSystem.Metric) => "m/s",
        (Dimension.Speed, _) => "ft/s",
        (Dimension.Temperature, UnitSystem.Metric) => "°C",
        (Dimension.Temperature, _) => "°F",
        (Dimension.Density, _) => "kg/m³",
        (Dimension.Volume, UnitSystem.Metric) => "mm³",
        (Dimension.Volume, _) => "in³",
        (Dimension.Force, UnitSystem.Metric) => Math.Abs(si) < 1 ? "mN" : "kg",
        (Dimension.Force, _) => Math.Abs(si) < 1 ? "mN" : "lb",
        (Dimension.Moment, UnitSystem.Metric) => "g·mm",
        (Dimension.Moment, _) => "gr·in",
        (Dimension.Salinity, _) => "g/kg",
        (Dimension.Share, _) => "%",
        (Dimension.Duration, _) => "s",
        _ => throw new ArgumentOutOfRangeException(nameof(dimension), dimension, "No such dimension."),
    };
}
