using TyingClass.Recipes.Text;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

/// <summary>Parts tied in, moved and taken out on the bench.</summary>
public sealed class BenchPartsTests : IDisposable
{
    private readonly ClassRoom room = new();

    [Fact]
    public async Task Part_JustTiedIn_FindsRoomAndIsDrawn()
    {
        // The bead that is offered first would take the shank where the eyes are.
        BenchPage bench = await (await OpenAsync()).PressAsync("add");
        Assert.True(RecipeParser.Parse(bench.RecipeText).Success);
        Assert.False(RecipeParser.Parse(bench.RecipeText.Replace($"at: {bench.Field("parts[3].at")}", "at: 0 mm", StringComparison.Ordinal)).Success);
        Assert.Equal(["part-4"], bench.Sheet.All(".fold[open]").Select(f => f.ParentElement!.Id));
        Assert.True(bench.Sheet.Has("svg.fly-side"));
    }

    [Fact]
    public async Task Part_MovedIntoAnother_StandsOpenBesideIt()
    {
        BenchPage bench = await (await OpenAsync()).PressAsync("add");
        bench = await bench.Fill("parts[3].at", "0 mm").PressAsync("draw");
        Assert.Contains("part-1", bench.Sheet.All(".fold[open]").Select(f => f.ParentElement!.Id));
        Assert.True(bench.Sheet.Has(".fold[open] [aria-invalid=true]"));
    }

    [Fact]
    public async Task Parts_AddedMovedAndTakenOut_AreSoInTheText()
    {
        BenchPage bench = await OpenAsync();
        bench = await bench.PressAsync("add");
        Assert.Equal("bead", bench.Field("parts[3].part"));
        bench = await bench.PressAsync("up:3");
        Assert.Equal("bead", bench.Field("parts[2].part"));
        bench = await bench.PressAsync("remove:2");
        Assert.DoesNotContain("part: bead", bench.RecipeText, StringComparison.Ordinal);
    }

    public void Dispose() => room.Dispose();

    private Task<BenchPage> OpenAsync() => BenchPage.OpenAsync(room.NewBrowser());
}
