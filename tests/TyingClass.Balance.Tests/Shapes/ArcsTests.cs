using TyingClass.Balance.Shapes;
using Xunit;

namespace TyingClass.Balance.Tests.Shapes;

public sealed class ArcsTests
{
    // Published tables of centroids (any handbook of statics): semicircular arc 2r/π, quarter arc 2r/π along each edge,
    // so 2√2 r/π = 0.90032 r along its axis; a whole ring is centered.
    [Theory]
    [InlineData(Math.PI / 2, 0.63662)]
    [InlineData(Math.PI / 4, 0.90032)]
    [InlineData(Math.PI, 0)]
    [InlineData(0, 1)]
    public void CentroidM_UnitArc_MatchesTables(double halfAngleRad, double expected) =>
        Assert.Equal(expected, Arcs.CentroidM(1, halfAngleRad), 5e-6);

    [Fact]
    public void CentroidM_SemicircleOfRadiusFour_Is2RadiiOverPi() => Assert.Equal(2.54648, Arcs.CentroidM(4, Math.PI / 2), 5e-6);

    [Fact]
    public void CentroidM_TinyAngle_JoinsItsSeriesSmoothly() =>
        Assert.Equal(Arcs.CentroidM(1, 1.0001e-4), Arcs.CentroidM(1, 0.9999e-4), 1e-12);

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-0.1)]
    [InlineData(3.2)]
    public void CentroidM_AngleOffRange_SaysWhich(double halfAngleRad) =>
        Assert.Equal("halfAngleRad", Assert.Throws<ArgumentOutOfRangeException>(() => Arcs.CentroidM(1, halfAngleRad)).ParamName);
}
