using System.Runtime.Intrinsics;
using TyingClass.Balance.Fluid;
using Xunit;

namespace TyingClass.Balance.Tests.Fluid;

/// <summary>The sampled curves the moment function reads, against the curves themselves.</summary>
public sealed class DragTableTests
{
    public static TheoryData<string> Curves => ["cylinder", "sphere"];

    [Theory]
    [MemberData(nameof(Curves))]
    public void At_AnyReynolds_IsWithinAMillionthOfTheCurve(string name)
    {
        (DragTable table, Func<double, double> curve) = Pair(name);
        Random random = new(7);
        for (int i = 0; i < 50_000; i++)
        {
            double reynolds = Math.Pow(2, -12 + 34 * random.NextDouble());
            Assert.Equal(1, table.At(reynolds) / curve(reynolds), 1e-6);
        }
    }

    [Theory]
    [MemberData(nameof(Curves))]
    public void At_PieceEdges_NeitherJumpsNorKinks(string name)
    {
        (DragTable table, _) = Pair(name);
        for (int octave = -10; octave <= 20; octave++)
        {
            double edge = Math.Pow(2, octave), h = 1e-6 * edge;
            double below = table.At(edge - h), at = table.At(edge), above = table.At(edge + h);
            Assert.Equal(1, below / at, 1e-5);
            Assert.Equal((at - below) / at, (above - at) / at, 1e-9);
        }
    }

    // Four at once are the same as one by one, on the table and off it; none where there is no flow.
    [Theory]
    [MemberData(nameof(Curves))]
    public void At_FourAtOnce_AreEachTheSame(string name)
    {
        (DragTable table, _) = Pair(name);
        foreach (double[] four in new double[][] { [1, 37.5, 900, 6.5e4], [1e-7, 3, 1e3, 2e6], [0, 5, 0, 0.25] })
        {
            Vector256<double> plain = table.At(Vector256.Create(four)), withGrowth = table.At(Vector256.Create(four), out Vector256<double> growth);
            for (int i = 0; i < 4; i++)
            {
                double expected = four[i] > 0 ? table.At(four[i]) : 0;
                Assert.Equal(expected, plain[i], 1e-14 * expected);
                Assert.Equal(expected, withGrowth[i], 1e-14 * expected);
                Assert.Equal(table.One(four[i]).Growth, growth[i], 1e-12 * expected);
            }
        }
    }

    // Re dC/dRe by central differences of the curve itself.
    [Theory]
    [MemberData(nameof(Curves))]
    public void One_AnyReynolds_GrowsAsTheCurve(string name)
    {
        (DragTable table, Func<double, double> curve) = Pair(name);
        for (double re = 1e-4; re < 5e6; re *= 1.37)
        {
            double expected = (curve(1.0001 * re) - curve(0.9999 * re)) / 2e-4;
            Assert.Equal(expected, table.One(re).Growth, 2e-4 * curve(re));
        }
    }

    private static (DragTable Table, Func<double, double> Curve) Pair(string name) =>
        name == "cylinder" ? (DragTable.Cylinder, CylinderDrag.CrossFlow) : (DragTable.Sphere, SphereDrag.BrownLawler);
}
