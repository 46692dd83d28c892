using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Flies;
using TyingClass.Recipes.Bodies;
using Xunit;

namespace TyingClass.Balance.Tests.Reports;

public sealed class StopSignalTests
{
    private static readonly BuiltFly Fly = FlyBuilder.Build(RandomRecipes.Fly(1));

    [Fact]
    public void Report_AskerHasLeft_IsEnded()
    {
        using IDisposable stop = StopSignal.By(new CancellationToken(canceled: true));
        Assert.Throws<OperationCanceledException>(() => BalanceEngine.Report(Fly.Body, Fly.Conditions));
    }

    [Fact]
    public void Report_AfterTheSignalIsDisposedOf_RunsAgain()
    {
        StopSignal.By(new CancellationToken(canceled: true)).Dispose();
        Assert.True(BalanceEngine.Report(Fly.Body, Fly.Conditions).MassG > 0);
    }
}
