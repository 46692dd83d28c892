using TyingClass.Lessons.Grading;
using TyingClass.Storage.Attempts;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

/// <summary>An attempt graded by an engine of before says what today's would find, and keeps its grade.</summary>
public sealed class RegradeTests : IDisposable
{
    private readonly ClassRoom _room = new();

    [Fact]
    public async Task Attempt_GradedByAnOlderEngineThatSawItPass_SaysSoAndKeepsItsGrade()
    {
        Browser browser = _room.NewBrowser();
        Attempt now = await FailAsync(browser);
        KeepAgain(now, passed: true, engine: "0", [.. now.GradedFigures.Select(f => f with { Si = 0.97 })]);

        ExercisePage page = await ExercisePage.OpenAsync(browser, "first-03", "?attempt=2");

        Assert.Equal("The engine has changed since. Today it would not pass: rides as intended was 97 % and is now 0 %. The grade you were given stands.",
            page.Sheet.Text(".regraded"));
        Assert.Contains("passed", page.Sheet.Text("#feedback h2"), StringComparison.Ordinal);
        Assert.Equal("Attempt 2: passed", page.Attempts[0]);
    }

    [Fact]
    public async Task Attempt_OlderEngineSameFigures_SaysNothing()
    {
        Browser browser = _room.NewBrowser();
        Attempt now = await FailAsync(browser);
        KeepAgain(now, passed: false, engine: "0", now.GradedFigures);

        Assert.False((await ExercisePage.OpenAsync(browser, "first-03", "?attempt=2")).Sheet.Has(".regraded"));
    }

    [Fact]
    public async Task Attempt_SameEngine_SaysNothing()
    {
        Browser browser = _room.NewBrowser();
        await FailAsync(browser);

        Assert.False((await ExercisePage.OpenAsync(browser, "first-03")).Sheet.Has(".regraded"));
    }

    private async Task<Attempt> FailAsync(Browser browser)
    {
        await Answers.FailRepairAsync(browser);
        return Assert.Single(_room.Store.Attempts.Of(Assert.Single(_room.Store.People.All()).Id, "first-03"));
    }

    private void KeepAgain(Attempt attempt, bool passed, string engine, System.Collections.Immutable.ImmutableArray<GradedFigure> figures) =>
        _room.Store.Attempts.Add(attempt.PersonId, attempt.ExerciseId, attempt.AnswerText, new GradeResult
        {
            Passed = passed,
            EngineVersion = engine,
            ExerciseVersion = attempt.ExerciseVersion,
            Feedback = attempt.Feedback,
            Figures = figures,
        });

    public void Dispose() => _room.Dispose();
}
