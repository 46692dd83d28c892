using TyingClass.Lessons.Courses;
using Xunit;

namespace TyingClass.Lessons.Tests.Courses;

public sealed class GlossaryTests : IDisposable
{
    private const string Words = "  mass: how much stuff there is\n  mass center: where the mass acts\n  bead: a ball with a hole\n";
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("A bead and a bead.", "<p>A {bead} and a bead.</p>")]
    [InlineData("Beads.", "<p>{Beads:bead}.</p>")]
    [InlineData("The mass center, then the mass.", "<p>The {mass center}, then the {mass}.</p>")]
    [InlineData("A **mass\ncenter** here.", "<p>A <strong>{mass\ncenter:mass-center}</strong> here.</p>")]
    [InlineData("`bead`, [bead](https://example.org) and bead.", "<p><code>bead</code>, <a href=\"https://example.org\">bead</a> and {bead}.</p>")]
    [InlineData("Beaded, a bead-head, amassed.", "<p>Beaded, a bead-head, amassed.</p>")]
    [InlineData("a &lt; bead &amp; b", "<p>a &lt; {bead} &amp; b</p>")]
    public void Shown_FirstUse_LinksToItsMeaning(string prose, string expected) => Assert.Equal(Linked(expected), Shown(prose));

    [Fact]
    public void Shown_HeadingsTableHeadsAndFootnotes_AreSpared()
    {
        string shown = Shown("## The bead\n\n| bead |\n| --- |\n| a bead |\n\nText.[^n]\n\n[^n]: On the mass.\n");

        Assert.Equal(1, shown.Split("class=\"term\"").Length - 1);
        Assert.Contains("<td>a <a class=\"term\" href=\"/glossary#bead\">bead</a></td>", shown, StringComparison.Ordinal);
    }

    [Fact]
    public void Shown_AcrossBlocksAndLessons_LinksOncePerLesson()
    {
        const string Fly = "\n\n```fly\nrecipe: Bead\nintent: point down\nhook:\n  size: 10\n```\n\n";
        _folder.Write("01-a.md", Head(Words) + "A bead." + Fly + "A bead.");
        _folder.Write("02-b.md", Head("") + "A bead.");
        using CourseFolder course = new(_folder.Path);

        Assert.Equal([1, 0, 1], course.Current.Lessons.SelectMany(l => l.Blocks.OfType<ProseBlock>()).Select(b => b.Shown.Split("class=\"term\"").Length - 1));
    }

    [Fact]
    public void Shown_WordTakenOutOfTheGlossary_LosesItsLinkEvenInALessonKeptFromBefore()
    {
        _folder.Write("01-a.md", Head("  bead: a ball\n") + "A bead.");
        _folder.Write("02-b.md", Head("") + "A bead.");
        using CourseFolder course = new(_folder.Path);
        Assert.Contains("/glossary#bead", ((ProseBlock)course.Current.Lessons[1].Blocks[0]).Shown, StringComparison.Ordinal);

        _folder.Write("01-a.md", Head("") + "A bead.");
        _folder.Write("02-b.md", "broken");
        course.Reload();

        Assert.Equal("<p>A bead.</p>", ((ProseBlock)course.Current.Lessons[1].Blocks[0]).Shown);
    }

    [Fact]
    public void Glossary_OfTheCourse_IsInTheOrderOfTheAlphabetAndNamesItsLesson()
    {
        _folder.Write("01-a.md", Head(Words) + "Text.");
        _folder.Write("02-b.md", Head("  Axis: the middle\n  beads: second meaning\n") + "Text.");
        using CourseFolder course = new(_folder.Path);

        Assert.Equal(
            [("Axis", "axis", "b"), ("bead", "bead", "a"), ("mass", "mass", "a"), ("mass center", "mass-center", "a")],
            course.Current.Glossary.Select(e => (e.Term, e.Anchor, e.Lesson.Slug)));
    }

    [Fact]
    public void Shown_HostileMeaningAndTerm_StayText()
    {
        _folder.Write("01-a.md",
            Head("  \"<script>x</script>\": a ball\n  a\" onclick=\"x: y\n") + "See &lt;script&gt;x&lt;/script&gt; and a\" onclick=\"x here.");
        using CourseFolder course = new(_folder.Path);

        string shown = ((ProseBlock)course.Current.Lessons.Single().Blocks[0]).Shown;

        Assert.DoesNotContain("<script", shown, StringComparison.Ordinal);
        Assert.DoesNotMatch("<a[^>]* onclick", shown);
    }

    private string Shown(string prose)
    {
        _folder.Write("01-a.md", Head(Words) + prose);
        using CourseFolder course = new(_folder.Path);
        Assert.Empty(course.Current.Problems);
        return string.Concat(course.Current.Lessons.Single().Blocks.OfType<ProseBlock>().Select(b => b.Shown));
    }

    // "{Beads:bead}" stands for a link of that text to that word.
    private static string Linked(string text) => System.Text.RegularExpressions.Regex.Replace(
        text, @"\{([^:}]+)(?::([^}]+))?\}",
        m => $"<a class=\"term\" href=\"/glossary#{(m.Groups[2].Success ? m.Groups[2].Value : m.Groups[1].Value.Replace(' ', '-'))}\">{m.Groups[1].Value}</a>");

    private static string Head(string glossary) =>
        $"---\ntitle: T\nsummary: S\nconcepts: [a]\nminutes: 5\n{(glossary.Length > 0 ? "glossary:\n" + glossary : "")}---\n\n";
}
