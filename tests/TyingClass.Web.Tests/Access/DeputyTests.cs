using System.Net;
using AngleSharp.Html.Dom;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Classes;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Access;

/// <summary>What an instructor lends, by the pages alone; every address stands in <see cref="RouteTable"/>.</summary>
public sealed class DeputyTests(DeputyTests.Opened opened) : IClassFixture<DeputyTests.Opened>
{
    private readonly TwoClasses _two = opened.Two;

    [Fact]
    public async Task Evening_LentAndTakenBack_OpensThatEveningAndNothingElse()
    {
        Browser dipper = await _two.AsAsync("Dipper"), heron = await _two.AsAsync("Heron");
        Sheet lent = await LendAsync(dipper, "Heron", ("deputy", "evenings"), ("evening", "1"));
        Assert.Contains("Heron may run evening 1 now", lent.Text("[role=status]"), StringComparison.Ordinal);

        Sheet evenings = await heron.OpenAsync("/class/evenings");
        Assert.Equal(["Evening 1"], evenings.All(".evening-list h2").Select(h => h.TextContent));
        Assert.False(evenings.Has("#every-form"));
        Assert.Equal(["Evenings", "Ask the room"], evenings.All(".class-nav a").Select(a => a.TextContent));
        Sheet saved = await (await heron.OpenAsync("/class/evenings/1")).FillAndSendAsync("#edit", ".send button", ("plan", "Heron’s plan."));
        Assert.Contains("Heron’s plan.", saved.Text(".evening-notes"), StringComparison.Ordinal);
        Sheet put = await (await heron.OpenAsync("/class/tonight")).PressAsync("Ask the room");
        Assert.Equal("/class/tonight/wall", put.Address);

        // Dates of all evenings are not lent with one of them.
        foreach (string handler in new[] { "", "?handler=set" })
        {
            Sheet refused = await heron.PostAsync("/class/evenings" + handler, [.. Token(saved.Form("#edit")), KeyValuePair.Create("at-1", "")]);
            Assert.Equal(HttpStatusCode.Forbidden, refused.Status);
        }

        Assert.Equal(HttpStatusCode.Forbidden, (await heron.OpenAsync($"/class/students/{_two.Wren.Id}")).Status);
        await LendAsync(dipper, "Heron", ("deputy", "none"));
        Assert.Equal(HttpStatusCode.Forbidden, (await heron.OpenAsync("/class/evenings/1")).Status);
    }

    [Fact]
    public async Task Evening_NoneTicked_SaysSoAndLendsNothing()
    {
        Sheet told = await LendAsync(await _two.AsAsync("Dipper"), "Wren", ("deputy", "evenings"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, told.Status);
        Assert.True(told.Has("[role=alert] a[href='#deputy-evenings']"));
        Assert.Null(_two.Room.Store.Classes.Find(_two.First.Id)!.DeputyOf(_two.Wren.Id));
    }

    [Fact]
    public async Task Everything_Lent_ReadsAndJudgesOthersWorkButNotOwnAndSeesNoPeople()
    {
        await LendAsync(await _two.AsAsync("Dipper"), "Otter", ("deputy", "everything"));
        Browser otter = await _two.AsAsync("Otter");
        Assert.Equal("Register", (await otter.OpenAsync("/class")).Heading);
        Sheet cell = await otter.OpenAsync($"/class/students/{_two.Wren.Id}/first-03");
        await cell.PressAsync("Accept", ("reason", "Seen at the vise."));
        Attempt judged = _two.AttemptOf(_two.Wren, "first-03");
        Assert.Equal(("Otter", true), (judged.Judgments[^1].ByName, judged.Counts));

        await Answers.FailRepairAsync(otter);
        Sheet own = await otter.OpenAsync($"/class/students/{_two.Otter.Id}/first-03");
        Assert.Equal(HttpStatusCode.OK, own.Status);
        Assert.False(own.Has(".judge"));
        Assert.Equal(HttpStatusCode.Forbidden, (await otter.OpenAsync("/class/people")).Status);
        Assert.Equal(HttpStatusCode.Forbidden, (await otter.OpenAsync("/class/files")).Status);
    }

    [Fact]
    public void RightIn_RemovedDeputy_IsNone()
    {
        Storage.Classes.ClassRoom room = _two.First with { Deputies = [new Deputy(_two.Wren.Id, true, [])] };
        Assert.Equal(Web.Classes.ClassRight.Everything, Web.Classes.ClassAccess.RightIn(_two.Wren, room));
        Assert.Equal(Web.Classes.ClassRight.None, Web.Classes.ClassAccess.RightIn(_two.Wren with { RemovedAt = _two.Room.Clock.GetUtcNow() }, room));
        Assert.Equal(Web.Classes.ClassRight.None, Web.Classes.ClassAccess.RightIn(_two.Wren, room with { Id = "another" }));
    }

    private async Task<Sheet> LendAsync(Browser instructor, string name, params (string Name, string Value)[] choice)
    {
        Sheet page = await instructor.OpenAsync($"/class/people/{_two.Person(name).Id}");
        IHtmlFormElement form = (IHtmlFormElement)page.Find("#deputy-evenings").Closest("form")!;
        IEnumerable<KeyValuePair<string, string>> chosen = choice.Select(c => KeyValuePair.Create(c.Name, c.Value));
        return await instructor.PostAsync(page.Address, [.. Token(form), KeyValuePair.Create("do", "deputy"), .. chosen]);
    }

    private static IEnumerable<KeyValuePair<string, string>> Token(IHtmlFormElement form) =>
        Browser.FieldsOf(form).Where(f => f.Key.StartsWith("__", StringComparison.Ordinal));

    public sealed class Opened : IAsyncLifetime
    {
        public TwoClasses Two { get; private set; } = null!;

        public async ValueTask InitializeAsync() => Two = await TwoClasses.OpenAsync();

        public ValueTask DisposeAsync()
        {
            Two.Dispose();
            return ValueTask.CompletedTask;
        }
    }
}
