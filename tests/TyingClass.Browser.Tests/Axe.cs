using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace TyingClass.Browser.Tests;

/// <summary>
/// Deque's accessibility rules, run inside the page as they are: none of our pages has frames, so the library's detour over a second page is not needed.
/// </summary>
internal static class Axe
{
    private const string Run = "async () => (await axe.run(document, { resultTypes: ['violations'] })).violations.map(v => `${v.id} at ${v.nodes[0].html}`)";

    private static readonly string Rules = new BundledAxeScriptProvider().GetScript();

    /// <returns>Each rule broken, with the first element that breaks it.</returns>
    public static async Task<string[]> ViolationsAsync(IPage page)
    {
        await page.EvaluateAsync(Rules);
        return await page.EvaluateAsync<string[]>(Run);
    }
}
