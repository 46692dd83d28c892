using AngleSharp.Dom;
using TyingClass.Lessons.Grading;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

/// <summary>What stands on an exercise's page once it is answered.</summary>
public sealed class AfterAnswerTests : IDisposable
{
    // What the course's own answer is.
    private const string Mass = "0.47 g";

    private readonly ClassRoom _room = new();

    [Fact]
    public async Task Answer_OnItsPage_IsSaidInWordsBeforeAnyDrawing()
    {
        ExercisePage page = await Answers.FailRepairAsync(_room.NewBrowser());
        IElement[] order = [.. page.Sheet.All("main .opening, main .reply, main .verdict, main svg[role=img], main form.answer")];
        Assert.Equal(["verdict", "reply", "opening"], order.Take(3).Select(e => e.ClassList[0]));
        Assert.True(order.Skip(3).First().Closest("#feedback") is not null, "The first drawing is not of the answer.");
    }

    [Fact]
    public async Task Answer_ThatPassed_SaysWhatIsHeldAndLeadsOn()
    {
        ExercisePage page = await Answers.PassFirstAsync(_room.NewBrowser());
        Assert.Equal("/exercises/first-02", page.Sheet.Find(".after a.button").GetAttribute("href"));
        Assert.Equal("Next: On the scale", page.Sheet.Text(".after a.button"));
        Assert.Contains("1 of 3 exercises of this lesson are done", page.Sheet.Text(".after"), StringComparison.Ordinal);
        Assert.NotEmpty(page.Sheet.All(".held li"));
    }

    [Fact]
    public async Task Answer_ThatFellShortAfterAPass_SaysThatTheExerciseStaysPassed()
    {
        Browser browser = _room.NewBrowser();
        ExercisePage passed = await Answers.PassRepairAsync(browser);
        Assert.False(passed.Sheet.Has(".stays-passed"));
        ExercisePage page = await Answers.FailRepairAsync(browser);
        Assert.Equal("The exercise stays passed: attempt 1 did it.", page.Sheet.Text("#feedback .stays-passed"));
    }

    // Every fly has a hook: in full with the lesson's first exercise, one line after it.
    [Fact]
    public async Task Caution_OfTheHookAlone_StandsInFullOnceALesson()
    {
        Browser browser = _room.NewBrowser();
        ExercisePage first = await Answers.PassFirstAsync(browser),
            second = await (await ExercisePage.OpenAsync(browser, "first-02")).Answer(Mass).SubmitAsync();
        Assert.Contains("wrap-around eye protection", first.Sheet.Text("#feedback .caution"), StringComparison.Ordinal);
        Assert.False(first.Sheet.Has("#feedback .caution-line"));
        Assert.False(second.Sheet.Has("#feedback .caution"));
        Assert.Equal("/safety", second.Sheet.Find("#feedback .caution-line a").GetAttribute("href"));
    }

    [Fact]
    public async Task Caution_OfMoreThanTheHook_StandsInFullEachTime()
    {
        ExercisePage page = await KeptAsync(Told with { Cautions = ["Hooks are sharp: cover your eyes.", "Lead is poisonous: wash your hands."] });

        Assert.Contains("Lead is poisonous", page.Sheet.Text("#feedback .caution"), StringComparison.Ordinal);
        Assert.False(page.Sheet.Has("#feedback .caution-line"));
    }

    // What was graded by an earlier program has no reply: its one sentence stands where that would.
    [Fact]
    public async Task Answer_KeptFromBeforeThereWasAReply_StillSaysWhatItHas()
    {
        ExercisePage page = await KeptAsync(Told);

        Assert.Equal("Look at the eyes.", page.Sheet.Text("#feedback .stands-first"));
        Assert.False(page.Sheet.Has("#feedback .reply"));
    }

    private static Feedback Told { get; } = new() { First = "Look at the eyes.", WhatItWouldDo = "It sinks.", Goals = [], Why = "The eyes are heavy." };

    // As it lies in the data file, whoever graded it.
    private async Task<ExercisePage> KeptAsync(Feedback feedback)
    {
        Browser browser = _room.NewBrowser();
        await Answers.PassFirstAsync(browser);
        _room.Store.Attempts.Add(Assert.Single(_room.Store.People.All()).Id, "first-02", "5 g", new GradeResult { Feedback = feedback });
        return await ExercisePage.OpenAsync(browser, "first-02");
    }

    [Fact]
    public async Task Answer_ThatFellShort_LeadsBackToItself()
    {
        ExercisePage page = await Answers.FailRepairAsync(_room.NewBrowser());
        Assert.Equal("#answer", page.Sheet.Find(".after a.button").GetAttribute("href"));
        Assert.True(page.Sheet.Has("#answer form.answer"));
        Assert.False(page.Sheet.Has(".held"));
    }

    [Fact]
    public async Task LastOfTheCourse_Passed_LeadsToTheNextLesson()
    {
        Browser browser = _room.NewBrowser();
        await Answers.PassFirstAsync(browser);
        await (await ExercisePage.OpenAsync(browser, "first-02")).Answer(Mass).SubmitAsync();
        ExercisePage last = await Answers.PassRepairAsync(browser);
        Assert.Contains("the last exercise of this lesson", last.Sheet.Text(".after"), StringComparison.Ordinal);
        Assert.Equal("/lessons/second-evening", last.Sheet.Find(".after a.button").GetAttribute("href"));
        Assert.Equal("Begin lesson 2: Your own fly", last.Sheet.Text(".after a.button"));
    }

    [Theory]
    [InlineData("first-01", "point up", "point up")]
    [InlineData("first-02", "5 g", "5 g")]
    [InlineData("second-03", "Because the eyes hang low under the shank.", "Because the eyes hang low under the shank.")]
    public async Task AttemptList_OfAnAnswer_SaysWhatWasAnswered(string id, string answer, string said)
    {
        ExercisePage page = await ExercisePage.OpenAsync(_room.NewBrowser(), id);
        page = await (id == "first-01" ? page.Choose(answer) : page.Answer(answer)).SubmitAsync();
        Assert.Equal(said, page.Sheet.Text(".attempt-list .answered-with"));
    }

    [Fact]
    public async Task AttemptList_OfARepair_SaysWhatWasChanged()
    {
        Browser browser = _room.NewBrowser();
        await Answers.FailRepairAsync(browser);
        ExercisePage page = await Answers.PassRepairAsync(browser);
        Assert.Equal(
            ["the side the dumbbell eyes sit on: under → top", "the size of the dumbbell eyes: 4 mm → 4.2 mm"],
            page.Sheet.All(".answered-with").Select(e => Sheet.Plain(e.TextContent)));
    }

    [Fact]
    public async Task Draft_DrawnWithoutScripting_ComesBackToTheDrawing()
    {
        ExercisePage page = (await ExercisePage.OpenAsync(_room.NewBrowser(), "first-03")).Set("parts[0].size", "5 mm");
        string before = page.Sheet.Find("[data-draft-plate] svg").OuterHtml;
        Assert.Equal("/exercises/first-03#draft", page.Sheet.Find("#draft ~ .tools button[value=draw]").GetAttribute("formaction"));
        ExercisePage drawn = await page.DrawAsync();
        Assert.NotEqual(before, drawn.Sheet.Find("#draft [data-draft-plate] svg").OuterHtml);
        Assert.Empty(drawn.Attempts);
    }

    [Fact]
    public async Task Hint_ThatOpened_StandsOnce()
    {
        ExercisePage page = await Answers.FailRepairAsync(_room.NewBrowser());

        // All that is on the page; a fold hides nothing from this.
        Assert.Equal(1, Count(page, "Turn the fly over in your mind. Where are the eyes?"));
        Assert.Equal(0, Count(page, "The eyes belong on the side away from the point."));
        Assert.Contains("1 still closed", page.Sheet.Text(".hints"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Hint_OpenedBefore_IsKeptWhenTheNextOpens()
    {
        Browser browser = _room.NewBrowser();
        await Answers.FailRepairAsync(browser);
        ExercisePage page = await (await ExercisePage.OpenAsync(browser, "first-03")).Set("parts[0].size", "4.3 mm").SubmitAsync();

        Assert.Equal(1, Count(page, "Turn the fly over in your mind. Where are the eyes?"));
        Assert.Equal(1, Count(page, "The eyes belong on the side away from the point."));
    }

    // The fly has been shown, and nothing is left to hint at; once a fresh fly fell short there is.
    [Fact]
    public async Task Prediction_AnswerShown_OpensNoHint()
    {
        ExercisePage page = await (await ExercisePage.OpenAsync(_room.NewBrowser(), "first-01")).Choose("point up").SubmitAsync();

        Assert.Equal(0, Count(page, "Where is the heaviest part?"));
        Assert.Empty(page.Sheet.All(".hints .advice"));
    }

    // first-02 has no hints: the first miss tells the figure.
    [Fact]
    public async Task Measure_FigureTold_OffersTheNextAndNoMoreHints()
    {
        // The first miss opens the only hint; the second tells.
        ExercisePage page = await (await ExercisePage.OpenAsync(_room.NewBrowser(), "first-02")).Answer("2 g").SubmitAsync();
        Assert.DoesNotContain("The engine finds", page.Sheet.Text("#feedback"), StringComparison.Ordinal);
        page = await page.Answer("3 g").SubmitAsync();

        Assert.True(page.Sheet.Text("#feedback").Contains("The engine finds", StringComparison.Ordinal), page.Sheet.Text("#feedback"));
        Assert.Contains("The answer has been told", page.Sheet.Text(".after"), StringComparison.Ordinal);
        Assert.StartsWith("/exercises/first-03", page.Sheet.Find(".after a.button").GetAttribute("href"), StringComparison.Ordinal);
        Assert.False(page.Sheet.Has(".hints"));
    }

    // A guest's: nobody has read it, and nobody will.
    [Theory]
    [InlineData("second-03")]
    [InlineData("second-04")]
    public async Task WaitingAnswer_OfAGuestWithoutAClass_CreditsNothingAndPromisesNobody(string id)
    {
        ExercisePage page = await ExercisePage.OpenAsync(_room.NewBrowser(), id);
        page = id == "second-03" ? page.Answer("Because the eyes hang low under the shank.") : page.Fill("[name='n:sink rate']", "0.2 m/s");
        page = await page.SubmitAsync();

        Assert.False(page.Sheet.Has(".held"));
        string said = page.Sheet.Text("#feedback");
        Assert.DoesNotContain("mentor", said, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("somebody has read", said, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(id == "second-03", said.Contains("model answer below", StringComparison.Ordinal));
    }

    private static int Count(ExercisePage page, string text) => page.Sheet.Text("main").Split(text).Length - 1;

    [Fact]
    public async Task WrongVote_ThenAFreshFly_ShowsItsRecipeAndHints()
    {
        Browser browser = _room.NewBrowser();
        ExercisePage wrong = await (await ExercisePage.OpenAsync(browser, "first-01")).Choose("point up").SubmitAsync();
        Assert.False(wrong.Sheet.Has(".model-answer"));
        Assert.False(wrong.Sheet.Has(".answered ~ .told .card"));
    }

    public void Dispose() => _room.Dispose();
}
