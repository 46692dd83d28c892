using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TyingClass.Storage.Reviews;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

/// <summary>The mentor's table: one form, a counter-proposal, a warning, comments put right.</summary>
public sealed class MentorTests : IAsyncLifetime
{
    // Eyes under the shank: it flips.
    private const string Flips = """
        recipe: Upside Darter
        intent: point up
        hook:
          size: 4
        parts:
          - part: dumbbell eyes
            material: brass
            size: 4 mm
            at: 4 mm
            side: under
        """;

    private TwoClasses _two = null!;
    private string _patternId = "";

    public async ValueTask InitializeAsync()
    {
        _two = await EmptyShelves.OpenAsync();
        _patternId = _two.Room.Store.Patterns.Create(_two.Wren.Id, "Upside Darter", Flips.ReplaceLineEndings("\n")).Id;
        _two.Room.Store.Reviews.Ask(_patternId, _two.Wren.Id, _two.First.Id, "See /bench?r=abc please.");
    }

    public ValueTask DisposeAsync()
    {
        _two.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task Home_SomethingWaits_SaysSoAndCountsItInTheMenu()
    {
        Sheet home = await (await _two.AsAsync("Otter")).OpenAsync("/");
        Assert.Contains("One pattern to review", home.Text("#work-title"), StringComparison.Ordinal);
        Assert.Contains("Reviews (1)", home.Text("nav"), StringComparison.Ordinal);
        Assert.False((await (await _two.AsAsync("Wren")).OpenAsync("/")).Has("#work-title"));
    }

    [Fact]
    public async Task Review_Opened_ShowsBothStatesTheLedgerTheCurvesAndTheBench()
    {
        Sheet review = await OpenAsync("Otter");
        Assert.Equal("It does not ride as it is meant to", review.Text("#diagnosis-title"));
        Assert.Equal(2, review.All(".fly-halves svg").Count());
        Assert.Contains("Keel height against speed", review.Text(".brief"), StringComparison.Ordinal);
        Assert.Single(review.All("details svg.fly-film"));
        Assert.Contains("A strip lifts it by", review.Text(".brief"), StringComparison.Ordinal);
        Assert.Equal("/bench?r=abc", review.Find(".asked-words a").GetAttribute("href"));
        Sheet bench = await review.Browser.OpenAsync(review.Find("a[href^='/bench?r=']:not([rel])").GetAttribute("href")!);
        Assert.Contains("Upside Darter", ((IHtmlTextAreaElement)bench.Find("#text")).Value, StringComparison.Ordinal);
        Assert.Contains("What would mend it?", (await review.Browser.OpenAsync(review.Address + "?advise=true")).Text("#advice"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task SignOff_AFlyThatFlips_NeedsAReasonAndTheBookSaysWhatItDoes()
    {
        Sheet refused = await (await OpenAsync("Otter")).PressAsync("Sign off", ("words", "A fine thing."));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Equal("A fine thing.", ((IHtmlTextAreaElement)refused.Find("#words")).Value);
        Assert.Equal(ReviewState.Waiting, Round.State);

        await refused.PressAsync("Sign off", ("despite", "It is to show what flips."));

        Assert.Equal((ReviewState.SignedOff, "It is to show what flips."), (Round.State, Round.Despite));
        Browser heron = await _two.AsAsync("Heron");
        Sheet book = await heron.OpenAsync("/pattern-book");
        Assert.Contains("does not ride as it is meant to", book.Text(".fly-shelf"), StringComparison.Ordinal);
        Sheet card = await heron.OpenAsync(book.Find(".fly-shelf h2 a").GetAttribute("href")!);
        Assert.Contains("It is to show what flips.", card.Text(".print-card"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Return_WithoutAWord_IsRefused()
    {
        Sheet refused = await (await OpenAsync("Otter")).PressAsync("Return with");
        Assert.Contains("say in a word or two", refused.Text(".notice-warn"), StringComparison.Ordinal);
        Assert.Equal(ReviewState.Waiting, Round.State);
    }

    [Fact]
    public async Task SendBackMine_ACounterProposal_ComesWithItsComparisonAndBecomesARevision()
    {
        Sheet same = await (await OpenAsync("Otter")).PressAsync("Send back as my version", ("words", "Look."));
        Assert.Contains("still the student’s own", same.Text(".notice-warn"), StringComparison.Ordinal);
        Sheet broken = await same.PressAsync("Send back as my version", ("mine", "recipe: X\nintent: sideways"));
        Assert.Contains("no recipe yet. Line", broken.Text(".notice-warn"), StringComparison.Ordinal);

        // Of one that flips too they are told, and asked again.
        Sheet flips = await broken.PressAsync("Send back as my version", ("mine", Flips.Replace("size: 4 mm", "size: 5 mm", StringComparison.Ordinal)));
        Assert.Contains("your version does not ride as it is meant to", flips.Text(".notice-warn"), StringComparison.Ordinal);
        Assert.True(flips.Has("#same"));
        Assert.Equal(ReviewState.Waiting, Round.State);

        await flips.PressAsync("Send back as my version", ("mine", Flips.Replace("side: under", "side: top", StringComparison.Ordinal)));

        Browser wren = await _two.AsAsync("Wren");
        Sheet pattern = await wren.OpenAsync($"/patterns/{_patternId}");
        Sheet beside = await wren.OpenAsync(pattern.Find("#reviews a[href*=proposal]").GetAttribute("href")!);
        Assert.Contains("under → top", beside.Text(".changes"), StringComparison.Ordinal);
        Sheet taken = await beside.PressAsync("Take it as revision 2");
        Assert.Contains("Revision 2 is saved", taken.Text(".notice-good"), StringComparison.Ordinal);
        Sheet back = await wren.OpenAsync(taken.Find(".notice-good a").GetAttribute("href")!);
        Assert.Contains("side: under", ((IHtmlTextAreaElement)(await back.PressAsync("Show as text")).Find("#text")).Value, StringComparison.Ordinal);
        Assert.Contains("side: top", _two.Room.Store.Patterns.Revision(_patternId, 2)!.RecipeText, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await (await _two.AsAsync("Heron")).OpenAsync(beside.Address)).Status);
    }

    [Fact]
    public async Task Comment_Sent_LosesNothingOfTheOtherBoxes()
    {
        Sheet after = await (await OpenAsync("Otter")).PressAsync("Send the comment", ("text", "Turn the eyes."), ("words", "Half a thought"));
        Assert.Equal("Half a thought", ((IHtmlTextAreaElement)after.Find("#words")).Value);
        Assert.Equal("", ((IHtmlTextAreaElement)after.Find("#text")).Value);
        Assert.Equal("Turn the eyes.", Assert.Single(_two.Room.Store.Reviews.CommentsOn(_patternId)).Text);
    }

    [Fact]
    public async Task Comment_CorrectedByItsWriter_SaysSoToTheStudent()
    {
        Sheet review = await (await OpenAsync("Otter")).PressAsync("Send the comment", ("text", "Turn the eyse."));
        IHtmlTextAreaElement fix = (IHtmlTextAreaElement)review.Find("textarea[name^='fix-']");
        fix.Value = "Turn the eyes.";
        IElement button = review.Find("button[formaction*=Correct]");
        await review.Browser.SendAsync(review, review.Form("#review-form"), button);
        Sheet seen = await (await _two.AsAsync("Wren")).OpenAsync($"/patterns/{_patternId}");
        Assert.Contains("Turn the eyes.", seen.Text("#reviews"), StringComparison.Ordinal);
        Assert.Contains("corrected", seen.Text("#reviews"), StringComparison.Ordinal);
        Assert.False((await OpenAsync("Dipper")).Has("textarea[name^='fix-']"));
    }

    [Fact]
    public async Task Reopen_TakesTheWordsBackToo()
    {
        Sheet returned = await (await OpenAsync("Otter")).PressAsync("Return with", ("words", "Too heavy."));
        Sheet again = await returned.PressAsync("Take the decision back");
        Assert.Equal("Too heavy.", ((IHtmlTextAreaElement)again.Find("#words")).Value);
        Assert.Equal((ReviewState.Waiting, ""), (Round.State, Round.Words));
        Sheet pattern = await (await _two.AsAsync("Wren")).OpenAsync($"/patterns/{_patternId}");
        Assert.DoesNotContain("Too heavy.", pattern.Text("#reviews"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Reopen_GivesTheVersionAndTheReasonBackToBeUsedAgain()
    {
        string mine = Flips.Replace("side: under", "side: top", StringComparison.Ordinal);
        Sheet returned = await (await OpenAsync("Otter")).PressAsync("Send back as my version", ("words", "Look."), ("mine", mine));
        Sheet again = await returned.PressAsync("Take the decision back");
        Assert.Equal(mine.ReplaceLineEndings("\n").Trim(), ((IHtmlTextAreaElement)again.Find("#mine")).Value.Trim());
        Assert.True(again.Find("#mine").Closest("details")!.HasAttribute("open"));
        Assert.Null(Round.Proposal);
        Sheet signed = await again.PressAsync("Sign off", ("despite", "It is to show what flips."));
        Sheet last = await signed.PressAsync("Take the decision back");
        Assert.Equal("It is to show what flips.", ((IHtmlTextAreaElement)last.Find("#despite")).Value);
        Assert.Equal((ReviewState.Waiting, (string?)null), (Round.State, Round.Despite));
    }

    [Fact]
    public async Task SendBackMine_HeldBack_ItsFieldStandsOpen()
    {
        Sheet same = await (await OpenAsync("Otter")).PressAsync("Send back as my version", ("words", "Look."));
        Assert.True(same.Find("#mine").Closest("details")!.HasAttribute("open"));
        Assert.False((await OpenAsync("Otter")).Find("#mine").Closest("details")!.HasAttribute("open"));
    }

    [Fact]
    public async Task SignOut_InAnotherTab_HandsEveryBoxBackUnderWordsOfItsPage()
    {
        Browser otter = await _two.AsAsync("Otter");
        Sheet review = await OpenAsync("Otter");
        Sheet leaving = await otter.OpenAsync("/sign-out");
        await otter.SendAsync(leaving, leaving.Form("main form"), null);

        Sheet back = await review.PressAsync("Return with", ("words", "Too heavy."), ("text", "Turn it."), ("despite", "To show."));

        Assert.Equal(HttpStatusCode.Unauthorized, back.Status);
        Assert.Equal(["Text", "Your words", "Why it should stand in the book all the same", "Your version of the recipe"],
            back.All("#typed label").Select(l => l.TextContent));
        Assert.Equal(["Turn it.", "Too heavy.", "To show."], back.All("#typed textarea").Cast<IHtmlTextAreaElement>().Select(t => t.Value).Take(3));
        Assert.Equal(ReviewState.Waiting, Round.State);
    }

    [Fact]
    public async Task Ask_SignedOutInAnotherTab_HandsTheQuestionBack()
    {
        Browser wren = await _two.AsAsync("Wren");
        string own = _two.Room.Store.Patterns.Create(_two.Wren.Id, "Second Darter", Flips.ReplaceLineEndings("\n")).Id;
        Sheet pattern = await wren.OpenAsync($"/patterns/{own}");
        Sheet leaving = await wren.OpenAsync("/sign-out");
        await wren.SendAsync(leaving, leaving.Form("main form"), null);
        Sheet back = await pattern.PressAsync("Ask for a review", ("question", "Why?"));
        Assert.Equal("Why?", ((IHtmlTextAreaElement)back.Find("#typed textarea")).Value);
    }

    private Review Round => _two.Room.Store.Reviews.Of(_patternId)[^1];

    private async Task<Sheet> OpenAsync(string name) => await (await _two.AsAsync(name)).OpenAsync($"/reviews/{Round.Id}");
}
