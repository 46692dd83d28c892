using TyingClass.Balance.Doubting;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Sinking;
using TyingClass.Balance.Tests.Flies;
using TyingClass.Balance.Towing;
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

    // A single fly of sixty parts takes long in each of these: they are left in the middle.
    [Fact]
    public void Loops_AskerHasLeft_AreLeft()
    {
        TowedFly fly = TowedFly.From(Fly.Body, Fly.Conditions, 0);
        Attitude level = Attitude.Symmetric(Fly.Body.Intent, 0);
        SinkingFly sinking = new(Fly.Body, Fly.Conditions, 0);
        DoubtCalculation doubt = new(Fly.Body, Fly.Conditions);
        using IDisposable stop = StopSignal.By(new CancellationToken(canceled: true));
        Assert.All(
            (Action[])
            [
                () => Releases.StableAttitudes(fly, 0.4), () => Righting.Lesser(fly, level, 0.4, 36), () => sinking.Ways(),
                () => doubt.At(Fly.Body, Fly.Conditions), () => doubt.Bands([(Fly.Body, Fly.Conditions)], [0.4]),
                () => PartialReports.Tow(Fly.Body, Fly.Conditions, WetState.Soaked),
            ],
            loop => Assert.Throws<OperationCanceledException>(loop));
    }
}
