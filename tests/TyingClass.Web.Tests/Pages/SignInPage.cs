using AngleSharp.Html.Dom;

namespace TyingClass.Web.Tests.Pages;

internal sealed record SignInPage(Sheet Sheet)
{
    public bool AsksForCode => Sheet.Has("#code");

    public string Errors => Sheet.Has("[role=alert]") ? Sheet.Text("[role=alert]") : "";

    public static async Task<SignInPage> OpenAsync(Browser browser, bool withCode = false) =>
        new(await browser.OpenAsync(withCode ? "/sign-in?code=new" : "/sign-in"));

    public async Task<SignInPage> ClaimAsync(string code, string name, string passphrase)
    {
        Fill("#code", code);
        return await EnterAsync(passphrase, name);
    }

    public async Task<SignInPage> EnterAsync(string passphrase, string name = "Dipper")
    {
        Fill("#name", name);
        Fill("#passphrase", passphrase);
        return new SignInPage(await Sheet.Browser.SendAsync(Sheet, Sheet.Form("main form"), Sheet.Find("main form button")));
    }

    private void Fill(string selector, string value) => ((IHtmlInputElement)Sheet.Find(selector)).Value = value;
}
