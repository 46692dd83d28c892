using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Kinds.Predict;
using Xunit;

namespace TyingClass.Lessons.Tests.Kinds.Predict;

public sealed class PredictTests
{
    private const string Head = "id: p-1\nkind: predict\ntitle: P\nconcepts: [keel side]\nprompt: What?\nhints: [A hint.]\n";
    private const string Reasons = "\nreasons:\n  - It looks heavier.\n  - right: The bead counts for more.\n  - The water is cold.\n";
    private const string Darter = Head + "file: recipes/reed-darter.fly.yaml\n";
    private const string Minnow = Head + "file: recipes/slate-minnow.fly.yaml\n";

    [Theory]
    [InlineData("point down", true)]
    [InlineData("POINT DOWN ", true)]
    [InlineData("1", true)]
    [InlineData("point up", false)]
    [InlineData("2", false)]
    public void Grade_WhichWayUp_TakesTheWordsOrTheNumber(string answer, bool passes)
    {
        GradeResult result = Grader.Grade(Repo.Exercise(Darter + "ask: which way up"), answer, 0);

        Assert.Equal(passes, result.Passed);
        Assert.Contains("Expect it to flip and ride point down.", result.Feedback!.WhatItWouldDo, StringComparison.Ordinal);
        Assert.Equal(passes ? null : Telling.Reasons.ReasonOffer.WhereNext, result.Feedback.WhereToLook);
        Assert.Equal(passes, result.Feedback.Goals.Single().Met);
    }

    [Theory]
    [InlineData("")]
    [InlineData("sideways")]
    [InlineData("0")]
    [InlineData("5")]
    public void Grade_NoneOfTheChoices_IsNoAttempt(string answer) =>
        Assert.False(Grader.Grade(Repo.Exercise(Darter + "ask: which way up"), answer, 0).IsAttempt);

    // A fly pulled slowly on a straight eye hangs from its eye: nose up. The weight of the bead makes no difference to the sign.
    [Fact]
    public void Grade_Nose_IsComputedFromThePitch() =>
        Assert.True(Grader.Grade(Repo.Exercise(Minnow + "ask: nose"), WhereTheNosePoints.Up, 0).Passed);

    // Common practice, no source: at one size a tungsten bead outweighs a brass one, and the heavier fly sinks faster.
    [Theory]
    [InlineData("which has more mass")]
    [InlineData("which sinks faster")]
    public void Grade_TwoFlies_TheDenserBeadHasMore(string ask)
    {
        string other = Repo.Recipe("recipes/slate-minnow.fly.yaml")!.Replace("Slate Minnow", "Heavy Minnow", StringComparison.Ordinal).Replace("brass",
            "tungsten", StringComparison.Ordinal);
        Exercise exercise = Repo.Exercise(Minnow + $"ask: {ask}\nother recipe: |\n  " + other.Replace("\n", "\n  ", StringComparison.Ordinal));

        Assert.True(Grader.Grade(exercise, "Heavy Minnow", 0).Passed);
        Feedback feedback = Grader.Grade(exercise, "Slate Minnow", 0).Feedback!;
        Assert.Contains("you said “Slate Minnow”; it is “Heavy Minnow”", feedback.Goals.Single().Reached, StringComparison.Ordinal);
        Assert.Contains("Heavy Minnow: ", feedback.WhatItWouldDo, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("mass", "parts[0].material: tungsten", ChangeIn.Rises)]
    [InlineData("mass", "parts[0].material: glass", ChangeIn.Falls)]
    [InlineData("mass", "parts[2].side: under", ChangeIn.Stays)]
    [InlineData("mass center, x", "parts[0].material: tungsten", ChangeIn.Falls)]
    [InlineData("tow point, x", "parts[0].material: tungsten", ChangeIn.Stays)]
    public void Grade_ChangeIn_IsComputedFromBothFlies(string quantity, string change, string key)
    {
        Exercise exercise = Repo.Exercise(Minnow + $"ask: change in {quantity}\nchange:\n  {change}");

        Assert.Equal(ChangeIn.Choices, exercise.Choices);
        Assert.True(Grader.Grade(exercise, key, 0).Passed, Grader.Grade(exercise, key, 0).Feedback!.WhatItWouldDo);
    }

    [Fact]
    public void Grade_OwnChoices_TheOneWhoseConditionHoldsIsRight()
    {
        Exercise exercise = Repo.Exercise(Minnow + """
            choices:
              - say: under half a gram
                when: mass < 0.5 g
              - say: half a gram or more
                when: mass >= 0.5 g
            misreadings:
              - when: answer is "under half a gram"
                say: You left out the hook.
            """);

        Assert.True(Grader.Grade(exercise, "half a gram or more", 0).Passed);
        Assert.Equal("You left out the hook.", Grader.Grade(exercise, "1", 0).Feedback!.Misreading);
    }

    [Fact]
    public void Grade_TwoConditionsHold_IsNotMarked()
    {
        Exercise exercise = Repo.Exercise(Minnow + "choices:\n  - say: a\n    when: mass > 0.1 g\n  - say: b\n    when: mass > 0.2 g\n");

        GradeResult result = Grader.Grade(exercise, "a", 0);

        Assert.False(result.IsAttempt);
        Assert.Contains("not marked", result.Problems.Single().Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_SecondVoteOnAFlyAlreadyShown_IsNoAttempt()
    {
        Exercise exercise = Repo.Exercise(Minnow + "ask: nose");

        GradeResult again = Grader.Grade(exercise, WhereTheNosePoints.Up, 1);

        Assert.False(again.IsAttempt);
        Assert.Equal(Telling.Reasons.ReasonOffer.AlreadyShown, again.Problems.Single().Text);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Grade_FreshFly_PassesOnlyForTheRightReason(int reason)
    {
        Exercise exercise = Repo.Exercise(Minnow + "ask: change in mass center, x\nchange:\n  parts[0].material: tungsten" + Reasons);
        Exercise fresh = FreshProblem.Of(exercise, 1)!;
        string key = fresh.Kind.RightAnswer(fresh)!, other = fresh.Choices.First(c => c != key);

        GradeResult right = Grader.Grade(exercise, new PredictAnswer(1, reason, key).Text, 1),
            wrong = Grader.Grade(exercise, new PredictAnswer(1, reason, other).Text, 1);

        Assert.NotEqual(exercise.RecipeText, fresh.RecipeText);
        Assert.Equal(reason == 2, right.Passed);
        Assert.False(wrong.Passed);
        Assert.Equal(reason == 2, right.Feedback!.Remark!.StartsWith("You had the reason", StringComparison.Ordinal));
        Assert.Contains("the Slate Minnow", right.Feedback.Remark, StringComparison.Ordinal);
        // Which one it is instead would be voted for next time.
        Assert.Equal(reason == 2, Everything(right.Feedback).Contains("bead counts for more", StringComparison.Ordinal));
        Assert.Equal(right.Feedback.Goals, Grader.Grade(exercise, new PredictAnswer(1, reason, key).Text, 0).Feedback!.Goals);
    }

    [Theory]
    [InlineData("fresh 1: it gets larger", "reason")]
    [InlineData("reason: 9\nfresh 1: it gets larger", "reason")]
    [InlineData("reason: 1", "fresh fly")]
    [InlineData("reason: 1\nfresh 3: it gets larger", "answered")]
    [InlineData("reason: 1\nfresh 1: sideways", "Choose one of these")]
    [InlineData("", "fresh fly")]
    public void Grade_HalfAFreshAnswer_IsExplainedAndNoAttempt(string answer, string text)
    {
        Exercise exercise = Repo.Exercise(Minnow + "ask: change in mass center, x\nchange:\n  parts[0].material: tungsten");

        GradeResult result = Grader.Grade(exercise, answer, 1);

        Assert.False(result.IsAttempt);
        Assert.Contains(result.Problems, p => p.Text.Contains(text, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("fresh 1: it gets larger", "reason")]
    [InlineData("reason: 1", "fresh 1")]
    [InlineData("", "reason,fresh 1")]
    public void Grade_HalfAFreshAnswer_NamesWhatIsMissing(string answer, string paths)
    {
        Exercise exercise = Repo.Exercise(Minnow + "ask: change in mass center, x\nchange:\n  parts[0].material: tungsten" + Reasons);

        Assert.Equal(paths.Split(','), Grader.Grade(exercise, answer, 1).Problems.Select(p => p.Path!));
    }

    [Fact]
    public void Read_Reasons_AreOfferedAsWritten()
    {
        OfferedReasons offered = OfferedReasons.Of(Repo.Exercise(Minnow + "ask: nose" + Reasons))!;

        Assert.Equal(["It looks heavier.", "The bead counts for more.", "The water is cold."], offered.Said);
        Assert.Equal(2, offered.Right);
    }

    // One thing is changed, so its name is no reason: those that are offered say how it comes about.
    [Fact]
    public void Reasons_OfTheCourse_AreMechanismsAndNoNames()
    {
        using CourseFolder folder = new(Repo.Lessons);
        Exercise[] asked = [.. folder.Current.Exercises.Where(e => e.Task is PredictTask)];

        Assert.NotEmpty(asked);
        Assert.All(asked, e =>
        {
            PredictTask task = (PredictTask)e.Task;
            Assert.Equal(3, task.Reasons.Length);
            Assert.All(task.Reasons, r => Assert.True(r.Split(' ').Length is >= 6 and <= 22 && r.EndsWith('.'), $"{e.Id}: {r}"));
        });
    }

    [Fact]
    public void Of_TheSameNumber_IsTheSameFreshFly()
    {
        Exercise exercise = Repo.Exercise(Darter + "ask: which way up");

        Assert.Equal(FreshProblem.Of(exercise, 2)?.RecipeText, FreshProblem.Of(Repo.Exercise(Darter + "ask: which way up"), 2)?.RecipeText);
    }

    private static string Everything(Feedback feedback) =>
        $"{feedback.First} {feedback.WhatItWouldDo} {feedback.Why} {feedback.WhereToLook} {feedback.Remark} "
        + string.Join(' ', feedback.Goals.Select(g => $"{g.Asked} {g.Reached}"));
}
