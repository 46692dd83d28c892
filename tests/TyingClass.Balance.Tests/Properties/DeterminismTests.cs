using System.Text.Json;
using System.Text.Json.Serialization;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Flies;
using TyingClass.Recipes.Bodies;
using Xunit;

namespace TyingClass.Balance.Tests.Properties;

public sealed class DeterminismTests
{
    private static readonly JsonSerializerOptions Text = new() { NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals };

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Report_AskedTwice_IsTheSameToTheLastDigit(int seed)
    {
        BuiltFly fly = FlyBuilder.Build(RandomRecipes.Fly(seed)), again = FlyBuilder.Build(RandomRecipes.Fly(seed));
        Assert.Equal(Write(fly.Body, fly.Conditions), Write(again.Body, again.Conditions));
    }

    [Fact]
    public async Task Report_AskedFromManyThreads_IsTheSame()
    {
        BuiltFly fly = FlyBuilder.Build(RandomRecipes.Fly(5));
        string alone = Write(fly.Body, fly.Conditions);
        string[] together = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Task.Run(() => Write(fly.Body, fly.Conditions))));
        Assert.All(together, text => Assert.Equal(alone, text));
    }

    private static string Write(FlyBody body, FishingConditions conditions) =>
        JsonSerializer.Serialize(BalanceEngine.Report(body, conditions, new ReportOptions { Flies = 200 }), Text);
}
