using System.Net;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

public sealed class NothingLostTests : IDisposable
{
    private readonly ClassRoom _room = new();

    [Fact]
    public async Task StaleToken_FormSent_ShowsItAgainWithWhatWasTypedAndAWorkingToken()
    {
        Browser browser = _room.NewBrowser();
        ExercisePage page = await ExercisePage.OpenAsync(browser, "second-01");
        Dictionary<string, string> fields = page.Set("recipe", "Typed for an hour").Fields();
        fields["__RequestVerificationToken"] = "stale";
        fields["do"] = "submit";

        ExercisePage again = new(await browser.PostAsync("/exercises/second-01", fields));

        Assert.Equal(HttpStatusCode.BadRequest, again.Sheet.Status);
        Assert.Contains("stale", again.Notice, StringComparison.Ordinal);
        Assert.Equal("Typed for an hour", again.Field("recipe"));
        Assert.Empty(_room.Store.People.All());
        // A bare hook is no answer: the first part is tied in with the fresh token too.
        ExercisePage tied = await again.AddPartAsync("bead");
        Assert.Single((await tied.Set("parts[0].size", "4 mm").SubmitAsync()).Attempts);
    }

    [Theory]
    [InlineData("/preferences")]
    [InlineData("/sign-in")]
    [InlineData("/sign-out")]
    [InlineData("/exercises/first-01")]
    [InlineData("/exercises/nobody-knows")]
    public async Task NoToken_AnyForm_IsRefusedWithAPageAndDoesNothing(string address)
    {
        Sheet refused = await _room.NewBrowser().PostAsync(address, [KeyValuePair.Create("name", "Wren"), KeyValuePair.Create("answer", "point down")]);
        Assert.True(refused.Status is HttpStatusCode.BadRequest or HttpStatusCode.NotFound);
        Assert.NotEmpty(refused.Heading);
        Assert.Empty(_room.Store.People.All());
    }

    [Fact]
    public async Task OversizedAnswer_Sent_IsRefusedAndShownBackWhole()
    {
        Browser browser = _room.NewBrowser();
        ExercisePage page = await (await ExercisePage.OpenAsync(browser, "second-01")).AsTextAsync();
        string big = string.Concat(Enumerable.Repeat("# a long remark, ° and – in it\n", 3000));

        ExercisePage refused = await page.Write(big).SubmitAsync();

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, refused.Sheet.Status);
        Assert.Contains("64 KB", Assert.Single(refused.Problems), StringComparison.Ordinal);
        Assert.Equal(big, refused.RecipeText);
        Assert.Empty(refused.Attempts);
    }

    // A whole file pasted by mistake: over 2 MB, over the framework's own 4 MB for one field, and nearly all there is room for.
    [Theory]
    [InlineData(3)]
    [InlineData(6)]
    [InlineData(15)]
    public async Task PastedFile_Sent_IsRefusedInPlaceAndShownBackWhole(int megabytes)
    {
        Browser browser = _room.NewBrowser();
        ExercisePage page = await (await ExercisePage.OpenAsync(browser, "second-01")).AsTextAsync();
        string big = "recipe: Pasted\n" + new string('x', megabytes << 20);

        ExercisePage refused = await page.Write(big).SubmitAsync();

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, refused.Sheet.Status);
        Assert.Contains("64 KB", Assert.Single(refused.Problems), StringComparison.Ordinal);
        Assert.Equal(big, refused.RecipeText);
        Assert.Empty(refused.Attempts);
        Assert.Empty(_room.Store.People.All());
    }

    [Theory]
    [InlineData("first-02")]
    [InlineData("second-03")]
    public async Task PastedFile_IntoAPlainAnswer_IsRefusedInPlaceAndShownBackWhole(string id)
    {
        string big = new('x', 3 << 20);

        ExercisePage refused = await (await ExercisePage.OpenAsync(_room.NewBrowser(), id)).Answer(big).SubmitAsync();

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, refused.Sheet.Status);
        Assert.Equal(big, refused.Fields()["answer"]);
    }

    [Fact]
    public async Task HugePost_Sent_GetsAPageThatSaysHowToGoBack()
    {
        Browser browser = _room.NewBrowser();
        Sheet refused = await browser.PostAsync("/exercises/second-01", [KeyValuePair.Create("text", new string('x', 17 << 20))]);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, refused.Status);
        Assert.Contains("Back button", refused.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task UnknownExercise_AnswerSent_ShowsWhatWasTyped()
    {
        Browser browser = _room.NewBrowser();
        Dictionary<string, string> fields = (await (await ExercisePage.OpenAsync(browser, "second-01")).AsTextAsync()).Write("recipe: Last copy\n").Fields();

        Sheet gone = await browser.PostAsync("/exercises/taken-away", [.. fields, KeyValuePair.Create("do", "submit")]);

        Assert.Equal(HttpStatusCode.NotFound, gone.Status);
        Assert.Contains("taken-away", gone.Text(), StringComparison.Ordinal);
        Assert.Equal("recipe: Last copy\n", ((AngleSharp.Html.Dom.IHtmlTextAreaElement)gone.Find("#typed")).Value.ReplaceLineEndings("\n"));
    }

    [Theory]
    [InlineData("/exercises/%3Cscript%3Ealert(1)%3C%2Fscript%3E")]
    [InlineData("/lessons/no-such-lesson")]
    [InlineData("/no-such-page")]
    public async Task UnknownAddress_Opened_IsAFriendlyPage(string address)
    {
        Sheet sheet = await _room.NewBrowser().OpenAsync(address);
        Assert.Equal(HttpStatusCode.NotFound, sheet.Status);
        Assert.NotEmpty(sheet.Heading);
        Assert.Empty(sheet.All("script"));
        Assert.True(sheet.Has("main a[href='/']"));
    }

    public void Dispose() => _room.Dispose();
}
