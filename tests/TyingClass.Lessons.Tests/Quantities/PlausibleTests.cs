using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Lessons.Tests.Quantities;

/// <summary>A figure that no fly can have is asked about and never counted; any other is an answer.</summary>
public sealed class PlausibleTests
{
    private static readonly Exercise Record = Repo.Exercise("""
        id: t-1
        kind: tub test
        title: T
        concepts: [casting weight]
        prompt: Weigh it.
        file: recipes/tin-roach.fly.yaml
        record: [mass, held water, hang angle, sink rate]
        """);

    [Theory]
    [InlineData("mass: 1000 kg", "“1000 kg”")]
    [InlineData("held water: -0.2 g", "“-0.2 g”")]
    [InlineData("hang angle: 400°", "“400°”")]
    [InlineData("sink rate: 90 m/s", "“90 m/s”")]
    public void TubTest_BeyondReason_IsAskedAboutAndNotTaken(string line, string quoted)
    {
        GradeResult result = Grader.Grade(Record, line, 0);

        Assert.False(result.IsAttempt);
        string said = Assert.Single(result.Problems).Text;
        Assert.Contains(quoted, said, StringComparison.Ordinal);
        Assert.Contains("nothing was counted", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("mass: 12 g")]
    [InlineData("held water: 0 g")]
    [InlineData("sink rate: 0.01 m/s")]
    public void TubTest_FarOffYetPossible_IsTaken(string line) => Assert.True(Grader.Grade(Record, line, 0).IsAttempt);

    [Fact]
    public void TubTest_BeyondReason_IsBoundedInTheReadersUnits()
    {
        GradeResult result = Grader.Grade(Record, "mass: 1000 kg", 0, new GradeOptions { Units = UnitSystem.Imperial });
        Assert.Contains("772 gr", result.Problems[0].Text, StringComparison.Ordinal);
    }
}
