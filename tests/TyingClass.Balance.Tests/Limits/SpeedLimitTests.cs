using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Flies;
using TyingClass.Balance.Tests.Oracle;
using TyingClass.Balance.Towing;
using Xunit;

namespace TyingClass.Balance.Tests.Limits;

public sealed class SpeedLimitTests
{
    private static readonly ReportOptions Quick = new() { Flies = 1, SpeedsMS = [0.5] };

    [Fact]
    public void Report_HardlyAnyFlow_HangsPlumbUnderTheEye()
    {
        int hung = 0;
        for (int seed = 40_000; seed < 40_080; seed++)
        {
            (FlyBody body, FishingConditions conditions) = RandomBodies.Fly(seed);
            StateReport state = BalanceEngine.Report(body, conditions with { Knot = Knot.Loop, SpeedMS = 1e-4 }, Quick).Soaked;
            if (state.BalancePointMm is not { } balance || state.WetWeightG < 0) continue;
            // Worked by hand: the balance point is plumb under the eye, so up runs from it to the eye.
            Vector3D up = 1e3 * body.TowPointM - balance;
            up /= up.Length;
            OracleRest plumb = new(true, default, OracleVector.Of(up), 0);
            Assert.True(state.AtFishingSpeed.Settles, $"body {seed} does not settle");
            Assert.True(
                plumb.MissDeg(state.AtFishingSpeed.PitchDeg, state.AtFishingSpeed.LeanDeg, body.Intent) < 0.5,
                $"body {seed}: reported pitch {state.AtFishingSpeed.PitchDeg} lean {state.AtFishingSpeed.LeanDeg}, plumb "
                    + $"is {plumb.PitchDeg} {plumb.LeanDeg(body.Intent)}");
            hung++;
        }

        Assert.True(hung > 60, $"only {hung} flies to hang");
    }

    // At 40 m/s weight is nothing, and a fly the same on both sides lies so that drag alone passes through the eye.
    [Fact]
    public void StableAttitudes_TorrentOfFlow_AreWhereDragAloneHasNoMoment()
    {
        for (int seed = 40_000; seed < 40_080; seed++)
        {
            (FlyBody body, FishingConditions conditions) = RandomBodies.Fly(seed, mirrored: true);
            conditions = conditions with { Knot = Knot.Loop, SpeedMS = 40 };
            Basin[] basins = [.. Releases.StableAttitudes(TowedFly.From(body, conditions, double.PositiveInfinity), 40)];
            Assert.NotEmpty(basins);
            OracleFly fly = new(body, conditions, soaked: true);
            foreach (Attitude attitude in basins.Select(b => b.Rest.Attitude))
            {
                (OracleVector force, OracleVector moment) = fly.Drag(40 * OracleVector.Of(attitude.Flow), default, OracleVector.Of(body.TowPointM));
                Assert.True(moment.Length < 2e-3 * force.Length * body.ShankLengthM, $"body {seed}: {moment.Length / force.Length / body.ShankLengthM}");
            }
        }
    }
}
