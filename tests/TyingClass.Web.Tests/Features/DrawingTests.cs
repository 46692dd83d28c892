using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

/// <summary>Drawing a fly is free and tells nothing; how it swims is what an attempt tells (docs/decisions/0010).</summary>
public sealed class DrawingTests(ClassRoom room) : IClassFixture<ClassRoom>
{
    private static readonly string[] Told = ["keel height", "flipped", "line of pull", "hinge line", "nose up", "nose down", "flow"];

    [Fact]
    public async Task Repair_DrawnAgainAndAgain_ShowsTheFlyInTheViseAndUsesNoAttempt()
    {
        ExercisePage page = await ExercisePage.OpenAsync(room.NewBrowser(), "first-03");
        AssertTellsNothing(page.Sheet);

        ExercisePage drawn = await page.Set("parts[0].side", "top").DrawAsync();

        AssertTellsNothing(drawn.Sheet);
        Assert.Empty(drawn.Attempts);
    }

    [Fact]
    public async Task Repair_AfterAnAttempt_ShowsBeforeAndAfterSwimmingAndTheEditorStillInTheVise()
    {
        ExercisePage failed = await Answers.FailRepairAsync(room.NewBrowser());

        Assert.Equal(["before", "after"], failed.Sheet.All("#feedback .fly-halves .half-name").Select(h => h.TextContent));
        Assert.Contains("flipped", failed.Sheet.Text("#feedback figure.plate"), StringComparison.Ordinal);
        Assert.Contains("in the vise", failed.Sheet.Text("#draft figure.plate"), StringComparison.Ordinal);

        ExercisePage drawn = await failed.Set("parts[0].side", "top").DrawAsync();
        Assert.Contains("in the vise", drawn.Sheet.Text("#draft figure.plate"), StringComparison.Ordinal);
        Assert.False(drawn.Sheet.Has("#feedback"));
    }

    [Fact]
    public async Task Lesson_RepairNotTried_TellsNothingEither()
    {
        Sheet lesson = await room.NewBrowser().OpenAsync("/lessons/first-evening");

        Assert.Contains("in the vise", lesson.Text("#exercise-first-03 figure.plate"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("first-01")]
    [InlineData("first-02")]
    [InlineData("second-02")]
    [InlineData("second-04")]
    public async Task AskedFlies_BeforeTheAnswer_AreDrawnInTheVise(string id) =>
        AssertTellsNothing((await ExercisePage.OpenAsync(room.NewBrowser(), id)).Sheet);

    // The mass center is marked on a fly that swims: no ruler is needed to read a measurement off it.
    [Fact]
    public async Task Measure_Missed_StillTellsNothingUntilItIsRight()
    {
        ExercisePage missed = await (await ExercisePage.OpenAsync(room.NewBrowser(), "first-02")).Answer("5 g").SubmitAsync();

        AssertTellsNothing(missed.Sheet);
    }

    private static void AssertTellsNothing(Sheet sheet)
    {
        string[] pictures = [.. sheet.All("figure.plate").Select(p => p.TextContent)];
        Assert.NotEmpty(pictures);
        Assert.All(pictures, p => Assert.Contains("in the vise", p, StringComparison.Ordinal));
        Assert.All(pictures, p => Assert.DoesNotContain(Told, told => p.Contains(told, StringComparison.OrdinalIgnoreCase)));
    }
}
