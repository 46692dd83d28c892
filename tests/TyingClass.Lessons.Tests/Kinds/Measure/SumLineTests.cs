using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Kinds.Measure;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Lessons.Tests.Kinds.Measure;

/// <summary>The sum of a measure exercise as its author does it. Masses of the Slate Minnow as its recipe states them, and its bead as the engine weighs it.</summary>
public sealed class SumLineTests
{
    private const string Right = "hook, bead, body and wing: 0.20 g + 0.235 g + 0.06 g + 0.06 g = 0.555 g";

    [Theory]
    [InlineData("0.74 mm − (−1.71 mm)", 2.45)]
    [InlineData("3.14 × (0.78 mm + 0.64 mm)", 4.4588)]
    [InlineData("0.81 mN ÷ 1.62 mN × 2", 1)]
    [InlineData("66.9 mm × 0.00359 g/mm", 0.240171)]
    public void Arithmetic_AsWrittenByHand_IsWorkedOut(string sum, double value) => Assert.Equal(value, Arithmetic.Of(sum)!.Value, 1e-9);

    [Theory]
    [InlineData("3 mm +")]
    [InlineData("(3 mm")]
    [InlineData("a lot")]
    public void Arithmetic_NoSum_IsNull(string text) => Assert.Null(Arithmetic.Of(text));

    [Fact]
    public void WorkedSum_WithTheAuthorsSum_ShowsItsLines()
    {
        WorkedSum sum = Assert.IsType<WorkedSum>(WorkedSum.Of(Measure(Right), "0.5 g", UnitSystem.Metric));

        WorkedRow row = Assert.Single(sum.Rows);
        Assert.Equal(("hook, bead, body and wing", "0.20 g + 0.235 g + 0.06 g + 0.06 g", "0.555 g"), (row.What, row.Sum, row.Result));
    }

    [Fact]
    public void Grade_WrongWithTheAuthorsSum_BeginsWithItsFirstLine() =>
        Assert.Contains("“hook, bead, body and wing”", Grader.Grade(Measure(Right), "2 g", 0).Feedback!.First, StringComparison.Ordinal);

    [Theory]
    [InlineData("together: 0.20 g + 0.20 g = 0.555 g", "comes to 0.4")]
    [InlineData("together: 0.20 g + 0.20 g = 0.40 g", "more than the tolerance apart")]
    [InlineData("together: 0.20 + 0.355 = 0.555", "must give the mass")]
    public void KeyComplaint_SumThatDoesNotComeOut_SaysSo(string line, string said)
    {
        Exercise exercise = Measure(line);

        Assert.Contains(said, exercise.Kind.KeyComplaint(exercise), StringComparison.Ordinal);
    }

    private static Exercise Measure(string line)
    {
        LessonResult result = Repo.Fence("exercise", $"""
            id: sum-1
            kind: measure
            title: Worked
            concepts: [mass center]
            prompt: How much?
            file: recipes/slate-minnow.fly.yaml
            quantity: mass
            tolerance: 0.05 g
            sum:
              {line}
            hints: [Add., Add all.]
            model answer: 0.555 g
            wrong answers: [2 g]
            """);
        Assert.Equal([], result.Errors);
        return result.Lesson!.Exercises.Single();
    }
}
