using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Tests.Grading;
using Xunit;

namespace TyingClass.Lessons.Tests.Kinds.Sort;

public sealed class SortTests
{
    [Theory]
    [InlineData("Slate Minnow\nTail-heavy Minnow\nBare Hook")]
    [InlineData("slate minnow > tail-heavy minnow > bare hook")]
    [InlineData(" Slate Minnow , Tail-heavy Minnow,Bare Hook, ")]
    public void Grade_RightOrder_Passes(string answer)
    {
        GradeResult result = Grader.Grade(Flies.Sort, answer, 0);

        Assert.True(result.Passed);
        Assert.Contains("In order: Slate Minnow (0.55 g)", result.Feedback!.WhatItWouldDo, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_NeighborsSwapped_MarksThatPairAndKeepsTheFiguresBack()
    {
        GradeResult result = Grader.Grade(Flies.Sort, "Tail-heavy Minnow, Slate Minnow, Bare Hook", 0);

        Assert.False(result.Passed);
        Assert.Equal([false, true], result.Feedback!.Goals.Select(g => g.Met));
        Assert.DoesNotContain("0.555", result.Feedback.WhatItWouldDo + result.Feedback.Why + result.Feedback.WhereToLook, StringComparison.Ordinal);
        Assert.Equal("Weigh them.", result.Feedback.WhereToLook);
        Assert.StartsWith("In order: ", Grader.Grade(Flies.Sort, "Tail-heavy Minnow, Slate Minnow, Bare Hook", 1).Feedback!.WhereToLook,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "Put the flies in order")]
    [InlineData("Slate Minnow, Tail-heavy Minow, Bare Hook", "Did you mean “Tail-heavy Minnow”?")]
    [InlineData("Slate Minnow, Bare Hook", "leaves out Tail-heavy Minnow")]
    [InlineData("Slate Minnow, Slate Minnow, Bare Hook", "stands in your order twice")]
    public void Grade_NotAnOrderOfAll_IsNoAttempt(string answer, string text) =>
        Assert.Contains(text, Assert.Single(Grader.Grade(Flies.Sort, answer, 0).Problems).Text, StringComparison.Ordinal);
}
