using System.Text.RegularExpressions;
using Microsoft.Playwright;
using TyingClass.Lessons.Exercises;

namespace TyingClass.Browser.Tests.Pages;

/// <summary>One exercise as a student meets it.</summary>
internal sealed class ExercisePage(IPage page)
{
    public ILocator Feedback => page.Locator("#feedback");

    /// <summary>Why an answer was not taken.</summary>
    public ILocator Problems => page.Locator("#problems");

    public Task OpenAsync(Exercise exercise) => page.GotoAsync($"/exercises/{exercise.Id}");

    public Task SubmitAsync() => page.GetByRole(AriaRole.Button, new() { Name = "Submit answer" }).ClickAsync();

    /// <summary>A group of choices by what stands over it.</summary>
    public ILocator Question(string legend) => page.GetByRole(AriaRole.Group, new() { Name = legend, Exact = true });

    public Task ChooseAsync(string legend, string choice) => Question(legend).GetByLabel(choice, new() { Exact = true }).CheckAsync();

    public async Task WriteRecipeAsync(string text)
    {
        ILocator asText = page.GetByRole(AriaRole.Button, new() { Name = "Show as text" });
        if (await asText.CountAsync() > 0)
        {
            await asText.ClickAsync();
        }

        await page.Locator("textarea.recipe-text").FillAsync(text);
    }

    public Task WaitForAttemptAsync(int number) =>
        Feedback.GetByRole(AriaRole.Heading, new() { NameRegex = new Regex($"^Attempt {number}:") }).WaitForAsync();

    public Task<string> FeedbackTextAsync() => Feedback.InnerTextAsync();

    /// <summary>The one sentence before all figures.</summary>
    public Task<string> OpeningAsync() => Feedback.Locator("p.opening").InnerTextAsync();

    public Task<LocatorBoundingBoxResult?> OpeningBoxAsync() => Feedback.Locator("p.opening").BoundingBoxAsync();

    public Task UnfoldAsync(string summary) => Feedback.Locator("summary").GetByText(summary, new() { Exact = true }).ClickAsync();

    /// <summary>The four parts, in order.</summary>
    public Task<IReadOnlyList<string>> FeedbackHeadingsAsync() => Feedback.Locator(".finding h3").AllInnerTextsAsync();
}
