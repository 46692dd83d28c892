using System.Collections.Immutable;
using TyingClass.Lessons.Grading;
using Xunit;

namespace TyingClass.Lessons.Tests.Grading;

public sealed class RegradeNoteTests
{
    private static readonly GradeResult Now =
        new() { Passed = false, EngineVersion = "2", ExerciseVersion = "a", Figures = [new("keel height", 0.38e-3), new("mass", 0.5e-3)] };
    private static readonly ImmutableArray<GradedFigure> Then = [new("keel height", 0.41e-3), new("mass", 0.5e-3)];

    [Fact]
    public void Of_NewerEngineGradesOtherwise_SaysWhichFigureMoved() =>
        Assert.Equal("The engine has changed since. Today it would not pass: keel height was 0.41 mm and is now 0.38 mm.",
        RegradeNote.Of("1", "a", true, Then, Now));

    [Fact]
    public void Of_SameGradeOtherFigure_SaysThatTheGradeStands() =>
        Assert.Equal("The engine has changed since. The grade would be the same: keel height was 0.41 mm and is now 0.38 mm.",
        RegradeNote.Of("1", "a", false, Then, Now));

    [Fact]
    public void Of_NothingDiffers_IsNull()
    {
        Assert.Null(RegradeNote.Of("1", "a", false, Now.Figures, Now));
        Assert.Null(RegradeNote.Of("2", "a", true, Then, Now));
    }

    [Fact]
    public void Of_ExerciseChanged_SaysSo() =>
        Assert.StartsWith("The exercise has changed since. Today it would not pass", RegradeNote.Of("2", "b", true, Then, Now), StringComparison.Ordinal);

    [Fact]
    public void Of_AnswerNoLongerTaken_SaysWhy() =>
        Assert.Equal(
            "The exercise has changed since. Today this answer would not be taken: The gape may not be changed.",
            RegradeNote.Of("2", "b", true, Then,
                new GradeResult { EngineVersion = "2", ExerciseVersion = "a", Problems = [new(1, 1, null, "The gape may not be changed.")] }));
}
