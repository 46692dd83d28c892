using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using Xunit;

namespace TyingClass.Lessons.Tests.Kinds.Explain;

public sealed class ExplainTests
{
    [Fact]
    public void Grade_AnyText_WaitsForAPersonAndIsComparedWithTheModelAnswer()
    {
        Exercise exercise = Repo.Exercise("id: e-1\nkind: explain\ntitle: E\nconcepts: [keel side]\nprompt: Why?\nmodel answer: Because of the lever.\n");

        GradeResult result = Grader.Grade(exercise, "I think it swings below the eye.", 0);

        Assert.True(result.AwaitsReview);
        Assert.False(result.Passed);
        Assert.Contains("Compare yours with the model answer", result.Feedback!.Why, StringComparison.Ordinal);
        Assert.False(Grader.Grade(exercise, "  ", 0).IsAttempt);
        Assert.False(Grader.Grade(exercise, "x", 0).IsAttempt);
        Assert.False(Grader.Grade(exercise, "swings swings swings swings swings swings", 0).IsAttempt);
        Assert.False(Grader.Grade(exercise, new string('x', 10_001), 0).IsAttempt);
    }
}
