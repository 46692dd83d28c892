using TyingClass.Lessons.Reference;
using Xunit;

namespace TyingClass.Lessons.Tests.Reference;

public sealed class FormulaBookTests
{
    private static string Html => string.Concat(FormulaBook.AsBuilt.Select(p => p.Html));

    [Fact]
    public void AsBuilt_Documents_AreThoseOfTheRepository() =>
        Assert.Equal(FormulaBook.Read(Path.Combine(Repo.Root, "docs")).Select(p => p.Html), FormulaBook.AsBuilt.Select(p => p.Html));

    [Fact]
    public void AsBuilt_Documents_AreWhole()
    {
        Assert.Equal(["Formulas", "From recipe to body: the formulas"], FormulaBook.AsBuilt.Select(p => p.Headings[0].Text));
        foreach (string name in new[] { "formulas.md", "formulas-body.md" })
        {
            string[] titles = [.. File.ReadLines(Path.Combine(Repo.Root, "docs", name)).Where(l => l.StartsWith('#')).Select(l => l.TrimStart('#', ' '))];
            Assert.Equal(titles, FormulaBook.AsBuilt[name == "formulas.md" ? 0 : 1].Headings.Select(h => h.Text));
        }
    }

    [Fact]
    public void AsBuilt_Anchors_AreUniqueAndEveryLinkOnThePageFindsOne()
    {
        string[] anchors = [.. FormulaBook.AsBuilt.SelectMany(p => p.Headings).Select(h => h.Id)];
        Assert.Equal(anchors.Length, anchors.Distinct().Count());
        Assert.All(anchors, id => Assert.Contains($"id=\"{id}\"", Html, StringComparison.Ordinal));
        string[] links = [.. System.Text.RegularExpressions.Regex.Matches(Html, "href=\"([^\"]*)\"").Select(m => m.Groups[1].Value)];
        Assert.NotEmpty(links);
        Assert.All(links, link => Assert.Contains(link.TrimStart('#'), anchors));
    }

    // Named in comments of the engine and in lessons: these must not move.
    [Theory]
    [InlineData("keel-height")]
    [InlineData("slack-leader")]
    [InlineData("cinched-knot")]
    [InlineData("moment-ledger")]
    [InlineData("stable-attitudes")]
    [InlineData("what-is-left-out")]
    [InlineData("body-parts")]
    [InlineData("estimates")]
    public void HasAnchor_NamedElsewhere_IsThere(string id) => Assert.True(FormulaBook.HasAnchor(id));

    [Fact]
    public void HasAnchor_OfNothing_IsFalse() => Assert.False(FormulaBook.HasAnchor("keel-hight"));

    [Fact]
    public void AsBuilt_PowersAndIndices_AreRaisedOutsideTags()
    {
        Assert.Contains("r<sub>e</sub>", Html, StringComparison.Ordinal);
        Assert.Contains("Re<sup>-0.75</sup>", Html, StringComparison.Ordinal);
        Assert.Contains("<sup>-(Re/4500)<sup>0.7</sup></sup>", Html, StringComparison.Ordinal);
        Assert.DoesNotMatch("<[^>]*<su[bp]>", Html);
    }

    public static TheoryData<string> Codes => [.. FindingCodes.OfTheEngine];

    [Fact]
    public void Findings_OfTheDocument_AreThoseOfTheEngine() => Assert.Equal(FindingCodes.OfTheEngine.Order(), FindingCodes.InTheDocument.Order());

    [Theory]
    [MemberData(nameof(Codes))]
    public void ForFinding_Code_FindsItsOwnPlace(string code)
    {
        string link = FormulaLinks.ForFinding(code);
        Assert.True(FormulaBook.HasAnchor(link["/model#".Length..]), link);
        Assert.True(link != "/model#findings", $"FormulaLinks.ForFinding knows no place for “{code}”.");
    }

    // A verdict is linked as findings are, and a code of next year leads to the list.
    [Theory]
    [InlineData("rides as intended", "/model#verdicts")]
    [InlineData("a code of next year", "/model#findings")]
    public void ForFinding_OtherWords_FindTheNearestPlace(string words, string link)
    {
        Assert.Equal(link, FormulaLinks.ForFinding(words));
        Assert.True(FormulaBook.HasAnchor(link["/model#".Length..]));
    }
}
