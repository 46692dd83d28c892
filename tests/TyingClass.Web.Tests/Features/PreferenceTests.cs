using AngleSharp.Html.Dom;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

public sealed class PreferenceTests : IDisposable
{
    private readonly ClassRoom _room = new();

    [Theory]
    [InlineData("light", "light")]
    [InlineData("dark", "dark")]
    [InlineData("auto", "auto")]
    public async Task Theme_Chosen_StandsOnTheRoot(string choice, string attribute)
    {
        Browser browser = _room.NewBrowser();
        await ChooseAsync(browser, choice, "metric");
        Assert.Equal(attribute, (await browser.OpenAsync("/")).Find("html").GetAttribute("data-theme"));
        Assert.Empty(_room.Store.People.All());
    }

    [Fact]
    public async Task Units_Imperial_FiguresSpeakGrainsAndInches()
    {
        Browser browser = _room.NewBrowser();
        await ChooseAsync(browser, "auto", "imperial");
        ExercisePage page = await Answers.FailRepairAsync(browser);
        Assert.Matches(@"[0-9] gr\b", page.Sheet.Text(".figures:not(.doubt)"));
        await ChooseAsync(browser, "auto", "metric");
        page = await ExercisePage.OpenAsync(browser, "first-03");
        Assert.DoesNotMatch(@"[0-9] gr\b", page.Sheet.Text(".figures:not(.doubt)"));
    }

    [Fact]
    public async Task Look_CookieOfNonsense_CountsAsTheDefault()
    {
        Browser browser = _room.NewBrowser();
        browser.Client.DefaultRequestHeaders.Add("Cookie", "tying-look=\"><script>");
        Sheet home = await browser.OpenAsync("/");
        Assert.Equal("auto", home.Find("html").GetAttribute("data-theme"));
        Assert.Empty(home.All("script"));
    }

    private static async Task ChooseAsync(Browser browser, string theme, string units)
    {
        Sheet sheet = await browser.OpenAsync("/preferences");
        foreach (IHtmlInputElement radio in sheet.All("input[type=radio]").Cast<IHtmlInputElement>()) radio.IsChecked = radio.Id == theme || radio.Id == units;
        await browser.SendAsync(sheet, sheet.Form("main form"), sheet.Find("main form button"));
    }

    public void Dispose() => _room.Dispose();
}
