using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Sinking;
using Xunit;

namespace TyingClass.Balance.Tests.Fluid;

/// <summary>Lone balls sunk by the engine's own sinking code.</summary>
public sealed class TerminalVelocityTests
{
    // Fly scale, fresh water at 20 °C. Computed with Brown and Lawler (the engine's curve; printed to 1 mm/s) and with Clift, Grace and Weber.
    [Theory]
    [InlineData("tungsten", 3e-3, 19_300, 1.359, 1.358)]
    [InlineData("brass", 3e-3, 8_500, 0.863, 0.851)]
    [InlineData("glass", 2e-3, 2_500, 0.266, 0.269)]
    [InlineData("steel", 1e-3, 7_850, 0.380, 0.387)]
    public void Sink_Ball_FallsAtThePublishedRate(string what, double diameterM, double densityKgM3, double brownLawler, double cliftGraceWeber)
    {
        double rate = RateMS(diameterM, densityKgM3, new Water(998.2041, 1001.57e-6));
        Assert.True(Math.Abs(rate - brownLawler) < 6e-4, $"{what}: {rate}");
        Assert.Equal(cliftGraceWeber, rate, 0.02 * cliftGraceWeber);
    }

    // A textbook problem set for numerical packages (from memory): 1800 kg/m³, 0.208 mm, water of 994.6 kg/m³ and 8.931e-4 Pa·s, Cd = 24/Re (1 + 0.14 Re^0.7).
    // At its Re of 3.656 that correlation is 1.1 % under Brown and Lawler's, hence 1.5 % in the rate.
    [Fact]
    public void Sink_GrainOfTheProblemSet_FallsAtItsAnswer() =>
        Assert.Equal(0.0157816, RateMS(0.208e-3, 1800, new Water(994.6, 8.931e-4)), 0.015 * 0.0157816);

    // Rushton, Ward and Holdich 1996: 70 µm at 2600 kg/m³, read from the book's chart; 50 µm at 2800 by Stokes's law, which at Re 0.12 is 2-4 % fast.
    [Theory]
    [InlineData(70e-6, 2600, 0.00406, 0.05)]
    [InlineData(50e-6, 2800, 0.002453, 0.05)]
    public void Sink_FineParticle_FallsAtTheBooksRate(double diameterM, double densityKgM3, double expectedMS, double share) =>
        Assert.Equal(expectedMS, RateMS(diameterM, densityKgM3, new Water(1000, 1e-3)), share * expectedMS);

    private static double RateMS(double diameterM, double densityKgM3, Water water)
    {
        double volume = Math.PI / 6 * Math.Pow(diameterM, 3);
        BodyPart ball = new("ball")
        {
            Masses = [new(densityKgM3 * volume, default)],
            Solids = [new(volume, default)],
            Drag = [DragElement.Sphere(default, diameterM)],
        };
        SinkingFly fly = new(
            new FlyBody([ball], default, diameterM, Intent.PointDown),
            new FishingConditions(water, new Leader(0.2e-3, 2.5e9, 1140), Knot.Loop, 0.5),
            double.PositiveInfinity);
        Assert.True(fly.TryFindSteady(Vector3D.UnitZ, out SteadySink steady));
        return steady.RateMS;
    }
}
