using TyingClass.Lessons.Grading;
using TyingClass.Storage.Attempts;
using TyingClass.Telling.Reasons;
using Xunit;

namespace TyingClass.Storage.Tests.Attempts;

public sealed class AttemptStoreTests
{
    [Fact]
    public void Of_AfterReopening_ReturnsEverythingAsKept()
    {
        using TempStore temp = new();
        const string answer = "  recipe: Reed Darter\r\n# a comment, and spaces at the end   \n\n";
        Attempt added = temp.Store.Attempts.Add("p1", "keel-03", answer, Grades.Failed);

        temp.Reopen();
        Attempt kept = Assert.Single(temp.Store.Attempts.Of("p1", "keel-03"));

        Assert.Equal(answer, kept.AnswerText);
        Assert.Equal(added.Id, kept.Id);
        Assert.Equal(temp.Clock.GetUtcNow(), kept.At);
        Assert.Equal("engine 1, course a", kept.EngineVersion);
        Assert.False(kept.Passed);
        Assert.NotNull(kept.Feedback);
        Feedback expected = Grades.Failed.Feedback!;
        Assert.Equal(expected.Reply, kept.Feedback.Reply);
        Assert.Equal(expected.WhatItWouldDo, kept.Feedback.WhatItWouldDo);
        Assert.Equal(expected.Goals, kept.Feedback.Goals);
        Assert.Equal(expected.Why, kept.Feedback.Why);
        Assert.Equal(expected.WhereToLook, kept.Feedback.WhereToLook);
        Assert.Equal(expected.Misreading, kept.Feedback.Misreading);
        Assert.Equal(expected.Cautions, kept.Feedback.Cautions);
    }

    [Fact]
    public void Of_GradedFiguresAndObservations_ComeBackAsKept()
    {
        using TempStore temp = new();
        GradeResult grade = Grades.Waiting with
        {
            ExerciseVersion = "0a1b2c3d4e5f",
            Figures = [new GradedFigure("sink rate", 0.21), new GradedFigure("keel height", null), new GradedFigure("parts", 3)],
            Observations =
                [new Observation("sink rate", 0.21, 0.25, "0.21 m/s", "0.25 m/s"), new Observation("which way up", null, null, "point up", "point down")],
        };
        temp.Store.Attempts.Add("p1", "tub-01", "sink rate: 0.25 m/s", grade);
        temp.Reopen();
        Attempt kept = Assert.Single(temp.Store.Attempts.Of("p1", "tub-01"));
        Assert.Equal("0a1b2c3d4e5f", kept.ExerciseVersion);
        Assert.Equal(grade.Figures, kept.GradedFigures);
        Assert.Equal(grade.Observations, kept.Observations);
    }

    [Fact]
    public void Of_PicturesOfOtherSpeedsThanTheRecipes_ComeBackWithThem()
    {
        using TempStore temp = new();
        AskedPicture[] pictures =
        [
            new(FlyView.Pulled, FlyPair.None) { SpeedMS = 0.3 }, new(FlyView.Towed, FlyPair.Speeds, "wing", "this decides") { Speeds = (0.3, 1.1) },
            new(FlyView.Towed, FlyPair.None, "eye", "the knot"),
        ];
        foreach (AskedPicture picture in pictures)
            temp.Store.Attempts.Add("p1", "tow-04", "30°", Grades.Failed with { Feedback = Grades.Failed.Feedback! with { Picture = picture } });
        temp.Reopen();
        Assert.Equal(pictures, temp.Store.Attempts.Of("p1", "tow-04").OrderBy(a => a.Number).Select(a => a.Feedback!.Picture!));
    }

    [Fact]
    public void Add_EmptyAnswerText_IsKeptEmptyAndNotNull()
    {
        using TempStore temp = new();
        temp.Store.Attempts.Add("p1", "words-01", "", Grades.Waiting);
        Assert.Equal("", Assert.Single(temp.Store.Attempts.Of("p1", "words-01")).AnswerText);
    }

    [Fact]
    public void Add_UnreadableAnswer_ThrowsAndKeepsNothing()
    {
        using TempStore temp = new();
        Assert.Throws<ArgumentException>(() => temp.Store.Attempts.Add("p1", "keel-03", "x", Grades.Unreadable));
        Assert.Empty(temp.Store.Attempts.Of("p1", "keel-03"));
        Assert.Equal(0, temp.Store.Attempts.StandingOf("p1", "keel-03").Attempts);
    }

    [Fact]
    public void Of_OtherPersonOrExercise_IsEmpty()
    {
        using TempStore temp = new();
        temp.Store.Attempts.Add("p1", "keel-03", "a", Grades.Failed);
        Assert.Empty(temp.Store.Attempts.Of("p2", "keel-03"));
        Assert.Empty(temp.Store.Attempts.Of("p1", "keel-0"));
        Assert.Empty(temp.Store.Attempts.Of("P1", "keel-03"));
    }

    [Fact]
    public void StandingOf_FailedThenPassedThenFailed_StaysPassed()
    {
        using TempStore temp = new();
        foreach (GradeResult grade in new[] { Grades.Failed, Grades.Passed, Grades.Failed })
            temp.Store.Attempts.Add("p1", "keel-03", "a", grade);

        Standing standing = temp.Store.Attempts.StandingOf("p1", "keel-03");

        Assert.Equal((3, 2, true, false), (standing.Attempts, standing.Failed, standing.Passed, standing.AwaitsReview));
    }

    [Fact]
    public void StandingOf_AnswerForAPersonToMark_AwaitsReviewAndIsNoFailure()
    {
        using TempStore temp = new();
        temp.Store.Attempts.Add("p1", "words-01", "a", Grades.Waiting);
        Standing standing = temp.Store.Attempts.StandingOf("p1", "words-01");
        Assert.Equal((1, 0, false, true), (standing.Attempts, standing.Failed, standing.Passed, standing.AwaitsReview));
    }

    [Fact]
    public async Task Add_ManyWritersAtOnce_NumbersRunWithoutGapOrDouble()
    {
        using TempStore temp = new();
        const int writers = 8, each = 25;
        using Barrier start = new(writers);
        await Task.WhenAll(Enumerable.Range(0, writers).Select(w => Task.Factory.StartNew(
            () =>
            {
                start.SignalAndWait(TestContext.Current.CancellationToken);
                for (int i = 0; i < each; i++) temp.Store.Attempts.Add("p1", "keel-03", $"{w}:{i}", Grades.Failed);
            },
            TestContext.Current.CancellationToken,
            TaskCreationOptions.LongRunning,
            TaskScheduler.Default)));

        var attempts = temp.Store.Attempts.Of("p1", "keel-03");

        Assert.Equal(Enumerable.Range(1, writers * each), attempts.Select(a => a.Number));
        Assert.Equal(writers * each, attempts.Select(a => a.AnswerText).Distinct().Count());
        Assert.Equal(writers * each, temp.Store.Attempts.StandingOf("p1", "keel-03").Attempts);
    }

    [Fact]
    public void StandingsOf_SeveralPeople_OneForEachPersonAndExercise()
    {
        using TempStore temp = new();
        temp.Store.Attempts.Add("p1", "a", "1", Grades.Failed);
        temp.Store.Attempts.Add("p1", "a", "2", Grades.Failed);
        temp.Store.Attempts.Add("p1", "b", "3", Grades.Passed);
        temp.Store.Attempts.Add("p2", "a", "4", Grades.Passed);

        var all = temp.Store.Attempts.StandingsOf(["p1", "p2"]).Select(s => (s.PersonId, s.ExerciseId, s.Attempts)).Order();

        Assert.Equal([("p1", "a", 2), ("p1", "b", 1), ("p2", "a", 1)], all);
        Assert.Equal(2, temp.Store.Attempts.StandingsOf("p1").Length);
    }
}
