using CsCheck;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Recipes.Tests.Text;

public sealed class ParsedRecipeTests
{
    /// <summary>What the parser lets through, the builder can build.</summary>
    [Fact]
    public void Build_AnyRecipeTheParserAccepts_HasFiniteMasses() =>
        RecipeGen.Valid.Sample(recipe =>
        {
            Assert.True(RecipeParser.Parse(RecipeWriter.Write(recipe)).Success);
            BuiltFly fly = FlyBuilder.Build(recipe);
            Assert.All(fly.Body.Parts, part => Assert.All(part.Masses, m => Assert.True(double.IsFinite(m.MassKg) && m.MassKg >= 0)));
        }, iter: 500);
}
