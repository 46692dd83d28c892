using CsCheck;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;
using TyingClass.Drawing.Tests.Support;
using Xunit;

namespace TyingClass.Drawing.Tests.Svg;

public sealed class PathTextTests
{
    [Fact]
    public void ToString_SmallSteps_AreWrittenShort() =>
        Assert.Equal("M1.5-2l-.5 .25", new PathText().Move(new Point(1.5, -2)).Line(new Point(1, -1.75)).ToString());

    [Fact]
    public void Polyline_ManyPlaces_ReadsBackWithinHalfAHundredthEverywhere()
    {
        Gen.Double[-80, 80].Array[4, 400].Sample(
            numbers =>
            {
                Point[] points = [.. numbers.Chunk(2).Where(c => c.Length == 2).Select(c => new Point(c[0], c[1]))];
                IReadOnlyList<(double X, double Y)> read = Picture.Path(new PathText().Polyline(points).ToString());
                Assert.Equal(points.Length, read.Count);
                for (int i = 0; i < points.Length; i++)
                {
                    Assert.Equal(points[i].X, read[i].X, 0.0051);
                    Assert.Equal(points[i].Y, read[i].Y, 0.0051);
                }
            },
            iter: 100, threads: 1);
    }
}
