using Microsoft.AspNetCore.Mvc.Testing;
using TyingClass.Web.Tests.Pages;
using TyingClass.Web.Tests.Voice;
using Xunit;

namespace TyingClass.Web.Tests.Features;

/// <summary>Practice of the course that compares one fly in two waters or on two knots, as a student meets it.</summary>
public sealed class OneFlyTwiceTests : IDisposable
{
    private readonly ClassRoom _room = new();
    private readonly WebApplicationFactory<Program> _course;

    public OneFlyTwiceTests() => _course = _room.WithWebHostBuilder(host => host.UseSetting("lessons", OneWayElsewhereTests.Repository("lessons")));

    [Theory]
    [InlineData("water", "water")]
    [InlineData("leader", "knot")]
    public async Task Prediction_MissedOrNot_QuestionPictureSumAndReasonAreOfTheChange(string concept, string word)
    {
        ExercisePage page = await PracticePage.OpenAsync(NewBrowser(), concept, "?seed=1&level=20");
        Assert.Contains($"Now the {word} changes, from “", page.Sheet.Text(".brief"), StringComparison.Ordinal);

        ExercisePage answered = await page.Choose("it gets larger").SubmitAsync();

        Assert.Contains(word, answered.Sheet.Text("#feedback"), StringComparison.Ordinal);
        Assert.Equal(["before", "after"], answered.Sheet.All("#feedback .half-name").Select(h => h.TextContent));
        string[] widths = [.. answered.Sheet.All("#feedback .fly-halves svg").Select(s => s.GetAttribute("viewBox")!.Split(' ')[2])];
        Assert.Equal(2, widths.Length);
        Assert.Equal(widths[0], widths[1]);
        Assert.Contains("the change", answered.Sheet.Text("#feedback .worked tbody tr:last-child"), StringComparison.Ordinal);
        Assert.Contains("it gets larger", answered.Sheet.Text("#feedback .worked tbody tr:last-child"), StringComparison.Ordinal);
        Assert.Contains("A change of ", answered.Sheet.Text("#feedback .worked"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Measure_AnsweredWithTheFigureBefore_IsMissedAndTheSumGoesOnFromIt()
    {
        // Two fences take turns: the second problem is the figure.
        ExercisePage page = await PracticePage.OpenAsync(NewBrowser(), "water", "?seed=2&level=20");
        string asked = page.Sheet.Text(".brief");
        Assert.Contains("Now the water changes", asked, StringComparison.Ordinal);
        string before = asked[(asked.IndexOf("Before that, its ", StringComparison.Ordinal) + "Before that, its ".Length)..];
        before = before[(before.IndexOf(" is ", StringComparison.Ordinal) + " is ".Length)..];
        before = before[..(before.IndexOf(" g", StringComparison.Ordinal) + " g".Length)];

        ExercisePage missed = await page.Answer(before).SubmitAsync();

        Assert.Contains("not yet", missed.Sheet.Text("#feedback h2"), StringComparison.Ordinal);
        Assert.Contains("water", missed.Sheet.Text("#feedback"), StringComparison.Ordinal);
        Assert.Contains(before, missed.Sheet.Text("#feedback .worked tbody tr:last-child"), StringComparison.Ordinal);
        Assert.Contains("The sum goes on from there", missed.Sheet.Text("#feedback .worked"), StringComparison.Ordinal);
    }

    public void Dispose()
    {
        _course.Dispose();
        _room.Dispose();
    }

    private Browser NewBrowser() => new(_course.CreateClient(new WebApplicationFactoryClientOptions { AllowAutoRedirect = false }));
}
