using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using TyingClass.Lessons.Courses;
using Xunit;

namespace TyingClass.Lessons.Tests.Prose;

public sealed class TableTests
{
    /// <summary>The page's security policy throws style attributes away, and a column of figures would stand ragged.</summary>
    [Fact]
    public void Read_AlignedTable_AlignsByClassAlone()
    {
        LessonResult result = Repo.Read("| a | b | c |\n|:--|:-:|--:|\n| 1 | 2 | 3 |\n");

        string html = Assert.IsType<ProseBlock>(Assert.Single(result.Lesson!.Blocks)).Html;
        IElement[] cells = [.. new HtmlParser().ParseDocument(html).QuerySelectorAll("td")];
        Assert.Equal(["to-left", "to-middle", "to-right"], cells.Select(c => c.ClassName));
        Assert.All(cells, c => Assert.False(c.HasAttribute("style")));
    }
}
