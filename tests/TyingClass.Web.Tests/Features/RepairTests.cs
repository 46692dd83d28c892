using System.Net;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

public sealed class RepairTests : IDisposable
{
    private const string Id = "first-03";

    private readonly ClassRoom _room = new();

    [Fact]
    public async Task Repair_FliesThatFlipsThenMended_StudentIsToldWhyAndInstructorSeesBoth()
    {
        Browser instructor = await _room.NewInstructorAsync();
        Browser student = await _room.NewStudentAsync("Wren");

        ExercisePage failed = await Answers.FailRepairAsync(student);
        Assert.Equal(["What it would do", "Goal by goal", "Why", "Where to look next"], failed.FindingHeads);
        Assert.Equal(["Attempt 1: not yet"], failed.Attempts);
        Assert.Contains("not met", failed.Sheet.Text("#feedback .goals"), StringComparison.Ordinal);
        // Once: with the answer it belongs to, and not in the list as well.
        Assert.Contains("Where are the eyes?", failed.Sheet.Text("#feedback"), StringComparison.Ordinal);
        Assert.DoesNotContain("Where are the eyes?", failed.Sheet.Text(".hints"), StringComparison.Ordinal);
        Assert.DoesNotContain("away from the point", failed.Sheet.Text(".hints"), StringComparison.Ordinal);

        ExercisePage mended = await failed.Set("parts[0].side", "top").SubmitAsync();
        Assert.Equal(["Attempt 2: passed", "Attempt 1: not yet"], mended.Attempts);

        RegisterPage register = await RegisterPage.OpenAsync(instructor);
        string name = Assert.Single(register.People);
        Assert.Equal("2 passed", register.Cell(name, "The darter that rolled over"));
        Sheet cell = await register.OpenCellAsync(name, "The darter that rolled over");
        Assert.Equal(2, cell.All("article.outcome").Count());
        Assert.Contains("side: top", cell.Text("#attempt-2 pre"), StringComparison.Ordinal);
        Assert.Contains("side: under", cell.Text("#attempt-1 pre"), StringComparison.Ordinal);
        Assert.True(cell.Has("#attempt-1 svg"));
    }

    [Fact]
    public async Task Repair_Opened_OffersWhatMayChangeAndShowsTheRestAsGiven()
    {
        ExercisePage page = await ExercisePage.OpenAsync(_room.NewBrowser(), Id);

        Assert.True(page.IsForm);
        Assert.False(page.IsLocked("parts[0].side"));
        Assert.False(page.IsLocked("parts[0].size"));
        Assert.True(page.IsLocked("hook.eye"));
        Assert.True(page.IsLocked("parts[0].material"));
        Assert.Equal("straight", page.Field("hook.eye"));
        Assert.Contains("3.2 mm to 5.6 mm", page.Sheet.Text(), StringComparison.Ordinal);
        Assert.False(page.Sheet.Has("#add-kind"));
        Assert.False(page.Sheet.Has("button[value^='remove']"));
    }

    [Fact]
    public async Task Repair_ForbiddenChangeAsText_IsExplainedAndNotCounted()
    {
        Browser browser = _room.NewBrowser();
        ExercisePage text = await (await ExercisePage.OpenAsync(browser, Id)).AsTextAsync();

        ExercisePage refused = await text.Write(text.RecipeText.Replace("eye: straight", "eye: up", StringComparison.Ordinal)).SubmitAsync();

        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Sheet.Status);
        Assert.NotEmpty(refused.Problems);
        Assert.Empty(refused.Attempts);
        ExercisePage form = await refused.AsFormAsync();
        Assert.Equal("up", form.Field("hook.eye"));
        Assert.False(form.IsLocked("hook.eye"));
        Assert.Contains("was straight", form.Sheet.Text("#f-hook-eye-note"), StringComparison.Ordinal);
    }

    // Author's recipes carry remarks and keys in any order; a beginner gets the form all the same, a student's own remarks are never dropped.
    [Fact]
    public async Task Repair_RecipeWithRemarksAndKeysOutOfOrder_OpensAsAFormWithTheRestLocked()
    {
        ExercisePage page = await ExercisePage.OpenAsync(_room.NewBrowser(), "second-06");

        Assert.True(page.IsForm);
        Assert.True(page.IsLocked("hook.eye"));
        Assert.False(page.IsLocked("parts[0].side"));
        Assert.DoesNotContain("An author's remark", page.Sheet.Text(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Repair_TextWithRemarks_StaysTextWhenAskedForAForm()
    {
        ExercisePage text = await (await ExercisePage.OpenAsync(_room.NewBrowser(), Id)).AsTextAsync();
        string mine = "# my own thought\n" + text.RecipeText.Replace("size: 4 mm", "size: 4.2 mm", StringComparison.Ordinal);

        ExercisePage asked = await text.Write(mine).AsFormAsync();

        Assert.True(asked.IsText);
        Assert.Contains("remarks", asked.Notice, StringComparison.Ordinal);
        Assert.Equal(mine, asked.RecipeText);
        ExercisePage sent = await asked.SubmitAsync();
        Assert.Equal("Attempt 1: not yet", Assert.Single(sent.Attempts));
        Assert.Equal(mine, sent.RecipeText);
    }

    [Fact]
    public async Task Repair_OldAttemptOpened_ShowsItsFeedbackAndItsFly()
    {
        Browser browser = _room.NewBrowser();
        await Answers.FailRepairAsync(browser);
        await Answers.PassRepairAsync(browser);

        ExercisePage first = await ExercisePage.OpenAsync(browser, Id, "?attempt=1");

        Assert.Contains("Attempt 1", first.Sheet.Text("#feedback h2"), StringComparison.Ordinal);
        Assert.Equal("under", first.Field("parts[0].side"));
    }

    [Fact]
    public async Task Repair_Passed_ModelAnswerOpensOnlyThen()
    {
        Browser browser = _room.NewBrowser();
        Assert.False((await ExercisePage.OpenAsync(browser, Id)).Sheet.Has(".model-answer"));
        Assert.False((await Answers.FailRepairAsync(browser)).Sheet.Has(".model-answer"));
        Assert.True((await Answers.PassRepairAsync(browser)).Sheet.Has(".model-answer"));
    }

    [Fact]
    public async Task Attempts_OfAnotherBrowser_AreNotSeen()
    {
        await Answers.FailRepairAsync(_room.NewBrowser());
        Assert.Empty((await ExercisePage.OpenAsync(_room.NewBrowser(), Id, "?attempt=1")).Attempts);
    }

    public void Dispose() => _room.Dispose();
}
