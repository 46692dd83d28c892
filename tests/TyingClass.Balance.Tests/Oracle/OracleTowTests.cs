using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using Xunit;

namespace TyingClass.Balance.Tests.Oracle;

/// <summary>Resting attitudes under tow: the engine's against a fly let go in a simulated stream.</summary>
public sealed class OracleTowTests(ITestOutputHelper output)
{
    private static readonly ReportOptions Quick = new() { Flies = 1 };

    [Fact]
    public void Report_RandomBodies_AgreesWithTheTimeSteppedFly()
    {
        OracleTally tally = new();
        System.Diagnostics.Stopwatch clock = System.Diagnostics.Stopwatch.StartNew();
        for (int seed = 0; seed < 320; seed++)
        {
            (FlyBody body, FishingConditions conditions) = RandomBodies.Fly(seed, mirrored: seed % 2 == 0);
            BalanceReport report = BalanceEngine.Report(body, conditions, Quick);
            tally.Compare(FormattableString.Invariant($"body {seed}"), body, conditions, report, seed);
        }

        tally.Show(output);
        output.WriteLine($"{clock.Elapsed.TotalSeconds:F0} s");
        Assert.Empty(tally.Misses);
    }
}
