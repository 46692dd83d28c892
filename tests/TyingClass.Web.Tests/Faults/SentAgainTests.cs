using AngleSharp.Html.Dom;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Faults;

/// <summary>Pages that never arrived: what is sent again is not done twice, and what was made is still there.</summary>
public sealed class SentAgainTests : IDisposable
{
    private readonly ClassRoom _room = new();

    public void Dispose() => _room.Dispose();

    [Fact]
    public async Task Answer_SentAgainBecauseItsPageNeverArrived_IsOneAttempt()
    {
        Browser browser = _room.NewBrowser();
        IHtmlFormElement form = (await ExercisePage.OpenAsync(browser, "first-01")).Choose("point down").Sheet.Form("form.answer");
        KeyValuePair<string, string>[] fields = [.. Browser.FieldsOf(form), new("do", "submit")];
        await browser.PostAsync("/exercises/first-01", fields);
        Sheet again = await browser.PostAsync("/exercises/first-01", fields);

        Assert.Contains("attempt=1", again.Address, StringComparison.Ordinal);
        Assert.Equal(1, _room.Store.Attempts.StandingOf(_room.Store.People.Guests()[0].Id, "first-01").Attempts);
    }

    [Fact]
    public async Task Answer_ChangedAfterBack_IsAnotherAttempt()
    {
        Browser browser = _room.NewBrowser();
        ExercisePage page = await ExercisePage.OpenAsync(browser, "first-03", "?attempt=0");
        IHtmlFormElement form = page.Set("parts[0].size", "4.2 mm").Sheet.Form("form.answer");
        await browser.PostAsync("/exercises/first-03", [.. Browser.FieldsOf(form), new("do", "submit")]);
        form = page.Set("parts[0].size", "4.4 mm").Sheet.Form("form.answer");
        await browser.PostAsync("/exercises/first-03", [.. Browser.FieldsOf(form), new("do", "submit")]);
        Assert.Equal(2, _room.Store.Attempts.StandingOf(_room.Store.People.Guests()[0].Id, "first-03").Attempts);
    }

    [Fact]
    public async Task Answer_FreshForm_SameAnswer_IsAnotherAttempt()
    {
        Browser browser = _room.NewBrowser();
        await Answers.FailRepairAsync(browser);
        await Answers.FailRepairAsync(browser);
        Assert.Equal(2, _room.Store.Attempts.StandingOf(_room.Store.People.Guests()[0].Id, "first-03").Attempts);
    }
}
