using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

/// <summary>Wherever somebody writes or sends something in, the page says who else sees it, and what it says is so.</summary>
public sealed class WhoSeesTests : TwoClassesTests
{
    [Theory]
    [InlineData("/exercises/first-01", "Your mentors and your instructor see this answer; other students do not.")]
    [InlineData("/exercises/first-03", "Your mentors and your instructor see this answer; other students do not.")]
    [InlineData("/exercises/second-03", "A mentor or the instructor reads this; other students do not.")]
    [InlineData("/bench-log/new", "Your mentors and your instructor see this entry and its photo; other students do not.")]
    [InlineData("/patterns/new", "Nobody but you sees a pattern until you ask for a review of it")]
    [InlineData("/account", "Your instructor and mentors see this name beside your work.")]
    public async Task AStudent_IsTold(string address, string words) =>
        Assert.Contains(words, Told(await (await Two.AsAsync("Heron")).OpenAsync(address)), StringComparison.Ordinal);

    [Fact]
    public async Task ALesson_TellsItOnce()
    {
        Assert.Equal("Your mentors and your instructor see your answers; other students do not.",
            Told(await (await Two.AsAsync("Heron")).OpenAsync("/lessons/first-evening")));
        Assert.Equal("As you are a guest, nobody reads what you answer here. It is kept for this browser.",
            Told(await (await Two.AsAsync("nobody")).OpenAsync("/lessons/first-evening")));
    }

    [Fact]
    public async Task AStudentsOwn_PhotoAndReview_AreToldOf()
    {
        Browser wren = await Two.AsAsync("Wren");
        Assert.Contains("see the photo; other students do not", Told(await wren.OpenAsync($"/bench-log/{Two.LogEntryId}")), StringComparison.Ordinal);
        Sheet pattern = await wren.OpenAsync($"/patterns/{Two.PatternId}");
        Sheet taken = await wren.SendAsync(pattern, pattern.Form("form[action*=Withdraw]"), pattern.Find("form[action*=Withdraw] button"));
        Assert.Contains("will see your question", Told(taken), StringComparison.Ordinal);
    }

    [Fact]
    public async Task ARoom_IsToldWhoSeesAVote()
    {
        Sheet ask = await (await Two.AsAsync("Dipper")).OpenAsync("/class/tonight");
        await ask.FillAndSendAsync("main form:has(#exercise)", "button", ("exercise", "first-01"));
        Assert.Contains("never who", Told(await (await Two.AsAsync("Wren")).OpenAsync("/tonight")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task AMentorAndAnInstructor_AreToldOfTheirOwnAnswers()
    {
        Sheet mentors = await (await Two.AsAsync("Otter")).OpenAsync("/exercises/first-01");
        Assert.Contains("Your instructor sees this answer", Told(mentors), StringComparison.Ordinal);
        Assert.Contains("Nobody but you", Told(await (await Two.AsAsync("Dipper")).OpenAsync("/exercises/first-01")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/exercises/first-01")]
    [InlineData("/exercises/second-03")]
    public async Task AGuest_IsToldThatNobodyReadsIt(string address) =>
        Assert.Contains("nobody reads this", Told(await (await Two.AsAsync("nobody")).OpenAsync(address)), StringComparison.Ordinal);

    [Fact]
    public async Task WhoeverWritesToAStudent_IsToldWhoElseMayReadIt()
    {
        Browser otter = await Two.AsAsync("Otter");
        foreach (string address in new[] { $"/class/students/{Two.Wren.Id}", $"/class/students/{Two.Wren.Id}/second-03", $"/reviews/{Two.ReviewId}" })
            Assert.Contains("Wren reads this; so may the instructor and the mentors", Told(await otter.OpenAsync(address)), StringComparison.Ordinal);
    }

    private static string Told(Sheet page) => string.Join('\n', page.All(".who-sees").Select(e => string.Join(' ', e.TextContent.Split(
        (char[]?)null, StringSplitOptions.RemoveEmptyEntries))));
}
