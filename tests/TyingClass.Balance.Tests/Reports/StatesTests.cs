using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Flies;
using Xunit;

namespace TyingClass.Balance.Tests.Reports;

/// <summary>A state is a number of seconds in the water. Looking at one more must not change what is said of the others.</summary>
public sealed class StatesTests
{
    [Fact]
    public void Report_PartlySoakedStateAskedFor_LeavesFreshAndFindingsAlone()
    {
        for (int seed = 62_000; seed < 62_020; seed++)
        {
            (FlyBody body, FishingConditions conditions) = RandomBodies.Fly(seed);
            ReportOptions options = new() { Flies = 50, SpeedsMS = [0.4], SoakTimesS = [20] };
            BalanceReport plain = BalanceEngine.Report(body, conditions, options),
                asked = BalanceEngine.Report(body, conditions, options with { PartlySoakedS = 20 });
            Assert.Null(plain.PartlySoaked);
            Assert.Equal(0, asked.Fresh.SoakS);
            Assert.Equal(plain.Fresh.WetWeightG, asked.Fresh.WetWeightG);
            Assert.Equal(plain.Findings, asked.Findings);
            Assert.Equal(20, asked.PartlySoaked!.SoakS);
            Assert.Equal(plain.Soak[0].WetWeightG, asked.PartlySoaked.WetWeightG, 1e-12);
        }
    }
}
