using TyingClass.Recipes.Text;
using TyingClass.Storage.Attempts;
using TyingClass.Web.Figures;
using Xunit;

namespace TyingClass.Web.Tests.Figures;

public sealed class FigureTextTests
{
    // 25.4 mm, 0.3048 m: international yard and pound agreement, 1959. 1 grain = 64.79891 mg, the same.
    [Theory]
    [InlineData("keelHeightMm", 12.7, UnitSystem.Imperial, "0.500 in")]
    [InlineData("keelHeightMm", -0.94, UnitSystem.Metric, "−0.9 mm")]
    [InlineData("keelHeightMm", -0.04, UnitSystem.Metric, "0.0 mm")]
    [InlineData("massG", 0.6479891, UnitSystem.Imperial, "10.0 grains")]
    [InlineData("massG", 0.55, UnitSystem.Metric, "0.550 g")]
    [InlineData("sinkRateMS", 0.3048, UnitSystem.Imperial, "1.00 ft/s")]
    [InlineData("depthAfter5sM", 0.9144, UnitSystem.Imperial, "3.0 ft")]
    [InlineData("pitchDeg", -74.4, UnitSystem.Metric, "−74°")]
    [InlineData("asIntendedShare", 0.934, UnitSystem.Metric, "93 %")]
    public void Of_Figure_SpeaksTheReadersUnits(string name, double value, UnitSystem units, string said) =>
        Assert.Equal(said, Assert.Single(FigureText.Of([new KeptFigure(name, value)], units)).Value);

    [Fact]
    public void Of_FigureOfAnOlderEngine_IsLeftOut() =>
        Assert.Empty(FigureText.Of([new KeptFigure("somethingElseMm", 1)], UnitSystem.Metric));
}
