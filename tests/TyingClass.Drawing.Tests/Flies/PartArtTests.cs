using TyingClass.Drawing.Flies;
using TyingClass.Recipes.Model;
using Xunit;

namespace TyingClass.Drawing.Tests.Flies;

/// <summary>A new line of the catalogue without a drawing fails here, once, and is told which file to write.</summary>
public sealed class PartArtTests
{
    /// <summary>Every kind that has a drawing.</summary>
    internal static PartKind[] Drawn => [.. Enum.GetValues<PartKind>().Where(k => Record.Exception(() => PartArt.Of(k)) is null)];

    [Fact]
    public void Catalogue_EveryLine_HasItsDrawing()
    {
        string[] missing = [.. Enum.GetValues<PartKind>().Except(Drawn).Select(k => $"src/TyingClass.Drawing/Flies/{k}Art.cs")];

        Assert.True(missing.Length == 0, $"Nothing draws a kind of part of the catalogue. Write {string.Join(" and ", missing)}; DEVELOPERS.md says how.");
    }

    [Fact]
    public void Drawn_Files_AreNamedAfterTheirLine() =>
        Assert.All(Drawn, k => Assert.Equal($"{k}Art", PartArt.Of(k).GetType().Name));
}
