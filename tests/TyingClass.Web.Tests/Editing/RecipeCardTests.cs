using TyingClass.Web.Editing;
using Xunit;

namespace TyingClass.Web.Tests.Editing;

public sealed class RecipeCardTests
{
    [Theory]
    [InlineData("medium", "brass, size medium, taken as 3.97 mm, at 3 mm")]
    [InlineData("5/32", "brass, size 5/32, at 3 mm")]
    [InlineData("4 mm", "brass, size 4 mm, at 3 mm")]
    public void Of_SizeAsShopsSayIt_StandsBesideWhatItIsTakenFor(string size, string said)
    {
        RecipeCard? card = RecipeCard.Of(
            "recipe: Slate Minnow\nintent: point up\nhook: {size: 6}\nparts:\n  - part: dumbbell eyes\n    material: brass\n"
            + $"    size: {size}\n    at: 3 mm\n");
        Assert.Equal(said, Assert.Single(card!.Parts).Said);
    }

    [Fact]
    public void Of_CardWithASizeTaken_PastedIsTheRecipesOwnWord() => Assert.Contains(
        "size: medium\n",
        RecipePaste.Read("Slate Minnow\nmeant to ride point up\nhook\nsize 6\ndumbbell eyes\nbrass, size medium, taken as 0.156 in (3.97 mm), at 3 mm\n"),
        StringComparison.Ordinal);
}
