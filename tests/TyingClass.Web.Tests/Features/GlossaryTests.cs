using System.Net;
using Xunit;

namespace TyingClass.Web.Tests.Features;

public sealed class GlossaryTests(ClassRoom room) : IClassFixture<ClassRoom>
{
    [Fact]
    public async Task Glossary_EachWord_HasItsMeaningAndLeadsToItsLesson()
    {
        Sheet sheet = await room.NewBrowser().OpenAsync("/glossary");

        Assert.Equal(HttpStatusCode.OK, sheet.Status);
        Assert.Equal("Glossary", sheet.Heading);
        string[] words = [.. sheet.All("dt").Select(d => d.TextContent)];
        Assert.NotEmpty(words);
        Assert.Equal(words.Order(StringComparer.OrdinalIgnoreCase), words);
        foreach (string address in sheet.All("dd a").Select(a => a.GetAttribute("href")!).Distinct())
        {
            Assert.Equal(HttpStatusCode.OK, (await sheet.Browser.OpenAsync(address)).Status);
        }
    }

    [Fact]
    public async Task Lesson_FirstUseOfAWord_LeadsToAPlaceThatIsThere()
    {
        Browser browser = room.NewBrowser();
        Sheet glossary = await browser.OpenAsync("/glossary");
        string lesson = glossary.Find("dd a").GetAttribute("href")!;

        string[] links = [.. (await browser.OpenAsync(lesson)).All(".prose a.term").Select(a => a.GetAttribute("href")!)];

        Assert.NotEmpty(links);
        Assert.Equal(links.Distinct(), links);
        Assert.All(links, link => Assert.True(glossary.Has("#" + link.Split('#')[1]), $"{link} leads nowhere."));
    }

    [Fact]
    public async Task Handout_BenchTest_HasAllThreeTestsAndTheCautions()
    {
        Sheet sheet = await room.NewBrowser().OpenAsync("/handouts/bench-test");

        Assert.Equal(HttpStatusCode.OK, sheet.Status);
        Assert.Equal(["1. Hang", "2. Roll", "3. Drop"],
            sheet.All("h2").Select(h => h.TextContent.Length > 7 ? h.TextContent[..7] : h.TextContent).Where(t => char.IsAsciiDigit(t[0])));
        Assert.Contains("Glasses on", sheet.Text("blockquote"), StringComparison.Ordinal);
    }
}
