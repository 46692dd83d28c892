using TyingClass.Balance.Shapes;
using Xunit;

namespace TyingClass.Balance.Tests.Shapes;

public sealed class EllipticArcTests
{
    // Perimeter 4 a E(m), m = 1 - b²/a² = 0.75, E(0.75) = 1.211056 (Abramowitz & Stegun, table 17.1; from memory): 4 · 2 · 1.211056 = 9.688448.
    [Fact]
    public void LengthM_WholeEllipseTwoByOne_MatchesCompleteEllipticIntegral() =>
        Assert.Equal(9.688448, new EllipticArc(2, 1, 0, 2 * Math.PI).LengthM, 2e-6);

    [Fact]
    public void Centroid_Circle_MatchesSemicircularArc()
    {
        EllipticArc arc = new(1, 1, -Math.PI / 2, Math.PI / 2);

        Assert.Equal(Math.PI, arc.LengthM, 1e-9);
        Assert.Equal(0.63662, arc.CentroidXM, 5e-6);
        Assert.Equal(0, arc.CentroidYM, 1e-12);
    }

    [Theory]
    [InlineData(2.8, 2)]
    [InlineData(1, 4)]
    [InlineData(4, 1)]
    public void LengthAndCentroid_AnyHalfEllipse_MatchFinePolyline(double a, double b)
    {
        EllipticArc arc = new(a, b, Math.PI / 2, -Math.PI / 2);
        const int n = 200_000;
        double length = 0, x = 0;
        for (int i = 0; i < n; i++)
        {
            double t0 = Math.PI / 2 - Math.PI * i / n, t1 = Math.PI / 2 - Math.PI * (i + 1) / n;
            double x0 = a * Math.Cos(t0), x1 = a * Math.Cos(t1);
            double step = Math.Sqrt(Math.Pow(x1 - x0, 2) + Math.Pow(b * (Math.Sin(t1) - Math.Sin(t0)), 2));
            length += step;
            x += step * (x0 + x1) / 2;
        }

        Assert.Equal(length, arc.LengthM, 1e-6 * length);
        Assert.Equal(x / length, arc.CentroidXM, 1e-6 * a);
        Assert.Equal(0, arc.CentroidYM, 1e-9);
    }
}
