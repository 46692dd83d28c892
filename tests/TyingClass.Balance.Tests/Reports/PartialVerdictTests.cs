using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Flies;
using TyingClass.Recipes.Bodies;
using Xunit;

namespace TyingClass.Balance.Tests.Reports;

/// <summary>The adviser asks hundreds of flies for their verdict alone: it must be the one the full report gives.</summary>
public sealed class PartialVerdictTests
{
    [Fact]
    public void Verdict_Alone_IsThatOfTheFullReport()
    {
        ReportOptions options = new() { Flies = 60, SpeedsMS = [0.4], SoakTimesS = [] };
        HashSet<VerdictKind> seen = [];
        for (int seed = 1; seed <= 80; seed++)
        {
            BuiltFly fly = FlyBuilder.Build(RandomRecipes.Fly(seed));
            BalanceReport whole = BalanceEngine.Report(fly.Body, fly.Conditions, options);
            Assert.All(whole.States, s => Assert.Equal(s.Verdict.Kind, PartialReports.Verdict(fly.Body, fly.Conditions, s.State, options)));
            seen.Add(whole.Verdict.Kind);
        }

        Assert.True(seen.Count >= 3, string.Join(", ", seen));
    }
}
