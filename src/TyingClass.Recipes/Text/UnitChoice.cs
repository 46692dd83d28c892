namespace TyingClass.Recipes.Text;

/// <summary>Which unit suits a value: the one that keeps the figure short.</summary>
internal static class UnitChoice
{
    // Shown in feet or meters from a yard up: depths, not flies.
    private const double LongM = 0.9;

    public static string Symbol(double si, Dimension dimension, UnitSystem system) => (dimension, system) switch
    {
        (Dimension.Length, UnitSystem.Metric) => Math.Abs(si) < LongM ? "mm" : "m",
        (Dimension.Length, _) => Math.Abs(si) < LongM ? "in" : "ft",
        (Dimension.Mass, UnitSystem.Metric) => "g",
        // Of a fly always in grains: one way to say a mass. What a shop sells in ounces is told so by Stated.SayWeightToBuy.
        (Dimension.Mass, _) => "gr",
        (Dimension.Angle, _) => "°",
        (Dimension.Speed, UnitSystem.Metric) => "m/s",
        (Dimension.Speed, _) => "ft/s",
        (Dimension.Temperature, UnitSystem.Metric) => "°C",
        (Dimension.Temperature, _) => "°F",
        (Dimension.Density, UnitSystem.Metric) => "kg/m³",
        (Dimension.Density, _) => "lb/ft³",
        (Dimension.Volume, UnitSystem.Metric) => "mm³",
        (Dimension.Volume, _) => "in³",
        (Dimension.Force, UnitSystem.Metric) => Math.Abs(si) < 1 ? "mN" : "kg",
        (Dimension.Force, _) => Math.Abs(si) < 1 ? "gr" : "lb",
        (Dimension.Moment, UnitSystem.Metric) => "g·mm",
        (Dimension.Moment, _) => "gr·in",
        (Dimension.MassPerLength, UnitSystem.Metric) => "mg/mm",
        (Dimension.MassPerLength, _) => "gr/in",
        (Dimension.Salinity, _) => "g/kg",
        (Dimension.Share, _) => "%",
        (Dimension.Duration, _) => "s",
        _ => throw new ArgumentOutOfRangeException(nameof(dimension), dimension, "No such dimension."),
    };
}
