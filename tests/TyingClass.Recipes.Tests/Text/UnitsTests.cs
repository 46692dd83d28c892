using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Recipes.Tests.Text;

public sealed class UnitsTests
{
    // Exact by definition: international yard and pound agreement of 1959 (1 in = 25.4 mm, 1 lb = 0.45359237 kg, 1 oz = 1/16 lb,
    // 1 gr = 1/7000 lb); standard gravity 9.80665 m/s², 3rd CGPM 1901. Rounded to 12 significant digits as the format asks.
    [Theory]
    [InlineData("5.6 mm", Dimension.Length, 0.0056)]
    [InlineData("1.2cm", Dimension.Length, 0.012)]
    [InlineData("5/64 in", Dimension.Length, 0.001984375)]
    [InlineData("5/64\"", Dimension.Length, 0.001984375)]
    [InlineData("1 1/4 in", Dimension.Length, 0.03175)]
    [InlineData("1-1/4 inches", Dimension.Length, 0.03175)]
    [InlineData("1¼ in", Dimension.Length, 0.03175)]
    [InlineData(".025 in", Dimension.Length, 0.000635)]
    [InlineData("2 ft", Dimension.Length, 0.6096)]
    [InlineData("-0.3 mm", Dimension.Length, -0.0003)]
    [InlineData("−0.3 mm", Dimension.Length, -0.0003)]
    [InlineData("1e1 mm", Dimension.Length, 0.01)]
    [InlineData("0.25 g", Dimension.Mass, 0.00025)]
    [InlineData("250 mg", Dimension.Mass, 0.00025)]
    [InlineData("2 gr", Dimension.Mass, 0.00012959782)]
    [InlineData("1/36 oz", Dimension.Mass, 0.000787486753472)]
    [InlineData("1 / 36 oz", Dimension.Mass, 0.000787486753472)]
    [InlineData("180°", Dimension.Angle, 3.14159265359)]
    [InlineData("180 deg", Dimension.Angle, 3.14159265359)]
    [InlineData("40 cm/s", Dimension.Speed, 0.4)]
    [InlineData("1 ft/s", Dimension.Speed, 0.3048)]
    [InlineData("53.6 °F", Dimension.Temperature, 12)]
    [InlineData("-3 °C", Dimension.Temperature, -3)]
    [InlineData("8.5 g/cm3", Dimension.Density, 8500)]
    [InlineData("8500 kg/m³", Dimension.Density, 8500)]
    [InlineData("60 mm³", Dimension.Volume, 6e-8)]
    [InlineData("12 lb", Dimension.Force, 53.3786593831)]
    [InlineData("1 kg", Dimension.Force, 9.80665)]
    [InlineData("0.9 g·mm", Dimension.Moment, 9e-7)]
    [InlineData("30 g/kg", Dimension.Salinity, 0.03)]
    [InlineData("90 %", Dimension.Share, 0.9)]
    [InlineData("5 s", Dimension.Duration, 5)]
    public void TryParse_NumberWithUnit_GivesSi(string text, Dimension dimension, double expectedSi)
    {
        Assert.True(Units.TryParse(text, dimension, out double si, out string? error), error);
        Assert.Equal(expectedSi, si);
    }

    [Theory]
    [InlineData("5/64 in", "1.984375 mm", Dimension.Length)]
    [InlineData("1/2 oz", "14.1747615625 g", Dimension.Mass)]
    [InlineData("1 ft/s", "30.48 cm/s", Dimension.Speed)]
    [InlineData("54.5 °F", "12.5 °C", Dimension.Temperature)]
    [InlineData("10 kg", "98.0665 N", Dimension.Force)]
    public void TryParse_SameQuantityInTwoUnits_GivesSameNumber(string one, string other, Dimension dimension)
    {
        Assert.True(Units.TryParse(one, dimension, out double a, out _));
        Assert.True(Units.TryParse(other, dimension, out double b, out _));
        Assert.Equal(a, b);
    }

    [Theory]
    [InlineData(null, Dimension.Length, "Nothing is written here. Write a length like 5.6 mm.")]
    [InlineData("  ", Dimension.Angle, "Nothing is written here. Write an angle like 25°.")]
    [InlineData("8.5", Dimension.Length, "“8.5” has no unit. Write mm, cm, m, in or ft after the number, for example 8.5 mm.")]
    [InlineData("8.5 g", Dimension.Length, "“g” is a unit of mass, but a length is needed. Write mm, cm, m, in or ft after the number, for example 5.6 mm.")]
    [InlineData("8.5 parsec", Dimension.Length, "“parsec” is not a unit of length known here. Write mm, cm, m, in or ft after the number, for example 5.6 mm.")]
    [InlineData("mm", Dimension.Length, "“mm” does not begin with a number that can be read. Write it like 5.6 mm.")]
    [InlineData("1.2.3 mm", Dimension.Length, "“1.2.3 mm” does not begin with a number that can be read. Write it like 5.6 mm.")]
    [InlineData("1/0 in", Dimension.Length, "“1/0 in” divides by zero. Write it like 5.6 mm.")]
    [InlineData("8,5 mm", Dimension.Length, "“8,5 mm” has a comma in its number. Write the decimal with a point: 8.5 mm.")]
    [InlineData("8,500 kg/m³", Dimension.Density,
        "“8,500 kg/m³” has a comma in its number. Use a point for decimals (8.5) and nothing between thousands (8500).")]
    [InlineData("1e999 mm", Dimension.Length, "“1e999 mm” is not a finite number. Write a plain number like 5.6 mm.")]
    [InlineData("-inf mm", Dimension.Length, "“-inf mm” is not a finite number. Write a plain number like 5.6 mm.")]
    [InlineData("NaN", Dimension.Length, "“NaN” is not a finite number. Write a plain number like 5.6 mm.")]
    public void TryParse_Mistake_SaysWhatToWrite(string? text, Dimension dimension, string expected)
    {
        Assert.False(Units.TryParse(text, dimension, out double si, out string? error));
        Assert.Equal(expected, error);
        Assert.Equal(0, si);
    }

    [Fact]
    public void TryParse_LongDigits_IsRefusedQuickly()
    {
        Assert.False(Units.TryParse(new string('9', 60_000) + " mm", Dimension.Length, out _, out string? error));
        Assert.Equal($"“{new string('9', 40)}…” is too long for a number. Write it like 5.6 mm.", error);
    }

    [Theory]
    [InlineData(0.003175, Dimension.Length, "3.18 mm")]
    [InlineData(1.5, Dimension.Length, "1.5 m")]
    [InlineData(0.00025, Dimension.Mass, "0.25 g")]
    [InlineData(-0.0004, Dimension.Length, "-0.4 mm")]
    [InlineData(0.436332312999, Dimension.Angle, "25°")]
    [InlineData(0.92, Dimension.Share, "92 %")]
    [InlineData(8500, Dimension.Density, "8500 kg/m³")]
    [InlineData(-9e-7, Dimension.Moment, "-0.9 g·mm")]
    [InlineData(0, Dimension.Length, "0 mm")]
    public void Write_Value_IsNumberAndUnit(double si, Dimension dimension, string expected) => Assert.Equal(expected, Units.Write(si, dimension));
}
