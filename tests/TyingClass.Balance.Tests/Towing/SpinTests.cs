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
}
