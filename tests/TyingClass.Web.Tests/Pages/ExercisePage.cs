using AngleSharp.Dom;
using AngleSharp.Html.Dom;

namespace TyingClass.Web.Tests.Pages;

/// <summary>An exercise as a student meets it.</summary>
internal sealed record ExercisePage(Sheet Sheet)
{
    public bool IsForm => Sheet.Has("input[name=mode][value=form]");

    public bool IsText => Sheet.Has("input[name=mode][value=text]");

    public string RecipeText => ((IHtmlTextAreaElement)Sheet.Find("#text")).Value.ReplaceLineEndings("\n");

    public IReadOnlyList<string> Problems => [.. Sheet.All("#problems li").Select(p => Sheet.Plain(p.TextContent))];

    public IReadOnlyList<string> Attempts => [.. Sheet.All(".attempt-list li > a").Select(a => Sheet.Plain(a.TextContent))];

    public IReadOnlyList<string> FindingHeads => [.. Sheet.All("#feedback .finding h3").Select(h => Sheet.Plain(h.TextContent))];

    public string Notice => Sheet.Has(".notice-warn") ? Sheet.Text(".notice-warn") : "";

    public IReadOnlyList<string> PartTitles => [.. Sheet.All(".part-head h3 span").Select(s => s.TextContent)];

    public static async Task<ExercisePage> OpenAsync(Browser browser, string id, string query = "") => new(await browser.OpenAsync($"/exercises/{id}{query}"));

    /// <summary>The value of a field of the recipe form, whether it may be changed or not.</summary>
    public string Field(string path) => Sheet.Find($"[name='r:{path}']") switch
    {
        IHtmlInputElement input => input.Value,
        IHtmlSelectElement select => select.Value ?? "",
        _ => throw new InvalidOperationException(path),
    };

    public bool IsLocked(string path) => Sheet.Find($"[name='r:{path}']").GetAttribute("type") == "hidden";

    public bool HasField(string path) => Sheet.Has($"[name='r:{path}']");

    public ExercisePage Set(string path, string value) => Fill($"[name='r:{path}']", value);

    public ExercisePage Write(string text) => Fill("#text", text);

    public ExercisePage Answer(string text) => Fill("form.answer [name=answer]", text);

    public ExercisePage Choose(string choice)
    {
        foreach (IHtmlInputElement radio in Sheet.All("form.answer input[type=radio]").Cast<IHtmlInputElement>()) radio.IsChecked = radio.Value == choice;
        return this;
    }

    public ExercisePage Fill(string selector, string value)
    {
        switch (Sheet.Find(selector))
        {
            case IHtmlInputElement input:
                input.Value = value;
                break;
            case IHtmlTextAreaElement area:
                area.Value = value;
                break;
            case IHtmlSelectElement select:
                if (!select.Options.Any(o => o.Value == value)) throw new InvalidOperationException($"{selector} has no choice {value}.");
                select.Value = value;
                break;
        }

        return this;
    }

    public Task<ExercisePage> SubmitAsync() => PressAsync("submit");

    public Task<ExercisePage> DrawAsync() => PressAsync("draw");

    public Task<ExercisePage> AsTextAsync() => PressAsync("as text");

    public Task<ExercisePage> AsFormAsync() => PressAsync("as form");

    public Task<ExercisePage> AddPartAsync(string kind) => Fill("#add-kind", kind).PressAsync("add");

    public async Task<ExercisePage> PressAsync(string action)
    {
        IElement button = Sheet.Find($"form.answer button[value='{action}']");
        return new(await Sheet.Browser.SendAsync(Sheet, Sheet.Form("form.answer"), button));
    }

    /// <summary>What the form would send now.</summary>
    public Dictionary<string, string> Fields() =>
        Browser.FieldsOf(Sheet.Form("form.answer")).GroupBy(f => f.Key).ToDictionary(g => g.Key, g => g.First().Value);
}
