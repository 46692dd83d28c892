using TyingClass.Balance.Fluid;
using Xunit;

namespace TyingClass.Balance.Tests.SideForce;

public sealed class LambInertiaTests
{
    // Lamb, ARC R&M 623 (1918), table; k₁ read from a scan of the report, parts of k₂ from memory. Printed to three places, slenderness to two or three. At
    // 2.00 the
    // table's k₂ is 0.002 under its own closed form and under the integral below.
    [Theory]
    [InlineData(1, 0.5, 0.5)]
    [InlineData(1.50, 0.305, 0.621)]
    [InlineData(2.00, 0.209, 0.702, 0.0025)]
    [InlineData(2.51, 0.156, 0.763)]
    [InlineData(2.99, 0.122, 0.803)]
    [InlineData(3.99, 0.082, 0.860)]
    [InlineData(4.99, 0.059, 0.895)]
    [InlineData(6.01, 0.045, 0.918)]
    [InlineData(6.97, 0.036, 0.933)]
    [InlineData(8.01, 0.029, 0.945)]
    [InlineData(9.02, 0.024, 0.954)]
    [InlineData(9.97, 0.021, 0.960)]
    public void Of_TabulatedEllipsoid_IsLambsTable(double slenderness, double endOn, double broadside, double within = 0.0016)
    {
        (double k1, double k2) = LambInertia.Of(slenderness);
        Assert.Equal(endOn, k1, 0.0016);
        Assert.Equal(broadside, k2, within);
    }

    [Theory]
    [InlineData(0.02)]
    [InlineData(0.3)]
    [InlineData(0.9)]
    [InlineData(0.9995)]
    [InlineData(1.0008)]
    [InlineData(1.002)]
    [InlineData(1.2)]
    [InlineData(3)]
    [InlineData(40)]
    public void Of_AnyEllipsoid_IsTheIntegralThatDefinesIt(double slenderness)
    {
        (double k1, double k2) = LambInertia.Of(slenderness);
        (double endOn, double broadside) = Ellipsoid.Inertia(slenderness);
        Assert.Equal(endOn, k1, 2e-6 * (1 + endOn));
        Assert.Equal(broadside, k2, 2e-6);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void Of_NoSlenderness_IsRefused(double slenderness) => Assert.Throws<ArgumentOutOfRangeException>(() => LambInertia.Of(slenderness));

    // Added mass of a thin disc broadside: 8ρr³/3 (Lamb; Newman, Marine Hydrodynamics; from memory). A lens of the same radius tends to it.
    [Fact]
    public void Of_ThinLens_CarriesTheWaterOfADisc()
    {
        const double ratio = 1e-3;
        double volumeOverRadius3 = 4.0 / 3 * Math.PI * ratio;
        Assert.Equal(8.0 / 3, volumeOverRadius3 * LambInertia.Of(ratio).EndOn, 0.01);
    }

    [Fact]
    public void SideShare_Ball_IsNone() => Assert.Equal(0, LambInertia.SideShare(1), 1e-12);
}
