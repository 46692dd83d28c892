using System.Net;
using TyingClass.Storage.Evenings;
using TyingClass.Web.Evenings;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

/// <summary>Predict before reveal, as an evening goes: without scripting.</summary>
public sealed class RoomQuestionTests : IDisposable
{
    private readonly ClassRoom _room = new();

    [Fact]
    public async Task Room_AsksAnswersAndReveals_TallyAndEngineAgreeWithWhatWasSaid()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Browser wren = await _room.NewStudentAsync("Wren"), teal = await _room.NewStudentAsync("Teal"), heron = await _room.NewStudentAsync("Heron");
        Assert.Contains("Nothing is being asked", (await wren.OpenAsync("/tonight")).Text(), StringComparison.Ordinal);

        Sheet wall = await (await instructor.OpenAsync("/class/tonight")).FillAndSendAsync("main form:has(#exercise)", "button", ("exercise", "first-01"));
        Assert.Equal("/class/tonight/wall", wall.Address);
        Assert.Contains("Nobody has answered yet.", wall.Text(), StringComparison.Ordinal);

        await Say(wren, "point down");
        await Say(teal, "point up");
        Sheet changed = await Say(heron, "point up");
        Assert.Contains("You said “point up”. All 3 have answered.", changed.Text(), StringComparison.Ordinal);
        Assert.DoesNotContain("The engine says", changed.Text(), StringComparison.Ordinal);
        Assert.Equal(changed.All(".at-the-vise .plate"), changed.All(".plate"));
        await Say(heron, "point down");
        wall = await instructor.OpenAsync("/class/tonight/wall");
        Assert.False(wall.Has(".tally"));
        Assert.True(wall.Has(".at-the-vise svg"));
        wall = await instructor.OpenAsync("/class/tonight/wall?tally=show");
        Assert.Equal(["2", "1", "0", "0"], wall.All(".tally-count").Select(c => c.TextContent));
        Assert.False(wall.Has(".tally-right"));

        Sheet revealed = await instructor.SendAsync(wall, wall.Form(".wall-foot form"), wall.Find(".wall-foot button[formaction*=reveal]"));

        Assert.Contains("The engine says: point down", revealed.Text(), StringComparison.Ordinal);
        Assert.Contains("Most of the room said “point down”: 2 of 3.", revealed.Text(), StringComparison.Ordinal);
        Assert.True(revealed.Has(".plate svg"));
        Sheet phone = await teal.OpenAsync("/tonight");
        Assert.Contains("point up (yours)", phone.Text(".tally"), StringComparison.Ordinal);
        Assert.Contains("point down ✓ the engine", phone.Text(".tally-right"), StringComparison.Ordinal);
        Assert.Empty(_room.Store.Attempts.StandingsOf(_room.Store.People.All().Select(p => p.Id)));
    }

    [Theory]
    [InlineData("1 0 0", 1, "The one student of the class has answered.", "One has answered: “up”.")]
    [InlineData("1 0 0", 12, "1 of 12 has answered.", "One has answered: “up”.")]
    [InlineData("2 0 0", 2, "All 2 have answered.", "All 2 who answered said “up”.")]
    [InlineData("2 1 1", 12, "4 of 12 have answered.", "The commonest answer was “up”: 2 of 4.")]
    [InlineData("3 1 1", 4, "5 have answered.", "Most of the room said “up”: 3 of 5.")]
    public void RoomView_Counts_AreSaidAsOneSaysThem(string counts, int members, string answered, string said)
    {
        int[] each = [.. counts.Split(' ').Select(int.Parse)];
        RoomQuestion question = new("q", "c", "Which way up", ["up", "down", "on its side"], default);
        RoomView view = new(question, "", [], new RoomTally([.. each]), null, members);
        Assert.Equal((answered, said), (view.Answered, view.RoomSaid));
    }

    [Fact]
    public async Task Answer_AfterTheReveal_ComesTooLateAndCountsNothing()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Browser wren = await _room.NewStudentAsync("Wren");
        await (await instructor.OpenAsync("/class/tonight")).FillAndSendAsync("main form:has(#exercise)", "button", ("exercise", "first-01"));
        Sheet open = await wren.OpenAsync("/tonight");
        Sheet wall = await instructor.OpenAsync("/class/tonight/wall");
        await instructor.SendAsync(wall, wall.Form(".wall-foot form"), wall.Find(".wall-foot button[formaction*=reveal]"));

        Sheet late = await open.FillAndSendAsync("main form", "button", ("choice", "0"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, late.Status);
        Assert.Contains("too late", late.Text("[role=alert]"), StringComparison.Ordinal);
        Assert.Contains("Nobody has answered.", late.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task AnyFly_WithMistakes_SaysEachAndKeepsTheText()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Sheet told = await (await instructor.OpenAsync("/class/tonight")).FillAndSendAsync("main form:has(#recipe)", "button",
            ("recipe", "recipe: X\nintent: sideways\n"), ("ask", "nose"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, told.Status);
        Assert.Contains("Line 2", told.Text("[role=alert]"), StringComparison.Ordinal);
        Assert.Contains("sideways", told.Text("#recipe"), StringComparison.Ordinal);

        Sheet asked = await told.FillAndSendAsync("main form:has(#exercise)", "button", ("exercise", "first-01"));
        Assert.Equal("/class/tonight/wall", asked.Address);
    }

    [Fact]
    public async Task AnyFly_AskedByItsRecipe_IsAnsweredByTheEngine()
    {
        Browser instructor = await _room.NewInstructorAsync();
        string darter = await File.ReadAllTextAsync(Path.Combine(AppContext.BaseDirectory, "Course", "recipes", "copper-loach.fly.yaml"),
            TestContext.Current.CancellationToken);
        Sheet wall = await (await instructor.OpenAsync("/class/tonight")).FillAndSendAsync("main form:has(#recipe)", "button", ("recipe", darter),
            ("ask", "which way up"));
        Sheet revealed = await instructor.SendAsync(wall, wall.Form(".wall-foot form"), wall.Find(".wall-foot button[formaction*=reveal]"));
        Assert.Contains("The engine says:", revealed.Text(), StringComparison.Ordinal);
        Assert.Contains("Nobody has answered.", revealed.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Change_Revealed_ShowsTheFlyBeforeAndAfterAndWhatItDid()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Browser wren = await _room.NewStudentAsync("Wren");
        Sheet wall = await (await instructor.OpenAsync("/class/tonight")).FillAndSendAsync("main form:has(#exercise)", "button", ("exercise", "second-07"));
        await Say(wren, "it stays about the same");

        Sheet revealed = await instructor.SendAsync(wall, wall.Form(".wall-foot form"), wall.Find(".wall-foot button[formaction*=reveal]"));

        // Tungsten is denser than brass, so the same bead has more mass.
        Assert.Contains("The engine says: it gets larger", revealed.Text(), StringComparison.Ordinal);
        // Side by side, hung as the question asks of a mass.
        Assert.Equal(["before", "after"], revealed.All(".revealed .half-name").Select(n => n.TextContent));
        Assert.Equal(2, revealed.All(".revealed .fly-halves > div > svg").Count());
        Assert.Matches(@"The mass goes from [0-9.]+ g to [0-9.]+ g\.", revealed.Text(".revealed"));
    }

    [Fact]
    public async Task Tonight_WithoutAClass_SaysHowToJoin()
    {
        Sheet tonight = await _room.NewBrowser().OpenAsync("/tonight");
        Assert.True(tonight.Has("main a[href='/join']"));
    }

    [Fact]
    public async Task Answer_ToAQuestionOfAnotherClass_IsNotTaken()
    {
        using TwoClasses two = await TwoClasses.OpenAsync();
        Browser plover = await two.AsAsync("Plover");
        await (await plover.OpenAsync("/class/tonight")).FillAndSendAsync("main form:has(#exercise)", "button", ("exercise", "first-01"));
        await (await (await two.AsAsync("Dipper")).OpenAsync("/class/tonight")).FillAndSendAsync("main form:has(#exercise)", "button",
            ("exercise", "first-01"));
        string theirs = two.Room.Store.RoomQuestions.Current(two.Second.Id)!.Id;

        await (await (await two.AsAsync("Wren")).OpenAsync("/tonight")).FillAndSendAsync("main form", "button", ("question", theirs), ("choice", "0"));

        Assert.Equal(0, two.Room.Store.RoomQuestions.Tally(theirs).Total);
    }

    public void Dispose() => _room.Dispose();

    private static async Task<Sheet> Say(Browser student, string choice)
    {
        Sheet open = await student.OpenAsync("/tonight");
        string value = open.All(".choice").Single(c => Sheet.Plain(c.TextContent) == choice).QuerySelector("input")!.GetAttribute("value")!;
        return await open.FillAndSendAsync("main form", "button", ("choice", value));
    }
}
