using MathNet.Numerics;
using TyingClass.Balance.Fluid;
using Xunit;

namespace TyingClass.Balance.Tests.Leaders;

/// <summary>The leader's friction beside an integral worked out step by step, which takes seconds.</summary>
public sealed class SlidingWireTests
{
    private static readonly Water Fresh = new(998.2041, 1001.57e-6);

    // Water that a wire has slid through for a time t: the exact problem without the water's own drift, a cylinder set moving along its axis (Carslaw and
    // Jaeger, Conduction of Heat in Solids, 13.5; Batchelor 1954): 2πµU (4/π²) ∫ e^(-T u²) / (u (J₀² + Y₀²)) du, T = νt/a². Taken with t = x/U the two agree
    // within a fifth over what a leader does; the profile of the integral method is a little low where the layer is about as thick as the wire.
    [Theory]
    [InlineData(0.15e-3, 0.2)]
    [InlineData(0.25e-3, 0.3)]
    [InlineData(0.4e-3, 0.6)]
    public void ForceN_LeadersOfFlies_AgreeWithAWireSetSliding(double diameterM, double speedMS)
    {
        foreach (double at in new[] { 0.5, 1.0, 2 })
        {
            double more = LeaderFriction.ForceN(Fresh, diameterM, 1.001 * at, speedMS), less = LeaderFriction.ForceN(Fresh, diameterM, 0.999 * at, speedMS);
            double local = (more - less) / (0.002 * at);
            double sliding = Sliding(Fresh.ViscosityPaS / Fresh.DensityKgM3 * at / speedMS / (diameterM * diameterM / 4));
            Assert.Equal(2 * Math.PI * Fresh.ViscosityPaS * speedMS * sliding, local, 0.2 * local);
        }
    }

    // u = e^y, midpoint rule.
    private static double Sliding(double time)
    {
        const double step = 1e-3;
        double sum = 0;
        for (double y = -200; y < 3; y += step)
        {
            double u = Math.Exp(y), j = SpecialFunctions.BesselJ(0, u), k = SpecialFunctions.BesselY(0, u);
            sum += Math.Exp(-time * u * u) / (j * j + k * k) * step;
        }

        return 4 / (Math.PI * Math.PI) * sum;
    }
}
