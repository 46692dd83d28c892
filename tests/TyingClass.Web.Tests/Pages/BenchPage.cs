using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Xunit;

namespace TyingClass.Web.Tests.Pages;

/// <summary>The bench as a browser without scripting meets it.</summary>
public sealed record BenchPage(Sheet Sheet)
{
    public static async Task<BenchPage> OpenAsync(Browser browser, string address = "/bench") => new(await browser.OpenAsync(address));

    public string Verdict => Sheet.Text(".bench-verdict");

    public string RecipeText => ((IHtmlTextAreaElement)Sheet.Find("#text")).Value;

    public string Address => ((IHtmlInputElement)Sheet.Find("#address")).Value;

    private IHtmlFormElement Form => Sheet.Form("#bench-form");

    public string Field(string path) => Input("r:" + path) switch
    {
        IHtmlInputElement input => input.Value,
        IHtmlSelectElement select => select.Value ?? "",
        _ => throw new InvalidOperationException(path),
    };

    public BenchPage Fill(string path, string value) => Set("r:" + path, value);

    public BenchPage Slide(string path, string value) => Set("s:" + path, value);

    public BenchPage Number(string path, string value) => Set("v:" + path, value);

    public BenchPage WriteText(string text)
    {
        ((IHtmlTextAreaElement)Sheet.Find("#text")).Value = text;
        return this;
    }

    public async Task<BenchPage> PressAsync(string value)
    {
        IElement button = Sheet.Find($"button[name=do][value^='{value}']");
        Assert.False(button.HasAttribute("disabled"), $"{value} is not to be pressed now");
        return new BenchPage(await Sheet.Browser.SendAsync(Sheet, Form, button));
    }

    /// <summary>What the script would post.</summary>
    public IEnumerable<KeyValuePair<string, string>> Fields() => Browser.FieldsOf(Form);

    private BenchPage Set(string name, string value)
    {
        switch (Input(name))
        {
            case IHtmlInputElement input: input.Value = value; break;
            case IHtmlSelectElement select: select.Value = value; break;
        }

        return this;
    }

    private IElement Input(string name) => Sheet.All("[name]").First(e => e.GetAttribute("name") == name);
}
