using AngleSharp.Html.Dom;

namespace TyingClass.Web.Tests.Pages;

/// <summary>Fills a form by its fields' names and presses a button of it.</summary>
internal static class Posting
{
    /// <param name="form">Selector of the form.</param>
    /// <param name="button">Selector of the button within it.</param>
    public static Task<Sheet> FillAndSendAsync(this Sheet sheet, string form, string button = "button", params (string Name, string Value)[] fields)
    {
        foreach ((string name, string value) in fields)
        {
            switch (sheet.Find($"{form} [name='{name}']"))
            {
                case IHtmlInputElement { Type: "radio" }:
                    foreach (IHtmlInputElement radio in sheet.All($"{form} [name='{name}']").Cast<IHtmlInputElement>()) radio.IsChecked = radio.Value == value;
                    break;
                case IHtmlInputElement input:
                    input.Value = value;
                    break;
                case IHtmlTextAreaElement area:
                    area.Value = value;
                    break;
                case IHtmlSelectElement select:
                    select.Value = value;
                    break;
            }
        }

        return sheet.Browser.SendAsync(sheet, sheet.Form(form), sheet.Find($"{form} {button}"));
    }
}
