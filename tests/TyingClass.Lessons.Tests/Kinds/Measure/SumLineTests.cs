using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Kinds.Measure;
using TyingClass.Lessons.Tests.Checking;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Lessons.Tests.Kinds.Measure;

/// <summary>The sum of a measure exercise as its author does it: of the Slate Minnow, its bead as the engine weighs it.</summary>
public sealed class SumLineTests : CheckedFolder
{
    private const string Right = "hook, bead, body and wing: 0.20 g + 0.235 g + 0.06 g + 0.06 g = 0.555 g";

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

    // Signs, brackets, × before +, a unit with a slash; and what does not come out, or is no sum at all.
    [Theory]
    [InlineData("less: 0.20 g − (−0.355 g) = 0.555 g", null)]
    [InlineData("times: 0.20 g + 2 × (0.10 g + 0.0775 g) = 0.555 g", null)]
    [InlineData("by length: 111 mm × 0.010 g/mm ÷ 2 = 0.555 g", null)]
    [InlineData("read off: 0.555 g", null)]
    [InlineData("together: 0.20 g + 0.20 g = 0.555 g", "comes to 0.4")]
    [InlineData("together: 0.20 g + 0.20 g = 0.40 g", "more than the tolerance apart")]
    [InlineData("together: 0.20 + 0.355 = 0.555 mm", "must give the mass")]
    [InlineData("together: 0.20 g + = 0.555 g", "cannot be read")]
    [InlineData("together: (0.20 g + 0.355 g = 0.555 g", "cannot be read")]
    public void Check_SumOfAnExercise_MustComeOut(string line, string? said)
    {
        Folder.Write("01-a.md", Exercise("measure", $"file: recipes/slate-minnow.fly.yaml\nquantity: mass\ntolerance: 0.05 g\nsum:\n  {line}"));

        string[] errors = [.. CourseChecker.Check(Folder.Path).Errors.Select(e => e.Text)];

        if (said is null) Assert.Empty(errors);
        else Assert.Contains(said, Assert.Single(errors), StringComparison.Ordinal);
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
