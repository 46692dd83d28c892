using AngleSharp.Dom;

namespace TyingClass.Web.Tests.Pages;

internal sealed record RegisterPage(Sheet Sheet)
{
    public IReadOnlyList<string> People => [.. Sheet.All(".register tbody th a").Select(t => t.TextContent.Trim())];

    public IReadOnlyList<string> Exercises => [.. Sheet.All(".register thead tr:nth-child(2) th a span").Select(t => Sheet.Plain(t.TextContent))];

    public static async Task<RegisterPage> OpenAsync(Browser browser, string query = "") =>
        new(await browser.OpenAsync("/class/register" + (query.Length == 0 ? "?evening=all" : query)));

    /// <summary>"2 passed" of one student and exercise.</summary>
    public string Cell(string person, string exercise) => Sheet.Plain(CellOf(person, exercise).TextContent);

    public async Task<Sheet> OpenCellAsync(string person, string exercise) =>
        await Sheet.Browser.OpenAsync(CellOf(person, exercise).QuerySelector("a")!.GetAttribute("href")!);

    private IElement CellOf(string person, string exercise)
    {
        IElement row = Sheet.All(".register tbody tr").First(r => r.QuerySelector("th")!.TextContent.Contains(person, StringComparison.Ordinal));
        return row.QuerySelectorAll("td")[Exercises.ToList().IndexOf(exercise)];
    }
}
