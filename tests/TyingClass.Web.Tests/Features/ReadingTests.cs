using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

/// <summary>What waits for a person, read one after another or all answers to one question.</summary>
public sealed class ReadingTests : TwoClassesTests
{
    [Fact]
    public async Task Read_OneAfterAnother_AcceptsWithoutAWordAndReturnsWithOne()
    {
        await HeronExplainsAsync();
        Browser otter = await Two.AsAsync("Otter");
        Assert.Contains("To read (2)", (await otter.OpenAsync("/")).Text("nav"), StringComparison.Ordinal);
        Sheet first = await (await otter.OpenAsync("/class/waiting")).Browser.OpenAsync("/class/read");
        Assert.Contains("Because the eyes hang low.", first.Text(".their-answer"), StringComparison.Ordinal);

        Sheet next = await SendJudgmentAsync(first, "accept", "");

        Assert.Contains("Because the wing holds the tail up.", next.Text(".their-answer"), StringComparison.Ordinal);
        Assert.True(Two.Room.Store.Attempts.StandingOf(Two.Wren.Id, "second-03").Passed);
        Sheet refused = await SendJudgmentAsync(next, "return", "");
        Assert.Contains("Give a reason", refused.Text("[role=alert]"), StringComparison.Ordinal);
        Sheet list = await SendJudgmentAsync(refused, "return", "Which side?");
        Assert.Equal($"/class/waiting?done=true&last={Uri.EscapeDataString($"{Two.Heron.Id}/second-03")}", list.Address);
        // Whoever thinks better of it finds the way back.
        foreach ((Sheet after, string way) in new[] { (next, "Return it all the same"), (list, "Accept it all the same") })
        {
            Sheet again = await otter.OpenAsync(after.Find("[role=status] a").GetAttribute("href")!);
            Assert.Contains(way, again.Text("main"), StringComparison.Ordinal);
        }
        Assert.Equal("Which side?", Two.AttemptOf(Two.Heron, "second-03").Judgments[0].Reason);
    }

    [Fact]
    public async Task Read_AllToOneQuestion_AButtonLosesNothingTypedForTheOthers()
    {
        await HeronExplainsAsync();
        Sheet all = await (await Two.AsAsync("Otter")).OpenAsync("/class/read?exercise=second-03");
        IHtmlTextAreaElement[] boxes = [.. all.All("textarea[name^='reason-']").Cast<IHtmlTextAreaElement>()];
        Assert.Equal(2, boxes.Length);
        (boxes[0].Value, boxes[1].Value) = ("Well said.", "Half written");

        Sheet after = await all.Browser.SendAsync(all, all.Form(".one-form"), all.Find("button[value^='accept:']"));

        Assert.Equal("Half written", ((IHtmlTextAreaElement)after.Find("textarea[name^='reason-']")).Value);
        Assert.Equal("Well said.", Two.AttemptOf(Two.Wren, "second-03").Judgments[0].Reason);
    }

    [Fact]
    public async Task Read_SignedOutInAnotherTab_EveryBoxGoesBackWhereItWasTyped()
    {
        await HeronExplainsAsync();
        Browser otter = await Two.AsAsync("Otter");
        Sheet all = await otter.OpenAsync("/class/read?exercise=second-03");
        IHtmlTextAreaElement[] boxes = [.. all.All("textarea[name^='reason-']").Cast<IHtmlTextAreaElement>()];
        (boxes[0].Value, boxes[1].Value) = ("Well said.", "Half written,\nand more");
        Sheet leaving = await otter.OpenAsync("/sign-out");
        await otter.SendAsync(leaving, leaving.Form("main form"), null);

        Sheet told = await otter.SendAsync(all, all.Form(".one-form"), all.Find("button[value^='accept:']"));

        Assert.Equal("You are signed out", told.Heading);
        Assert.Contains("box 2 of 2", told.Text("#typed"), StringComparison.Ordinal);
        // Pressed too early it is handed back once more.
        Sheet early = await otter.SendAsync(told, told.Form("main form"), told.Find("main form button"));
        Assert.Equal("You are signed out", early.Heading);
        await (await SignInPage.OpenAsync(otter)).EnterAsync(TwoClasses.Passphrase, "Otter");
        Sheet back = await otter.SendAsync(early, early.Form("main form"), early.Find("main form button"));
        Assert.Equal(["Well said.", "Half written,\nand more"], back.All("textarea[name^='reason-']").Cast<IHtmlTextAreaElement>()
            .Select(b => b.Value.ReplaceLineEndings("\n")));
        Assert.True(Two.AttemptOf(Two.Wren, "second-03").Judgments.IsEmpty);
        Sheet after = await otter.SendAsync(back, back.Form(".one-form"), back.Find("button[value^='accept:']"));
        Assert.Equal("Well said.", Two.AttemptOf(Two.Wren, "second-03").Judgments[0].Reason);
        Assert.Contains("Half written", after.Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Phrases_Ticked_AreAddedToTheWords()
    {
        Browser otter = await Two.AsAsync("Otter");
        await (await otter.OpenAsync("/phrases")).FillAndSendAsync("main form", "button", ("phrases", "Say which side.\nHang it first."));
        Sheet read = await otter.OpenAsync("/class/read");
        ((IHtmlInputElement)read.All(".phrases input").First()).IsChecked = true;
        await SendJudgmentAsync(read, "return", "Nearly.");
        Assert.Equal("Nearly.\nSay which side.", Two.AttemptOf(Two.Wren, "second-03").Judgments[0].Reason);
        Assert.False((await (await Two.AsAsync("Dipper")).OpenAsync("/phrases")).Text("textarea").Length > 0);
    }

    // Beside Wren's, which waits already.
    private async Task HeronExplainsAsync()
    {
        Two.Room.Clock.Advance(TimeSpan.FromMinutes(1));
        await (await ExercisePage.OpenAsync(await Two.AsAsync("Heron"), "second-03")).Answer("Because the wing holds the tail up.").SubmitAsync();
    }

    private static Task<Sheet> SendJudgmentAsync(Sheet page, string what, string reason)
    {
        ((IHtmlTextAreaElement)page.Find("textarea[name^='reason-']")).Value = reason;
        IElement button = page.Find($"button[value^='{what}:']");
        return page.Browser.SendAsync(page, (IHtmlFormElement)button.Closest("form")!, button);
    }
}
