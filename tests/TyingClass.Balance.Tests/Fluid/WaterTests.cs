using TyingClass.Balance.Fluid;
using Xunit;

namespace TyingClass.Balance.Tests.Fluid;

public sealed class WaterTests
{
    // Computed from the named formula, printed to four decimals.
    [Theory]
    [InlineData(5, 999.9638)]
    [InlineData(10, 999.6996)]
    [InlineData(15, 999.0996)]
    [InlineData(20, 998.2041)]
    [InlineData(25, 997.0449)]
    [InlineData(30, 995.6473)]
    public void DensityKell_FreshWater_IsKells1975(double temperatureC, double expectedKgM3) =>
        Assert.Equal(expectedKgM3, Published.DensityKellKgM3(temperatureC), 6e-5);

    // Computed from IAPWS SR6-08, 0.1 MPa. EOS-80's fresh-water end is the standard mean ocean water of Bigg and Kell on the scale of 1968: the two agree to
    // some parts per million.
    [Theory]
    [InlineData(5, 999.9660)]
    [InlineData(10, 999.7019)]
    [InlineData(15, 999.1020)]
    [InlineData(20, 998.2065)]
    [InlineData(25, 997.0470)]
    [InlineData(30, 995.6488)]
    public void At_FreshWater_HasTheDensityOfIapws(double temperatureC, double expectedKgM3) =>
        Assert.Equal(expectedKgM3, WaterProperties.At(temperatureC, 0).DensityKgM3, 5e-3);

    // Published: IAPWS SR6-08 table 8, 298.15 K, 997.047013 kg/m³.
    [Fact]
    public void At_25C_HasThePublishedDensity() =>
        Assert.Equal(997.047013, WaterProperties.At(25, 0).DensityKgM3, 2e-3);

    // Computed from IAPWS SR6-08; 298.15 K published in its table 8: 889.996774.
    [Theory]
    [InlineData(5, 1518.20, 6e-3)]
    [InlineData(10, 1305.90, 6e-3)]
    [InlineData(15, 1137.55, 6e-3)]
    [InlineData(20, 1001.57, 6e-3)]
    [InlineData(25, 889.996774, 6e-7)]
    [InlineData(30, 797.21, 6e-3)]
    public void ViscosityIapws_FreshWater_IsThePublishedOne(double temperatureC, double expectedMicroPaS, double tolerance) =>
        Assert.Equal(expectedMicroPaS, 1e6 * Published.ViscosityIapwsPaS(temperatureC), tolerance);

    // Computed from Sharqawy, Lienhard and Zubair 2010, salinity 0 and 35 g/kg, printed to two decimals.
    [Theory]
    [InlineData(5, 1518.10, 1619.30)]
    [InlineData(10, 1306.01, 1396.77)]
    [InlineData(15, 1137.74, 1219.87)]
    [InlineData(20, 1001.76, 1076.63)]
    [InlineData(25, 890.15, 958.83)]
    [InlineData(30, 797.32, 860.65)]
    public void ViscositySharqawy_FreshAndSea_IsThePublishedCorrelation(double temperatureC, double freshMicroPaS, double seaMicroPaS)
    {
        Assert.Equal(freshMicroPaS, 1e6 * WaterProperties.ViscositySharqawyPaS(temperatureC, 0), 6e-3);
        Assert.Equal(seaMicroPaS, 1e6 * WaterProperties.ViscositySharqawyPaS(temperatureC, 0.035), 6e-3);
        Assert.Equal(seaMicroPaS, 1e6 * WaterProperties.At(temperatureC, 0.035).ViscosityPaS, 6e-3);
    }

    // Computed from EOS-80, salinity 35, temperatures on the scale of 1968, printed to five decimals.
    [Theory]
    [InlineData(5, 1027.67547)]
    [InlineData(10, 1026.95241)]
    [InlineData(15, 1025.97275)]
    [InlineData(20, 1024.76300)]
    [InlineData(25, 1023.34306)]
    [InlineData(30, 1021.72864)]
    public void DensityEos80_SeaWater_IsTheEquationOfState(double temperatureC68, double expectedKgM3) =>
        Assert.Equal(expectedKgM3, WaterProperties.DensityEos80KgM3(temperatureC68, 35), 6e-6);

    // Published: UNESCO Technical Papers in Marine Science 44 (1983), p. 22.
    [Theory]
    [InlineData(0, 0, 999.842594, 6e-7)]
    [InlineData(0, 30, 995.65113374, 6e-9)]
    [InlineData(35, 0, 1028.10633141, 6e-9)]
    [InlineData(35, 30, 1021.72863949, 6e-9)]
    public void DensityEos80_CheckValues_AreThePublishedOnes(double salinity, double temperatureC68, double expectedKgM3, double tolerance) =>
        Assert.Equal(expectedKgM3, WaterProperties.DensityEos80KgM3(temperatureC68, salinity), tolerance);

    [Theory]
    [InlineData(-0.1, 0)]
    [InlineData(40.1, 0)]
    [InlineData(double.NaN, 0)]
    [InlineData(10, -0.001)]
    [InlineData(10, 0.043)]
    [InlineData(10, double.NaN)]
    public void At_OutOfRange_Throws(double temperatureC, double salinity) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => WaterProperties.At(temperatureC, salinity));
}
