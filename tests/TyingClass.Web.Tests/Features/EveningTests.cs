using System.Globalization;
using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TyingClass.Storage.Evenings;
using TyingClass.Web.Evenings;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

public sealed class EveningTests : IDisposable
{
    private readonly ClassRoom _room = new();

    [Fact]
    public async Task Evening_FirstOpened_ShowsTheUsualPlanAndTheLessonsOfIt()
    {
        Sheet evening = await (await _room.NewInstructorAsync()).OpenAsync("/class/evenings/1");
        Assert.Contains("Which side is down", evening.Text(".lead"), StringComparison.Ordinal);
        Assert.Contains("Cautions of the evening", evening.Text(".evening-notes"), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await evening.Browser.OpenAsync("/class/evenings/9")).Status);
    }

    [Fact]
    public async Task Notes_WithMarkup_AreShownAsTextAndNeverRun()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Sheet saved = await Save(instructor, ("demonstrations", "Show **two**.\n\n<script>alert(1)</script> [x](javascript:alert(1))"));

        Assert.True(saved.Has(".evening-notes strong"));
        Assert.False(saved.Has("main script"));
        Assert.DoesNotContain("javascript:", saved.Find(".evening-notes").InnerHtml, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Flies_EachTiesTwo_CountsForEveryStudentWithSpares()
    {
        Browser instructor = await _room.NewInstructorAsync();
        foreach (string name in new[] { "Wren", "Teal", "Heron" }) await _room.NewStudentAsync(name);
        Sheet evening = await instructor.OpenAsync("/class/evenings/1");
        Assert.Contains("Materials for 3 students", evening.Text(), StringComparison.Ordinal);

        Sheet saved = await Save(instructor, ("each-0", "2"), ("shown-0", "1"));

        // Three students tie two, the instructor one: seven hooks, and a tenth more is eight.
        string[] hooks = [
            .. saved.All(".materials tbody tr").Single(r => r.TextContent.Contains("hook,", StringComparison.Ordinal)).QuerySelectorAll("td")
                .Select(d => d.TextContent)];
        Assert.Equal(["7", "8", "1"], hooks);
        Sheet small = await instructor.OpenAsync("/class/evenings/1?hooks=5&sparePercent=0");
        Assert.Equal("2",
            small.All(".materials tbody tr").Single(r => r.TextContent.Contains("hook,", StringComparison.Ordinal)).QuerySelectorAll("td")[2].TextContent);
    }

    [Fact]
    public async Task Flies_OneForTwoNeighbors_CountsUpForWhoHasNone()
    {
        Browser instructor = await _room.NewInstructorAsync();
        foreach (string name in new[] { "Wren", "Teal", "Heron" }) await _room.NewStudentAsync(name);

        Sheet saved = await Save(instructor, ("each-0", "0.5"), ("shown-0", "0"));

        Assert.Contains("one for two neighbors", saved.Text(".tied"), StringComparison.Ordinal);
        IElement hooks = saved.All(".materials tbody tr").Single(r => r.TextContent.Contains("hook,", StringComparison.Ordinal));
        Assert.Equal("2", hooks.QuerySelector("td")!.TextContent);
        Assert.Equal(0.5, Plan.Flies[0].Each);
        Assert.Equal("0.5", ((IHtmlInputElement)saved.Find("#each-0")).Value);
    }

    [Fact]
    public void UsualPlan_OfTwoHours_AddsUpWithABreak()
    {
        (int Minutes, string What)[] rows =
        [
            .. EveningForm.UsualPlan.Split('\n').Select(l => l.Split('|', StringSplitOptions.TrimEntries))
                .Where(c => c.Length > 2 && char.IsAsciiDigit(c[1].FirstOrDefault()))
                .Select(c => (int.Parse(c[1], CultureInfo.InvariantCulture), c[2])),
        ];

        Assert.Equal(120, rows.Sum(r => r.Minutes));
        Assert.Contains(rows, r => r.What.StartsWith("Break.", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Save_SomeoneElseSavedMeanwhile_ShowsBothAndLosesNothing()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Sheet open = await instructor.OpenAsync("/class/evenings/1");
        await Save(instructor, ("plan", "Theirs."));

        Sheet told = await open.FillAndSendAsync("#edit", ".send button", ("plan", "Mine."));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, told.Status);
        Assert.Equal("Mine.", ((IHtmlTextAreaElement)told.Find("#plan")).Value.Trim());
        Assert.Contains("Theirs.", told.Text(), StringComparison.Ordinal);
        await told.FillAndSendAsync("#edit", ".send button");
        Assert.Equal("Mine.", Plan.Plan.Trim());
    }

    [Theory]
    [InlineData("students", "many")]
    [InlineData("students", "201")]
    [InlineData("each-0", "-1")]
    [InlineData("each-0", "0.3")]
    [InlineData("shown-0", "0.5")]
    [InlineData("starts", "soon")]
    public async Task Save_WhatCannotBe_SaysWhereAndKeepsTheRest(string field, string value)
    {
        Sheet told = await Save(await _room.NewInstructorAsync(), (field, value), ("plan", "My plan."));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, told.Status);
        Assert.True(told.Has($"[role=alert] a[href='#{field}']"));
        Assert.Equal("My plan.", ((IHtmlTextAreaElement)told.Find("#plan")).Value.Trim());
        Assert.Equal(0, Plan.Version);
    }

    [Fact]
    public async Task Wall_WalkedByItsLinks_GoesFromTheFirstScreenToTheLast()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Sheet step = await instructor.OpenAsync("/class/evenings/1/wall/1");
        List<string> titles = [step.Heading];
        while (step.Has("a[rel=next]"))
        {
            Assert.Equal("ArrowRight PageDown", step.Find("a[rel=next]").GetAttribute("data-key"));
            step = await instructor.OpenAsync(step.Find("a[rel=next]").GetAttribute("href")!);
            titles.Add(step.Heading);
        }

        Assert.Contains("Which side is down", titles);
        Assert.Contains("Before the eyes are moved", titles);
        Assert.Equal("At home", titles[^1]);
        Assert.Equal($"{titles.Count} of {titles.Count}", step.Text(".wall-steps span"));
    }

    [Fact]
    public async Task Wall_BeforeTheAnswer_ShowsTheFlyInQuestionInTheViseOnly()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Sheet step = await instructor.OpenAsync("/class/evenings/1/wall/1");
        while (step.Heading != "Before the eyes are moved") step = await instructor.OpenAsync(step.Find("a[rel=next]").GetAttribute("href")!);
        Assert.True(step.Has(".card"));
        Assert.Equal(step.All(".at-the-vise .plate"), step.All(".plate"));
    }

    [Fact]
    public async Task Handout_OfAnEvening_AsksWithoutAnswering()
    {
        Sheet handout = await (await _room.NewInstructorAsync()).OpenAsync("/class/evenings/1/handout");
        Assert.Contains("Before the eyes are moved", handout.Text(), StringComparison.Ordinal);
        Assert.True(handout.All(".boxes li").Count() >= 4);
        Assert.NotEmpty(handout.All(".at-the-vise .plate"));
        Assert.Equal(handout.All(".at-the-vise .plate"), handout.All(".plate"));
    }

    public void Dispose() => _room.Dispose();

    private EveningPlan Plan => _room.Store.Evenings.Find(_room.Store.Classes.All()[0].Id, 1);

    private static async Task<Sheet> Save(Browser instructor, params (string, string)[] fields) =>
        await (await instructor.OpenAsync("/class/evenings/1")).FillAndSendAsync("#edit", ".send button", fields);
}
