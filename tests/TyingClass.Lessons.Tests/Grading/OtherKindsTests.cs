using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using Xunit;

namespace TyingClass.Lessons.Tests.Grading;

/// <summary>Sort, explain and tub test.</summary>
public sealed class OtherKindsTests
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
    [InlineData("Slate Minnow\nTail-heavy Minnow\nBare Hook")]
    [InlineData("slate minnow > tail-heavy minnow > bare hook")]
    [InlineData(" Slate Minnow , Tail-heavy Minnow,Bare Hook, ")]
    public void Sort_RightOrder_Passes(string answer)
    {
        GradeResult result = Grader.Grade(Flies.Sort, answer, 0);

        Assert.True(result.Passed);
        Assert.Contains("In order: Slate Minnow (0.55 g)", result.Feedback!.WhatItWouldDo, StringComparison.Ordinal);
    }

    [Fact]
    public void Sort_NeighborsSwapped_MarksThatPairAndKeepsTheFiguresBack()
    {
        GradeResult result = Grader.Grade(Flies.Sort, "Tail-heavy Minnow, Slate Minnow, Bare Hook", 0);

        Assert.False(result.Passed);
        Assert.Equal([false, true], result.Feedback!.Goals.Select(g => g.Met));
        Assert.DoesNotContain("0.555", result.Feedback.WhatItWouldDo + result.Feedback.Why + result.Feedback.WhereToLook, StringComparison.Ordinal);
        Assert.Equal("Weigh them.", result.Feedback.WhereToLook);
        Assert.StartsWith("In order: ", Grader.Grade(Flies.Sort, "Tail-heavy Minnow, Slate Minnow, Bare Hook", 1).Feedback!.WhereToLook, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "Put the flies in order")]
    [InlineData("Slate Minnow, Tail-heavy Minow, Bare Hook", "Did you mean “Tail-heavy Minnow”?")]
    [InlineData("Slate Minnow, Bare Hook", "leaves out Tail-heavy Minnow")]
    [InlineData("Slate Minnow, Slate Minnow, Bare Hook", "stands in your order twice")]
    public void Sort_NotAnOrderOfAll_IsNoAttempt(string answer, string text) =>
        Assert.Contains(text, Assert.Single(Grader.Grade(Flies.Sort, answer, 0).Problems).Text, StringComparison.Ordinal);

    [Fact]
    public void Explain_AnyText_WaitsForAPersonAndShowsTheModelAnswer()
    {
        Exercise exercise = Repo.Exercise("id: e-1\nkind: explain\ntitle: E\nconcepts: [keel side]\nprompt: Why?\nmodel answer: Because of the lever.\n");

        GradeResult result = Grader.Grade(exercise, "I think it swings.", 0);

        Assert.True(result.AwaitsReview);
        Assert.False(result.Passed);
        Assert.Equal("Because of the lever.", result.ModelAnswer);
        Assert.False(Grader.Grade(exercise, "  ", 0).IsAttempt);
        Assert.False(Grader.Grade(exercise, new string('x', 10_001), 0).IsAttempt);
    }

    [Fact]
    public void TubTest_Observations_StandBesideThePredictionAndAreNeverWrong()
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
    public void TubTest_UnreadableLine_IsPlacedAndNoAttempt(string answer, int line, string text)
    {
        AnswerProblem problem = Assert.Single(Grader.Grade(TubTest, answer, 0).Problems);

        Assert.Equal(line, problem.Line);
        Assert.Contains(text, problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void TubTest_LinesLeftBlank_AreNotMissed() =>
        Assert.Single(Grader.Grade(TubTest, "hang angle:\nsink rate: 0.5 m/s\nwhich way up: ", 0).Observations);
}
