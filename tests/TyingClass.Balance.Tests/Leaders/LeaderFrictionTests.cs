using TyingClass.Balance.Fluid;
using Xunit;

namespace TyingClass.Balance.Tests.Leaders;

public sealed class LeaderFrictionTests
{
    private static readonly Water Fresh = new(998.2041, 1001.57e-6);

    [Theory]
    [InlineData(0, 1, 0.3)]
    [InlineData(2e-4, 0, 0.3)]
    [InlineData(2e-4, 1, 0)]
    public void ForceN_NoLeaderOrNoMotion_IsNone(double diameterM, double lengthM, double speedMS) =>
        Assert.Equal(0, LeaderFriction.ForceN(Fresh, diameterM, lengthM, speedMS));

    // A boundary layer thin against the wire is a flat plate's: a linear profile in the momentum integral gives 1.155/√Re, Blasius 1.328/√Re (Schlichting,
    // Boundary-Layer Theory, ch. 10). A thick rod, a short way.
    [Fact]
    public void ForceN_ThinLayer_IsAFlatPlates()
    {
        const double diameter = 0.05, length = 0.01, speed = 1;
        double reynolds = Fresh.DensityKgM3 * speed * length / Fresh.ViscosityPaS, wetted = Math.PI * diameter * length;
        double coefficient = LeaderFriction.ForceN(Fresh, diameter, length, speed) / (0.5 * Fresh.DensityKgM3 * speed * speed * wetted);
        Assert.Equal(1.1547 / Math.Sqrt(reynolds), coefficient, 0.01 / Math.Sqrt(reynolds));
        Assert.InRange(coefficient * Math.Sqrt(reynolds) / 1.328, 0.85, 1);
    }

    // Far along, friction per length → 4πµU/ln(4νx/(Ua²)) (Glauert and Lighthill 1955, leading term; from memory). The next terms are of the order of 1/ln.
    [Fact]
    public void ForceN_ThickLayer_FallsOffAsTheLogarithm()
    {
        const double diameter = 1e-5, speed = 0.05, at = 50;
        double local = (LeaderFriction.ForceN(Fresh, diameter, 1.001 * at, speed) - LeaderFriction.ForceN(Fresh, diameter, 0.999 * at, speed)) / (0.002 * at);
        double logarithm = Math.Log(4 * Fresh.ViscosityPaS / Fresh.DensityKgM3 * at / (speed * diameter * diameter / 4));
        Assert.Equal(4 * Math.PI * Fresh.ViscosityPaS * speed / logarithm, local, 0.12 * local);
    }

    // Where the series takes over from the closed form nothing jumps: the force goes on as the square root of X does.
    [Fact]
    public void SolvedMomentumAt_WhereTheSeriesTakesOver_DoesNotJump()
    {
        for (double x = 1e-4; x < 5e-4; x *= 1.001)
        {
            double ratio = LeaderFriction.SolvedMomentumAt(1.001 * x) / LeaderFriction.SolvedMomentumAt(x);
            Assert.Equal(Math.Sqrt(1.001), ratio, 3e-5);
        }
    }

    // The table against the equations it is made of, within it, at its ends and beyond.
    [Fact]
    public void MomentumAt_BetweenTheEntriesOfItsTable_IsAsSolved()
    {
        for (double lnX = -14; lnX < 24; lnX += 0.0137)
        {
            double x = Math.Exp(lnX), solved = LeaderFriction.SolvedMomentumAt(x);
            Assert.Equal(solved, LeaderFriction.MomentumAt(x), 1e-7 * solved);
        }
    }

    // Tow tests of thin cylinders at speed are turbulent and give two to three times a flat plate's (ASME FEDSM2002-31298, abstract); so thin a wire,
    // laminar, more
    // than a plate's too.
    [Theory]
    [InlineData(0.15e-3, 0.2)]
    [InlineData(0.4e-3, 0.6)]
    public void ForceN_LeadersOfFlies_FeelMoreThanAFlatPlate(double diameterM, double speedMS)
    {
        double plate = 0.5 * Fresh.DensityKgM3 * speedMS * speedMS * Math.PI * diameterM * 1.328 / Math.Sqrt(Fresh.DensityKgM3 * speedMS / Fresh.ViscosityPaS);
        Assert.InRange(LeaderFriction.ForceN(Fresh, diameterM, 1, speedMS) / plate, 2, 15);
    }
}
