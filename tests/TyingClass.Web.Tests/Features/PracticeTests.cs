using System.Net;
using TyingClass.Storage.Practice;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

public sealed class PracticeTests : IDisposable
{
    private readonly ClassRoom _room = new();

    [Fact]
    public async Task Practice_OpenedByAGuest_HasAnAddressToPassOnAndLeavesNoRecord()
    {
        ExercisePage page = await PracticePage.OpenAsync(_room.NewBrowser(), "keel-side");

        Assert.Equal("/practice/keel-side?seed=1&level=20", page.Sheet.Address);
        Assert.Equal("Which way up?", page.Sheet.Heading);
        Assert.Equal("not begun", PracticePage.Words(page));
        Assert.Empty(_room.Store.People.All());
    }

    [Fact]
    public async Task Practice_SameAddressInAnotherBrowser_IsTheSameProblem()
    {
        ExercisePage one = await PracticePage.OpenAsync(_room.NewBrowser(), "keel-side", "?seed=5&level=60"),
            other = await PracticePage.OpenAsync(_room.NewBrowser(), "keel-side", "?seed=5&level=60");
        ExercisePage next = await PracticePage.OpenAsync(_room.NewBrowser(), "keel-side", "?seed=6&level=60");

        Assert.Equal(one.Sheet.Text(".card"), other.Sheet.Text(".card"));
        Assert.NotEqual(one.Sheet.Text(".card"), next.Sheet.Text(".card"));
    }

    [Fact]
    public async Task Practice_AnsweredRight_IsKeptWithFeedbackAndTheNextIsALittleHarder()
    {
        Browser browser = _room.NewBrowser();

        ExercisePage answered = await PracticePage.AnswerAsync(await PracticePage.OpenAsync(browser, "keel-side"), right: true);

        Assert.Equal(["What it would do", "Goal by goal", "Why", "Where to look next"], answered.FindingHeads);
        Assert.True(answered.Sheet.Has("#feedback figure.plate svg"));
        Assert.False(answered.Sheet.Has("form.answer"));
        Assert.Equal("coming along", PracticePage.Words(answered));
        Assert.Equal("/practice/keel-side?seed=2&level=25", (await PracticePage.NextAsync(answered)).Address);
        string person = Assert.Single(_room.Store.People.All()).Id;
        PracticeAnswer kept = Assert.Single(_room.Store.Practice.Of(person, "practice-keel-side-1-20"));
        Assert.Equal(("keel side", 1, 20), (kept.Problem.Concept, kept.Problem.Seed, kept.Problem.LevelHundredths));
        Assert.Contains("Reed Darter", kept.Problem.RecipeText, StringComparison.Ordinal);
        Assert.Equal(Balance.Reports.BalanceEngine.Version, kept.Attempt.EngineVersion);
        Assert.NotEmpty(kept.Attempt.GradedFigures);
    }

    [Fact]
    public async Task Practice_AnsweredWrong_NextIsEasierByFourSteps()
    {
        ExercisePage wrong = await PracticePage.AnswerAsync(await PracticePage.OpenAsync(_room.NewBrowser(), "keel-side"), right: false);

        Assert.Contains("not yet", wrong.Sheet.Text("#feedback h2"), StringComparison.Ordinal);
        // The answer is known now: the next problem decides, not the same vote again with a hint.
        Assert.False(wrong.Sheet.Has(".hints"));
        Assert.DoesNotContain("fresh fly", wrong.Sheet.Text("#feedback"), StringComparison.Ordinal);
        Assert.Equal("just beginning", PracticePage.Words(wrong));
        Assert.Equal("/practice/keel-side?seed=2&level=0", (await PracticePage.NextAsync(wrong)).Address);
    }

    [Fact]
    public async Task Practice_ComingBack_GoesOnAfterTheLastProblem()
    {
        Browser browser = _room.NewBrowser();
        await PracticePage.AnswerAsync(await PracticePage.OpenAsync(browser, "keel-side", "?seed=41&level=20"), right: true);

        Assert.Equal("/practice/keel-side?seed=42&level=25", (await PracticePage.OpenAsync(browser, "keel-side")).Sheet.Address);
    }

    [Fact]
    public async Task Practice_MeasureTriedAgain_OnlyTheFirstAnswerCounts()
    {
        Browser browser = _room.NewBrowser();
        ExercisePage wrong = await (await PracticePage.OpenAsync(browser, "mass-center")).Answer("5 g").SubmitAsync();
        string words = PracticePage.Words(wrong);
        string person = Assert.Single(_room.Store.People.All()).Id;

        double key = Assert.Single(_room.Store.Practice.Of(person, "practice-mass-center-1-20")).Attempt.GradedFigures.Single().Si!.Value;
        ExercisePage right = await wrong.Answer(FormattableString.Invariant($"{1000 * key:F3} g")).SubmitAsync();

        Assert.Contains("passed", right.Sheet.Text("#feedback h2"), StringComparison.Ordinal);
        Assert.Equal(words, PracticePage.Words(right));
        Assert.Equal("/practice/mass-center?seed=2&level=0", (await PracticePage.NextAsync(right)).Address);
    }

    [Fact]
    public async Task Practice_MeasureMissed_ShowsTheSumWorkedOnRequestAndOpenlyOnceItIsMissedAgain()
    {
        ExercisePage first = await (await PracticePage.OpenAsync(_room.NewBrowser(), "mass-center")).Answer("5 g").SubmitAsync();
        Assert.Contains("Show the whole sum", first.Sheet.Text("#feedback details:has(.worked) > summary"), StringComparison.Ordinal);
        Assert.False(first.Sheet.Has("#feedback details[open] .worked"));

        ExercisePage wrong = await first.Answer("5 g").SubmitAsync();

        Assert.False(wrong.Sheet.Has("#feedback details .worked"));
        Assert.Contains("The sum, worked", wrong.Sheet.Text("#feedback .worked h3"), StringComparison.Ordinal);
        Assert.Contains("5 g", wrong.Sheet.Text("#feedback .worked tbody tr:last-child"), StringComparison.Ordinal);
        Assert.True(wrong.Sheet.All("#feedback .worked tbody tr").Count() > 2);
    }

    [Fact]
    public async Task Exercise_MeasureMissedOnce_ShowsNoSumWhileItMayStillBeFound()
    {
        ExercisePage wrong = await (await ExercisePage.OpenAsync(_room.NewBrowser(), "first-02")).Answer("5 g").SubmitAsync();

        Assert.True(wrong.Sheet.Has("#feedback"));
        Assert.False(wrong.Sheet.Has("#feedback .worked"));
    }

    [Theory]
    [InlineData("")]
    [InlineData("heavy")]
    public async Task Practice_NoNumber_IsExplainedKeptAndNotCounted(string typed)
    {
        ExercisePage refused = await (await PracticePage.OpenAsync(_room.NewBrowser(), "mass-center")).Answer(typed).SubmitAsync();

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Sheet.Status);
        Assert.Single(refused.Problems);
        Assert.Equal(typed, refused.Fields()["answer"]);
        Assert.Empty(_room.Store.People.All());
    }

    [Fact]
    public async Task Practice_RepairMended_ShowsBeforeAndAfter()
    {
        ExercisePage page = await PracticePage.OpenAsync(_room.NewBrowser(), "proportion");
        Assert.False(page.IsLocked("parts[0].side"));

        ExercisePage mended = await page.Set("parts[0].side", "top").SubmitAsync();

        Assert.Contains("passed", mended.Sheet.Text("#feedback h2"), StringComparison.Ordinal);
        Assert.Equal(["before", "after"], mended.Sheet.All("#feedback .fly-halves .half-name").Select(h => h.TextContent));
    }

    [Fact]
    public async Task Practice_StaleToken_ShowsWhatWasTypedAgain()
    {
        Browser browser = _room.NewBrowser();
        Dictionary<string, string> fields = (await PracticePage.OpenAsync(browser, "mass-center")).Answer("0.512 g").Fields();
        fields["__RequestVerificationToken"] = "stale";

        ExercisePage again = new(await browser.PostAsync("/practice/mass-center?seed=1&level=20", fields));

        Assert.Equal(HttpStatusCode.BadRequest, again.Sheet.Status);
        Assert.Equal("0.512 g", again.Fields()["answer"]);
        Assert.Empty(_room.Store.People.All());
    }

    [Theory]
    [InlineData("/practice/no-such-concept")]
    [InlineData("/practice/no-such-concept?seed=1&level=20")]
    public async Task Practice_UnknownConcept_IsAPageThatLeadsOn(string address)
    {
        Sheet sheet = await _room.NewBrowser().OpenAsync(address);

        Assert.Equal(HttpStatusCode.NotFound, sheet.Status);
        Assert.True(sheet.Has("main a[href='/practice']"));
    }

    [Theory]
    [InlineData("?seed=0&level=20")]
    [InlineData("?seed=99999999999&level=20")]
    [InlineData("?seed=3&level=101")]
    [InlineData("?seed=x")]
    public async Task Practice_AddressThatIsNoProblem_GoesToTheNextOne(string query) =>
        Assert.Equal("/practice/keel-side?seed=1&level=20", (await PracticePage.OpenAsync(_room.NewBrowser(), "keel-side", query)).Sheet.Address);

    [Fact]
    public async Task Lesson_WithAPracticeFence_LeadsToIt()
    {
        Sheet lesson = await _room.NewBrowser().OpenAsync("/lessons/first-evening");

        Assert.True(lesson.Has("#practice-keel-side a.button[href='/practice/keel-side']"));
    }

    [Fact]
    public async Task Home_ConceptMissed_ProposesItAndRestsItAfterASuccess()
    {
        Browser browser = _room.NewBrowser();
        ExercisePage wrong = await PracticePage.AnswerAsync(await PracticePage.OpenAsync(browser, "keel-side"), right: false);
        Assert.Equal("keel side", (await browser.OpenAsync("/")).Text("#practice-next"));

        _room.Clock.Advance(TimeSpan.FromMinutes(1));
        await PracticePage.AnswerAsync(new ExercisePage(await PracticePage.NextAsync(wrong)), right: true);
        Sheet resting = await browser.OpenAsync("/");
        Assert.Equal("Nothing is due", resting.Text("#practice-next"));
        Assert.Contains("back tomorrow", resting.Text(), StringComparison.Ordinal);

        _room.Clock.Advance(TimeSpan.FromDays(1));
        Assert.Equal("keel side", (await browser.OpenAsync("/")).Text("#practice-next"));
    }

    [Fact]
    public async Task Concepts_ListedWithStrength_CountExercisesToo()
    {
        Browser browser = _room.NewBrowser();
        await Answers.PassFirstAsync(browser);

        Sheet list = await browser.OpenAsync("/practice");

        string[] lines = [.. list.All(".concept-list li").Select(l => Sheet.Plain(l.TextContent))];
        Assert.Contains(lines, l => l.StartsWith("keel side coming along back tomorrow", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.StartsWith("proportion not begun", StringComparison.Ordinal));
        Assert.Contains("Corbett", list.Text(), StringComparison.Ordinal);
        Assert.Contains("Leitner", list.Text(), StringComparison.Ordinal);
    }

    public void Dispose() => _room.Dispose();
}
