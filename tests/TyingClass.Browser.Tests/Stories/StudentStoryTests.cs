using Microsoft.Playwright;
using TyingClass.Browser.Tests.Pages;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Kinds.Predict;
using TyingClass.Telling.Reasons;
using TyingClass.Telling.Sentences;
using Xunit;

namespace TyingClass.Browser.Tests.Stories;

[Collection(BrowserCollection.Name)]
public sealed class StudentStoryTests(RunningApp app, Chromium browser)
{
    [Fact]
    public async Task Student_SubmitsAFlyThatFlips_ReadsWhyRepairsItAndTheInstructorSeesBothAttempts()
    {
        (Lesson lesson, Exercise repair) = FirstRepair();
        IPage student = await browser.NewVisitorAsync(app.Address, width: 390);

        // She opens the lesson and goes on to its repair.
        await student.GotoAsync($"/lessons/{lesson.Slug}");
        await student.Locator($"#exercise-{repair.Id}").GetByRole(AriaRole.Link, new() { Name = "Work on it" }).ClickAsync();
        ExercisePage exercise = new(student);

        // Sent in as it was given it is no attempt: she is told so, and loses nothing.
        await exercise.SubmitAsync();
        await exercise.Problems.WaitForAsync();
        Assert.Contains(RefusalSentence.Unchanged, await exercise.Problems.InnerTextAsync(), StringComparison.Ordinal);
        Assert.Equal(0, await exercise.Feedback.CountAsync());

        // She makes the eyes heavier on the wrong side, and it flips. One sentence says why first; the figures wait until she asks.
        await exercise.WriteRecipeAsync(repair.WrongAnswers[0].Answer);
        await exercise.SubmitAsync();
        await exercise.WaitForAttemptAsync(1);
        Assert.Equal(["What it would do", "Goal by goal", "Why", "Where to look next"], await exercise.FeedbackHeadingsAsync());
        Assert.StartsWith("With the dumbbell eyes larger,", await exercise.OpeningAsync(), StringComparison.Ordinal);
        string feedback = await exercise.FeedbackTextAsync();
        Assert.Contains(repair.Misreadings[0].Say, feedback, StringComparison.Ordinal);
        Assert.Contains("not met", feedback, StringComparison.Ordinal);
        Assert.DoesNotContain("Expect it to flip", feedback, StringComparison.Ordinal);
        await exercise.UnfoldAsync("In figures");
        await exercise.UnfoldAsync("What each part gave");
        feedback = await exercise.FeedbackTextAsync();
        Assert.Contains("Expect it to flip", feedback, StringComparison.Ordinal);
        Assert.Contains("from 0 g to 0.26 g", feedback, StringComparison.Ordinal);

        // She mends it and passes.
        await exercise.WriteRecipeAsync(repair.ModelAnswer!);
        await exercise.SubmitAsync();
        await exercise.WaitForAttemptAsync(2);
        feedback = await exercise.FeedbackTextAsync();
        Assert.DoesNotContain("not met", feedback, StringComparison.Ordinal);

        // The instructor comes in with the code the console printed and reads out the class code.
        IPage instructor = await browser.NewVisitorAsync(app.Address);
        await instructor.GotoAsync("/sign-in?code=new");
        await instructor.GetByLabel("One-time code").FillAsync(app.NewInstructorCode());
        await instructor.GetByLabel("Your name, as the class sees it").FillAsync("Robin");
        await instructor.GetByLabel("A passphrase of your own").FillAsync("kettle river amber stone");
        await instructor.GetByRole(AriaRole.Button, new() { Name = "Open your class" }).ClickAsync();
        await instructor.WaitForURLAsync("**/class/start");
        await instructor.GotoAsync("/class");
        string code = await instructor.Locator(".spoken").InnerTextAsync();

        // She joins; what she did before comes along.
        await student.GotoAsync("/join");
        await student.GetByLabel("Class code").FillAsync(code.Replace('-', ' '));
        await student.GetByLabel("A name the class will know you by").FillAsync("Wren");
        await student.GetByLabel("A passphrase").FillAsync("thimble and sunset");
        await student.GetByRole(AriaRole.Button, new() { Name = "Join" }).ClickAsync();
        await student.GetByRole(AriaRole.Heading, new() { Name = "Wren" }).WaitForAsync();

        // The instructor opens her cell and writes to her.
        await instructor.GotoAsync("/class/register?evening=all");
        await instructor.Locator($".register tbody a[href$='/{repair.Id}']").ClickAsync();
        Assert.Equal(2, await instructor.Locator("article.outcome").CountAsync());
        Assert.Contains("flip", await instructor.Locator("#attempt-1").InnerTextAsync(), StringComparison.Ordinal);
        await instructor.GetByLabel("About this exercise").FillAsync("Now try it with the wing left off.");
        await instructor.GetByRole(AriaRole.Button, new() { Name = "Send" }).ClickAsync();

        // She finds it at home, and puts it away once read.
        await student.GotoAsync("/");
        Assert.Contains("Now try it with the wing left off.", await student.Locator(".comment").InnerTextAsync(), StringComparison.Ordinal);
        await student.GetByRole(AriaRole.Button, new() { Name = "I have read it" }).ClickAsync();
        Assert.Equal(0, await student.Locator(".comment").CountAsync());
    }

    [Fact]
    public async Task Student_WithoutScripting_TypesABadFigureAndLosesNothing()
    {
        (_, Exercise repair) = FirstRepair();
        IPage student = await browser.NewVisitorAsync(app.Address, scripting: false);
        ExercisePage exercise = new(student);
        await exercise.OpenAsync(repair);

        string bad = repair.RecipeText!.Replace("recipe:", "recipe: \"<b>Copper</b> Loach\" #", StringComparison.Ordinal).Replace(" mm", " mmm",
            StringComparison.Ordinal);
        await exercise.WriteRecipeAsync(bad);
        await exercise.SubmitAsync();
        await student.Locator("#problems").WaitForAsync();

        Assert.Equal(bad.Trim(), (await student.Locator("textarea.recipe-text").InputValueAsync()).Trim());
        Assert.Equal(0, await exercise.Feedback.CountAsync());
        Assert.Contains("mmm", await student.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Student_WhoVotedWrong_SeesTheFlyGivesTheReasonAndAFreshFlyDecides()
    {
        Exercise predict = app.Course.TryFindExercise("mass-01", out _, out Exercise found)
            ? found
            : throw new InvalidOperationException("The prediction this story is about has left the course.");
        IPage student = await browser.NewVisitorAsync(app.Address, width: 390);
        ExercisePage exercise = new(student);
        await exercise.OpenAsync(predict);
        await exercise.ChooseAsync("Your prediction", "it gets larger");
        await exercise.SubmitAsync();
        await exercise.WaitForAttemptAsync(1);

        // She sees both flies; there is nothing left to vote on.
        Assert.Equal(2, await exercise.Feedback.Locator(".fly-halves svg").CountAsync());
        Assert.Equal(0, await exercise.Question("Your prediction").CountAsync());
        const string why = "Distance from the front of the shank to the mass center of the Slate Minnow: it gets smaller. Why?";
        Assert.Equal(3, await exercise.Question(why).GetByRole(AriaRole.Radio).CountAsync());
        Assert.Empty(await Axe.ViolationsAsync(student));

        // The fresh fly alone is not taken, and stays chosen.
        Exercise fresh = FreshProblem.Of(predict, 1)!;
        string key = fresh.Kind.RightAnswer(fresh)!;
        await exercise.ChooseAsync("This fresh fly decides", key);
        await exercise.SubmitAsync();
        await exercise.Problems.WaitForAsync();
        Assert.Contains(ReasonOffer.ChooseReason, await exercise.Problems.InnerTextAsync(), StringComparison.Ordinal);
        Assert.True(await exercise.Question("This fresh fly decides").GetByLabel(key, new() { Exact = true }).IsCheckedAsync());

        string reason = OfferedReasons.Of(predict)!.At(OfferedReasons.Of(predict)!.Right)!;
        await exercise.ChooseAsync(why, reason);
        await exercise.SubmitAsync();
        await exercise.WaitForAttemptAsync(2);
        string feedback = await exercise.FeedbackTextAsync();
        Assert.Contains(ReasonOffer.RightReason("the Slate Minnow", reason), feedback, StringComparison.Ordinal);
        Assert.DoesNotContain("not met", feedback, StringComparison.Ordinal);
    }

    private (Lesson Lesson, Exercise Exercise) FirstRepair() =>
        app.Course.TryFindExercise("mass-05", out Lesson lesson, out Exercise exercise)
            ? (lesson, exercise)
            : throw new InvalidOperationException("The repair these stories are about has left the course.");
}
