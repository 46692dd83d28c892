using TyingClass.Recipes.Text;
using TyingClass.Web.Editing;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

/// <summary>Parts tied in, moved and taken out on the bench.</summary>
public sealed class BenchPartsTests(ClassRoom room) : IClassFixture<ClassRoom>
{
    // A line without a value, keys in an order of one's own: the fields show it otherwise than the text has it, and nobody touched them.
    [Theory]
    [InlineData("intent: point up\nrecipe: Reed Darter\nhook:\n  eye: straight\n  size: 6\nparts:\n  - part: bead\n    material:\n")]
    [InlineData("recipe: Reed Darter\nintent: point up\nhook:\n  size: 6\n  colour: red\n")]
    public async Task Text_ChangedAlone_IsNotTakenForTwoChanges(string first)
    {
        BenchPage bench = await (await BenchPage.OpenAsync(room.NewBrowser())).WriteText(first).PressAsync("draw");
        bench = await bench.WriteText(bench.RecipeText.Replace("size: 6", "size: 4", StringComparison.Ordinal)).PressAsync("draw");

        Assert.DoesNotContain("Both the fields and the text", bench.Sheet.Text(), StringComparison.Ordinal);
        Assert.Contains("size: 4", bench.RecipeText, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Part_WithNothingFilledIn_IsSaidToBeDrawnAsUsual()
    {
        BenchPage bench = await (await BenchPage.OpenAsync(room.NewBrowser()))
            .WriteText("recipe: Reed Darter\nintent: point up\nhook:\n  size: 6\nparts:\n  - part: bead\n").PressAsync("draw");

        Assert.Contains("drawn with what is usual", bench.Sheet.Text("#part-1 summary"), StringComparison.Ordinal);
        Assert.DoesNotContain("nothing filled in yet", bench.Sheet.Text("#bench-fields"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Part_JustTiedIn_FindsRoomAndIsDrawn()
    {
        // The bead that is offered first would take the shank where the eyes are.
        BenchPage bench = await (await OpenAsync()).PressAsync("add");
        Assert.True(RecipeParser.Parse(bench.RecipeText).Success);
        Assert.False(RecipeParser.Parse(bench.RecipeText.Replace($"at: {bench.Field("parts[0].at")}", "at: 0 mm", StringComparison.Ordinal)).Success);
        Assert.Equal(["part-1"], bench.Sheet.All(".fold[open]").Select(f => f.ParentElement!.Id));
        Assert.True(bench.Sheet.Has("svg.fly-side"));
    }

    [Fact]
    public async Task Part_MovedIntoAnother_StandsOpenBesideIt()
    {
        BenchPage bench = await (await OpenAsync()).PressAsync("add");
        bench = await bench.Fill("parts[0].at", "0 mm").PressAsync("draw");
        Assert.Contains("part-2", bench.Sheet.All(".fold[open]").Select(f => f.ParentElement!.Id));
        Assert.True(bench.Sheet.Has(".fold[open] [aria-invalid=true]"));
    }

    [Fact]
    public async Task Parts_AddedMovedAndTakenOut_AreSoInTheText()
    {
        BenchPage bench = await OpenAsync();
        bench = await bench.PressAsync("add");
        // What is threaded on comes first: nobody slides a bead over a finished fly.
        Assert.Equal("bead", bench.Field("parts[0].part"));
        bench = await bench.PressAsync("down:0");
        Assert.Equal("bead", bench.Field("parts[1].part"));
        bench = await bench.PressAsync("remove:1");
        Assert.DoesNotContain("part: bead", bench.RecipeText, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Steps_TypedInTheForm_StandInTheTextAndOnTheCard()
    {
        BenchPage bench = await OpenAsync();
        bench = await bench.Fill("steps[0]", "Press the barb down.").PressAsync("draw");
        bench = await bench.Fill("steps[1]", "Head: five turns.").PressAsync("draw");

        Assert.Equal("", bench.Field("steps[2]"));
        Assert.Equal(["Press the barb down.", "Head: five turns."], RecipeParser.Parse(bench.RecipeText).Value!.Steps);
        Assert.Equal(["Press the barb down.", "Head: five turns."], RecipeCard.Of(bench.RecipeText)!.Steps);
        bench = await bench.Fill("steps[0]", "").PressAsync("draw");
        Assert.Equal(["Head: five turns."], RecipeParser.Parse(bench.RecipeText).Value!.Steps);
    }

    [Fact]
    public async Task Part_WithItsPlaceEmptied_StandsWhereTheOthersLeaveOff()
    {
        BenchPage bench = await OpenAsync();
        bench = await bench.Fill("parts[0].at", "").PressAsync("draw");

        Assert.True(RecipeParser.Parse(bench.RecipeText).Success);
        Assert.Equal("", bench.Field("parts[0].at"));
        Assert.True(bench.Sheet.Has("svg.fly-side"));
    }

    private Task<BenchPage> OpenAsync() => BenchPage.OpenAsync(room.NewBrowser());
}
