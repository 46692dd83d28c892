using TyingClass.Web.Evenings;
using Xunit;

namespace TyingClass.Web.Tests.Evenings;

public sealed class PlanRowTests
{
    [Fact]
    public void Of_ATable_IsItsRowsWithoutHeadAndMarks()
    {
        PlanRow[] rows =
        [
            .. PlanRow.Of(
                "| minutes | what |\n| ---: | --- |\n| 15 | Two flies: vote, **then** drop them |\n"
                    + "| 45 | Tying. Do [the first hour](/first-wraps) |\n\nA word."),
        ];

        Assert.Equal([new PlanRow(15, "Two flies: vote, then drop them"), new PlanRow(45, "Tying. Do the first hour")], rows);
        Assert.Equal(["Two flies", "Tying"], rows.Select(r => r.Title));
    }

    [Fact]
    public void Title_WithAFigure_KeepsItsPoint() => Assert.Equal("Two flies on 0.30 mm", new PlanRow(10, "Two flies on 0.30 mm, loop and cinched").Title);

    [Theory]
    [InlineData("| 15 | Two flies \\| one vote |", "Two flies | one vote")]
    [InlineData("| 15 | `a|b` and *c* |", "a|b and c")]
    [InlineData("| 15 | 3 < 4 & \"yes\" |", "3 < 4 & \"yes\"")]
    [InlineData("15 | No bars at the ends", "No bars at the ends")]
    public void Of_ARowAsMarkdownReadsIt_IsItsWords(string row, string what) =>
        Assert.Equal([new PlanRow(15, what)], PlanRow.Of("| minutes | what |\n| ---: | --- |\n" + row));

    [Fact]
    public void Of_AThirdColumn_KeepsItBehindTheSecond() => Assert.Equal(
        [new PlanRow(15, "Two flies, Heron"), new PlanRow(5, "Break")],
        PlanRow.Of("| minutes | what | who |\n| ---: | --- | --- |\n| 15 | Two flies | Heron |\n| 5 | Break | |"));

    [Fact]
    public void Of_PlainText_IsNothing() => Assert.Empty(PlanRow.Of("Tie for an hour, then tow."));

    [Fact]
    public void Says_AWord_OnlyWhereOneBeginsSo()
    {
        PlanRow row = new(35, "Everyone ties the Rudd, untied");

        Assert.True(row.Says("ties"));
        Assert.False(row.Says("tied"));
    }
}
