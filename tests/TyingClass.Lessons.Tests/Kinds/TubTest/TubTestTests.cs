using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using Xunit;

namespace TyingClass.Lessons.Tests.Kinds.TubTest;

public sealed class TubTestTests
{
    private static readonly Exercise TubTest = Repo.Exercise("""
        id: t-1
        kind: tub test
        title: T
        concepts: [mass center]
        prompt: Drop it.
        file: recipes/slate-minnow.fly.yaml
        record: [hang angle, sink rate, which way up]
        """);

    [Theory]
    [InlineData("1.5 g", "1.2 g", true)]
    [InlineData("1.5 g", "1.5 g", false)]
    [InlineData("1.2 g", "1.5 g", false)]
    public void Grade_WetFlyLighterThanTheDryOne_IsAskedAbout(string dry, string wet, bool asked)
    {
        Lessons.Exercises.Exercise exercise = Repo.Exercise(
            "id: t-9\nkind: tub test\ntitle: T\nconcepts: [mass center]\nprompt: Weigh it.\nfile: recipes/slate-minnow.fly.yaml\n"
            + "record: [mass, mass with held water]");

        GradeResult result = Grader.Grade(exercise, $"mass: {dry}\nmass with held water: {wet}", 0);

        Assert.Equal(!asked, result.IsAttempt);
        if (asked) Assert.Equal("mass with held water", Assert.Single(result.Problems).Path);
    }

    [Fact]
    public void Grade_Observations_StandBesideThePredictionAndAreNeverWrong()
    {
        GradeResult result = Grader.Grade(TubTest, "hang angle: 12°\nsink rate: 1 ft/s\nwhich way up: point down\n", 0);

        Assert.True(result.AwaitsReview);
        Assert.All(result.Feedback!.Goals, g => Assert.True(g.Met));
        Assert.Equal(["hang angle", "sink rate", "which way up"], result.Observations.Select(o => o.Quantity));
        Assert.Equal(0.3048, result.Observations[1].ObservedSi!.Value, 1e-12);
        Assert.NotNull(result.Observations[1].PredictedSi);
        Assert.Matches("^you saw 12°, [0-9.]+° more$", result.Feedback.Goals[0].Reached);
        Assert.Equal("you saw point down, as predicted", result.Feedback.Goals[2].Reached);
    }

    [Theory]
    [InlineData("", 0, "Write down at least one thing you saw")]
    [InlineData("hang angle: twelve", 1, "number")]
    [InlineData("hang angle: 5°\nsplash: 3", 2, "Begin each line with")]
    [InlineData("which way up: left", 1, "point down, point up, on its side")]
    public void Grade_UnreadableLine_IsPlacedAndNoAttempt(string answer, int line, string text)
    {
        AnswerProblem problem = Assert.Single(Grader.Grade(TubTest, answer, 0).Problems);

        Assert.Equal(line, problem.Line);
        Assert.Contains(text, problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_LinesLeftBlank_AreNotMissed() =>
        Assert.Single(Grader.Grade(TubTest, "hang angle:\nsink rate: 0.5 m/s\nwhich way up: ", 0).Observations);

    [Theory]
    [InlineData("point up")]
    [InlineData("point down")]
    public void Grade_AnyWayOfAFlyThatTheModelLeavesToTheCast_IsAsTheModelSays(string way)
    {
        Exercise either = Repo.Exercise(
            "id: t-8\nkind: tub test\ntitle: T\nconcepts: [mass center]\nprompt: Drop it.\nfile: recipes/quay-bullhead.fly.yaml\nrecord: [which way up]");

        Feedback feedback = Grader.Grade(either, $"which way up: {way}", 0).Feedback!;

        Assert.Contains("as the model says", feedback.Reply, StringComparison.Ordinal);
        Assert.Contains($"You saw it ride {way}, and the model says it may land either way", feedback.First, StringComparison.Ordinal);
        Assert.Equal($"you saw {way}; the next cast may land otherwise", Assert.Single(feedback.Goals).Reached);
    }
}
