using System.Collections.Frozen;
using UnitsNet;
using UnitsNet.Units;

namespace TyingClass.Recipes.Text;

/// <summary>One unit: how it is written here, other spellings taken, and its way to and from SI.</summary>
internal sealed record Unit(string Symbol, string[] Spellings, Func<double, double> ToSi, Func<double, double> FromSi);

/// <summary>The units of one dimension, and how to speak of it to a beginner.</summary>
internal sealed class UnitGroup(string name, string example, Unit[] units)
{
    private readonly FrozenDictionary<string, Unit> _bySpelling = units
        .SelectMany(u => u.Spellings.Prepend(u.Symbol).Distinct(StringComparer.OrdinalIgnoreCase), (u, spelling) => (u, spelling))
        .ToFrozenDictionary(x => x.spelling, x => x.u, StringComparer.OrdinalIgnoreCase);

    public string Name { get; } = name;

    /// <summary>"5.6 mm".</summary>
    public string Example { get; } = example;

    /// <summary>"mm, cm, m, in or ft".</summary>
    public string Listed { get; } = WordList.Or(units.Select(u => u.Symbol));

    /// <summary>"a length", "an angle".</summary>
    public string OneName => (Name[0] is 'a' ? "an " : "a ") + Name;

    public Unit? Find(string spelling) => _bySpelling.GetValueOrDefault(spelling);

    public Unit Get(string symbol) => Find(symbol) ?? throw new ArgumentException($"No unit {symbol} of {Name}.", nameof(symbol));
}

/// <summary>All units read and written. Factors come from UnitsNet; here stand only the spellings of the trade.</summary>
internal static class UnitTable
{
    private static readonly FrozenDictionary<Dimension, UnitGroup> Groups = new Dictionary<Dimension, UnitGroup>
    {
        [Dimension.Length] = new("length", "5.6 mm",
        [
            Of("mm", LengthUnit.Millimeter, LengthUnit.Meter, "millimeter", "millimeters", "millimetre", "millimetres"),
            Of("cm", LengthUnit.Centimeter, LengthUnit.Meter, "centimeter", "centimeters", "centimetre", "centimetres"),
            Of("m", LengthUnit.Meter, LengthUnit.Meter, "meter", "meters", "metre", "metres"),
            Of("in", LengthUnit.Inch, LengthUnit.Meter, "\"", "”", "″", "''", "in.", "inch", "inches"),
            Of("ft", LengthUnit.Foot, LengthUnit.Meter, "foot", "feet"),
        ]),
        [Dimension.Mass] = new("mass", "0.25 g",
        [
            Of("g", MassUnit.Gram, MassUnit.Kilogram, "gram", "grams"),
            Of("mg", MassUnit.Milligram, MassUnit.Kilogram, "milligram", "milligrams"),
            Of("gr", MassUnit.Grain, MassUnit.Kilogram, "grain", "grains"),
            Of("oz", MassUnit.Ounce, MassUnit.Kilogram, "ounce", "ounces"),
            Of("kg", MassUnit.Kilogram, MassUnit.Kilogram, "kilogram", "kilograms"),
        ]),
        [Dimension.Angle] = new("angle", "25°",
        [
            Of("°", AngleUnit.Degree, AngleUnit.Radian, "º", "˚", "deg", "deg.", "degree", "degrees"),
            Of("rad", AngleUnit.Radian, AngleUnit.Radian, "radian", "radians"),
        ]),
        [Dimension.Speed] = new("speed", "0.4 m/s",
        [
            Of("m/s", SpeedUnit.MeterPerSecond, SpeedUnit.MeterPerSecond),
            Of("cm/s", SpeedUnit.CentimeterPerSecond, SpeedUnit.MeterPerSecond),
            Of("mm/s", SpeedUnit.MillimeterPerSecond, SpeedUnit.MeterPerSecond),
            Of("ft/s", SpeedUnit.FootPerSecond, SpeedUnit.MeterPerSecond),
            Of("in/s", SpeedUnit.InchPerSecond, SpeedUnit.MeterPerSecond),
        ]),
        [Dimension.Temperature] = new("temperature", "12 °C",
        [
            Of("°C", TemperatureUnit.DegreeCelsius, TemperatureUnit.DegreeCelsius, "ºC", "˚C", "C", "degC", "deg C", "℃"),
            Of("°F", TemperatureUnit.DegreeFahrenheit, TemperatureUnit.DegreeCelsius, "ºF", "˚F", "F", "degF", "deg F", "℉"),
        ]),
        [Dimension.Density] = new("density", "8500 kg/m³",
        [
            Of("kg/m³", DensityUnit.KilogramPerCubicMeter, DensityUnit.KilogramPerCubicMeter, "kg/m3", "kg/m^3"),
            Of("g/cm³", DensityUnit.GramPerCubicCentimeter, DensityUnit.KilogramPerCubicMeter, "g/cm3", "g/cm^3", "g/ml", "g/cc"),
            Of("lb/ft³", DensityUnit.PoundPerCubicFoot, DensityUnit.KilogramPerCubicMeter, "lb/ft3", "lb/ft^3", "lb/cu ft"),
        ]),
        [Dimension.Volume] = new("volume", "60 mm³",
        [
            Of("mm³", VolumeUnit.CubicMillimeter, VolumeUnit.CubicMeter, "mm3", "mm^3"),
            Of("cm³", VolumeUnit.CubicCentimeter, VolumeUnit.CubicMeter, "cm3", "cm^3", "cc", "ml"),
            Of("in³", VolumeUnit.CubicInch, VolumeUnit.CubicMeter, "in3", "in^3"),
        ]),
        [Dimension.Force] = new("force", "12 lb",
        [
            Of("lb", ForceUnit.PoundForce, ForceUnit.Newton, "lbs", "lbf", "pound", "pounds"),
            Of("kg", ForceUnit.KilogramForce, ForceUnit.Newton, "kgf", "kilogram", "kilograms"),
            Of("N", ForceUnit.Newton, ForceUnit.Newton, "newton", "newtons"),
            Of("mN", ForceUnit.Millinewton, ForceUnit.Newton, "millinewton", "millinewtons"),
            // The weight of a grain: a seven-thousandth of a pound's.
            Linear("gr", Factor(ForceUnit.PoundForce, ForceUnit.Newton) * Factor(MassUnit.Grain, MassUnit.Pound), "grain", "grains"),
        ]),
        [Dimension.Moment] = new("mass moment", "0.9 g·mm",
        [
            Linear("g·mm", Factor(MassUnit.Gram, MassUnit.Kilogram) * Factor(LengthUnit.Millimeter, LengthUnit.Meter), "g mm", "g*mm", "gmm", "g.mm", "g-mm"),
            Linear("gr·in", Factor(MassUnit.Grain, MassUnit.Kilogram) * Factor(LengthUnit.Inch, LengthUnit.Meter), "gr in", "gr*in", "gr.in"),
        ]),
        [Dimension.MassPerLength] = new("mass per length", "2 mg/mm",
        [
            Of("mg/mm", LinearDensityUnit.MilligramPerMillimeter, LinearDensityUnit.KilogramPerMeter),
            Linear("gr/in", Factor(MassUnit.Grain, MassUnit.Kilogram) / Factor(LengthUnit.Inch, LengthUnit.Meter)),
        ]),
        [Dimension.Salinity] = new("salinity", "35 g/kg",
        [
            Of("g/kg", MassFractionUnit.GramPerKilogram, MassFractionUnit.DecimalFraction, "ppt", "‰"),
        ]),
        [Dimension.Share] = new("share", "90 %",
        [
            Of("%", RatioUnit.Percent, RatioUnit.DecimalFraction, "percent", "per cent"),
        ]),
        [Dimension.Duration] = new("time", "5 s",
        [
            Of("s", DurationUnit.Second, DurationUnit.Second, "sec", "second", "seconds"),
            Of("min", DurationUnit.Minute, DurationUnit.Second, "minute", "minutes"),
        ]),
    }.ToFrozenDictionary();

    public static UnitGroup For(Dimension dimension) => Groups[dimension];

    /// <summary>The dimension a unit belongs to, for telling a tyer that grams are no length.</summary>
    public static Dimension? DimensionOf(string spelling)
    {
        foreach (Dimension dimension in Enum.GetValues<Dimension>())
        {
            // "mn" is a slip of the pen for mm, hardly a force: short ones count only as they are written.
            if (For(dimension).Find(spelling) is { } unit && (spelling.Length > 2 || unit.Spellings.Prepend(unit.Symbol).Contains(spelling))) return dimension;
        }

        return null;
    }

    private static double Factor(Enum from, Enum si) => UnitConverter.Convert(1, from, si);

    private static Unit Of(string symbol, Enum unit, Enum si, params string[] spellings) =>
        new(symbol, spellings, value => UnitConverter.Convert(value, unit, si), value => UnitConverter.Convert(value, si, unit));

    private static Unit Linear(string symbol, double factor, params string[] spellings) =>
        new(symbol, spellings, value => value * factor, value => value / factor);
}
