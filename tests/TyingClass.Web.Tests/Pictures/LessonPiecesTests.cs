using AngleSharp.Html.Dom;
using TyingClass.Web.Editing;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Pictures;

/// <summary>Lesson pages put together from pieces made for others.</summary>
public sealed class LessonPiecesTests : IDisposable
{
    private const string Lesson = "/lessons/first-evening";

    private readonly ClassRoom _room = new();

    public void Dispose() => _room.Dispose();

    [Fact]
    public async Task SecondReader_HasOwnTokenAndFormNumber_AndCanAnswer()
    {
        Sheet first = await _room.NewBrowser().OpenAsync(Lesson);
        Browser browser = _room.NewBrowser();
        Sheet second = await browser.OpenAsync(Lesson);

        Assert.All(Values(first, "__RequestVerificationToken"), t => Assert.DoesNotContain(t, second.Html, StringComparison.Ordinal));
        Assert.All(Values(first, AnswerPost.FormField), n => Assert.DoesNotContain(n, second.Html, StringComparison.Ordinal));
        string[] numbers = Values(second, AnswerPost.FormField);
        Assert.NotEmpty(numbers);
        Assert.Equal(numbers.Length, numbers.Distinct().Count());
        Assert.All(numbers, n => Assert.Equal(32, n.Length));

        IHtmlFormElement form = second.Form("#exercise-first-01 form.answer");
        await browser.PostAsync(form.GetAttribute("action")!,
            [.. Browser.FieldsOf(form).Where(f => f.Key != "answer"), new("answer", "point down"), new("do", "submit")]);
        Assert.Equal(1, _room.Store.Attempts.StandingOf(Assert.Single(_room.Store.People.Guests()).Id, "first-01").Attempts);
    }

    [Fact]
    public async Task WhoHasAnswered_SeesTheAttempt_AndOthersDoNot()
    {
        Browser browser = _room.NewBrowser();
        await browser.OpenAsync(Lesson);
        await (await ExercisePage.OpenAsync(browser, "first-01")).Choose("point down").SubmitAsync();

        Sheet own = await browser.OpenAsync(Lesson);
        Sheet others = await _room.NewBrowser().OpenAsync(Lesson);

        Assert.True(own.Has("#exercise-first-01 .outcome"));
        Assert.False(others.Has("#exercise-first-01 .outcome"));
    }

    [Fact]
    public async Task Ids_StandOnceOnAPage_HoweverItWasPutTogether()
    {
        Browser browser = _room.NewBrowser();
        await browser.OpenAsync(Lesson);
        await (await ExercisePage.OpenAsync(browser, "first-01")).Choose("point down").SubmitAsync();
        Sheet page = await browser.OpenAsync(Lesson);

        Assert.Empty(page.All("[id]").GroupBy(e => e.Id).Where(g => g.Count() > 1).Select(g => g.Key));
        Assert.All(page.All("svg [href^='#']"), use => Assert.NotNull(page.Document.GetElementById(use.GetAttribute("href")![1..])));
    }

    [Fact]
    public async Task Reader_OfInches_GetsInches_AfterOneOfMillimeters()
    {
        await _room.NewBrowser().OpenAsync(Lesson);
        Browser inches = _room.NewBrowser();
        inches.Client.DefaultRequestHeaders.Add("Cookie", "tying-look=imperial.auto");
        Sheet page = await inches.OpenAsync(Lesson);
        Assert.Contains(" in", page.Find(".fly-frame").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("mm", page.Find(".fly-frame svg").TextContent, StringComparison.Ordinal);
    }

    private static string[] Values(Sheet page, string name) => [.. page.All($"input[name='{name}']").Select(i => i.GetAttribute("value")!)];
}
