using System.Reflection;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;
using Xunit;

namespace TyingClass.Recipes.Tests.Parts;

/// <summary>A new line of the catalogue without its files fails here, once, and is told which file to write.</summary>
public sealed class KindsOfPartTests
{
    [Fact]
    public void Catalogue_EveryLine_HasItsFile()
    {
        string[] missing = [.. Enum.GetValues<PartKind>().Except(KindsOfPart.All.Select(k => k.Kind)).Select(k => $"src/TyingClass.Recipes/Parts/{k}.cs")];

        Assert.True(missing.Length == 0,
            $"The catalogue (Recipes/Model/PartKind.cs) has a kind that nothing describes. Write {string.Join(" and ", missing)}; DEVELOPERS.md says how.");
    }

    [Fact]
    public void All_Files_AreNamedAfterTheirLine() => Assert.All(KindsOfPart.All, k => Assert.Equal(k.Kind.ToString(), k.GetType().Name));

    [Fact]
    public void Words_OfAllKinds_AreLowerCaseAndDistinct()
    {
        Assert.All(KindsOfPart.Words, w => Assert.Equal(w.ToLowerInvariant().Trim(), w));
        Assert.Equal(KindsOfPart.Words.Length, KindsOfPart.Words.Distinct().Count());
    }

    [Fact]
    public void SuitedMaterials_OfEveryKind_AreInTheTable() =>
        Assert.All(KindsOfPart.All, k => Assert.All(k.SuitedMaterials, name => Assert.Equal(name, Materials.Find(name).Name)));

    [Fact]
    public void UsualSide_OfEveryKind_IsOneItMayHave() => Assert.All(KindsOfPart.All, k => Assert.Contains(k.UsualSide, k.Sides));

    // Whatever number a kind takes its shape from stands in its own list, and so on the catalogue page.
    [Fact]
    public void Figures_OfEveryKind_ListAllItHas() => Assert.All(KindsOfPart.All, k =>
    {
        Figure[] own = [.. k.GetType().GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic)
            .Where(f => f.FieldType == typeof(Figure)).Select(f => (Figure)f.GetValue(null)!)];
        Assert.True(own.Length == k.Figures.Count(), $"{k.Word} has {own.Length} figures and lists {k.Figures.Count()}.");
        Assert.Empty(own.Except(k.Figures.Select(f => f.Figure)));
    });

    [Theory]
    [InlineData("dumbbell eyes 2", PartKind.DumbbellEyes)]
    [InlineData(" Wing ", PartKind.Wing)]
    public void FindByName_NameInABody_FindsItsKind(string name, PartKind kind) => Assert.Equal(kind, KindsOfPart.FindByName(name)!.Kind);

    [Theory]
    [InlineData("hook")]
    [InlineData("")]
    [InlineData(null)]
    public void FindByName_NoPart_IsNull(string? name) => Assert.Null(KindsOfPart.FindByName(name));
}
