using AngleSharp.Dom;
using AngleSharp.Html.Dom;

namespace TyingClass.Web.Tests.Pages;

/// <summary>A form filled in and sent, on pages too small for a page object of their own.</summary>
internal static class AnyForm
{
    /// <param name="button">Its visible words, or what they begin with.</param>
    public static Task<Sheet> PressAsync(this Sheet sheet, string button, params (string Name, string Value)[] fields)
    {
        IElement pressed = sheet.All("main button").FirstOrDefault(b => Sheet.Plain(b.TextContent).StartsWith(button, StringComparison.Ordinal))
            ?? throw new InvalidOperationException($"{sheet.Address} has no button “{button}”: {sheet.Text()}");
        IHtmlFormElement form = (IHtmlFormElement)pressed.Closest("form")!;
        foreach ((string name, string value) in fields) Fill(form, name, value);
        return sheet.Browser.SendAsync(sheet, form, pressed);
    }

    private static void Fill(IHtmlFormElement form, string name, string value)
    {
        switch (form.Elements.FirstOrDefault(e => e.GetAttribute("name") == name))
        {
            case IHtmlInputElement input:
                input.Value = value;
                break;
            case IHtmlTextAreaElement area:
                area.Value = value;
                break;
            case IHtmlSelectElement select when select.Options.Any(o => o.Value == value):
                select.Value = value;
                break;
            default:
                throw new InvalidOperationException($"No field {name} takes “{value}”.");
        }
    }
}
