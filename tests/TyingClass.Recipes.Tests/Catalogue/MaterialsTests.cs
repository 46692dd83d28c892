using System.Reflection;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Parts;
using Xunit;

namespace TyingClass.Recipes.Tests.Catalogue;

public sealed class MaterialsTests
{
    // Morton & Hearle, Physical Properties of Textile Fibres, table 5.1, and handbook tables of metals.
    [Theory]
    [InlineData("fur dubbing", 1310)]
    [InlineData("wool", 1310)]
    [InlineData("floss", 1340)]
    [InlineData("synthetic hair", 1140)]
    [InlineData("tinsel", 1390)]
    [InlineData("synthetic dubbing", 910)]
    [InlineData("glass", 2500)]
    [InlineData("lead", 11340)]
    [InlineData("tin", 7280)]
    [InlineData("bismuth", 9780)]
    [InlineData("copper", 8930)]
    [InlineData("steel", 7850)]
    [InlineData("brass", 8520)]
    public void Density_PublishedMaterial_MatchesSource(string name, double densityKgM3)
    {
        Material material = Materials.Find(name);

        Assert.Equal(densityKgM3, material.DensityKgM3);
        Assert.False(material.Density.IsEstimate);
    }

    // Ranges of the same tables; in part from memory, so the entries call themselves estimates.
    [Theory]
    [InlineData("tungsten", 17000, 18500)]
    [InlineData("closed-cell foam", 25, 200)]
    [InlineData("cork", 120, 240)]
    [InlineData("balsa", 40, 340)]
    public void Density_EstimatedMaterial_LiesInRange(string name, double low, double high)
    {
        Material material = Materials.Find(name);

        Assert.InRange(material.DensityKgM3, low, high);
        Assert.True(material.Density.IsEstimate);
    }

    [Fact]
    public void EveryFigure_OfEveryMaterial_CarriesUnitAndSource() =>
        Assert.All(Materials.All.SelectMany(m => m.Figures), f => AssertSourced(f.What, f.Figure));

    [Fact]
    public void EveryFigure_OfTheWholeCatalogue_CarriesUnitAndSource()
    {
        (string Name, Figure Figure)[] all = [.. typeof(Materials).Assembly.GetTypes()
            .SelectMany(t => t.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic))
            .Where(f => f.FieldType == typeof(Figure))
            .Select(f => ($"{f.DeclaringType!.Name}.{f.Name}", (Figure)f.GetValue(null)!))];

        Assert.True(all.Length > 30, "The search should find the scales' figures.");
        Assert.All(all, f => AssertSourced(f.Name, f.Figure));
        Assert.All(KindsOfPart.All, kind => AssertSourced(kind.Word, kind.NoseBluntness));
    }

    [Fact]
    public void Figures_OfMaterial_ListsEveryFigureItHas() =>
        Assert.Equal(
            typeof(Material).GetProperties().Count(p => p.PropertyType == typeof(Figure)),
            Materials.Find("lead").Figures.Count());

    [Fact]
    public void All_Shares_LieBetweenNoneAndAll() =>
        Assert.All(Materials.All, m =>
        {
            Assert.InRange(m.Suppleness.Value, 0, 1);
            Assert.InRange(m.VoidShare.Value, 0, 0.99);
            Assert.InRange(m.SealedAir.Value, 0, 5);
            Assert.False(m.CaughtAir.Value > 0 && m.SoakTime.Value <= 0, m.Name);
            Assert.False(m.Suppleness.Value > 0 && m.StreamerCoefficient.Value <= 0, m.Name);
            Assert.Contains(KindsOfPart.All, k => k.SuitedMaterials.Contains(m.Name));
        });

    [Fact]
    public void All_Names_AreLowerCaseAndUnique()
    {
        Assert.All(Materials.All, m => Assert.Equal(m.Name.ToLowerInvariant().Trim(), m.Name));
        Assert.Equal(Materials.All.Length, Materials.All.Select(m => m.Name).Distinct().Count());
    }

    [Theory]
    [InlineData(" Fur Strip ", true)]
    [InlineData("lead", true)]
    [InlineData("unobtainium", false)]
    [InlineData("", false)]
    [InlineData(null, false)]
    public void TryFind_Name_IgnoresCaseAndSpaces(string? name, bool found) => Assert.Equal(found, Materials.TryFind(name, out _));

    [Fact]
    public void UsualMaterial_EveryKind_IsInTheTableAndSuitsIt() =>
        Assert.All(KindsOfPart.All, kind => Assert.Contains(kind.UsualMaterial, kind.SuitedMaterials));

    private static void AssertSourced(string name, Figure figure)
    {
        Assert.False(string.IsNullOrWhiteSpace(figure.Source), $"{name} has no source.");
        Assert.False(string.IsNullOrWhiteSpace(figure.Unit), $"{name} has no unit.");
        Assert.True(double.IsFinite(figure.Value), $"{name} is not a number.");
    }
}
