using System.Net;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

public sealed class OtherKindsTests(ClassRoom room) : IClassFixture<ClassRoom>
{
    [Fact]
    public async Task Predict_RightChoice_Passes()
    {
        ExercisePage page = await Answers.PassFirstAsync(room.NewBrowser());
        Assert.Equal(["Attempt 1: passed"], page.Attempts);
        Assert.True(page.Sheet.Has("input[value='point down'][checked]"));
    }

    [Fact]
    public async Task Predict_BeforeTheAnswer_ShowsTheRecipeAndNoComputedPicture()
    {
        Browser browser = room.NewBrowser();
        ExercisePage before = await ExercisePage.OpenAsync(browser, "first-01");
        Assert.Contains("dumbbell eyes", before.Sheet.Text(".card"), StringComparison.Ordinal);
        Assert.Contains("in the vise", before.Sheet.Text(".plate"), StringComparison.Ordinal);
        Assert.Contains("keel height", (await Answers.PassFirstAsync(browser)).Sheet.Text("#feedback .plate"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sort_Opened_ShowsEveryFly()
    {
        ExercisePage page = await ExercisePage.OpenAsync(room.NewBrowser(), "second-02");
        Assert.Equal(["Bare Hook", "Slate Minnow", "Copper Loach"], page.Sheet.All(".card-name").Select(n => n.TextContent));
    }

    [Fact]
    public async Task Predict_NothingChosen_IsAskedForAndNotCounted()
    {
        ExercisePage page = await (await ExercisePage.OpenAsync(room.NewBrowser(), "first-01")).SubmitAsync();
        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Sheet.Status);
        Assert.Single(page.Problems);
        Assert.Empty(page.Attempts);
    }

    [Fact]
    public async Task Measure_NoNumber_IsExplainedAndKept()
    {
        ExercisePage page = await (await ExercisePage.OpenAsync(room.NewBrowser(), "first-02")).Answer("half a gram & a bit").SubmitAsync();
        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Sheet.Status);
        Assert.Single(page.Problems);
        Assert.Equal("half a gram & a bit", page.Fields()["answer"]);
        Assert.Empty(page.Attempts);
    }

    [Fact]
    public async Task Measure_WrongThenRight_BothAreKept()
    {
        Browser browser = room.NewBrowser();
        ExercisePage page = await (await ExercisePage.OpenAsync(browser, "first-02")).Answer("5 g").SubmitAsync();
        Assert.Equal(["Attempt 1: not yet"], page.Attempts);
        Assert.Equal("5 g", page.Fields()["answer"]);
    }

    [Fact]
    public async Task Sort_AllPlaced_IsGradedAndOrderStays()
    {
        ExercisePage page = await ExercisePage.OpenAsync(room.NewBrowser(), "second-02");
        string[] order = ["Copper Loach", "Slate Minnow", "Bare Hook"];
        for (int i = 0; i < order.Length; i++) page.Fill($"#answer-second-02-place-{i + 1}", order[i]);

        page = await page.SubmitAsync();

        Assert.Equal(["Attempt 1: passed"], page.Attempts);
        Assert.Equal(order, page.Sheet.All(".order select").Select(s => ((AngleSharp.Html.Dom.IHtmlSelectElement)s).Value));
    }

    [Fact]
    public async Task Sort_OnePlaceEmpty_IsAskedFor()
    {
        ExercisePage page = await (await ExercisePage.OpenAsync(room.NewBrowser(), "second-02")).Fill("#answer-second-02-place-1", "Bare Hook").SubmitAsync();
        Assert.Single(page.Problems);
        Assert.Empty(page.Attempts);
    }

    [Fact]
    public async Task Explain_Sent_WaitsToBeReadAndShowsTheModelAnswer()
    {
        Browser browser = room.NewBrowser();
        ExercisePage page = await (await ExercisePage.OpenAsync(browser, "second-03")).Answer("Its eyes are on the wrong side.").SubmitAsync();
        Assert.Equal(["Attempt 1: to be read"], page.Attempts);
        Assert.Contains("heaviest part", page.Sheet.Text(".model-answer"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task TubTest_Recorded_StandsBesideThePrediction()
    {
        ExercisePage page = await ExercisePage.OpenAsync(room.NewBrowser(), "second-04");
        page = await page.Fill("[name='n:which way up']", "point down").Fill("[name='n:sink rate']", "0.2 m/s").SubmitAsync();
        Assert.Equal(["Attempt 1: to be read"], page.Attempts);
        Assert.Contains("0.2 m/s", page.Sheet.Text("#feedback table"), StringComparison.Ordinal);
        Assert.Equal("0.2 m/s", page.Fields()["n:sink rate"]);
    }
}
