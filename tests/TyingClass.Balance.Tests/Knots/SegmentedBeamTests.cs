using Xunit;

namespace TyingClass.Balance.Tests.Knots;

public sealed class SegmentedBeamTests
{
    // Cantilever with a transverse tip load: Bisshopp and Drucker 1945, Mattiasson 1981. Deflection, shortening and slope at the tip, five decimals.
    [Theory]
    [InlineData(0.5, 0.16214, 0.01592, 0.24453)]
    [InlineData(1, 0.30172, 0.05643, 0.46135)]
    [InlineData(2, 0.49346, 0.16064, 0.78175)]
    [InlineData(3, 0.60325, 0.25442, 0.98602)]
    [InlineData(5, 0.71379, 0.38763, 1.21537)]
    [InlineData(10, 0.81061, 0.55500, 1.43029)]
    public void Solve_Cantilever_IsThePublishedElastica(double load, double deflection, double shortening, double slopeRad)
    {
        // Two meshes and Richardson's extrapolation: the segments err by the square of their length.
        (double W, double U, double Slope) coarse = Bend(100, load), fine = Bend(200, load);
        Assert.Equal(deflection, (4 * fine.W - coarse.W) / 3, 1e-5);
        Assert.Equal(shortening, (4 * fine.U - coarse.U) / 3, 1e-5);
        Assert.Equal(slopeRad, (4 * fine.Slope - coarse.Slope) / 3, 1e-5);
    }

    private static (double W, double U, double Slope) Bend(int segments, double load)
    {
        SegmentedBeam beam = new([.. Enumerable.Repeat(1.0 / segments, segments)], 1);
        for (int step = 1; step <= 4; step++) beam.Solve(0, 0, load * step / 4);
        return (beam.Tip.Y, 1 - beam.Tip.X, beam.TipAngle);
    }
}
