using TyingClass.Balance.Reports;
using TyingClass.Recipes.Measured;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Recipes.Tests.Measured;

public sealed class TakeOverTests
{
    private const string Fly = """
        recipe: Copper Loach
        intent: point up
        hook:
          size: 6
        parts:
          - part: bead
            material: brass
            size: 3.2 mm
            at: 0 mm
          - part: body
            material: fur dubbing
            mass: 0.06 g
            diameter: 5 mm
            at: 4 mm
            to: 14 mm
          - part: wing
            material: bucktail
            length: 40 mm
            at: 4 mm
            side: under
        """;

    private static readonly SolvedFly Computed = Solve(Fly);

    [Theory]
    [InlineData(0.03)]
    [InlineData(-0.02)]
    public void HookMass_FlyWeighed_MakesTheFlyWeighThatByItsHookAlone(double moreG)
    {
        double weighedG = Computed.Report.MassG + moreG;
        TakeOver taken = TakeOver.HookMass(Fly, 1e-3 * weighedG);
        SolvedFly after = Solve(taken.RecipeText!);
        // Written with four digits.
        Assert.Equal(weighedG, after.Report.MassG, 1e-3 * weighedG);
        Assert.Equal(Computed.Recipe.Parts, after.Recipe.Parts);
        HookWeighed told = Assert.IsType<HookWeighed>(taken.Outcome);
        Assert.True(told.Taken);
        Assert.Equal(1e-3 * moreG, told.WantedKg - told.HookKg, 1e-9);
    }

    [Theory]
    [InlineData(0.05)]
    [InlineData(9)]
    public void HookMass_NoHookWeighsThat_IsRefusedWithAdvice(double weighedG)
    {
        TakeOver taken = TakeOver.HookMass(Fly, 1e-3 * weighedG);
        Assert.Null(taken.RecipeText);
        Assert.False(Assert.IsType<HookWeighed>(taken.Outcome).Taken);
    }

    [Theory]
    [InlineData(1, 0.9, WetState.Soaked)]
    [InlineData(1, 0.7, WetState.Soaked)]
    [InlineData(2, 0.8, WetState.Soaked)]
    [InlineData(1, 0.8, WetState.Fresh)]
    public void SealedAir_SinksSlower_MakesTheFlySinkThatFastAndWeighTheSame(int part, double times, WetState state)
    {
        double timedMS = times * Rate(Computed.Report, state);
        TakeOver taken = TakeOver.SealedAir(Fly, part, timedMS, state);
        SolvedFly after = Solve(taken.RecipeText!);
        Assert.Equal(timedMS, Rate(after.Report, state), 0.01 * timedMS);
        Assert.Equal(Computed.Report.MassG, after.Report.MassG, 1e-3 * Computed.Report.MassG);
        Assert.True(Assert.IsType<AirTimed>(taken.Outcome) is { Fault: AirFault.None, MoreAirM3: > 0 });
    }

    [Fact]
    public void SealedAir_InAnotherWater_IsSolvedInThatWater()
    {
        Recipe warm = Computed.Recipe with { Fishing = Computed.Recipe.Fishing with { TemperatureC = 30 } };
        double timedMS = 0.8 * SolvedFly.Solve(warm).Report.Soaked.Sink!.RateMS;
        Recipe after = RecipeParser.Parse(TakeOver.SealedAir(Fly, 1, timedMS, WetState.Soaked, waterC: 30).RecipeText!).Value!;
        Recipe afterWarm = after with { Fishing = after.Fishing with { TemperatureC = 30 } };
        Assert.Equal(timedMS, SolvedFly.Solve(afterWarm).Report.Soaked.Sink!.RateMS, 0.01 * timedMS);
        Assert.Null(after.Fishing.TemperatureC);
    }

    [Fact]
    public void SealedAir_FasterThanWithoutAnyAir_IsRefusedWithAdvice()
    {
        TakeOver taken = TakeOver.SealedAir(Fly, 1, 3 * Rate(Computed.Report, WetState.Soaked), WetState.Soaked);
        Assert.Null(taken.RecipeText);
        Assert.Equal(AirFault.FasterThanWithoutAir, Assert.IsType<AirTimed>(taken.Outcome).Fault);
    }

    private static double Rate(BalanceReport report, WetState state) => (state == WetState.Fresh ? report.Fresh : report.Soaked).Sink!.RateMS;

    private static SolvedFly Solve(string text) => SolvedFly.Solve(RecipeParser.Parse(text).Value!);
}
