using System.Net;
using AngleSharp.Dom;
using Microsoft.AspNetCore.Mvc.Testing;
using TyingClass.Web.Tests.Pages;
using TyingClass.Web.Tests.Voice;
using Xunit;

namespace TyingClass.Web.Tests.Features;

public sealed class HomeTests : IDisposable
{
    private readonly ClassRoom _room = new();

    [Fact]
    public async Task Home_NewVisitor_BeginsWithTheFirstExerciseAndLeavesNoRecord()
    {
        Sheet home = await _room.NewBrowser().OpenAsync("/");

        Assert.Equal(HttpStatusCode.OK, home.Status);
        Assert.Equal("Which side is down", home.Text("#next-title"));
        Assert.Equal("/lessons/first-evening", home.Find(".next a.button").GetAttribute("href"));
        Assert.Contains("kept in this browser", home.Text(".waits"), StringComparison.Ordinal);
        Assert.Equal(["Which side is down", "Your own fly"], home.All(".lesson-line h3").Select(h => h.TextContent));
        Assert.All(home.All(".marks .word"), word => Assert.Equal("untried", word.TextContent));
        Assert.Empty(_room.Store.People.All());
        Assert.False(home.Response.Headers.TryGetValues("Set-Cookie", out _));
    }

    [Fact]
    public async Task Home_AfterAPass_GoesOnToTheNextAndCounts()
    {
        Browser browser = _room.NewBrowser();
        await Answers.PassFirstAsync(browser);

        Sheet home = await browser.OpenAsync("/");

        Assert.Equal("On the scale", home.Text("#next-title"));
        Assert.Matches("You have passed 1 of [0-9]+ exercises and have come as far as lesson 1, Which side is down", home.Text(".where"));
        Assert.Contains("1 of 3 exercises passed", home.Text(), StringComparison.Ordinal);
        Assert.Equal("passed", home.All(".marks .word").First().TextContent);
    }

    [Fact]
    public async Task Home_OfABegunLesson_GoesOnWithItsNextExercise()
    {
        Browser browser = _room.NewBrowser();
        await Answers.PassFirstAsync(browser);

        Sheet home = await browser.OpenAsync("/");

        Assert.Equal("/exercises/first-02", home.Find(".next a.button").GetAttribute("href"));
        Assert.False(home.Has(".news"));
    }

    [Fact]
    public async Task Home_WhereThePlanSaysWhatComesFirst_TellsHomeworkApart()
    {
        using WebApplicationFactory<Program> course = _room.WithWebHostBuilder(host => host.UseSetting("lessons", OneWayElsewhereTests.Repository("lessons")));

        Sheet home = await new Browser(course.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false })).OpenAsync("/");

        Assert.Equal("At home, from the lessons of evening 1", home.Text("#homework-title"));
        IElement[] lines = [.. home.All(".homework p")];
        Assert.StartsWith("First these: What you really cast,", Sheet.Plain(lines[0].TextContent), StringComparison.Ordinal);
        Assert.StartsWith("Then, if you have time: Brass for lead,", Sheet.Plain(lines[1].TextContent), StringComparison.Ordinal);
        // What is worked together is no homework.
        Assert.DoesNotContain("What did she cast?", home.Text(".homework"), StringComparison.Ordinal);
        Assert.Equal("/exercises/safe-02", lines[0].QuerySelector("a")!.GetAttribute("href"));
    }

    [Fact]
    public async Task Home_WherePlansDrawNoLine_SaysNothingOfHomework() => Assert.False((await _room.NewBrowser().OpenAsync("/")).Has(".homework"));

    [Fact]
    public async Task Home_AfterAFailure_StaysWithThatExercise()
    {
        Browser browser = _room.NewBrowser();
        await (await ExercisePage.OpenAsync(browser, "first-01")).Choose("point up").SubmitAsync();

        Sheet home = await browser.OpenAsync("/");

        Assert.Equal("Before the eyes are moved", home.Text("#next-title"));
        Assert.Contains("tried it once", home.Text(".next"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Lesson_Opened_ShowsProsePictureAndExercisesInPlace()
    {
        Sheet lesson = await _room.NewBrowser().OpenAsync("/lessons/first-evening");

        Assert.Equal("Which side is down", lesson.Heading);
        Assert.Equal("A darter that rolled over", lesson.Text(".prose h2"));
        Assert.True(lesson.Has("figure.plate svg title"));
        Assert.Equal("The Reed Darter as it was tied.", lesson.Text("figcaption"));
        Assert.True(lesson.Has("#exercise-first-01 input[type=radio]"));
        Assert.True(lesson.Has("#exercise-first-03 a.button[href='/exercises/first-03']"));
        Assert.Empty(lesson.All("[id]").GroupBy(e => e.Id).Where(g => g.Count() > 1).Select(g => g.Key));
    }

    [Fact]
    public async Task Lesson_AnsweredInPlace_ReturnsToTheLessonWithTheFeedback()
    {
        Browser browser = _room.NewBrowser();
        Sheet lesson = await browser.OpenAsync("/lessons/first-evening");
        Browser.FieldsOf(lesson.Form("#exercise-first-01 form"));
        ((AngleSharp.Html.Dom.IHtmlInputElement)lesson.Find("#exercise-first-01 input[value='point down']")).IsChecked = true;

        Sheet after = await browser.SendAsync(lesson, lesson.Form("#exercise-first-01 form"), lesson.Find("#exercise-first-01 form button"));

        Assert.Equal("/lessons/first-evening", after.Address.Split('#')[0]);
        Assert.Contains("Attempt 1: passed", after.Text("#exercise-first-01 .outcome"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/safety", "Safety")]
    [InlineData("/first-wraps", "Your first hour at the vise")]
    [InlineData("/model", "What is computed")]
    [InlineData("/preferences", "Preferences")]
    public async Task Page_Opened_IsThere(string address, string heading)
    {
        Sheet sheet = await _room.NewBrowser().OpenAsync(address);
        Assert.Equal(HttpStatusCode.OK, sheet.Status);
        Assert.Equal(heading, sheet.Heading);
    }

    public void Dispose() => _room.Dispose();
}
