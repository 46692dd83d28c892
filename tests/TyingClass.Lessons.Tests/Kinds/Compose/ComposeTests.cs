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
    public void Grade_BareHook_IsNoAttempt()
    {
        string bare = Model[..Model.IndexOf("parts:", StringComparison.Ordinal)] + "parts: []\n";

        AnswerProblem problem = Assert.Single(Grader.Grade(Flies.Compose, bare, 0).Problems);

        Assert.Equal("parts", problem.Path);
        Assert.Contains("nothing on the hook yet", problem.Text, StringComparison.Ordinal);
    }

    // Only its kind and its metal: all of it would be taken from what is usual.
    [Fact]
    public void Grade_PartOfWhichNothingIsSaid_IsNoAttempt()
    {
        AnswerProblem[] problems = [.. Grader.Grade(Flies.Compose, Model.TrimEnd() + "\n  - part: body\n    material: floss\n", 0).Problems];

        Assert.Equal("parts[1].mass", Assert.Single(problems).Path);
        Assert.Contains("Nothing is said of the body yet", problems[0].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_SeveralThingsOutsideTheBox_AreAllNamedAtOnce()
    {
        string answer = Model.Replace("tungsten", "lead", StringComparison.Ordinal).Replace("3 mm", "5 mm", StringComparison.Ordinal);

        Assert.Equal(["parts[0].material", "parts[0].size"], Grader.Grade(Flies.Compose, answer, 0).Problems.Select(p => p.Path!).Order());
    }

    // A slipped decimal point: 9 g of hair for 0.09 g.
    [Theory]
    [InlineData("0.09 g", false)]
    [InlineData("2.5 g", false)]
    [InlineData("9 g", true)]
    public void Grade_AWingBeyondReason_IsAskedAbout(string mass, bool asked)
    {
        string answer = $"recipe: Heavy Hair\nintent: point down\nhook:\n  size: 6\nparts:\n  - part: wing\n    mass: {mass}\n";
        Lessons.Exercises.Exercise free = Repo.Exercise(
            "id: c-2\nkind: compose\ntitle: C\nconcepts: [mass center]\nprompt: Tie it.\ngoals:\n  - mass: at most 20 g\nmodel answer: |\n  "
            + answer.Replace("\n", "\n  ", StringComparison.Ordinal).Replace(mass, "0.1 g", StringComparison.Ordinal));

        GradeResult result = Grader.Grade(free, answer, 0, GradeOptions.WithoutAdvice);

        Assert.Equal(!asked, result.IsAttempt);
        if (asked) Assert.StartsWith("Can 9 g be meant?", Assert.Single(result.Problems, p => p.Path == "parts[0].mass").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_OneBeadTooMany_IsExplained()
    {
        string two = Model.TrimEnd() + "\n  - part: bead\n    material: brass\n    size: 2 mm\n    at: 5 mm\n";

        AnswerProblem problem = Assert.Single(Grader.Grade(Flies.Compose, two, 0).Problems);

        Assert.Equal("The box holds only 1 × bead, and bead 2 is one more.", problem.Text);
    }
}
