using CsCheck;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Recipes.Tests.Text;

public sealed class RecipeWriterTests
{
    [Fact]
    public void Write_AnyValidRecipe_ParsesBackEqual() =>
        RecipeGen.Valid.Sample(recipe =>
        {
            string text = RecipeWriter.Write(recipe);
            ParseResult<Recipe> back = RecipeParser.Parse(text);
            Assert.True(back.Success, string.Join('\n', back.Errors) + "\n" + text);
            Assert.Equal(recipe, back.Value);
            Assert.Equal(text, RecipeWriter.Write(back.Value));
        }, iter: 1000);

    [Fact]
    public void Write_TypedInInches_ShowsTheExactMillimeters()
    {
        Recipe recipe = RecipeParser.Parse(Samples.Minimal + "parts: [{part: bead, size: 5/64 in, at: 1/4 in}]\n").Value!;
        Assert.EndsWith("parts:\n  - part: bead\n    size: 1.984375 mm\n    at: 6.35 mm\n", RecipeWriter.Write(recipe), StringComparison.Ordinal);
    }
}
