using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Recipes.Tests.Parts;

/// <summary>What places left out and measures said in words come to, on a shank of 25 mm and a gape of 9 mm.</summary>
public sealed class PlacesTests
{
    private const string Head = "recipe: Alder Test\nintent: point down\nhook: {shank: 25 mm, wire: 1 mm, gape: 9 mm}\n";

    // A bead of 4 mm bored 1.4 mm (0.35 × 4) is √(16 - 1.96) = 3.747 mm long. Ten turns of 0.5 mm wire are 5 mm.
    [Fact]
    public void Parse_PlacesLeftOut_FollowTheTyingOrder()
    {
        Recipe fly = Parse(
            "parts: [{part: bead, size: 4 mm}, {part: tail}, {part: wraps, diameter: 0.5 mm, turns: 10}, {part: body, to: 20 mm}, {part: rib}, {part: "
                + "foam, to: 24 mm}, {part: wing}]\n");

        Assert.Equal([0, 25, 3.747, 3.747, 3.747, 20, 3.747], fly.Parts.Select(p => Math.Round(1e3 * p.AtM, 3)));
        Assert.Equal(20, 1e3 * fly.Parts[4].ToM!.Value, 9);
    }

    [Fact]
    public void Parse_RowHasReachedTheBend_BeginsAtTheRingAgain()
    {
        Recipe fly = Parse("parts: [{part: dumbbell eyes, size: 4 mm}, {part: body}, {part: foam, side: top}]\n");

        Assert.Equal([0, 4, 4], fly.Parts.Select(p => Math.Round(1e3 * p.AtM, 3)));
    }

    [Fact]
    public void Parse_Words_ComeToNumbers()
    {
        Recipe fly = Parse(
            "parts: [{part: cone, size: 5/32, length: 4 mm}, {part: dumbbell eyes, size: medium, at: behind the cone}, {part: tail, at: bend, length: 1.5 "
                + "× shank}]\n");

        Assert.Equal(4, 1e3 * fly.Parts[1].AtM, 9);
        Assert.Equal(3.96875, 1e3 * fly.Parts[1].SizeM!.Value, 9);
        Assert.Equal(25, 1e3 * fly.Parts[2].AtM, 9);
        Assert.Equal(37.5, 1e3 * fly.Parts[2].LengthM!.Value, 9);
    }

    [Theory]
    [InlineData("parts: [{part: bead}, {part: wraps, turns: 5}, {part: body}, {part: rib}, {part: wing, length: 1.2 shanks}]\n")]
    [InlineData("parts: [{part: dumbbell eyes, size: large, at: 0.25 × shank}, {part: body, at: behind the eyes, to: bend}]\nsteps: [Press the barb down., "
        + "\"Head: last.\"]\n")]
    [InlineData("parts: [{part: rattle, balls: 2 glass, side: beside}, {part: weed guard, loops: 2}, {part: putty, mass: 0.2 g, at: 2/3 shank, side: "
        + "under}]\n")]
    public void Write_RecipeInWords_ReadsBackEqualAndInTheSameWords(string rest)
    {
        Recipe fly = Parse(rest);
        string text = RecipeWriter.Write(fly);

        Assert.Equal(fly, RecipeParser.Parse(text).Value);
        Assert.Equal(text, RecipeWriter.Write(RecipeParser.Parse(text).Value!));
    }

    [Fact]
    public void Write_PlaceLeftOut_StaysOut() =>
        Assert.DoesNotContain("at:", RecipeWriter.Write(Parse("parts: [{part: bead}, {part: body}]\n")), StringComparison.Ordinal);

    [Fact]
    public void Build_InWords_GivesTheFlyOfItsNumbers()
    {
        Recipe words = Parse("parts: [{part: bead, size: 4 mm}, {part: body}, {part: wing, length: 1.2 × shank}]\n");

        Assert.Equivalent(FlyBuilder.Build(Places.Spelled(words)).Body, FlyBuilder.Build(words).Body);
    }

    [Fact]
    public void Build_WhatWasTaken_IsListed()
    {
        BuiltFly fly = FlyBuilder.Build(Parse("parts: [{part: bead, size: 4 mm}, {part: dumbbell eyes, size: medium}, {part: tail}]\n"));

        Assert.Equal("0 mm", Assert.Single(fly.Assumed, a => a.What == "bead place").Value);
        Assert.Contains("behind the bead", Assert.Single(fly.Assumed, a => a.What == "dumbbell eyes place").Why, StringComparison.Ordinal);
        Assert.Equal("3.969 mm", Assert.Single(fly.Assumed, a => a.What == "dumbbell eyes size").Value);
        Assert.Equal("25 mm", Assert.Single(fly.Assumed, a => a.What == "tail place").Value);
    }

    // What hangs on another part follows it: a longer bead pushes the body back, and stays in front of it.
    [Fact]
    public void Adviser_LargerBead_MovesWhatFollowsIt()
    {
        Recipe fly = Parse("parts: [{part: bead, size: 3 mm}, {part: body}]\n");
        Adjustable heavier = Adjustables.Of(fly).Single(a => a.Kind == "heavier bead");
        Recipe changed = heavier.At(heavier.Steps);

        Assert.Equal(PartExtents.Of(changed.Parts[0], HookScale.Resolve(changed.Hook)).RearM, changed.Parts[1].AtM, 1e-9);
        Assert.True(changed.Parts[1].AtM > fly.Parts[1].AtM);
        Assert.Equal(changed, RecipeParser.Parse(RecipeWriter.Write(changed)).Value);
    }

    [Fact]
    public void Adviser_PartMoved_IsSaidAsANumber()
    {
        Recipe fly = Parse("parts: [{part: dumbbell eyes, size: 4 mm, at: 0.2 × shank}]\n");
        Recipe changed = Adjustables.Of(fly).Single(a => a.Kind == "dumbbell eyes further back").At(2);

        Assert.Equal(6e-3, changed.Parts[0].AtM, 1e-12);
        Assert.Contains("at: 6 mm", RecipeWriter.Write(changed), StringComparison.Ordinal);
    }

    private static Recipe Parse(string rest)
    {
        ParseResult<Recipe> result = RecipeParser.Parse(Head + rest);
        Assert.Empty(result.Errors);
        return result.Value!;
    }
}
