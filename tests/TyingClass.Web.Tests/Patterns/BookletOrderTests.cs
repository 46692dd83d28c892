using TyingClass.Web.Patterns;
using Xunit;

namespace TyingClass.Web.Tests.Patterns;

public sealed class BookletOrderTests
{
    // One sheet folded once: outside 4 | 1, inside 2 | 3. Two sheets: 8 | 1, 2 | 7, 6 | 3, 4 | 5. Common practice, no source.
    [Theory]
    [InlineData(0, "")]
    [InlineData(3, "4|1 2|3")]
    [InlineData(4, "4|1 2|3")]
    [InlineData(5, "8|1 2|7 6|3 4|5")]
    public void Of_Pages_LieSoThatFoldingPutsThemInOrder(int pages, string sides) =>
        Assert.Equal(sides, string.Join(' ', BookletOrder.Of(pages).Select(s => $"{s.Left}|{s.Right}")));
}
