using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Flies;
using TyingClass.Balance.Towing;
using Xunit;

namespace TyingClass.Balance.Tests.Ships;

/// <summary>A lopsided fly comes back from less on one side than on the other, and that side is told.</summary>
public sealed class RightingBothWaysTests
{
    private static readonly Water Fresh = new(998.2041, 1001.57e-6);

    // No drag but a drogue's, so moments are those of weight alone: W BG sin φ righting against W y cos φ heeling, y the weight's place to the right.
    // It lists by atan(y/BG) to the right and stays positive to 180° less that on the left, half a turn from the list: worked by hand.
    [Theory]
    [InlineData(0.5, 1, HeelSide.Left)]
    [InlineData(-0.5, 1, HeelSide.Right)]
    [InlineData(0, 1, HeelSide.Either)]
    public void Roll_WeightToOneSide_IsTheLesserRangeWithItsSide(double asideMm, double belowMm, HeelSide side)
    {
        RollCurve roll = Of(asideMm, belowMm);
        Assert.Equal(side, roll.Side);
        Assert.Equal(180 - Math.Atan(Math.Abs(asideMm) / belowMm) * 180 / Math.PI, roll.RangeDeg, 0.6);
    }

    // The fault this test was written for: a bead to one side gave 0°, its mirror image 50°.
    [Fact]
    public void Roll_MirroredFly_HasTheSameRange()
    {
        int lopsided = 0;
        for (int seed = 61_000; seed < 61_060; seed++)
        {
            (FlyBody body, FishingConditions conditions) = RandomBodies.Fly(seed);
            RollCurve one = PartialReports.Roll(body, conditions, WetState.Soaked), other = PartialReports.Roll(body.Mirrored(), conditions, WetState.Soaked);
            Assert.True(Math.Abs(one.RangeDeg - other.RangeDeg) < 1e-3, $"body {seed}: {one.RangeDeg} and {other.RangeDeg}");
            if (one.Side == HeelSide.Either) continue;
            Assert.NotEqual(one.Side, other.Side);
            lopsided++;
        }

        Assert.True(lopsided > 10, $"only {lopsided} lopsided flies");
    }

    private static RollCurve Of(double asideMm, double belowMm)
    {
        Vector3D balance = new(0, 1e-3 * asideMm, -1e-3 * belowMm);
        FlyBody body = new(
            [new BodyPart("hook") { Masses = [new(3e-4, balance)], Solids = [new(4e-8, balance)], Drag = [DragElement.Streamer(new Vector3D(1, 0, 0), 1e-2)] }],
            default, 0.02, Intent.PointDown);
        return PartialReports.Roll(body, new FishingConditions(Fresh, new Leader(0.2e-3, 2.5e9, 1140), Knot.Loop, 0.5), WetState.Soaked);
    }
}
