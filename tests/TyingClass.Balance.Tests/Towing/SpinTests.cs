using TyingClass.Balance.Geometry;
using TyingClass.Balance.Tests.Flies;
using TyingClass.Balance.Towing;
using TyingClass.Recipes.Bodies;
using Xunit;

namespace TyingClass.Balance.Tests.Towing;

/// <summary>A fly that spins is given up sooner, and none that comes to rest is.</summary>
public sealed class SpinTests
{
    [Fact]
    public void TryFindRestUnlessItSpins_RandomFlies_FindsTheVerySameRests()
    {
        int rests = 0, spins = 0;
        // The last is the slowest of the random flies because it spins.
        foreach (int seed in Enumerable.Range(1, 120).Append(300))
        {
            BuiltFly built = FlyBuilder.Build(RandomRecipes.Fly(seed));
            TowedFly fly = TowedFly.From(built.Body, built.Conditions, double.PositiveInfinity);
            foreach (Attitude start in Releases.Starts)
            {
                bool found = Settling.TryFindRest(fly, built.Conditions.SpeedMS, start, out Rest rest);
                Assert.Equal(found, Settling.TryFindRestUnlessItSpins(fly, built.Conditions.SpeedMS, start, out Rest sooner));
                if (found) Assert.Equal(rest, sooner);
                rests += found ? 1 : 0;
                spins += found || rest.Attitude == sooner.Attitude ? 0 : 1;
            }
        }

        Assert.True(rests > 2000, $"only {rests} came to rest");
        Assert.True(spins > 0, "none spins");
    }

    [Fact]
    public void TryFindRestOfOneOfMany_RandomFlies_FindsRestsAndNearlyAlwaysTheSame()
    {
        int rests = 0, others = 0;
        foreach (int seed in Enumerable.Range(1, 120))
        {
            BuiltFly built = FlyBuilder.Build(RandomRecipes.Fly(seed));
            TowedFly fly = TowedFly.From(built.Body, built.Conditions, double.PositiveInfinity);
            foreach (Attitude start in Releases.Starts)
            {
                bool found = Settling.TryFindRest(fly, built.Conditions.SpeedMS, start, out Rest rest);
                if (!Settling.TryFindRestOfOneOfMany(fly, built.Conditions.SpeedMS, start, out Rest hasty))
                {
                    Assert.False(found, $"fly {seed} came to rest and in haste did not");
                    continue;
                }

                Wrench there = fly.At(hasty.Attitude, built.Conditions.SpeedMS);
                Assert.True(there.MomentNM.Length <= Settling.ResidualNM(fly, there.ForceN.Length), $"fly {seed} is not at rest");
                rests++;
                others += found && (hasty.Attitude.Flow - rest.Attitude.Flow).Length + (hasty.Attitude.Up - rest.Attitude.Up).Length < 1e-5 ? 0 : 1;
            }
        }

        Assert.True(rests > 2000, $"only {rests} came to rest");
        Assert.True(others < 0.01 * rests, $"{others} of {rests} came to another rest");
    }
}
