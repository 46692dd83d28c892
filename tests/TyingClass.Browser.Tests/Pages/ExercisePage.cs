using Microsoft.Playwright;
using TyingClass.Lessons.Exercises;

namespace TyingClass.Browser.Tests.Pages;

/// <summary>One exercise as a student meets it.</summary>
internal sealed class ExercisePage(IPage page)
{
    public ILocator Feedback => page.Locator("#feedback");

    public ILocator Problems => page.Locator(".field-error, .problems").First;

    public Task OpenAsync(Exercise exercise) => page.GotoAsync($"/exercises/{exercise.Id}");

    public Task SubmitAsync() => page.GetByRole(AriaRole.Button, new() { Name = "Submit answer" }).ClickAsync();

    public async Task WriteRecipeAsync(string text)
    {
        ILocator asText = page.GetByRole(AriaRole.Button, new() { Name = "Show as text" });
        if (await asText.IsVisibleAsync())
        {
            await asText.ClickAsync();
        }

        await page.Locator("textarea.recipe-text").FillAsync(text);
    }

    public Task<string> FeedbackTextAsync() => Feedback.InnerTextAsync();

    /// <summary>The four parts, in order.</summary>
    public Task<IReadOnlyList<string>> FeedbackHeadingsAsync() => Feedback.Locator(".finding h3").AllInnerTextsAsync();
}
