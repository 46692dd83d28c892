using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Flies;
using TyingClass.Balance.Towing;
using TyingClass.Recipes.Bodies;
using Xunit;

namespace TyingClass.Balance.Tests.Oracle;

/// <summary>Resting attitudes under tow: the engine's against a fly let go in a simulated stream.</summary>
public sealed class OracleTowTests(ITestOutputHelper output)
{
    private static readonly ReportOptions Quick = new() { Flies = 1, SpeedsMS = [0.5] };

    [Fact]
    public void Report_RandomBodies_AgreesWithTheTimeSteppedFly()
    {
        OracleTally tally = new();
        for (int seed = 0; seed < 320; seed++)
        {
            (FlyBody body, FishingConditions conditions) = RandomBodies.Fly(seed, mirrored: seed % 2 == 0);
            tally.Compare(FormattableString.Invariant($"body {seed}"), body, conditions, BalanceEngine.Report(body, conditions, Quick), seed);
        }

        tally.Check(output);
    }

    [Fact]
    public void Report_RandomRecipes_AgreesWithTheTimeSteppedFly()
    {
        OracleTally tally = new();
        for (int seed = 0; seed < 320; seed++)
        {
            BuiltFly fly = FlyBuilder.Build(RandomRecipes.Fly(seed));
            tally.Compare(FormattableString.Invariant($"recipe {seed}"), fly.Body, fly.Conditions, BalanceEngine.Report(fly.Body, fly.Conditions, Quick), seed);
        }

        tally.Check(output);
    }

    [Fact]
    public void StableAttitudes_FliesWithSeveral_EachHoldsTheTimeSteppedFly()
    {
        int held = 0;
        for (int seed = 0; seed < 320; seed++)
        {
            (FlyBody body, FishingConditions conditions) = RandomBodies.Fly(seed, mirrored: seed % 2 == 0);
            Basin[] basins = [.. Releases.StableAttitudes(TowedFly.From(body, conditions, 0), conditions.SpeedMS)];
            if (basins.Length < 2) continue;
            OracleTow tow = new(new OracleFly(body, conditions, soaked: false));
            Random random = new(seed);
            foreach (Attitude at in basins.Select(b => b.Rest.Attitude))
            {
                OracleRest told = new(true, OracleVector.Of(at.Flow), OracleVector.Of(at.Up), 0);
                OracleQuaternion near = OracleQuaternion.Seeing(told.Flow, told.Up)
                    * OracleQuaternion.Turn(new(random.NextDouble() - 0.5, random.NextDouble() - 0.5, random.NextDouble() - 0.5), 0.02);
                OracleRest rest = tow.Run(near.Unit(), random);
                Assert.True(rest.Settled && rest.TurnToDeg(told) < 0.5,
                    $"body {seed}: let go beside pitch {told.PitchDeg:F2} lean {told.LeanDeg(body.Intent):F2} it rests {rest.TurnToDeg(told):F2}° off");
                held++;
            }
        }

        Assert.True(held >= 20, $"only {held} attitudes");
    }
}
