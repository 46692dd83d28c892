using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Flies;
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
}
