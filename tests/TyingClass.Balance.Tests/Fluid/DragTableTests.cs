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

    private static (DragTable Table, Func<double, double> Curve) Pair(string name) =>
        name == "cylinder" ? (DragTable.Cylinder, CylinderDrag.CrossFlow) : (DragTable.Sphere, SphereDrag.BrownLawler);
}
