using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Tests.Grading;
using Xunit;

namespace TyingClass.Lessons.Tests.Kinds.Compose;

public sealed class ComposeTests
{
    private static string Model => Flies.Compose.ModelAnswer!;

    [Fact]
    public void Grade_ModelAnswer_Passes() => Assert.True(Grader.Grade(Flies.Compose, Model, 0).Passed);

    [Fact]
    public void Grade_TooLight_MissesTheGoalWithItsFigure()
    {
        GradeResult result =
            Grader.Grade(Flies.Compose, Model.Replace("tungsten", "brass", StringComparison.Ordinal).Replace("3 mm", "2 mm", StringComparison.Ordinal), 0);

        GoalResult sink = result.Feedback!.Goals[0];
        Assert.False(sink.Met);
        Assert.Equal("sink rate: at least 0.5 m/s", sink.Asked);
        Assert.Matches(@"^0\.[0-9]+ m/s$", sink.Reached);
    }

    [Theory]
    [InlineData("size: 8", "size: 6", "hook.size", "The hook's size is 6. Here it must be 8.")]
    [InlineData("size: 8", "size: 8\n  eye: up", "hook.eye", "The hook's eye is up. Here it must be straight or down.")]
    [InlineData("tungsten", "lead", "parts[0].material", "The material of the bead is lead. In this box it is brass or tungsten.")]
    [InlineData("3 mm", "5 mm", "parts[0].size", "The size of the bead is 5 mm. In this box it is 2 mm to 4 mm.")]
    [InlineData("part: bead", "part: cone", "parts[0].part",
        "There is no cone in the parts box. The box holds 1 × bead, material brass or tungsten, size 2 mm to 4 mm; body, material floss.")]
    public void Grade_OutsideTheBox_IsExplainedAndNoAttempt(string old, string now, string path, string text)
    {
        GradeResult result = Grader.Grade(Flies.Compose, Model.Replace(old, now, StringComparison.Ordinal), 0);

        AnswerProblem problem = Assert.Single(result.Problems);
        Assert.Equal((path, text), (problem.Path, problem.Text));
    }

    [Fact]
    public void Grade_OneBeadTooMany_IsExplained()
    {
        string two = Model.TrimEnd() + "\n  - part: bead\n    material: brass\n    size: 2 mm\n    at: 5 mm\n";

        AnswerProblem problem = Assert.Single(Grader.Grade(Flies.Compose, two, 0).Problems);

        Assert.Equal("The box holds only 1 × bead, and bead 2 is one more.", problem.Text);
    }
}
