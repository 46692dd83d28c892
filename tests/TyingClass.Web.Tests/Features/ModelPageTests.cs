using TyingClass.Recipes.Catalogue;
using Xunit;

namespace TyingClass.Web.Tests.Features;

public sealed class ModelPageTests(ClassRoom room) : IClassFixture<ClassRoom>
{
    [Fact]
    public async Task Model_Opened_ShowsEveryHeadingOfBothDocuments()
    {
        Sheet page = await room.NewBrowser().OpenAsync("/model");
        string[] shown = [.. page.All(".formulas :is(h2, h3, h4)").Select(h => h.TextContent.Trim())];

        string[] written = [
            .. new[] { "formulas.md", "formulas-body.md" }.SelectMany(f => File.ReadLines(Path.Combine(Docs(), f))).Where(l => l.StartsWith('#'))
                .Select(l => l.TrimStart('#', ' '))];
        Assert.Equal(written, shown);
    }

    [Fact]
    public async Task Model_Contents_LeadToPlacesOnThePageAndNoIdIsTwice()
    {
        Sheet page = await room.NewBrowser().OpenAsync("/model");
        string[] ids = [.. page.All("[id]").Select(e => e.Id!)];

        Assert.Equal(ids.Length, ids.Distinct().Count());
        string[] links = [.. page.All("main a[href^='#']").Select(a => a.GetAttribute("href")![1..])];
        Assert.True(links.Length > 20);
        Assert.Empty(links.Except(ids));
    }

    [Fact]
    public async Task Model_Estimates_ListEveryMaterialAndEveryScaleFigure()
    {
        Sheet page = await room.NewBrowser().OpenAsync("/model");
        string[] rows = [.. page.All(".estimates tbody th").Select(h => h.TextContent)];

        Assert.Empty(Materials.All.Select(m => m.Name).Concat(CatalogueFigures.All.Select(f => f.What)).Except(rows));
    }

    [Fact]
    public async Task Model_ImperialReader_ReadsInchesBesideEveryEstimate()
    {
        Browser browser = room.NewBrowser();
        browser.Client.DefaultRequestHeaders.Add("Cookie", "tying-look=imperial.light");
        Sheet page = await browser.OpenAsync("/model");

        string Row(string what) => Sheet.Plain(page.All(".estimates tr").Single(r => r.QuerySelector("th")?.TextContent == what).TextContent);
        Assert.Contains("0.007 in (0.18 mm)", Row("wire of a rib"), StringComparison.Ordinal);
        Assert.Contains("0.005 to 0.01 in (0.12 to 0.25 mm)", Row("wire of a rib"), StringComparison.Ordinal);
        Assert.Contains("708 lb/ft³ (11340 kg/m³)", Row("lead"), StringComparison.Ordinal);
        Assert.DoesNotContain(page.All(".estimates thead th"), h => h.TextContent.Contains(", mm", StringComparison.Ordinal)
            && !h.TextContent.Contains("air", StringComparison.Ordinal));
        // The prose of the formulas too.
        Assert.Matches(@"\d in \([0-9.]+ mm\)", page.Text(".formulas"));
    }

    // The limits the design wants said on the page, each by a word of its own.
    [Theory]
    [InlineData("added mass")]
    [InlineData("Munk")]
    [InlineData("Flutter")]
    [InlineData("37°")]
    [InlineData("4 %")]
    [InlineData("the same about all axes")]
    [InlineData("The bath tub has the last word")]
    public async Task Model_Limits_AreSaid(string words) =>
        Assert.Contains(words, (await room.NewBrowser().OpenAsync("/model")).Text(".formulas"), StringComparison.Ordinal);

    private static string Docs()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "TyingClass.sln"))) folder = folder.Parent;
        return Path.Combine(folder!.FullName, "docs");
    }
}
