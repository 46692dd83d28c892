using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Recipes.Tests.Text;

/// <summary>Ways a tyer writes things that are no layout of ours: understood where there is one meaning, else answered with the nearest.</summary>
public sealed class TyersWordsTests
{
    [Theory]
    [InlineData("#6")]
    [InlineData("# 6")]
    [InlineData("#6  # the wide one")]
    [InlineData("'#6'")]
    [InlineData("No. 6")]
    [InlineData("no 6")]
    public void HookSize_AsPacketsWriteIt_IsThatSize(string written) => Assert.Equal(6, Parse(written, "").Value!.Hook.Size!.Value.Number);

    [Fact]
    public void HookSize_AsPacketsWriteIt_LeavesPlacesWhereTheyAre()
    {
        RecipeError error = Assert.Single(Parse("#6", "  - part: bead\n    size: 70 mm\n").Errors);
        Assert.Equal((7, 11), (error.Line, error.Column));
    }

    [Fact]
    public void HookSize_InAForm_MayHaveItsSign() =>
        Assert.Equal(6, RecipeParser.Parse(RecipeDraft.Parse(Text("2", "")).Value!.With("hook.size", "#6")).Value!.Hook.Size!.Value.Number);

    [Fact]
    public void Value_ThatIsARemark_IsToldSo() => Assert.Contains(
        "what stands behind “#” is a remark and is not read", Assert.Single(Parse("6", "  - part: bead\n    size: #5/64\n").Errors).Text,
        StringComparison.Ordinal);

    [Theory]
    [InlineData("Med", 3.96875)]
    [InlineData("med.", 3.96875)]
    [InlineData("M", 3.96875)]
    [InlineData("x-small", 2.38125)]
    [InlineData("XL", 5.55625)]
    public void Size_ShortForm_IsTheSizeOfThatName(string size, double mm) =>
        Assert.Equal(mm, 1e3 * Parse("6", $"  - part: dumbbell eyes\n    size: {size}\n").Value!.Parts[0].SizeM!.Value, 1e-9);

    [Theory]
    [InlineData("mid shank", 0.5)]
    [InlineData("mid-shank", 0.5)]
    [InlineData("middle of the shank", 0.5)]
    [InlineData("half the shank", 0.5)]
    [InlineData("1/2 shank", 0.5)]
    [InlineData("½ × shank", 0.5)]
    [InlineData(".25 x shank", 0.25)]
    public void Place_OnTheShank_IsUnderstood(string at, double shanks)
    {
        Recipe recipe = Parse("6", $"  - part: dumbbell eyes\n    at: {at}\n").Value!;
        Assert.Equal(shanks * 16.82e-3, recipe.Parts[0].AtM, 1e-5);
    }

    [Theory]
    [InlineData("body", "at: bend\n    to: behind the bead", 3.747, 16.82)]
    [InlineData("body", "at: bend\n    to: bead", 3.747, 16.82)]
    [InlineData("body", "at: bend\n    to: 6 mm", 6, 16.82)]
    [InlineData("body", "at: bend\n    to: 17 mm", 16.82, 17)]
    [InlineData("body", "at: bend", 3.747, 16.82)]
    [InlineData("body", "at: behind the bead\n    to: bend", 3.747, 16.82)]
    [InlineData("rattle", "at: bend\n    length: 10 mm", 6.82, 16.82)]
    [InlineData("weed guard", "at: bend", 3.747, 16.82)]
    public void Place_FromTheBendForward_HasItsFrontEdgeForward(string part, string place, double frontMm, double rearMm)
    {
        Recipe recipe = Parse("6", $"  - part: bead\n    size: 4 mm\n  - part: {part}\n    {place}\n").Value!;
        // Settled twice it stays where it is.
        foreach (Recipe settled in (Recipe[])[recipe, Places.Settle(recipe), RecipeParser.Parse(RecipeWriter.Write(recipe)).Value!])
        {
            (double frontM, double rearM) = PartExtents.Of(settled.Parts[1], HookScale.Resolve(settled.Hook));
            Assert.Equal(frontMm, 1e3 * frontM, 0.02);
            Assert.Equal(rearMm, 1e3 * rearM, 0.02);
        }
    }

    [Theory]
    [InlineData("at: eye")]
    [InlineData("at: behind the eye")]
    [InlineData("at: just behind the hook eye")]
    [InlineData("at: at the ring")]
    public void Place_AtTheHooksEye_IsTheFrontOfTheShank(string place) =>
        Assert.Equal(0, Parse("6", $"  - part: dumbbell eyes\n    at: 0.3 x shank\n  - part: wraps\n    turns: 3\n    {place}\n").Value!.Parts[1].AtM);

    [Fact]
    public void Length_MixedNumberOfShanks_IsUnderstood() =>
        Assert.Equal(1.5 * 16.82e-3, Parse("6", "  - part: tail\n    length: 1 1/2 x shank\n").Value!.Parts[0].LengthM!.Value, 2e-5);

    [Theory]
    [InlineData("  - part: wraps\n    thickness: .015\n", "Did you mean “diameter”?")]
    [InlineData("  - part: body\n    wire: 4 mm\n", "Did you mean “diameter”?")]
    [InlineData("  - part: wraps\n    diameter: .15\n", "Did you mean .015 (inches), or 0.15 mm?")]
    [InlineData("  - part: barbell\n", "Did you mean “dumbbell eyes”?")]
    [InlineData("  - part: barbel eyes\n", "Did you mean “dumbbell eyes”?")]
    [InlineData("  - part: weedguard\n", "Did you mean “weed guard”?")]
    [InlineData("  - part: dumbbell eyes\n    size: meduim\n", "Did you mean “medium”?")]
    [InlineData("  - part: dumbbell eyes\n    at: mid shnak\n", "Did you mean “mid shank”?")]
    public void NearMiss_IsAnsweredWithTheNearest(string part, string expected) =>
        Assert.Contains(Parse("6", part).Errors, e => e.Text.Contains(expected, StringComparison.Ordinal));

    private static ParseResult<Recipe> Parse(string size, string parts) => RecipeParser.Parse(Text(size, parts));

    private static string Text(string size, string parts) =>
        $"recipe: Reed Darter\nintent: point down\nhook: {{}}\n".Replace("{}", $"\n  size: {size}", StringComparison.Ordinal)
        + (parts.Length == 0 ? "" : "parts:\n" + parts);
}
