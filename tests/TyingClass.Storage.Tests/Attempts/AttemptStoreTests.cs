using LiteDB;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Storage.Attempts;
using TyingClass.Telling.Reasons;
using Xunit;

namespace TyingClass.Storage.Tests.Attempts;

public sealed class AttemptStoreTests
{
    private const string FlyText = """
        recipe: Copper Loach
        intent: point up
        hook:
          size: 6
          shank: 4XL
          eye: down 25°
        parts:
          - part: cone
            material: brass
            size: 5.6 mm
            at: 0 mm
          - part: wing
            material: fur strip
            length: 45 mm
            mass: 0.25 g
            at: 5 mm
            side: under
        """;

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

    /// <summary>What a later reader may ask of the fly, by names that end in their unit.</summary>
    [Fact]
    public void Of_AnswerThatIsAFly_KeepsTheFiguresOfItsReport()
    {
        using TempStore temp = new();
        SolvedFly fly = SolvedFly.Solve(RecipeParser.Parse(FlyText).Value!);
        BalanceReport report = fly.Report;
        temp.Store.Attempts.Add("p1", "keel-03", FlyText, Grades.Passed with { Fly = fly });

        temp.Reopen();
        Dictionary<string, double> kept = temp.Store.Attempts.Of("p1", "keel-03").Single().Figures.ToDictionary(f => f.Name, f => f.Value);

        Assert.Equal(report.MassG, kept["massG"]);
        Assert.Equal(report.Soaked.AtFishingSpeed.PitchDeg, kept["pitchDeg"]);
        Assert.Equal(report.Soaked.Sink!.RateMS, kept["sinkRateMS"]);
        Assert.Equal(report.Fresh.AtFishingSpeed.KeelHeightMm.For(report.Intent), kept["keelHeightFreshMm"]);
        Assert.All(kept.Values, v => Assert.True(double.IsFinite(v)));
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
    public void Of_WhatOnlySomeAnswersAreTold_ComesBackToo()
    {
        using TempStore temp = new();
        Feedback told = Grades.Failed.Feedback! with { First = "Read the second goal again.", Remark = "In your own words.", MisreadConcept = "keel-side" };
        temp.Store.Attempts.Add("p1", "keel-03", "a", Grades.Failed with { Feedback = told });
        temp.Reopen();
        Feedback kept = Assert.Single(temp.Store.Attempts.Of("p1", "keel-03")).Feedback!;
        Assert.Equal((told.First, told.Remark, told.MisreadConcept), (kept.First, kept.Remark, kept.MisreadConcept));
        Assert.Equal("keel-side", Assert.Single(temp.Store.Attempts.NotesOf("p1")).MisreadConcept);
    }

    [Theory]
    [InlineData("view")]
    [InlineData("pair")]
    public void Of_PictureOnlyALaterProgramKnows_IsShownAsItAlwaysWas(string field)
    {
        using TempStore temp = new();
        AskedPicture picture = new(FlyView.Towed, FlyPair.Speeds, "wing", "this decides");
        temp.Store.Attempts.Add("p1", "tow-04", "30°", Grades.Failed with { Feedback = Grades.Failed.Feedback! with { Picture = picture } });
        temp.ChangeRecords("attempts", record => record["feedback"]["picture"][field] = "FromAbove");
        Feedback kept = Assert.Single(temp.Store.Attempts.Of("p1", "tow-04")).Feedback!;
        Assert.Null(kept.Picture);
        Assert.Equal(Grades.Failed.Feedback!.Why, kept.Why);
    }

    /// <summary>Sent again because its page never arrived.</summary>
    [Fact]
    public void Add_SameAnswerOutOfTheSameForm_IsOneAttempt()
    {
        using TempStore temp = new();
        Attempt first = Add("a", "form 1");
        Assert.Equal(first.Id, Add("a", "form 1").Id);
        Assert.Equal([1, 2, 3, 4, 5], [first.Number, Add("b", "form 1").Number, Add("a", "form 2").Number, Add("a", null).Number, Add("a", null).Number]);
        Assert.Equal(5, temp.Store.Attempts.StandingOf("p1", "keel-03").Attempts);

        Attempt Add(string answer, string? form) => temp.Store.Attempts.Add("p1", "keel-03", answer, Grades.Failed, form);
    }

    [Fact]
    public void AllOf_SeveralExercises_OldestFirstAndAtOneMomentByExerciseAndNumber()
    {
        using TempStore temp = new();
        foreach (string exercise in new[] { "tow-02", "keel-03", "tow-02" }) temp.Store.Attempts.Add("p1", exercise, "a", Grades.Failed);
        temp.Clock.Advance(TimeSpan.FromMinutes(1));
        temp.Store.Attempts.Add("p1", "eyes-01", "a", Grades.Failed);
        temp.Store.Attempts.Add("p2", "eyes-01", "a", Grades.Failed);
        Assert.Equal(
            [("keel-03", 1), ("tow-02", 1), ("tow-02", 2), ("eyes-01", 1)], temp.Store.Attempts.AllOf("p1").Select(a => (a.ExerciseId, a.Number)));
        Assert.Equal("eyes-01", temp.Store.Attempts.NotesOf("p1")[^1].ExerciseId);
    }

    [Fact]
    public void Notes_OfAttemptsFromBeforeThereWereNotes_AreMadeUpForAtTheOpening()
    {
        using TempStore temp = new();
        temp.AddAnswer(1);
        temp.Store.Attempts.Add("p1", "keel-03", "answer 2 of Wren", Grades.Passed);
        (string, bool, string)[] before = Notes();
        temp.ChangeRecords("attempts", record => Assert.True(record.Remove("note")));
        Assert.Equal(before, Notes());

        (string, bool, string)[] Notes() => [.. temp.Store.Attempts.NotesOf("p1").Select(n => (n.Id, n.Counts, n.AnswerKey)).Order()];
    }

    [Fact]
    public void StandingOf_KeptBeforeItHeldTheLastTry_IsGivenItAtTheOpening()
    {
        using TempStore temp = new();
        foreach (GradeResult grade in new[] { Grades.Failed, Grades.Failed, Grades.Passed, Grades.Waiting })
            temp.Store.Attempts.Add("p1", "keel-03", "a", grade);
        temp.Store.Attempts.Add("p1", "keel-04", "a", Grades.Passed);
        FailedTry before = temp.Store.Attempts.StandingOf("p1", "keel-03").LastFailed!;

        temp.ChangeRecords("standings", record => record["lastFailed"] = BsonValue.Null);

        Assert.Equal(before, temp.Store.Attempts.StandingOf("p1", "keel-03").LastFailed);
        Assert.Equal(2, before.Number);
        Assert.Null(temp.Store.Attempts.StandingOf("p1", "keel-04").LastFailed);
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
