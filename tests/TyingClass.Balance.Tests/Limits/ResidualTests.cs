using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Tests.Flies;
using TyingClass.Balance.Tests.Oracle;
using TyingClass.Balance.Towing;
using TyingClass.Recipes.Bodies;
using Xunit;

namespace TyingClass.Balance.Tests.Limits;

/// <summary>What moment is left at a reported attitude.</summary>
public sealed class ResidualTests
{
    // Section 10 of the model: under 10⁻⁹ of W' × shank length.
    [Fact]
    public void StableAttitudes_RandomFlies_LeaveUnderABillionthOfWeightTimesShank()
    {
        int attitudes = 0;
        for (int seed = 60_000; seed < 60_200; seed++)
        {
            (FlyBody body, FishingConditions conditions) = seed % 2 == 0 ? RandomBodies.Fly(seed) : Built(seed);
            TowedFly fly = TowedFly.From(body, conditions, double.PositiveInfinity);
            foreach (Basin basin in Releases.StableAttitudes(fly, conditions.SpeedMS))
            {
                double left = fly.At(basin.Rest.Attitude, conditions.SpeedMS).MomentNM.Length;
                Assert.True(left < 1e-9 * Math.Abs(fly.WetWeightN) * body.ShankLengthM,
                    $"fly {seed}: {left / Math.Abs(fly.WetWeightN) / body.ShankLengthM:E2}");
                attitudes++;
            }
        }

        Assert.True(attitudes >= 200);
    }

    // The oracle's own forces at the same attitudes: the engine's sampled drag curves are good to a millionth.
    [Fact]
    public void StableAttitudes_RandomFlies_LeaveNothingByTheOraclesForces()
    {
        for (int seed = 60_000; seed < 60_200; seed++)
        {
            (FlyBody body, FishingConditions conditions) = seed % 2 == 0 ? RandomBodies.Fly(seed) : Built(seed);
            TowedFly fly = TowedFly.From(body, conditions, double.PositiveInfinity);
            OracleTow tow = new(new OracleFly(body, conditions, soaked: true));
            foreach (Basin basin in Releases.StableAttitudes(fly, conditions.SpeedMS))
            {
                Attitude at = basin.Rest.Attitude;
                double left = tow.Moment(OracleVector.Of(at.Flow), OracleVector.Of(at.Up), default).Length;
                double scale = (basin.Rest.Loads.DragN.Length + Math.Abs(fly.WetWeightN)) * body.ShankLengthM;
                Assert.True(left < 1e-5 * scale, $"fly {seed}: {left / scale:E2}");
            }
        }
    }

    private static (FlyBody Body, FishingConditions Conditions) Built(int seed)
    {
        BuiltFly fly = FlyBuilder.Build(RandomRecipes.Fly(seed));
        return (fly.Body, fly.Conditions);
    }
}
