using TyingClass.Lessons.Handouts;
using Xunit;

namespace TyingClass.Lessons.Tests.Handouts;

public sealed class BenchTestSheetTests
{
    [Theory]
    [InlineData("Hang")]
    [InlineData("Roll")]
    [InlineData("Drop")]
    public void AsBuilt_EachOfTheThreeTests_HasItsHeading(string test) =>
        Assert.Matches($"<h2 [^>]*>[^<]*{test}", BenchTestSheet.AsBuilt.Html);

    [Theory]
    [InlineData("Glasses on")]
    [InlineData("Barb pinched")]
    [InlineData("handling lead")]
    public void AsBuilt_Cautions_StandOnTheSheet(string caution) => Assert.Contains(caution, BenchTestSheet.AsBuilt.Html, StringComparison.Ordinal);

    [Fact]
    public void Write_Title_IsTheFirstHeadingAndNotRepeated()
    {
        BenchTestSheet sheet = BenchTestSheet.Write("# Tests *for* a fly\n\nText <script>x</script>\n\n## Hang\n");

        Assert.Equal("Tests for a fly", sheet.Title);
        Assert.DoesNotContain("Tests", sheet.Html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", sheet.Html, StringComparison.Ordinal);
    }
}
