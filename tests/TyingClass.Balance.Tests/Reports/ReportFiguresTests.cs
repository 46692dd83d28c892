using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Flies;
using Xunit;

namespace TyingClass.Balance.Tests.Reports;

/// <summary>Figures that a report takes from what was solved, worked by hand.</summary>
public sealed class ReportFiguresTests
{
    // 0.5 m at 2 s and 1.1 m at 4 s: 0.8 m half way, 0.65 m a quarter of the way.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 0.25)]
    [InlineData(2, 0.5)]
    [InlineData(2.5, 0.65)]
    [InlineData(3, 0.8)]
    [InlineData(4, 1.1)]
    public void DepthAfter_BetweenTwoPoints_IsOnTheStraightLine(double pauseS, double depthM) => Assert.Equal(depthM, Sink().DepthAfterM(pauseS), 1e-12);

    [Theory]
    [InlineData(-0.1)]
    [InlineData(4.1)]
    [InlineData(double.NaN)]
    public void DepthAfter_OutsideTheReportedTime_Throws(double pauseS) => Assert.Throws<ArgumentOutOfRangeException>(() => Sink().DepthAfterM(pauseS));

    // Weight in water times how far aside it is, for all drag is a drogue's, behind: 0.1 g less 0.01 cm³ of water, 2 mm aside, is 0.18 g·mm; half as much,
    // 1 mm the other way, is 0.045 g·mm. What is aside by a hair, under 0.0001 g·mm, is left out.
    [Fact]
    public void Heeling_PartsToOneSide_TheLargestFirstInGramMillimeters()
    {
        FlyBody body = new(
        [
            new BodyPart("hook")
            {
                Masses = [new(3e-4, new Vector3D(0, 0, -1e-3))],
                Solids = [new(4e-8, new Vector3D(0, 0, -1e-3))],
                Drag = [DragElement.Streamer(new Vector3D(1, 0, 0), 1e-2)],
            },
            Ball("near", 0.5, -1),
            Ball("hair", 1, 0.001),
            Ball("far", 1, 2),
        ], default, 0.02, Intent.PointDown);

        ImmutableArray<HeelingEntry> heeling = BalanceEngine.Report(body, Fished.Plainly, new ReportOptions { Flies = 1, SpeedsMS = [0.5] }).Soaked.Heeling;

        Assert.Equal(["far", "near"], heeling.Select(h => h.Part));
        double wet = 0.1 - 998.2041e-3 * 0.01;
        Assert.Equal(2 * wet, Math.Abs(heeling[0].HeelingGmm), 1e-3);
        Assert.Equal(0.5 * wet, Math.Abs(heeling[1].HeelingGmm), 1e-3);
        Assert.True(heeling[0].HeelingGmm * heeling[1].HeelingGmm < 0, "They heel it to opposite sides.");
    }

    private static BodyPart Ball(string name, double share, double asideMm)
    {
        Vector3D at = new(0, asideMm * 1e-3, -1e-3);
        return new BodyPart(name) { Masses = [new(share * 1e-4, at)], Solids = [new(share * 1e-8, at)] };
    }

    private static SinkReport Sink() => new(0.3, 0, 0, 1, [new(0, 0), new(2, 0.5), new(4, 1.1)]);
}
