using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;
using Xunit;

namespace TyingClass.Telling.Tests.Sentences;

public sealed class LedgerSentenceTests
{
    private const string Guarded = """
        recipe: Reed Pike
        intent: point down
        hook:
          size: 1/0
          eye: straight
        parts:
          - part: bead
            material: brass
            size: 4.8 mm
          - part: weed guard
            diameter: .020
            loops: 2
        fishing:
          speed: 0.6 m/s
        """;

    // A loop of nylon weighs a seventh of its mass in water: what the ledger holds of it is the water's.
    [Fact]
    public void ByWater_LightLoopInTheFlow_IsNamedAndTheBeadIsNot()
    {
        SolvedFly fly = SolvedFly.Solve(RecipeParser.Parse(Guarded).Value!);
        string said = LedgerSentence.ByWater(fly, fly.Report.Soaked, UnitSystem.Metric);

        Assert.StartsWith("What stands here of the weed guard (", said, StringComparison.Ordinal);
        Assert.DoesNotContain("bead", said, StringComparison.Ordinal);
        Assert.Contains("gr·in", LedgerSentence.ByWater(fly, fly.Report.Soaked, UnitSystem.Imperial), StringComparison.Ordinal);
    }

    [Fact]
    public void ByWater_FlyOfWeights_HasNothingToSay() =>
        Assert.DoesNotContain("wraps", LedgerSentence.ByWater(Flies.Rides, Flies.Rides.Report.Soaked, UnitSystem.Metric), StringComparison.Ordinal);
}
