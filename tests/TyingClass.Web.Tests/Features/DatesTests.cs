using System.Net;
using AngleSharp.Html.Dom;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

public sealed class DatesTests : IDisposable
{
    private const string Form = "form.dates";
    private const string Opens = "opens:lesson:second-evening";
    private const string Due = "due:lesson:first-evening";

    private readonly ClassRoom _room = new();

    [Fact]
    public async Task Release_InTheFuture_IsSaidToStudentsOfThatClassOnly()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Browser student = await _room.NewStudentAsync("Wren");
        await Save(instructor, (Opens, "2026-01-20T19:00"));

        Assert.Contains("Opens on Tue, Jan 20, 2026, 19:00", (await student.OpenAsync("/")).Text(), StringComparison.Ordinal);
        Assert.Contains("opens for your class on Tue, Jan 20", (await student.OpenAsync("/lessons/second-evening")).Text(), StringComparison.Ordinal);
        Assert.False((await student.OpenAsync("/exercises/second-03")).Has("form.answer"));
        Assert.DoesNotContain("Opens on", (await instructor.OpenAsync("/")).Text(), StringComparison.Ordinal);
        Assert.DoesNotContain("Opens on", (await _room.NewBrowser().OpenAsync("/")).Text(), StringComparison.Ordinal);
        Assert.True((await _room.NewBrowser().OpenAsync("/exercises/second-03")).Has("form.answer"));

        _room.Clock.Advance(TimeSpan.FromDays(6));
        Assert.True((await student.OpenAsync("/exercises/second-03")).Has("form.answer"));
    }

    [Fact]
    public async Task Release_InTheFuture_AnAnswerSentAllTheSameIsRefusedAndKeptForItsWriter()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Browser student = await _room.NewStudentAsync("Wren");
        Sheet open = await student.OpenAsync("/exercises/second-03");
        ((IHtmlTextAreaElement)open.Find("form.answer textarea")).Value = "Because the eyes <hang> low.";
        await Save(instructor, (Opens, "2026-01-20T19:00"));

        Sheet refused = await student.SendAsync(open, open.Form("form.answer"), open.Find("form.answer button.button"));

        Assert.Equal(HttpStatusCode.Forbidden, refused.Status);
        Assert.Contains("opens for your class on Tue, Jan 20, 2026, 19:00", refused.Text("[role=status]"), StringComparison.Ordinal);
        Assert.Equal("Because the eyes <hang> low.", ((IHtmlTextAreaElement)refused.Find("#typed")).Value.Trim());
        Assert.Empty(_room.Store.Attempts.AllOf(_room.Store.Accounts.FindByName("Wren")!.Id));

        _room.Clock.Advance(TimeSpan.FromDays(6));
        await student.SendAsync(open, open.Form("form.answer"), open.Find("form.answer button.button"));
        Assert.Single(_room.Store.Attempts.AllOf(_room.Store.Accounts.FindByName("Wren")!.Id));
    }

    [Fact]
    public async Task Due_OnHome_IsRaisedInItsWeekAndIsPastAfterwards()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Browser student = await _room.NewStudentAsync("Wren");
        await Save(instructor, ("due:lesson:second-evening", "2026-01-17T19:00"), (Due, "2026-02-25T19:00"));

        Sheet home = await student.OpenAsync("/");
        Assert.Contains("Lesson 2, Your own fly: 0 of", home.Text(".due-soon"), StringComparison.Ordinal);
        Assert.DoesNotContain("Which side is down", home.Text(".due-soon"), StringComparison.Ordinal);
        Assert.Equal("Your own fly", home.Text("#next-title"));

        _room.Clock.Advance(TimeSpan.FromDays(4));
        home = await student.OpenAsync("/");
        Assert.False(home.Has(".due-soon"));
        Assert.Equal("Which side is down", home.Text("#next-title"));
        Assert.Contains("was due Sat, Jan 17", home.Text(".lessons"), StringComparison.Ordinal);
        Assert.Contains(", due Wed, Feb 25", home.Text(".lessons"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Due_Passed_MarksLateAndTakesTheAnswer()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Browser student = await _room.NewStudentAsync("Wren");
        await Save(instructor, (Due, "2026-01-15T19:00"));
        Assert.Contains("Due on Thu, Jan 15", (await student.OpenAsync("/exercises/first-01")).Text(), StringComparison.Ordinal);

        _room.Clock.Advance(TimeSpan.FromDays(2));
        Assert.True((await instructor.OpenAsync("/class/register?evening=all")).Has(".register b.overdue"));
        ExercisePage answered = await Answers.PassFirstAsync(student);

        Assert.Single(answered.Attempts);
        Assert.Contains("yours came late, and counts", answered.Sheet.Text(), StringComparison.Ordinal);
        Assert.True((await instructor.OpenAsync("/class/register?evening=all")).Has(".register .p b.late"));
    }

    [Fact]
    public async Task Save_SomeoneElseSavedMeanwhile_IsToldAndLosesNothing()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Sheet open = await instructor.OpenAsync("/class/dates");
        await Save(instructor, (Due, "2026-01-21T19:00"));

        Sheet told = await open.FillAndSendAsync(Form, ".send button", (Due, "2026-01-22T19:00"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, told.Status);
        Assert.Contains("Someone else changed the dates", told.Text("[role=alert]"), StringComparison.Ordinal);
        Assert.Contains("Wed, Jan 21, 2026, 19:00", told.Text(Form), StringComparison.Ordinal);
        Assert.Equal("2026-01-22T19:00", ((IHtmlInputElement)told.Find($"[name='{Due}']")).Value);
        Sheet kept = await told.FillAndSendAsync(Form, ".send button");
        Assert.Contains("saved", kept.Text("[role=status]"), StringComparison.Ordinal);
        Assert.Equal(new DateTime(2026, 1, 22, 19, 0, 0), Assert.Single(_room.Store.Dates.Of(Class.Id).Rows).DueLocal);
    }

    [Fact]
    public async Task Save_NoDate_SaysWhichFieldAndKeepsIt()
    {
        Sheet told = await Save(await _room.NewInstructorAsync(), (Due, "next Tuesday"), (Opens, "2026-01-20T19:00"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, told.Status);
        Assert.Contains("“next Tuesday” is not a date", told.Text("[role=alert]"), StringComparison.Ordinal);
        Assert.Equal("next Tuesday", ((IHtmlInputElement)told.Find($"[name='{Due}']")).Value);
        Assert.Empty(_room.Store.Dates.Of(Class.Id).Rows);
    }

    [Fact]
    public async Task Fill_FromTheEvenings_SavesNothingUntilSaved()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Sheet evenings = await instructor.OpenAsync("/class/evenings");
        Sheet look = await evenings.FillAndSendAsync("#every-form", "button", ("first", "2026-02-04T19:00"), ("every", "14"));
        await look.FillAndSendAsync("#look", ".button");

        Sheet filled = await (await instructor.OpenAsync("/class/dates")).FillAndSendAsync(Form, ".fill button", ("days", "3"));

        Assert.Equal("2026-02-01T19:00", ((IHtmlInputElement)filled.Find("[name='opens:lesson:first-evening']")).Value);
        Assert.Equal("2026-02-11T19:00", ((IHtmlInputElement)filled.Find($"[name='{Due}']")).Value);
        Assert.Empty(_room.Store.Dates.Of(Class.Id).Rows);

        await filled.FillAndSendAsync(Form, ".send button", (Due, "2026-02-12T19:00"));

        Assert.Equal(new DateTime(2026, 2, 12, 19, 0, 0), _room.Store.Dates.Of(Class.Id).Of(Due["due:".Length..])!.DueLocal);
    }

    [Fact]
    public async Task Exercise_DueBeforeItsLessonOpens_IsNotSaved()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Sheet told = await Save(instructor, (Opens, "2026-02-10T19:00"), ("due:exercise:second-03", "2026-02-02T19:00"));
        Assert.Contains("is due before its lesson opens", told.Text("[role=alert]"), StringComparison.Ordinal);
        Assert.Empty(_room.Store.Dates.Of(Class.Id).Rows);
    }

    public void Dispose() => _room.Dispose();

    private Storage.Classes.ClassRoom Class => _room.Store.Classes.All()[0];

    private static async Task<Sheet> Save(Browser instructor, params (string, string)[] fields) =>
        await (await instructor.OpenAsync("/class/dates")).FillAndSendAsync(Form, ".send button", fields);
}
