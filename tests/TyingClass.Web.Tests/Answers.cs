using TyingClass.Web.Tests.Pages;

namespace TyingClass.Web.Tests;

/// <summary>Ways through the small course.</summary>
internal static class Answers
{
    public static async Task<ExercisePage> PassFirstAsync(Browser browser) =>
        await (await ExercisePage.OpenAsync(browser, "first-01")).Choose("point down").SubmitAsync();

    /// <summary>Changes the darter, and not in what matters: it flips. As it was given it would be no attempt.</summary>
    public static async Task<ExercisePage> FailRepairAsync(Browser browser) =>
        await (await ExercisePage.OpenAsync(browser, "first-03", "?attempt=0")).Set("parts[0].size", "4.4 mm").SubmitAsync();

    /// <summary>Lashes the eyes on top.</summary>
    public static async Task<ExercisePage> PassRepairAsync(Browser browser) =>
        await (await ExercisePage.OpenAsync(browser, "first-03", "?attempt=0")).Set("parts[0].side", "top").SubmitAsync();
}
