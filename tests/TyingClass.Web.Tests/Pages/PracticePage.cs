namespace TyingClass.Web.Tests.Pages;

/// <summary>A practice problem as a student meets it.</summary>
internal static class PracticePage
{
    /// <summary>The answer form is the exercise page's own.</summary>
    public static async Task<ExercisePage> OpenAsync(Browser browser, string slug, string query = "") =>
        new(await browser.OpenAsync($"/practice/{slug}{query}"));

    /// <summary>Answers a problem of which way up, right or wrong as asked, and comes to the next.</summary>
    public static async Task<ExercisePage> AnswerAsync(ExercisePage page, bool right)
    {
        // Eyes on top hold the point up, eyes below turn the darter over: common practice, no source.
        bool top = page.Sheet.Text(".card").Contains("side top", StringComparison.Ordinal);
        return await page.Choose(top == right ? "point up" : "point down").SubmitAsync();
    }

    public static Task<Sheet> NextAsync(ExercisePage page) =>
        page.Sheet.Browser.OpenAsync(page.Sheet.Find("a.button[href^='/practice/']").GetAttribute("href")!);

    public static string Words(ExercisePage page) => page.Sheet.Text(".strength-words");
}
