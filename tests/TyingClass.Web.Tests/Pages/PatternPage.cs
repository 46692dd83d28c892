using AngleSharp.Html.Dom;

namespace TyingClass.Web.Tests.Pages;

/// <summary>One's own pattern with its editor, always as text.</summary>
internal sealed record PatternPage(Sheet Sheet)
{
    public const string Recipe = """
        recipe: Slate Minnow
        intent: point up
        hook:
          size: 6
          eye: down 25°
        parts:
          - part: dumbbell eyes
            material: lead
            size: 3 mm
            at: 4 mm
            side: top
          - part: wing
            material: bucktail
            length: 40 mm
            mass: 0.05 g
            at: 3 mm
            side: under
        fishing:
          knot: loop

        """;

    public string Id => Sheet.Address.Split('/', '?', '#')[2];

    public string Text => ((IHtmlTextAreaElement)Sheet.Find("#text")).Value.ReplaceLineEndings("\n");

    public static async Task<PatternPage> SaveNewAsync(Browser browser, string recipe = Recipe) =>
        await (await AsTextAsync(await browser.OpenAsync("/patterns/new"))).SaveAsync(recipe, "Begun.");

    public static async Task<PatternPage> OpenAsync(Browser browser, string id) => await AsTextAsync(await browser.OpenAsync($"/patterns/{id}"));

    public async Task<PatternPage> SaveAsync(string recipe, string note = "") => new(await Sheet.PressAsync("Save", ("text", recipe), ("note", note)));

    public static async Task<PatternPage> AsTextAsync(Sheet sheet) =>
        new(sheet.Has("button[value='as text']") ? await sheet.PressAsync("Show as text") : sheet);
}
