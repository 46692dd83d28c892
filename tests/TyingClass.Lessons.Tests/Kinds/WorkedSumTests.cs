using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Kinds.Measure;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Lessons.Tests.Kinds;

public sealed class WorkedSumTests
{
    [Theory]
    [InlineData("mass", "0.05 g", "1 g")]
    [InlineData("mass with held water", "0.05 g", "1 g")]
    [InlineData("held water", "0.05 g", "1 g")]
    [InlineData("wet weight", "0.05 g", "1 g")]
    [InlineData("displaced volume", "30 mm³", "1 mm³")]
    [InlineData("mass of bead", "0.05 g", "1 g")]
    [InlineData("mass center, x", "0.8 mm", "1 mm")]
    [InlineData("mass center, z", "0.8 mm", "1 mm")]
    [InlineData("balance point, x", "0.8 mm", "1 mm")]
    [InlineData("balance point, z", "0.8 mm", "1 mm")]
    [InlineData("level-line keel", "0.5 mm", "1 mm")]
    [InlineData("hang angle", "5°", "1°")]
    [InlineData("line angle", "4°", "1°")]
    public void Of_EachQuantityWorkedByHand_ComesOutAtTheEnginesFigure(string quantity, string tolerance, string answer)
    {
        Exercise exercise = Measure(quantity, tolerance);

        WorkedSum sum = Assert.IsType<WorkedSum>(WorkedSum.Of(exercise, answer, UnitSystem.Metric));

        double key = Grader.Grade(exercise, answer, 0).Figures.Single().Si!.Value;
        Assert.Equal(key, sum.Rows[^1].Si, 1e-3 * Math.Max(1e-9, Math.Abs(key)) + 1e-9);
        Assert.All(sum.Rows, row => Assert.NotEmpty(row.Result));
        Assert.NotEmpty(sum.Yours);
    }

    [Fact]
    public void Of_SinkRate_IsNoSum() => Assert.Null(WorkedSum.Of(Measure("sink rate", "0.06 m/s"), "1 m/s", UnitSystem.Metric));

    // Dry and wet are summed by the test itself, from the parts of the recipe.
    [Fact]
    public void Of_AnswerThatIsAnEarlierLine_SaysWhereItStopped()
    {
        Exercise exercise = Measure("mass with held water", "0.02 g");
        double dryKg = Grader.Grade(Measure("mass", "0.02 g"), "1 g", 0).Figures.Single().Si!.Value;
        string dry = Units.Write(dryKg, Dimension.Mass, 3);

        WorkedSum sum = WorkedSum.Of(exercise, dry, UnitSystem.Metric)!;

        Assert.Contains("the dry fly", sum.Remark, StringComparison.Ordinal);
        Assert.Null(WorkedSum.Of(exercise, "9 g", UnitSystem.Metric)!.Remark);
    }

    [Fact]
    public void Of_AKindThatIsNoMeasure_IsNone()
    {
        Exercise exercise = Measure("mass", "0.02 g");

        Assert.Null(WorkedSum.Of(exercise with { RecipeText = null }, "1 g", UnitSystem.Metric));
    }

    private static Exercise Measure(string quantity, string tolerance)
    {
        LessonResult result = Repo.Fence("exercise", $"""
            id: worked-1
            kind: measure
            title: Worked
            concepts: [mass center]
            prompt: How much?
            file: recipes/slate-minnow.fly.yaml
            quantity: {quantity}
            tolerance: {tolerance}
            model answer: 1 g
            wrong answers: [2 g]
            """);
        Assert.Equal([], result.Errors);
        return result.Lesson!.Exercises.Single();
    }
}
