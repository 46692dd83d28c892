using TyingClass.Recipes.Model;
using TyingClass.Recipes.Supplies;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;
using Xunit;

namespace TyingClass.Telling.Tests.Sentences;

/// <summary>What to say at the counter: common practice, no source. 1 in = 25.4 mm exactly; 1 oz = 28.35 g.</summary>
public sealed class ShopWordsTests
{
    [Theory]
    [InlineData("size: 6\n  shank: 4XL\n  eye: straight", "A streamer hook, long in the shank, with a straight (ringed) eye.")]
    [InlineData("size: 2/0\n  shank: 2XS\n  eye: jig 60°", "A jig hook.")]
    [InlineData("size: 2/0\n  shank: 2XS\n  eye: straight", "A short-shanked hook, with a straight (ringed) eye.")]
    [InlineData("size: 6\n  gape: 9 mm\n  eye: down 25°",
        "A hook of standard length, with a turned-down eye. No packet tells the gape or the angle of the eye: take the nearest, measure it, and type it in.")]
    public void Of_Hook_IsAskedForByWhatAPacketTells(string hook, string words)
    {
        Recipe recipe = RecipeParser.Parse($"recipe: Reed Fry\nintent: point down\nhook:\n  {hook}\nparts: []\n").Value!;

        Assert.Equal(words, ShopWords.Of(Assert.Single(SupplyList.For([(recipe, 1)])), UnitSystem.Metric));
    }

    [Theory]
    [InlineData(SupplyKind.Bead, "bead", "brass", 4e-3, UnitSystem.Metric,
        "Also sold as 5/32 in. Try one: it must pass the bend of the hook with the barb pressed flat. For a jig hook ask for slotted.")]
    [InlineData(SupplyKind.Bead, "bead", "brass", 4e-3, UnitSystem.Imperial,
        "Also sold as 4 mm. Try one: it must pass the bend of the hook with the barb pressed flat. For a jig hook ask for slotted.")]
    [InlineData(SupplyKind.Wire, "wraps", "lead-free wire", 0.89e-3, UnitSystem.Metric, "Round lead-free wire. The spool says “lead-free” or “non-toxic”.")]
    [InlineData(SupplyKind.Wire, "wraps", "lead", 0.76e-3, UnitSystem.Metric,
        "Ask first whether your waters allow lead. If not, take lead-free wire one size up.")]
    public void Of_Metal_IsAskedForAsPacketsSayIt(SupplyKind kind, string what, string substance, double sizeM, UnitSystem units, string words) =>
        Assert.Equal(words, ShopWords.Of(new Supply(kind, new SupplyItem(what) { Substance = substance, SizeM = sizeM }, 1, 0, 0, 0), units));
}
