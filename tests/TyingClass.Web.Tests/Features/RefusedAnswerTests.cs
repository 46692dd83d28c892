using AngleSharp.Html.Dom;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

/// <summary>An answer that is given back: everything in it stays, and what is missing leads to its field.</summary>
public sealed class RefusedAnswerTests(ClassRoom room) : IClassFixture<ClassRoom>
{
    [Theory]
    [InlineData("first-01")]
    [InlineData("first-02")]
    [InlineData("first-03")]
    [InlineData("second-01")]
    [InlineData("second-02")]
    [InlineData("second-03")]
    [InlineData("second-04")]
    [InlineData("second-05")]
    public async Task EmptyAnswer_OfEachKind_LeadsToItsField(string id)
    {
        ExercisePage page = await (await ExercisePage.OpenAsync(room.NewBrowser(), id)).SubmitAsync();

        Assert.NotEmpty(page.Problems);
        foreach (IHtmlAnchorElement link in page.Sheet.All("#problems li > a").Cast<IHtmlAnchorElement>())
        {
            string field = link.GetAttribute("href")![1..];
            Assert.True(page.Sheet.Has($"#answer[id='{field}'], #answer [id='{field}']"), $"{link.TextContent} leads nowhere: {field}");
        }

        Assert.Equal(page.Problems.Count, page.Sheet.All("#problems li > a").Count());
    }

    [Theory]
    [InlineData("n:reason", "2", "Say too what the fresh fly will do")]
    [InlineData("n:fresh 1", "point up", "Choose the reason too")]
    public async Task HalfAFreshAnswer_KeepsWhatWasChosenAndTheDrawing(string name, string chosen, string asked)
    {
        ExercisePage page = await WrongAsync("first-01", "point up");
        string drawn = page.Sheet.Find("#feedback figure svg").GetAttribute("aria-label") ?? page.Sheet.Find("#feedback figure svg title").TextContent;
        Pick(page, name, chosen);

        page = await page.SubmitAsync();

        Assert.Contains(asked, Assert.Single(page.Problems), StringComparison.Ordinal);
        Assert.True(page.Sheet.Has($"input[name='{name}'][value='{chosen}'][checked]"), $"{chosen} is no longer chosen.");
        IHtmlAnchorElement link = (IHtmlAnchorElement)page.Sheet.Find("#problems a");
        Assert.Equal("radio", page.Sheet.Find($"[id='{link.GetAttribute("href")![1..]}']").GetAttribute("type"));
        // The fly that the reason is asked of is still to be seen.
        Assert.Equal(drawn, page.Sheet.Find(".first-fly svg").GetAttribute("aria-label") ?? page.Sheet.Find(".first-fly svg title").TextContent);
        Assert.Single(page.Attempts);
    }

    [Fact]
    public async Task FreshAnswer_ForAWrongReason_IsAskedAgainOfTheFlyByName()
    {
        ExercisePage page = await WrongAsync("first-01", "point up");
        Assert.Contains("The Reed Darter rides point down. Why?", page.Sheet.Text("form.answer"), StringComparison.Ordinal);
        Assert.False(page.Sheet.Has(".first-fly"));
        Pick(page, "n:reason", "1");
        Pick(page, "n:fresh 1", await RightFreshAsync("first-01", 1));

        page = await page.SubmitAsync();

        Assert.Equal(["Attempt 2: not yet", "Attempt 1: not yet"], page.Attempts);
        Assert.Contains("You had the fresh fly right. But for the Reed Darter the reason is another one", page.Sheet.Text("#feedback"),
            StringComparison.Ordinal);
        // The feedback above is of the fresh fly now; the question is still of the first one, and names and shows it.
        Assert.Contains("The Reed Darter rides point down. Why?", page.Sheet.Text("form.answer"), StringComparison.Ordinal);
        Assert.True(page.Sheet.Has(".first-fly svg"));
        Assert.Contains("Cousin 2 of the Reed Darter", page.Sheet.Text("form.answer"), StringComparison.Ordinal);
        Assert.False(page.Sheet.Has("input[name='n:reason'][checked]"));
    }

    [Fact]
    public async Task FreshAnswer_ForTheRightReason_NeedNotGiveItAgain()
    {
        ExercisePage page = await WrongAsync("first-01", "point up");
        Pick(page, "n:reason", "2");
        string right = await RightFreshAsync("first-01", 1);
        Pick(page, "n:fresh 1", right == "point up" ? "point down" : "point up");

        page = await page.SubmitAsync();

        Assert.True(page.Sheet.Has("input[name='n:reason'][value='2'][checked]"));
    }

    [Fact]
    public async Task Sort_WithAPlaceLeftEmpty_KeepsTheOthersWhereTheyWere()
    {
        ExercisePage page = await ExercisePage.OpenAsync(room.NewBrowser(), "second-02");

        page = await page.Fill("#answer-second-02-place-3", "Bare Hook").SubmitAsync();

        Assert.Equal(["", "", "Bare Hook"], page.Sheet.All(".order select").Select(s => ((IHtmlSelectElement)s).Value));
        Assert.Equal("#answer-second-02-place-1", page.Sheet.Find("#problems a").GetAttribute("href"));
    }

    [Fact]
    public async Task Sort_WithAFlyTwice_LeadsToTheSecond()
    {
        ExercisePage page = await ExercisePage.OpenAsync(room.NewBrowser(), "second-02");
        for (int i = 1; i <= 3; i++) page.Fill($"#answer-second-02-place-{i}", i == 2 ? "Slate Minnow" : "Bare Hook");

        page = await page.SubmitAsync();

        Assert.Equal("#answer-second-02-place-3", page.Sheet.Find("#problems a").GetAttribute("href"));
    }

    private async Task<ExercisePage> WrongAsync(string id, string choice) =>
        await (await ExercisePage.OpenAsync(room.NewBrowser(), id)).Choose(choice).SubmitAsync();

    private async Task<string> RightFreshAsync(string id, int number)
    {
        using HttpClient started = room.CreateClient();
        await started.GetAsync(new Uri("/health", UriKind.Relative));
        Lessons.Courses.ICourseSource course = (Lessons.Courses.ICourseSource)room.Services.GetService(typeof(Lessons.Courses.ICourseSource))!;
        Assert.True(course.Current.TryFindExercise(id, out _, out Lessons.Exercises.Exercise exercise));
        Lessons.Exercises.Exercise fresh = Lessons.Kinds.Predict.FreshProblem.Of(exercise, number)!;
        return fresh.Kind.RightAnswer(fresh)!;
    }

    private static void Pick(ExercisePage page, string name, string value)
    {
        foreach (IHtmlInputElement radio in page.Sheet.All($"form.answer input[name='{name}']").Cast<IHtmlInputElement>())
            radio.IsChecked = radio.Value == value;
    }
}
