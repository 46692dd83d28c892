using System.Net;
using AngleSharp.Html.Dom;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.Reviews;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

public sealed class ReviewTests
{
    private static readonly string Heavier = PatternPage.Recipe.Replace("size: 3 mm", "size: 4 mm", StringComparison.Ordinal);

    [Fact]
    public async Task Pattern_AskedReturnedRevisedSignedOff_JoinsTheBook()
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Browser wren = await two.AsAsync("Wren"), otter = await two.AsAsync("Otter");
        string id = (await AskAsync(wren, "Why does it lean?")).Id;
        two.Room.Clock.Advance(TimeSpan.FromDays(3));

        Sheet queue = await otter.OpenAsync("/reviews");
        Assert.Contains("3 days", queue.Text(".queue .wait"), StringComparison.Ordinal);
        Sheet review = await otter.OpenAsync(queue.Find(".queue a").GetAttribute("href")!);
        Assert.Contains("Why does it lean?", review.Text(), StringComparison.Ordinal);
        Assert.Contains("g·mm", review.Text(".diagnosis"), StringComparison.Ordinal);
        review = await review.PressAsync("Send the comment", ("about", "part:dumbbell eyes"), ("text", "A size heavier."));
        await review.PressAsync("Return with", ("words", "Nearly there."));

        Sheet back = await wren.OpenAsync($"/patterns/{id}");
        Assert.Contains("On the dumbbell eyes", back.Text("#reviews"), StringComparison.Ordinal);
        Assert.Contains("A size heavier.", back.Text("#reviews"), StringComparison.Ordinal);
        Assert.Contains("Nearly there.", back.Text("#reviews"), StringComparison.Ordinal);
        Assert.Contains("Came back with advice.", back.Text("header.lead"), StringComparison.Ordinal);
        PatternPage second = await (await PatternPage.OpenAsync(wren, id)).SaveAsync(Heavier, "As you said.");
        // Nobody has read the new revision: what came back is said of the one that was read.
        const string both = "evision 1 came back with advice, revision 2 is not shown to anyone yet";
        Assert.Contains(both, (await wren.OpenAsync($"/patterns/{id}")).Text("header.lead"), StringComparison.Ordinal);
        Assert.Contains(both, (await wren.OpenAsync("/patterns")).Text(".fly-shelf"), StringComparison.Ordinal);
        await second.Sheet.PressAsync("Ask for a review of revision 2");

        Sheet again = await otter.OpenAsync((await otter.OpenAsync("/reviews")).Find(".queue a").GetAttribute("href")!);
        Assert.Equal("Against revision 1", again.Text("#compare-title"));
        Assert.Contains("3 mm → 4 mm", again.Text(".changes"), StringComparison.Ordinal);
        await again.PressAsync("Sign off");

        Browser heron = await two.AsAsync("Heron");
        Sheet book = await heron.OpenAsync("/pattern-book");
        Assert.Contains("By Wren; signed off by Otter", book.Text(".fly-shelf"), StringComparison.Ordinal);
        Sheet card = await heron.OpenAsync(book.Find(".fly-shelf a").GetAttribute("href")!);
        Assert.Contains("size 4 mm", card.Text(".card"), StringComparison.Ordinal);
        Assert.Single((await heron.OpenAsync("/pattern-book/cards")).All(".print-card"));
        Assert.Equal(HttpStatusCode.NotFound, (await heron.OpenAsync($"/patterns/{id}/card?revision=1")).Status);
        foreach (string stranger in new[] { "Teal", "Sedge", "Plover" })
        {
            Browser other = await two.AsAsync(stranger);
            Assert.Equal(HttpStatusCode.NotFound, (await other.OpenAsync($"/patterns/{id}/card")).Status);
            Assert.Empty((await other.OpenAsync("/pattern-book")).All(".fly-shelf li"));
        }
    }

    [Fact]
    public async Task Review_FlyOpenedOnTheBench_IsNamedThereAndComesBackAsOnesOwnVersion()
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Browser otter = await two.AsAsync("Otter");
        await AskAsync(await two.AsAsync("Wren"), "");
        Review waiting = two.Room.Store.Reviews.Queue(two.First.Id).Single();
        string address = (await otter.OpenAsync($"/reviews/{waiting.Id}")).All("a").Single(a => a.TextContent == "Open on the bench").GetAttribute("href")!;

        Sheet bench = await otter.OpenAsync(address);
        Assert.Contains("Wren’s", bench.Text(".bench-origin"), StringComparison.Ordinal);
        Assert.Contains("revision 1", bench.Text(".bench-origin"), StringComparison.Ordinal);
        Assert.True(bench.Has($".bench-origin a[href='/reviews/{waiting.Id}']"));
        // It stays so while the fly is changed, and to nobody else is it anybody's.
        bench = await bench.FillAndSendAsync("#bench-form", "button[value=draw]", ("r:parts[0].size", "4 mm"));
        Assert.Contains("Wren’s", bench.Text(".bench-origin"), StringComparison.Ordinal);
        foreach (string name in new[] { "Heron", "Sedge", "nobody" })
            Assert.False((await (await two.AsAsync(name)).OpenAsync(address)).Has(".bench-origin"));

        Sheet review = await otter.SendAsync(bench, bench.Form("#bench-form"), bench.Find(".bench-origin button"));
        Assert.Contains("size: 4 mm", review.Text("#mine"), StringComparison.Ordinal);
        Assert.Contains("Nothing is sent yet", review.Text(".notice-warn"), StringComparison.Ordinal);
        Assert.Equal(waiting, two.Room.Store.Reviews.Find(waiting.Id));
    }

    [Theory]
    [InlineData("Wren", HttpStatusCode.Forbidden)]
    [InlineData("Heron", HttpStatusCode.Forbidden)]
    [InlineData("Sedge", HttpStatusCode.NotFound)]
    [InlineData("Plover", HttpStatusCode.NotFound)]
    public async Task Review_OfAnotherClassOrRole_IsClosed(string name, HttpStatusCode status)
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        await AskAsync(await two.AsAsync("Wren"), "");
        Review waiting = two.Room.Store.Reviews.Queue(two.First.Id).Single();
        Browser other = await two.AsAsync(name);
        Assert.Equal(status, (await other.OpenAsync($"/reviews/{waiting.Id}")).Status);
        string token = (await other.OpenAsync("/patterns/new")).Find("input[name=__RequestVerificationToken]").GetAttribute("value")!;
        foreach (string handler in new[] { "SignOff", "Return", "Comment", "Reopen" })
        {
            Sheet refused = await other.PostAsync($"/reviews/{waiting.Id}?handler={handler}",
                [new("__RequestVerificationToken", token), new("version", $"{waiting.Version}"), new("words", "w"), new("text", "t")]);
            Assert.False(refused.Status == HttpStatusCode.OK);
        }

        Assert.Equal(waiting, two.Room.Store.Reviews.Find(waiting.Id));
        Assert.Empty(two.Room.Store.Reviews.CommentsOn(waiting.PatternId));
    }

    [Fact]
    public async Task Decide_AfterAnotherMentorDid_IsToldAndKeepsTheWords()
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        await AskAsync(await two.AsAsync("Wren"), "");
        Review waiting = two.Room.Store.Reviews.Queue(two.First.Id).Single();
        Sheet slow = await (await two.AsAsync("Otter")).OpenAsync($"/reviews/{waiting.Id}");
        Sheet quick = await (await two.AsAsync("Dipper")).OpenAsync($"/reviews/{waiting.Id}");
        await quick.PressAsync("Return with", ("words", "First."));

        Sheet told = await slow.PressAsync("Sign off", ("words", "Written for ten minutes."));

        Assert.Equal(HttpStatusCode.Conflict, told.Status);
        Assert.Contains("returned by someone else", told.Text(".notice-warn"), StringComparison.Ordinal);
        Assert.Contains("Written for ten minutes.", ((IHtmlTextAreaElement)told.Find("#kept-words")).Value, StringComparison.Ordinal);
        Assert.Equal(("First.", ReviewState.Returned), (two.Room.Store.Reviews.Find(waiting.Id)!.Words, two.Room.Store.Reviews.Find(waiting.Id)!.State));
    }

    [Fact]
    public async Task Decide_StudentMovedOnMeanwhile_DecidesNothing()
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Browser wren = await two.AsAsync("Wren");
        string id = (await AskAsync(wren, "")).Id;
        Review waiting = two.Room.Store.Reviews.Queue(two.First.Id).Single();
        Sheet reading = await (await two.AsAsync("Otter")).OpenAsync($"/reviews/{waiting.Id}");
        await (await (await PatternPage.OpenAsync(wren, id)).SaveAsync(Heavier)).Sheet.PressAsync("Show revision 2 instead");

        Sheet told = await reading.PressAsync("Sign off");

        Assert.Equal(HttpStatusCode.Conflict, told.Status);
        Assert.Contains("another revision", told.Text(".notice-warn"), StringComparison.Ordinal);
        Assert.Equal(PatternState.Waiting, two.Room.Store.Patterns.Find(id)!.State);
    }

    [Fact]
    public async Task Mentor_OwnPattern_CannotSignItOff()
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Browser otter = await two.AsAsync("Otter");
        await AskAsync(otter, "");
        Review waiting = two.Room.Store.Reviews.Queue(two.First.Id).Single();
        Sheet review = await otter.OpenAsync($"/reviews/{waiting.Id}");
        Assert.Contains("another mentor", review.Text("#decision"), StringComparison.Ordinal);
        string token = review.Find("input[name=__RequestVerificationToken]").GetAttribute("value")!;
        Sheet refused =
            await otter.PostAsync($"/reviews/{waiting.Id}?handler=SignOff", [new("__RequestVerificationToken", token), new("version", $"{waiting.Version}")]);
        Assert.Equal(HttpStatusCode.NotFound, refused.Status);
        Assert.Empty(two.Room.Store.Patterns.Book(two.First.Id));
    }

    private static async Task<PatternPage> AskAsync(Browser browser, string question)
    {
        PatternPage pattern = await PatternPage.SaveNewAsync(browser);
        return new PatternPage(await pattern.Sheet.PressAsync("Ask for a review", ("question", question)));
    }
}
