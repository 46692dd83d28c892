using TyingClass.Recipes.Catalogue;
using Xunit;

namespace TyingClass.Lessons.Tests.Docs;

/// <summary>The lesson on dumbbell eyes quotes the generic hook scale, which is no figure of a fly.</summary>
public sealed class HookScaleInLessonsTests
{
    private static readonly string Text = File.ReadAllText(Path.Combine(Repo.Lessons, "05-dumbbell-eyes.md"));

    // Sizes 1/0 and 4/0 are numbers 0 and −3 of the scale.
    [Theory]
    [InlineData(10, "gape goes from {0:0.0} mm")]
    [InlineData(2, "to {0:0.0} mm, which is 1.81 times")]
    [InlineData(8, "| 8 | {0:0.0} mm |")]
    [InlineData(4, "| 4 | {0:0.0} mm |")]
    [InlineData(0, "| 1/0 | {0:0.0} mm |")]
    [InlineData(-3, "| 4/0 | {0:0.0} mm |")]
    public void Gape_QuotedInTheLesson_IsThatOfTheScale(double number, string sentence) =>
        Assert.Contains(string.Format(System.Globalization.CultureInfo.InvariantCulture, sentence, 1e3 * HookScale.GapeM(number)), Text.ReplaceLineEndings(" "), StringComparison.Ordinal);
}
