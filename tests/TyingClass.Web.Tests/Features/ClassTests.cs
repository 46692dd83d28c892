using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TyingClass.Storage.People;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

/// <summary>The instructor's and mentor's pages, over two classes on one server.</summary>
public sealed class ClassTests : TwoClassesTests
{
    [Fact]
    public async Task Register_OfEachClass_HoldsItsOwnPeopleOnly()
    {
        Assert.Equal(["Heron", "Wren"], (await RegisterPage.OpenAsync(await Two.AsAsync("Dipper"))).People);
        Assert.Equal(["Teal"], (await RegisterPage.OpenAsync(await Two.AsAsync("Plover"))).People);
    }

    [Fact]
    public async Task Register_Filtered_ShowsWhatWasAskedFor()
    {
        Browser dipper = await Two.AsAsync("Dipper");
        RegisterPage evening = await RegisterPage.OpenAsync(dipper, "?evening=1");
        Assert.Contains("On the scale", evening.Exercises);
        Assert.DoesNotContain("Why it flips", evening.Exercises);

        RegisterPage concept = await RegisterPage.OpenAsync(dipper, "?concept=mass+center");
        Assert.Equal(["On the scale"], concept.Exercises);

        RegisterPage stuck = await RegisterPage.OpenAsync(dipper, "?stuck=true");
        Assert.Equal(["Wren"], stuck.People);
        Assert.Equal(["The darter that rolled over"], stuck.Exercises);
        Assert.Equal("1 not yet", stuck.Cell("Wren", "The darter that rolled over"));

        Assert.Equal("Wren", (await RegisterPage.OpenAsync(dipper, "?sort=Stuck")).People[0]);
    }

    [Fact]
    public async Task Setup_ZoneThatIsNotListed_StaysSelected()
    {
        Storage.Classes.ClassRoom first = Two.First;
        Two.Room.Store.Classes.Rename(first.Id, null, first.Version, "Etc/UTC");
        Sheet setup = await (await Two.AsAsync("Dipper")).OpenAsync("/class/setup");
        Assert.Equal("Etc/UTC", ((AngleSharp.Html.Dom.IHtmlSelectElement)setup.Find("#zone")).Value);
    }

    [Fact]
    public async Task Stuck_TwoStudentsWithOneCause_StandTogetherTheLastTryFirst()
    {
        Browser dipper = await Two.AsAsync("Dipper");
        await Answers.FailRepairAsync(await Two.AsAsync("Wren"));
        Two.Room.Clock.Advance(TimeSpan.FromDays(3));
        await Answers.FailRepairAsync(await Two.AsAsync("Heron"));
        Sheet once = await dipper.OpenAsync("/class/stuck");
        Assert.DoesNotContain("Heron", once.Text(".stuck-group"), StringComparison.Ordinal);
        Assert.Contains("Heron", once.Text(".once"), StringComparison.Ordinal);
        await Answers.FailRepairAsync(await Two.AsAsync("Heron"));
        Sheet stuck = await dipper.OpenAsync("/class/stuck");
        Assert.Equal(["Heron", "Wren"], stuck.All(".stuck-group li > a:first-child").Select(t => t.TextContent));
        Assert.Contains("3 days ago", stuck.Text(".stuck-group li:nth-child(2)"), StringComparison.Ordinal);
        Assert.Contains("The darter that rolled over", stuck.Text(".stuck-group"), StringComparison.Ordinal);
        await Answers.PassRepairAsync(await Two.AsAsync("Wren"));
        Assert.Equal(["Heron"], (await dipper.OpenAsync("/class/stuck")).All(".stuck-group li > a:first-child").Select(t => t.TextContent));
    }

    [Fact]
    public async Task Across_SomeFailed_CountsNamesAndSaysTheCommonestFinding()
    {
        await Answers.FailRepairAsync(await Two.AsAsync("Heron"));
        await Answers.PassRepairAsync(await Two.AsAsync("Heron"));
        Sheet across = await (await Two.AsAsync("Dipper")).OpenAsync("/class/exercises/first-03");
        Assert.Contains("2 of 2 tried it, 1 passed", across.Text("header.lead"), StringComparison.Ordinal);
        Assert.Contains("2 of the 2 who tried it missed the same goal at least once: ", across.Text(".next"), StringComparison.Ordinal);
        Assert.Equal("2 attempts1", Sheet.Plain(across.All(".bars tr").ElementAt(1).TextContent));
        Assert.Equal("not yet1", Sheet.Plain(across.All(".bars tr").ElementAt(5).TextContent));
        Assert.Equal(2, across.All(".cards > li").Count());
        Assert.True(across.Has(".cards figure svg"));
    }

    [Fact]
    public async Task Student_Opened_ShowsConceptsStuckPointsAndTimeLine()
    {
        Sheet student = await (await Two.AsAsync("Otter")).OpenAsync($"/class/students/{Two.Wren.Id}");
        // One miss is not stuck: it is listed by itself, and moves up when it is missed again.
        Assert.Contains("Nothing: no exercise was missed twice", student.Text("[aria-labelledby=stuck-title]"), StringComparison.Ordinal);
        Assert.Equal(["The darter that rolled over"], student.All(".once li a").Select(a => a.TextContent));
        Assert.Contains("keel sidejust beginning", student.Text("[aria-labelledby=concepts-title]"), StringComparison.Ordinal);
        Assert.Contains("proportionnot begun", student.Text("[aria-labelledby=concepts-title]"), StringComparison.Ordinal);
        Assert.Equal(2, student.All("[aria-labelledby=line-title] li a").Count());

        await Answers.FailRepairAsync(await Two.AsAsync("Wren"));
        Sheet again = await (await Two.AsAsync("Otter")).OpenAsync($"/class/students/{Two.Wren.Id}");
        Assert.Contains("The darter that rolled over: 2 attempts missed", again.Text("[aria-labelledby=stuck-title]"), StringComparison.Ordinal);
        Assert.False(again.Has(".once"));
    }

    [Fact]
    public async Task Judge_MentorAcceptsAnExplanation_RegisterAndStudentFollow()
    {
        Browser otter = await Two.AsAsync("Otter");
        Assert.Contains("Wren", (await otter.OpenAsync("/class/waiting")).Text("tbody"), StringComparison.Ordinal);

        Sheet judged = await JudgeAsync(otter, "second-03", "accept", "You named the part and the side.");

        Assert.Contains("Accepted by Otter", judged.Text(".judgments"), StringComparison.Ordinal);
        Assert.Equal("1 passed", (await RegisterPage.OpenAsync(await Two.AsAsync("Dipper"))).Cell("Wren", "Why it flips"));
        Assert.False((await otter.OpenAsync("/class/waiting")).Has("tbody"));
        Assert.Contains("You named the part and the side.", (await ExercisePage.OpenAsync(await Two.AsAsync("Wren"), "second-03")).Sheet.Text("#feedback"),
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task Judge_MentorOnAComputedGrade_IsNotOfferedAndNotDone()
    {
        Browser otter = await Two.AsAsync("Otter");
        Sheet page = await otter.OpenAsync($"/class/students/{Two.Wren.Id}/first-03");
        Assert.False(page.Has("form button[value^=accept]"));
        string id = Two.AttemptOf(Two.Wren, "first-03").Id;
        IEnumerable<KeyValuePair<string, string>> form =
        [
            .. Browser.FieldsOf((IHtmlFormElement)page.Find("form")), KeyValuePair.Create($"expected-{id}", "0"),
            KeyValuePair.Create("do", $"accept:{id}"), KeyValuePair.Create($"reason-{id}", "let it be"),
        ];
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await otter.PostAsync(page.Address, form)).Status);
        Assert.Empty(Two.AttemptOf(Two.Wren, "first-03").Judgments);
    }

    [Fact]
    public async Task Judge_InstructorOverrules_ComputedGradeStaysBeside()
    {
        Sheet judged = await JudgeAsync(await Two.AsAsync("Dipper"), "first-03", "accept", "The hook in the box was bent.");
        Assert.Contains("The engine’s own grade was: not yet", judged.Text("article"), StringComparison.Ordinal);
        Assert.True(Two.Room.Store.Attempts.StandingOf(Two.Wren.Id, "first-03").Passed);
        Sheet returned = await JudgeAsync(await Two.AsAsync("Dipper"), "first-03", "return", "It was the other hook after all.");
        Assert.Equal(2, returned.All(".judgments li").Count());
        Assert.False(Two.Room.Store.Attempts.StandingOf(Two.Wren.Id, "first-03").Passed);
    }

    [Fact]
    public async Task Judge_SomeoneElseJudgedMeanwhile_SecondIsToldAndLosesNothing()
    {
        Sheet stale = await (await Two.AsAsync("Otter")).OpenAsync($"/class/students/{Two.Wren.Id}/second-03");
        await JudgeAsync(await Two.AsAsync("Dipper"), "second-03", "accept", "Good.");

        Sheet told = await SendJudgmentAsync(stale, "return", "The side is not named.");

        Assert.Contains("Dipper accepted this attempt while you were writing", told.Text("[role=alert]"), StringComparison.Ordinal);
        Assert.Equal("The side is not named.", ((IHtmlTextAreaElement)told.Find("textarea[name^='reason-']")).Value);
        Assert.True(Two.Room.Store.Attempts.StandingOf(Two.Wren.Id, "second-03").Passed);
        await SendJudgmentAsync(told, "return", "The side is not named.");
        Assert.False(Two.Room.Store.Attempts.StandingOf(Two.Wren.Id, "second-03").Passed);
    }

    [Fact]
    public async Task Judge_WithoutAReason_AsksForOne()
    {
        Sheet refused = await JudgeAsync(await Two.AsAsync("Dipper"), "second-03", "return", "  ");
        Assert.Contains("Give a reason", refused.Text("[role=alert]"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Comment_Sent_StandsOnHomeAndExerciseUntilRead()
    {
        Browser otter = await Two.AsAsync("Otter"), wren = await Two.AsAsync("Wren");
        Sheet page = await otter.OpenAsync($"/class/students/{Two.Wren.Id}/first-03");
        ((IHtmlTextAreaElement)page.Find("#comment")).Value = "Hang it by the eye first.\n<b>Then</b> look.";
        IElement button = page.Find("button[value=comment]");
        await otter.SendAsync(page, (IHtmlFormElement)button.Closest("form")!, button);

        Assert.Contains("<b>Then</b> look.", (await wren.OpenAsync("/")).Text(".comment"), StringComparison.Ordinal);
        Assert.False((await wren.OpenAsync("/exercises/first-01")).Has(".comment"));
        Assert.False((await (await Two.AsAsync("Heron")).OpenAsync("/")).Has(".comment"));
        Sheet exercise = await wren.OpenAsync("/exercises/first-03");
        Sheet after = await wren.SendAsync(exercise, exercise.Form(".comment form"), exercise.Find(".comment button"));

        Assert.Equal("/exercises/first-03", after.Address);
        Assert.False(after.Has(".comment"));
        Assert.Contains("Hang it by the eye first.", (await wren.OpenAsync("/comments")).Text("main"), StringComparison.Ordinal);
        Assert.Contains(", read", (await otter.OpenAsync($"/class/students/{Two.Wren.Id}")).Text(".comments"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Person_PassphraseMadeUp_IsShownOnceAndMustBeReplaced()
    {
        Browser dipper = await Two.AsAsync("Dipper"), wren = await Two.AsAsync("Wren");
        Sheet shown = await PressAsync(dipper, $"/class/people/{Two.Wren.Id}", "passphrase");
        string handed = shown.Text(".spoken");
        Assert.DoesNotContain(handed, (await dipper.OpenAsync($"/class/people/{Two.Wren.Id}")).Html, StringComparison.Ordinal);
        Assert.StartsWith("/sign-in", (await wren.OpenAsync("/account")).Address, StringComparison.Ordinal);

        SignInPage entered = await (await SignInPage.OpenAsync(wren)).EnterAsync(handed, "Wren");
        Assert.Contains("Choose one of your own", entered.Sheet.Text(".notice-warn"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Person_MadeMentor_ReadsOthersWork()
    {
        await PressAsync(await Two.AsAsync("Dipper"), $"/class/people/{Two.Heron.Id}", "mentor");
        Browser heron = Two.Room.NewBrowser();
        SignInPage entered = await (await SignInPage.OpenAsync(heron)).EnterAsync(TwoClasses.Passphrase, "Heron");
        Assert.Equal("/class/waiting", entered.Sheet.Address);
        Assert.Equal(HttpStatusCode.OK, (await heron.OpenAsync($"/class/students/{Two.Wren.Id}")).Status);
        Assert.Equal(HttpStatusCode.NotFound, (await heron.OpenAsync($"/class/students/{Two.Otter.Id}")).Status);
    }

    [Fact]
    public async Task Remove_AskedTwice_HidesAndCanBeUndoneFor30Days()
    {
        Browser dipper = await Two.AsAsync("Dipper"), wren = await Two.AsAsync("Wren");
        string id = Two.Wren.Id;
        Sheet ask = await dipper.OpenAsync($"/class/people/{id}/remove");
        Sheet copy = await dipper.OpenAsync(ask.Find("a[download]").GetAttribute("href")!);
        Assert.Contains("Because the eyes hang low.", copy.Html, StringComparison.Ordinal);

        Sheet notSure = await dipper.SendAsync(ask, ask.Form("main form"), ask.Find("main form button"));
        Assert.Contains("Nothing was removed", notSure.Text("[role=alert]"), StringComparison.Ordinal);
        ((IHtmlInputElement)notSure.Find("#sure")).IsChecked = true;
        Sheet removed = await dipper.SendAsync(notSure, notSure.Form("main form"), notSure.Find("main form button"));

        Assert.DoesNotContain("Wren", (await RegisterPage.OpenAsync(dipper)).People);
        Assert.Equal(HttpStatusCode.NotFound, (await dipper.OpenAsync($"/class/students/{id}")).Status);
        Assert.StartsWith("/sign-in", (await wren.OpenAsync("/account")).Address, StringComparison.Ordinal);
        await dipper.SendAsync(removed, removed.Form("[aria-labelledby=trash-title] form"), removed.Find("[aria-labelledby=trash-title] button"));
        Assert.Contains("Wren", (await RegisterPage.OpenAsync(dipper)).People);
    }

    [Fact]
    public async Task People_PostedAboutSomeoneOfAnotherClass_NothingHappens()
    {
        Browser plover = await Two.AsAsync("Plover");
        Sheet own = await plover.OpenAsync($"/class/people/{Two.Person("Teal").Id}");
        IEnumerable<KeyValuePair<string, string>> token = Browser.FieldsOf(own.Form("main form"));
        foreach (string what in new[] { "mentor", "passphrase", "move" })
            Assert.Equal(HttpStatusCode.NotFound,
                (await plover.PostAsync($"/class/people/{Two.Wren.Id}", [.. token, KeyValuePair.Create("do", what)])).Status);
        Assert.Equal(HttpStatusCode.NotFound,
            (await plover.PostAsync($"/class/people/{Two.Wren.Id}/remove", [.. token, KeyValuePair.Create("sure", "true")])).Status);
        Assert.Equal((Role.Student, false), (Two.Wren.Role, Two.Wren.MustChoosePassphrase));
        await plover.PostAsync("/class/setup", [.. token, KeyValuePair.Create("do", "open"), KeyValuePair.Create("id", Two.First.Id)]);
        Assert.Equal(["Teal"], (await RegisterPage.OpenAsync(plover)).People);
    }

    [Fact]
    public async Task Setup_TwoInstructorsRename_SecondIsToldAndLosesNothing()
    {
        Browser dipper = await Two.AsAsync("Dipper");
        Sheet first = await dipper.OpenAsync("/class/setup"), second = await dipper.OpenAsync("/class/setup");
        await RenameAsync(first, "Monday class");
        Sheet told = await RenameAsync(second, "Winter class");
        Assert.Contains("it is called “Monday class” now", told.Text("[role=alert]"), StringComparison.Ordinal);
        Assert.Equal("Winter class", ((IHtmlInputElement)told.Find("#name")).Value);
        await RenameAsync(told, "Winter class");
        Assert.Equal("Winter class", Two.Room.Store.Classes.Find(Two.First.Id)!.Name);
    }

    private static Task<Sheet> RenameAsync(Sheet setup, string name)
    {
        ((IHtmlInputElement)setup.Find("#name")).Value = name;
        IElement button = setup.Find("button[value=rename]");
        return setup.Browser.SendAsync(setup, (IHtmlFormElement)button.Closest("form")!, button);
    }

    private static async Task<Sheet> PressAsync(Browser browser, string address, string what)
    {
        Sheet sheet = await browser.OpenAsync(address);
        IElement button = sheet.Find($"button[value='{what}']");
        return await browser.SendAsync(sheet, (IHtmlFormElement)button.Closest("form")!, button);
    }

    private async Task<Sheet> JudgeAsync(Browser browser, string exerciseId, string what, string reason) =>
        await SendJudgmentAsync(await browser.OpenAsync($"/class/students/{Two.Wren.Id}/{exerciseId}"), what, reason);

    private static Task<Sheet> SendJudgmentAsync(Sheet page, string what, string reason)
    {
        ((IHtmlTextAreaElement)page.Find("textarea[name^='reason-']")).Value = reason;
        IElement button = page.Find($"button[value^='{what}:']");
        return page.Browser.SendAsync(page, (IHtmlFormElement)button.Closest("form")!, button);
    }
}
