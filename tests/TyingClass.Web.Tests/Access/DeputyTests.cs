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

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Evening_TakenBackWhileTyping_HandsBackWhatWasTypedAndSaysWhatIsLeft(bool oneIsLeft)
    {
        Browser dipper = await _two.AsAsync("Dipper"), heron = await _two.AsAsync("Heron");
        await LendAsync(dipper, "Heron", ("deputy", "evenings"), ("evening", "1"), ("evening", "2"));
        Sheet typing = await heron.OpenAsync("/class/evenings/2");
        if (oneIsLeft) await LendAsync(dipper, "Heron", ("deputy", "evenings"), ("evening", "1"));
        else await LendAsync(dipper, "Heron", ("deputy", "none"));

        Sheet told = await typing.FillAndSendAsync("#edit", ".send button", ("plan", "Typed for an hour.\n\nAnd more."), ("students", "9"));

        Assert.Equal(HttpStatusCode.Forbidden, told.Status);
        Assert.Contains("took it back", told.Text("main"), StringComparison.Ordinal);
        Assert.Contains("Typed for an hour.\n\nAnd more.", told.All("#typed textarea").Select(t => ((IHtmlTextAreaElement)t).Value.ReplaceLineEndings("\n")));
        Assert.Contains("Students9", told.Text("#typed dl"), StringComparison.Ordinal);
        Assert.DoesNotContain("__RequestVerificationToken", told.Html.Split("<main")[1], StringComparison.Ordinal);
        Assert.Equal(oneIsLeft, told.Has(".lent a[href='/class/evenings/1']"));
        Assert.DoesNotContain("Typed", _two.Room.Store.Evenings.Find(_two.First.Id, 2).Plan, StringComparison.Ordinal);
        await LendAsync(dipper, "Heron", ("deputy", "none"));
    }

    [Fact]
    public async Task Evening_NotLent_SaysSoAndWhatIs()
    {
        await LendAsync(await _two.AsAsync("Dipper"), "Heron", ("deputy", "evenings"), ("evening", "1"));
        Sheet told = await (await _two.AsAsync("Heron")).OpenAsync("/class/evenings/2");
        Assert.Equal((HttpStatusCode.Forbidden, "This part of the class is not lent to you"), (told.Status, told.Heading));
        Assert.True(told.Has(".lent a[href='/class/evenings/1']"));
        Assert.Equal(HttpStatusCode.NotFound, (await (await _two.AsAsync("Heron")).OpenAsync("/class/evenings/44")).Status);
        await LendAsync(await _two.AsAsync("Dipper"), "Heron", ("deputy", "none"));
    }

    [Fact]
    public async Task Home_OfADeputy_SaysWhatRunsTonightAndOfAStudentNothing()
    {
        Browser dipper = await _two.AsAsync("Dipper"), heron = await _two.AsAsync("Heron");
        Assert.False((await heron.OpenAsync("/")).Has(".lent"));
        await LendAsync(dipper, "Heron", ("deputy", "evenings"), ("evening", "1"), ("evening", "2"));
        Assert.StartsWith("Lent to you", (await heron.OpenAsync("/")).Text(".lent"), StringComparison.Ordinal);

        Begins(1, new DateTimeOffset(_two.Room.Clock.GetUtcNow().UtcDateTime.Date.AddHours(23), TimeSpan.Zero).AddDays(3));
        Assert.StartsWith("You run next Evening 1 of", (await heron.OpenAsync("/")).Text(".lent"), StringComparison.Ordinal);
        Begins(1, _two.Room.Clock.GetUtcNow());
        Sheet tonight = await heron.OpenAsync("/");
        Assert.StartsWith("Tonight you run Evening 1 of", tonight.Text(".lent"), StringComparison.Ordinal);
        Assert.True(tonight.Has(".lent a[href='/class/evenings/1/wall/1']"));
        Assert.Equal(HttpStatusCode.OK, (await heron.OpenAsync("/class/evenings/1/wall/1")).Status);
        Begins(1, null);
        await LendAsync(dipper, "Heron", ("deputy", "none"));
    }

    [Fact]
    public async Task SignedOut_WhileTyping_HandsBackWhatWasTypedButNoPassphraseAndNothingFromElsewhere()
    {
        Browser nobody = _two.Room.NewBrowser();
        KeyValuePair<string, string>[] fields = [new("plan", "Typed for an hour."), new("passphrase", "secret words here")];
        Sheet told = await nobody.PostAsync("/class/evenings/1", fields);
        Assert.Equal((HttpStatusCode.Unauthorized, "You are signed out"), (told.Status, told.Heading));
        Assert.Contains("Typed for an hour.", told.Text("#typed"), StringComparison.Ordinal);
        Assert.DoesNotContain("secret words", told.Html, StringComparison.Ordinal);
        Assert.True(told.Has("a[href='/sign-in?next=%2Fclass%2Fevenings%2F1']"));

        // Another site made the browser send it: its words are not put on a page of ours.
        nobody.Client.DefaultRequestHeaders.Add("Origin", "http://elsewhere.example");
        Assert.StartsWith("/sign-in", (await nobody.PostAsync("/class/evenings/1", fields)).Address, StringComparison.Ordinal);
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
        Assert.Equal("Register", (await otter.OpenAsync("/class/register")).Heading);
        Sheet cell = await otter.OpenAsync($"/class/students/{_two.Wren.Id}/first-03");
        await cell.PressAsync("Accept", (cell.Find(".judge-box textarea").GetAttribute("name")!, "Seen at the vise."));
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

    private void Begins(int number, DateTimeOffset? at)
    {
        Storage.Evenings.EveningPlan now = _two.Room.Store.Evenings.Find(_two.First.Id, number);
        DateTime? local = at is { } time ? new Web.Calendar.ClassClock(_two.First).Local(time) : null;
        _two.Room.Store.Evenings.Save(now with { StartsLocal = local });
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

        public async ValueTask InitializeAsync()
        {
            Two = await TwoClasses.OpenAsync();
            Two.Room.Store.Evenings.Save(new Storage.Evenings.EveningPlan(Two.First.Id, 2) { Plan = "The second." });
        }

        public ValueTask DisposeAsync()
        {
            Two.Dispose();
            return ValueTask.CompletedTask;
        }
    }
}
