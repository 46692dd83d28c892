using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Flies;
using TyingClass.Recipes.Bodies;
using Xunit;

namespace TyingClass.Balance.Tests.Reports;

/// <summary>Three in four must agree, and another thousand flies would have to say so too.</summary>
public sealed class VerdictIntervalTests
{
    [Fact]
    public void Report_ManyFlies_NeverTellsAVerdictItsIntervalDoubts()
    {
        int told = 0, tilted = 0;
        for (int seed = 63_000; seed < 63_120; seed++)
        {
            BuiltFly fly = FlyBuilder.Build(RandomRecipes.Fly(seed));
            foreach (StateReport state in BalanceEngine.Report(fly.Body, fly.Conditions, new ReportOptions { Flies = 400, SpeedsMS = [], SoakTimesS = [] }).States)
            {
                ToleranceReport t = state.Tolerance;
                Assert.Equal(t.LeanHistogram.Take(6).Sum(), t.FliesTheRightWayUp);
                if (state.Verdict.Kind == VerdictKind.RidesAsIntended)
                {
                    Assert.True(t.AsIntendedLow >= 0.75, $"fly {seed} {state.State}: {t.AsIntended}, at least {t.AsIntendedLow}");
                    told++;
                }
                else if (state.Verdict.Kind == VerdictKind.Tilts)
                {
                    // Too few ride level for the plain verdict, yet nearly all are the right way up.
                    Assert.True(t.AsIntendedLow < 0.75 || state.AtFishingSpeed.LeanDeg > 30);
                    Assert.True(t.TheRightWayUp > 0.75, $"fly {seed}: {t.TheRightWayUp}");
                    Assert.True(state.AtFishingSpeed.LeanDeg <= 60);
                    tilted++;
                }

                Assert.All(state.Heeling, share => Assert.True(Math.Abs(share.HeelingGmm) <= Math.Abs(state.Heeling[0].HeelingGmm)));
            }
        }

        Assert.True(told > 20 && tilted > 3, $"{told} ride as intended, {tilted} tilted");
    }
}
