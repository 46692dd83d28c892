using System.Net;
using TyingClass.Storage.Comments;
using TyingClass.Storage.Evenings;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

/// <summary>The first page of a class, on the two classes of the small course.</summary>
public sealed class BriefTests : TwoClassesTests
{
    [Fact]
    public async Task Brief_TwoHoldTheSameWrongVote_NamesItWithWhoAndWhatToShow()
    {
        await BothMistakeItAsync();

        Sheet brief = await (await Two.AsAsync("Dipper")).OpenAsync("/class");

        Assert.Equal("“point up”", brief.Text(".belief-first h3"));
        Assert.Contains("They think:", brief.Text(".belief-first .quiet"), StringComparison.Ordinal);
        Assert.Equal("2 of 2", brief.Text(".belief-first .belief-count"));
        Assert.Contains("Before the eyes are moved", brief.Text(".belief-first"), StringComparison.Ordinal);
        Assert.Contains("Tie Reed Darter.", brief.Text(".belief-first .show"), StringComparison.Ordinal);
        Assert.Equal(["Heron", "Wren"], brief.All(".belief-first .who a").Select(a => a.TextContent));
    }

    [Fact]
    public async Task Brief_AVoteInTheRoom_CountsUntilTheExerciseIsAnswered()
    {
        Browser dipper = await Two.AsAsync("Dipper");
        await (await dipper.OpenAsync("/class/tonight")).FillAndSendAsync("main form:has(#exercise)", "button", ("exercise", "first-01"));
        foreach (string name in new[] { "Wren", "Heron" })
            await (await (await Two.AsAsync(name)).OpenAsync("/tonight")).FillAndSendAsync("main form", "button.button", ("choice", "1"));
        Sheet wall = await dipper.OpenAsync("/class/tonight/wall");
        await dipper.SendAsync(wall, wall.Form(".wall-foot form"), wall.Find(".wall-foot button[formaction*=reveal]"));

        Assert.Equal("2 of 2", (await dipper.OpenAsync("/class")).Text(".belief-first .belief-count"));
        Two.Room.Clock.Advance(TimeSpan.FromMinutes(5));
        await VoteAsync("Wren", "point down");
        Assert.False((await dipper.OpenAsync("/class")).Has(".belief"));
    }

    [Fact]
    public async Task After_AnEveningThatIsOver_TellsWhatTheRoomSaidAndWhatIsStillBelieved()
    {
        Browser dipper = await Two.AsAsync("Dipper");
        DateTime begins = Two.Room.Clock.GetUtcNow().UtcDateTime.AddMinutes(-10);
        Two.Room.Store.Classes.Rename(Two.First.Id, null, Two.First.Version, "Etc/UTC");
        Assert.True(Two.Room.Store.Evenings.Save(new EveningPlan(Two.First.Id, 1) { StartsLocal = begins }).Saved);
        Assert.Equal(HttpStatusCode.NotFound, (await dipper.OpenAsync("/class?after=1")).Status);
        await (await dipper.OpenAsync("/class/tonight")).FillAndSendAsync("main form:has(#exercise)", "button", ("exercise", "first-01"));
        await (await (await Two.AsAsync("Wren")).OpenAsync("/tonight")).FillAndSendAsync("main form", "button.button", ("choice", "1"));
        Sheet wall = await dipper.OpenAsync("/class/tonight/wall");
        await dipper.SendAsync(wall, wall.Form(".wall-foot form"), wall.Find(".wall-foot button[formaction*=reveal]"));
        await BothMistakeItAsync();
        Two.Room.Clock.Advance(TimeSpan.FromHours(4));

        Sheet brief = await dipper.OpenAsync("/class");
        Sheet back = await dipper.OpenAsync(brief.Find("nav[aria-label='Evenings that are over'] a").GetAttribute("href")!);

        Assert.Equal("After evening 1", back.Heading);
        Assert.Contains("0 of 1 said", back.Text("[aria-labelledby=room-title]"), StringComparison.Ordinal);
        Assert.Equal("2 of 2", back.Text(".belief .belief-count"));
        Assert.Contains("Nothing passed", back.Text("[aria-labelledby=moved-title]"), StringComparison.Ordinal);
        Assert.True((await dipper.OpenAsync("/class/evenings/1")).Has(".tools a[href='/class?after=1']"));
        Assert.Equal(HttpStatusCode.NotFound, (await dipper.OpenAsync("/class?after=2")).Status);
    }

    [Fact]
    public async Task Brief_SomeonePasses_HoldsItNoLonger()
    {
        await VoteAsync("Wren", "point up");
        await VoteAsync("Heron", "point down");
        Assert.False((await (await Two.AsAsync("Dipper")).OpenAsync("/class")).Has(".belief"));
    }

    [Fact]
    public async Task Practice_Given_StandsOnEachHoldersHomeAsALink()
    {
        await BothMistakeItAsync();
        Browser dipper = await Two.AsAsync("Dipper");

        Sheet given = await PressAsync(await dipper.OpenAsync("/class"), "Practice");

        Assert.Contains("Written to 2 students", given.Text(".notice-good"), StringComparison.Ordinal);
        Comment written = Assert.Single(Two.Room.Store.Comments.To(Two.Heron.Id));
        Assert.Contains("/practice/keel-side", written.Text, StringComparison.Ordinal);
        Sheet home = await (await Two.AsAsync("Heron")).OpenAsync("/");
        Assert.Equal("/practice/keel-side", home.Find(".comment .typed a").GetAttribute("href"));
    }

    [Fact]
    public async Task Demonstration_PutOnThePlan_StandsThereOnce()
    {
        await BothMistakeItAsync();
        Browser dipper = await Two.AsAsync("Dipper");

        await PressAsync(await dipper.OpenAsync("/class"), "Plan");
        Sheet planned = await PressAsync(await dipper.OpenAsync("/class"), "Plan");

        Assert.Contains("demonstrations of evening 1", planned.Text(".notice-good"), StringComparison.Ordinal);
        string plan = Two.Room.Store.Evenings.Find(Two.First.Id, 1).Demonstrations;
        Assert.Equal(2, plan.Split("Tie Reed Darter.").Length);
        Sheet evening = await dipper.OpenAsync("/class/evenings/1");
        Assert.Contains("Tie Reed Darter.", evening.Text("[aria-labelledby=show-title]"), StringComparison.Ordinal);
        Assert.Contains("“point up”", evening.Text("#shared"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Show_OfABelief_IsDrawnAtTheViseFirstAndThenInTheWater()
    {
        await BothMistakeItAsync();
        Browser dipper = await Two.AsAsync("Dipper");
        Sheet brief = await dipper.OpenAsync("/class");

        Sheet vise = await dipper.OpenAsync(brief.Find("a[href^='/class/show/']").GetAttribute("href")!);
        Assert.True(vise.Has(".wall-show svg"));
        Assert.DoesNotContain("ride point down", vise.Text("main"), StringComparison.Ordinal);
        Sheet water = await dipper.OpenAsync(vise.Find("a[rel=next]").GetAttribute("href")!);
        Assert.Contains("ride point down", water.Text("main"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task SitBeside_OneMissIsNotStuck_TwoAre()
    {
        Browser dipper = await Two.AsAsync("Dipper");
        Assert.False((await dipper.OpenAsync("/class")).Has(".stuck-group"));
        await Answers.FailRepairAsync(await Two.AsAsync("Wren"));
        Sheet brief = await dipper.OpenAsync("/class");
        Assert.Contains("Wren", brief.Text(".stuck-group"), StringComparison.Ordinal);
        Assert.Contains("2 attempts missed", brief.Text(".stuck-group"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/class?evening=1")]
    [InlineData("/class?stuck=true")]
    public async Task Brief_AnAddressOfTheRegister_LeadsThere(string bookmark) =>
        Assert.StartsWith("/class/register?", (await (await Two.AsAsync("Dipper")).OpenAsync(bookmark)).Address, StringComparison.Ordinal);

    [Fact]
    public async Task Register_OpenedBare_ShowsTheEveningThatIsPrepared()
    {
        Sheet register = await (await Two.AsAsync("Dipper")).OpenAsync("/class/register");
        Assert.Equal("1", ((AngleSharp.Html.Dom.IHtmlSelectElement)register.Find("#evening")).Value);
        Assert.DoesNotContain("Otter", register.Text("tbody"), StringComparison.Ordinal);
    }

    private async Task BothMistakeItAsync()
    {
        await VoteAsync("Wren", "point up");
        await VoteAsync("Heron", "point up");
    }

    private async Task VoteAsync(string name, string choice)
    {
        await (await ExercisePage.OpenAsync(await Two.AsAsync(name), "first-01")).Choose(choice).SubmitAsync();
        Two.Room.Clock.Advance(TimeSpan.FromMinutes(1));
    }

    private static Task<Sheet> PressAsync(Sheet brief, string handler) =>
        brief.Browser.SendAsync(brief, brief.Form($".belief form[action*={handler}]"), brief.Find($".belief form[action*={handler}] button"));
}
