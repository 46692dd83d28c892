using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using Xunit;

namespace TyingClass.Lessons.Tests.Grading;

/// <summary>Goals at their very bound, and which of several missed ones is told first.</summary>
public sealed class GoalTests
{
    /// <summary>What is counted can stand exactly where the goal ends: one change of at most one, three parts of at least three.</summary>
    [Theory]
    [InlineData("changes: at most 1", true)]
    [InlineData("changes: at most 0", false)]
    [InlineData("parts: at least 3", true)]
    [InlineData("parts: at most 3", true)]
    [InlineData("parts: at least 4", false)]
    [InlineData("parts: at most 2", false)]
    public void Grade_CountAtTheBoundOfItsGoal_MeetsIt(string goal, bool met)
    {
        Feedback feedback = Grader.Grade(Repair(goal), Flies.DarterOnTop, 0).Feedback!;
        Assert.Equal(met, feedback.Goals.Single().Met);
    }

    /// <summary>
    /// Of two goals missed the one is told first that is missed by more of its own measure, wherever it stands in the list. A hook of size 8 with a tungsten
    /// bead of 3 mm weighs between 0.2 g and 0.6 g and sinks at less than 1 m/s and more than 0.2 m/s.
    /// </summary>
    [Theory]
    [InlineData("mass: at most 0.1 g", "sink rate: at least 3 m/s", "mass")]
    [InlineData("mass: at least 30 g", "sink rate: at most 0.01 m/s", "sink rate")]
    [InlineData("mass: between 0.1 g and 0.101 g", "sink rate: at most 0.01 m/s", "mass")]
    [InlineData("mass: between 1 g and 9 g", "sink rate: at least 3 m/s", "sink rate")]
    public void Grade_TwoGoalsMissed_TheOneMissedByMoreComesFirst(string one, string other, string first)
    {
        foreach (string[] goals in (string[][])[[one, other], [other, one]])
        {
            Exercise exercise = Compose(goals);
            GradeResult result = Grader.Grade(exercise, exercise.ModelAnswer!, 0);
            Assert.Equal([false, false], result.Feedback!.Goals.Select(g => g.Met));
            Assert.Equal(first, result.Why[0].Quantity);
        }
    }

    // Two clauses fit into one sentence here: both are told.
    [Fact]
    public void Grade_TwoGoalsMissed_TheReplyTellsBoth()
    {
        Exercise exercise = Compose("mass: at most 0.1 g", "sink rate: at least 3 m/s");

        string reply = Grader.Grade(exercise, exercise.ModelAnswer!, 0).Feedback!.Reply!;

        Assert.StartsWith("Neither goal is met: it is too heavy", reply, StringComparison.Ordinal);
        Assert.Contains("; it sinks too slowly", reply, StringComparison.Ordinal);
    }

    private static Exercise Repair(params string[] goals) => Repo.Exercise($"""
        id: r-7
        kind: repair
        title: R
        concepts: [keel side]
        prompt: Turn it over.
        file: recipes/reed-darter.fly.yaml
        allow:
          - parts[0].side: [top, under]
        goals:
        {string.Join('\n', goals.Select(g => $"  - {g}"))}
        hints: [First hint.]
        model answer:
          parts[0].side: top
        """);

    private static Exercise Compose(params string[] goals) => Repo.Exercise($"""
        id: c-7
        kind: compose
        title: C
        concepts: [mass center]
        prompt: Tie it.
        parts box:
          - part: bead
            material: tungsten
            size: 2 mm … 4 mm
        hook:
          size: 8
        goals:
        {string.Join('\n', goals.Select(g => $"  - {g}"))}
        model answer: |
          recipe: Deep Fry
          intent: point down
          hook:
            size: 8
          parts:
            - part: bead
              material: tungsten
              size: 3 mm
              at: 0 mm
        """);
}
