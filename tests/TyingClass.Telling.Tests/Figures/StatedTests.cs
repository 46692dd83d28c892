using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;
using Xunit;

namespace TyingClass.Telling.Tests.Figures;

public sealed class StatedTests
{
    [Theory]
    [InlineData(0.0385e-3, Dimension.Length, UnitSystem.Metric, "0.04 mm")]
    [InlineData(0.655e-3, Dimension.Length, UnitSystem.Metric, "0.66 mm")]
    [InlineData(-2.616e-3, Dimension.Length, UnitSystem.Metric, "−2.62 mm")]
    [InlineData(-0.9e-3, Dimension.Length, UnitSystem.Imperial, "−0.035 in")]
    [InlineData(12.34e-3, Dimension.Length, UnitSystem.Metric, "12.3 mm")]
    [InlineData(0.004e-3, Dimension.Length, UnitSystem.Metric, "0 mm")]
    [InlineData(-0.004e-3, Dimension.Length, UnitSystem.Metric, "0 mm")]
    [InlineData(1.5, Dimension.Length, UnitSystem.Imperial, "4.92 ft")]
    [InlineData(0.00726e-3, Dimension.Mass, UnitSystem.Metric, "0.007 g")]
    [InlineData(0.05e-3, Dimension.Mass, UnitSystem.Imperial, "0.772 gr")]
    [InlineData(0.9967, Dimension.Share, UnitSystem.Metric, "99.7 %")]
    [InlineData(8500, Dimension.Density, UnitSystem.Metric, "8500 kg/m³")]
    public void Say_Value_HasNoDigitFinerThanTheBench(double si, Dimension dimension, UnitSystem system, string expected) =>
        Assert.Equal(expected, Stated.Say(si, dimension, system));

    // 1 oz = 28.349523125 g: international yard and pound agreement, 1959.
    [Theory]
    [InlineData(28.349523125e-3 / 50, "1/50 oz")]
    [InlineData(28.349523125e-3 / 36, "1/36 oz")]
    [InlineData(28.349523125e-3 / 2.5, "0.4 oz")]
    [InlineData(28.349523125e-3 * 2, "2 oz")]
    public void SayWeightToBuy_Imperial_IsAFractionOfAnOunceWhereOneFits(double kg, string expected) =>
        Assert.Equal(expected, Stated.SayWeightToBuy(kg, UnitSystem.Imperial));

    [Fact]
    public void SayWeightToBuy_Metric_IsGrams() => Assert.Equal("0.567 g", Stated.SayWeightToBuy(28.349523125e-3 / 50, UnitSystem.Metric));
}
