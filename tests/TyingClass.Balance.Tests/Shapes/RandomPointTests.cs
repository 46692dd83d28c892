using TyingClass.Balance.Shapes;
using Xunit;

namespace TyingClass.Balance.Tests.Shapes;

/// <summary>Volume, centroid and spread of a solid against points thrown at random into a box round it (seeded; a point counts when it lies inside).</summary>
public sealed class RandomPointTests
{
    private const int Throws = 400_000;

    [Theory]
    [InlineData(3, 1)]
    [InlineData(5.6, 2.8)]
    public void BoredSphere_RandomPoints_Agree(double d, double b)
    {
        Tally tally = Throw(d, -d / 2, d / 2, (x, r) => x * x + r * r <= d * d / 4 && r >= b / 2);

        tally.AssertAgrees(BoredSphere.VolumeM3(d, b), 0, BoredSphere.SpreadOf(d, b));
    }

    [Theory]
    [InlineData(2.8, 5.6, 5, 2)]
    [InlineData(4, 1, 2, 0.5)]
    public void BoredFrustum_RandomPoints_Agree(double front, double rear, double length, double bore)
    {
        BoredFrustum solid = new(front, rear, length, bore);

        Tally tally = Throw(Math.Max(front, rear), 0, length, (x, r) => r >= bore / 2 && r <= (front + (rear - front) * x / length) / 2);

        tally.AssertAgrees(solid.VolumeM3, solid.CentroidM, solid.SpreadM2);
    }

    [Fact]
    public void Torus_RandomPoints_Agree()
    {
        Tally tally = Throw(8, -1, 1, (x, r) => x * x + (r - 3) * (r - 3) <= 1);

        tally.AssertAgrees(2 * Math.PI * Math.PI * 3, 0, Torus.SpreadOf(3, 1));
    }

    private static Tally Throw(double width, double from, double to, Func<double, double, bool> isInside)
    {
        Random random = new(20240611);
        Tally tally = new(width * width * (to - from) / Throws);
        for (int i = 0; i < Throws; i++)
        {
            double x = from + (to - from) * random.NextDouble(), y = width * (random.NextDouble() - 0.5), z = width * (random.NextDouble() - 0.5);
            if (isInside(x, Math.Sqrt(y * y + z * z))) tally.Add(x, y, z);
        }

        return tally;
    }

    private sealed class Tally(double volumePerPoint)
    {
        private double _n, _x, _xx, _yyzz;

        public void Add(double x, double y, double z)
        {
            _n++;
            _x += x;
            _xx += x * x;
            _yyzz += y * y + z * z;
        }

        // Throwing 400 000 points leaves about 0.3 % of chance in a volume; five times that is allowed.
        public void AssertAgrees(double volume, double centroid, Spread spread)
        {
            double mean = _x / _n;
            Assert.Equal(_n * volumePerPoint, volume, 0.015 * volume);
            Assert.Equal(mean, centroid, 0.02 * Math.Sqrt(spread.AlongM2));
            Assert.Equal(_xx / _n - mean * mean, spread.AlongM2, 0.015 * spread.AlongM2);
            Assert.Equal(_yyzz / _n / 2, spread.AcrossM2, 0.015 * spread.AcrossM2);
        }
    }
}
