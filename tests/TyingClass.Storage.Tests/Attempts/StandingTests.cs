using TyingClass.Lessons.Grading;
using TyingClass.Storage.Attempts;
using Xunit;

namespace TyingClass.Storage.Tests.Attempts;

/// <summary>What a row of attempts adds up to, attempt by attempt.</summary>
public sealed class StandingTests
{
    private static readonly DateTimeOffset Began = new(2026, 1, 14, 19, 30, 0, TimeSpan.Zero);

    [Fact]
    public void After_FailedHandedInFailed_IsOpenAndWasHandedInWhenItWas()
    {
        Standing standing = Of(Grades.Failed, Grades.Waiting, Grades.Failed);
        Assert.Equal((3, 2, false, false, true), (standing.Attempts, standing.Failed, standing.Passed, standing.AwaitsReview, standing.IsOpen));
        Assert.Equal(Began.AddMinutes(2), standing.HandedInAt);
        Assert.Equal(Began.AddMinutes(3), standing.LastAt);
        Assert.Equal(3, standing.LastFailed!.Number);
    }

    [Fact]
    public void After_Waiting_IsNeitherOpenNorFailed()
    {
        Standing standing = Of(Grades.Failed, Grades.Waiting);
        Assert.Equal((2, 1, false, true, false), (standing.Attempts, standing.Failed, standing.Passed, standing.AwaitsReview, standing.IsOpen));
        Assert.Equal(1, standing.LastFailed!.Number);
    }

    [Fact]
    public void After_APass_NothingWaitsAndTheFirstHandingInStands()
    {
        Standing standing = Of(Grades.Failed, Grades.Passed, Grades.Waiting, Grades.Passed);
        Assert.Equal((4, 1, true, false, false), (standing.Attempts, standing.Failed, standing.Passed, standing.AwaitsReview, standing.IsOpen));
        Assert.Equal(Began.AddMinutes(2), standing.HandedInAt);
        Assert.Equal(1, standing.LastFailed!.Number);
    }

    [Fact]
    public void Of_OnlyFailures_WasNeverHandedIn()
    {
        Standing standing = Of(Grades.Failed);
        Assert.Null(standing.HandedInAt);
        Assert.True(standing.IsOpen);
        Assert.Equal("keel height at least 0.4 mm", standing.LastFailed!.Missed);
    }

    [Fact]
    public void Of_NoAttempt_IsNothing()
    {
        Standing standing = Of();
        Assert.Equal((0, 0, false, false, false), (standing.Attempts, standing.Failed, standing.Passed, standing.AwaitsReview, standing.IsOpen));
        Assert.Null(standing.LastFailed);
    }

    private static Standing Of(params GradeResult[] grades) =>
        Standing.Of("p1", "keel-03", grades.Select((g, i) => Attempt.Of("p1", "keel-03", i + 1, Began.AddMinutes(i + 1), $"answer {i}", g)));
}
