using System.Net;
using AngleSharp.Html.Dom;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;
using TyingClass.Storage;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

/// <summary>An exercise of the real course, answered without scripting.</summary>
public sealed class FindTheSlipTests : IDisposable
{
    private const string Exercise = "hook-09";

    private readonly ClassRoom _room = new();
    private readonly WebApplicationFactory<Program> _course;

    public FindTheSlipTests() => _course = _room.WithWebHostBuilder(builder => builder.UseSetting("lessons", Lessons()));

    private ClassStore Store => _course.Services.GetRequiredService<ClassStore>();

    [Fact]
    public async Task Answer_WrongStepWrongReasonThenRight_IsToldApartAndKept()
    {
        ExercisePage page = await ExercisePage.OpenAsync(NewBrowser(), Exercise);
        Assert.Equal("Find the slip", page.Sheet.Text(".lead .tab"));
        Assert.Equal(4, page.Sheet.All("input[type=radio][name='n:step']").Count());
        Assert.Equal(4, page.Sheet.All("input[type=radio][name='n:reason']").Count());

        page = await Pick(page, "1", "2").SubmitAsync();
        Assert.Contains("Step 1 holds", page.Sheet.Text("#feedback"), StringComparison.Ordinal);
        Assert.DoesNotContain("step 4", page.Sheet.Text("#feedback"), StringComparison.OrdinalIgnoreCase);

        page = await Pick(page, "4", "3").SubmitAsync();
        Assert.Contains("Step 4 is the one that goes wrong, and it has another reason than yours", page.Sheet.Text("#feedback"), StringComparison.Ordinal);

        page = await Pick(page, "4", "2").SubmitAsync();
        Assert.Equal(["Attempt 3: passed", "Attempt 2: not yet", "Attempt 1: not yet"], page.Attempts);
        Assert.True(page.Sheet.Has("input[name='n:step'][value='4'][checked]"));
        Assert.True(page.Sheet.Has("input[name='n:reason'][value='2'][checked]"));
        Assert.Contains("Step 4: The heaviest part", page.Sheet.Text(".model-answer"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Answer_StepWithoutReason_IsAskedForAndTheStepStays()
    {
        ExercisePage page = await Pick(await ExercisePage.OpenAsync(NewBrowser(), Exercise), "4", "").SubmitAsync();

        Assert.Equal(HttpStatusCode.UnprocessableEntity, page.Sheet.Status);
        Assert.Contains("Choose the reason too", Assert.Single(page.Problems), StringComparison.Ordinal);
        Assert.True(page.Sheet.Has("input[name='n:step'][value='4'][checked]"));
        Assert.Empty(page.Attempts);
    }

    [Fact]
    public async Task Lesson_HoldsTheForm_AndTakesTheAnswerBackToIt()
    {
        Browser browser = NewBrowser();
        Sheet lesson = await browser.OpenAsync("/lessons/hook-ballast");

        Assert.True(lesson.Has($"#exercise-{Exercise} form.answer input[name='n:step']"));
    }

    [Fact]
    public async Task Class_AttemptOfAStudent_ReadsAsSentences()
    {
        Browser instructor = NewBrowser(), student = NewBrowser();
        await (await SignInPage.OpenAsync(instructor, withCode: true)).ClaimAsync(Store.Instructors.NewCode(), "Dipper", "four quiet winter trout");
        await (await JoinPage.OpenAsync(student)).JoinAsync(Store.Classes.All()[0].Code, "Wren");
        await Pick(await ExercisePage.OpenAsync(student, Exercise), "3", "4").SubmitAsync();
        string id = Store.Accounts.OfClass(Store.Classes.All()[0].Id).Single(p => p.Name == "Wren").Id;

        Sheet one = await instructor.OpenAsync($"/class/students/{id}/{Exercise}"), all = await instructor.OpenAsync($"/class/exercises/{Exercise}");

        Assert.Contains("Step 3: The bead is heavier than the hook. Reason D: The soft tail soaks up water", one.Text(".sent"),
            StringComparison.Ordinal);
        Assert.Contains("Step 3: The bead is heavier than the hook.", all.Text(".sent"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Room_AskedToFindTheSlip_TakesOneOfTheSteps()
    {
        Browser instructor = NewBrowser(), student = NewBrowser();
        await (await SignInPage.OpenAsync(instructor, withCode: true)).ClaimAsync(Store.Instructors.NewCode(), "Dipper", "four quiet winter trout");
        await (await JoinPage.OpenAsync(student)).JoinAsync(Store.Classes.All()[0].Code, "Wren");

        await (await instructor.OpenAsync("/class/tonight")).FillAndSendAsync("main form:has(#exercise)", "button", ("exercise", Exercise));
        Sheet phone = await student.OpenAsync("/tonight");

        Assert.Contains("Which step goes wrong?", phone.Text("legend"), StringComparison.Ordinal);
        Assert.Contains("4. The heaviest part", phone.Text(".choices"), StringComparison.Ordinal);
    }

    public void Dispose()
    {
        _course.Dispose();
        _room.Dispose();
    }

    private Browser NewBrowser() => new(_course.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false }));

    private static ExercisePage Pick(ExercisePage page, string step, string reason)
    {
        foreach (IHtmlInputElement radio in page.Sheet.All("form.answer input[type=radio]").Cast<IHtmlInputElement>())
            radio.IsChecked = radio.Value == (radio.Name == "n:step" ? step : reason);
        return page;
    }

    private static string Lessons()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "TyingClass.sln"))) folder = folder.Parent;
        return Path.Combine(folder!.FullName, "lessons");
    }
}
