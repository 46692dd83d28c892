using TyingClass.Storage.People;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

/// <summary>What a mentor or instructor did for a student stands first on the student's page.</summary>
public sealed class NewsTests : TwoClassesTests
{
    [Fact]
    public async Task Home_OfAStudentNobodyAnswered_HasNoNewsAndSaysWhatWaits()
    {
        Sheet home = await (await Two.AsAsync("Wren")).OpenAsync("/");
        Assert.False(home.Has(".news"));
        Assert.Contains("1 answer waits to be read", home.Text(".waits"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Home_AfterAReturnedExplanation_ShowsItUntilItIsAnswered()
    {
        Browser wren = await Two.AsAsync("Wren");
        Two.Room.Store.Attempts.Judge(Two.AttemptOf(Two.Wren, "second-03").Id, 0, Two.Otter, accepted: false, "Say which side they hang on.");
        Sheet home = await wren.OpenAsync("/");
        Assert.Contains("came back. Otter", home.Text(".news"), StringComparison.Ordinal);
        Assert.Contains("Say which side they hang on.", home.Text(".news"), StringComparison.Ordinal);
        Assert.Equal("/exercises/second-03#feedback", home.Find(".news a").GetAttribute("href"));

        await (await ExercisePage.OpenAsync(wren, "second-03")).Answer("They hang below the eye, on the point side.").SubmitAsync();
        Assert.False((await wren.OpenAsync("/")).Has(".news"));
    }

    [Fact]
    public async Task Page_OfAReturnedExplanation_BeginsWithThePersonsWords()
    {
        Browser wren = await Two.AsAsync("Wren");
        Two.Room.Store.Attempts.Judge(Two.AttemptOf(Two.Wren, "second-03").Id, 0, Two.Otter, accepted: false, "Say which side they hang on.");

        ExercisePage page = await ExercisePage.OpenAsync(wren, "second-03");

        string said = page.Sheet.Text("#feedback");
        Assert.Equal(1, said.Split("Say which side they hang on.").Length - 1);
        Assert.True(said.IndexOf("Say which side", StringComparison.Ordinal) < said.IndexOf("Where to look next", StringComparison.Ordinal));
        // What stood first while nobody had read it has had its day, and the page leads nowhere but on.
        Assert.False(page.Sheet.Has("#feedback .opening"));
        Assert.DoesNotContain(
            page.Sheet.All(".after a").Select(a => a.GetAttribute("href")!), h => h.StartsWith("/exercises/second-03", StringComparison.Ordinal));
        Assert.True(page.Sheet.Find(".judgments").CompareDocumentPosition(page.Sheet.Find(".after")).HasFlag(AngleSharp.Dom.DocumentPositions.Following));
    }

    [Fact]
    public async Task Home_AfterAnAcceptedExplanation_ShowsItForTwoWeeks()
    {
        Browser wren = await Two.AsAsync("Wren");
        Two.Room.Store.Attempts.Judge(Two.AttemptOf(Two.Wren, "second-03").Id, 0, Two.Otter, accepted: true, "You have it.");
        Assert.Contains("is accepted", (await wren.OpenAsync("/")).Text(".news"), StringComparison.Ordinal);
        Two.Room.Clock.Advance(TimeSpan.FromDays(15));
        Assert.False((await wren.OpenAsync("/")).Has(".news"));
    }

    [Fact]
    public async Task Home_AfterAReview_ShowsWhatBecameOfThePattern()
    {
        Browser wren = await Two.AsAsync("Wren");
        Person otter = Two.Otter;
        Two.Room.Store.Reviews.AddComment(Two.ReviewId, otter.Id, Storage.Reviews.CommentSubject.Whole, "", "Weigh it first.");
        Assert.Contains("Slate Minnow has a comment. Otter", (await wren.OpenAsync("/")).Text(".news"), StringComparison.Ordinal);
        Two.Room.Store.Reviews.Decide(
            Two.ReviewId, otter.Id, Two.Room.Store.Reviews.Find(Two.ReviewId)!.Version, new Storage.Reviews.ReviewDecision(false, "Lighter eyes."));
        Assert.Contains("Slate Minnow came back. Otter", (await wren.OpenAsync("/")).Text(".news"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Home_OfAnotherStudent_ShowsNothingOfIt()
    {
        Two.Room.Store.Attempts.Judge(Two.AttemptOf(Two.Wren, "second-03").Id, 0, Two.Otter, accepted: false, "Say which side they hang on.");
        Assert.False((await (await Two.AsAsync("Heron")).OpenAsync("/")).Has(".news"));
    }
}
