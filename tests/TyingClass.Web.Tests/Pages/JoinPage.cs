using AngleSharp.Html.Dom;

namespace TyingClass.Web.Tests.Pages;

internal sealed record JoinPage(Sheet Sheet)
{
    public string Errors => Sheet.Has("[role=alert]") ? Sheet.Text("[role=alert]") : "";

    public static async Task<JoinPage> OpenAsync(Browser browser) => new(await browser.OpenAsync("/join"));

    public async Task<JoinPage> JoinAsync(string code, string name, string passphrase = TwoClasses.Passphrase)
    {
        foreach ((string field, string value) in new[] { ("#code", code), ("#name", name), ("#passphrase", passphrase) })
            ((IHtmlInputElement)Sheet.Find(field)).Value = value;
        return new JoinPage(await Sheet.Browser.SendAsync(Sheet, Sheet.Form("main form"), Sheet.Find("main form button")));
    }

    public string Value(string selector) => ((IHtmlInputElement)Sheet.Find(selector)).Value;
}
