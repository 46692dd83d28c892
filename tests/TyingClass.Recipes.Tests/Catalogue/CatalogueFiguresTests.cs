using System.Reflection;
using TyingClass.Recipes.Catalogue;
using Xunit;

namespace TyingClass.Recipes.Tests.Catalogue;

public sealed class CatalogueFiguresTests
{
    // Whatever number the catalogue gains must be shown: read off the classes themselves.
    [Theory]
    [InlineData(typeof(HookScale))]
    [InlineData(typeof(PartScale))]
    [InlineData(typeof(FishingScale))]
    [InlineData(typeof(Cautions))]
    public void All_PublicFiguresOfAScale_AreListed(Type scale)
    {
        Figure[] figures =
            [.. scale.GetFields(BindingFlags.Public | BindingFlags.Static).Where(f => f.FieldType == typeof(Figure)).Select(f => (Figure)f.GetValue(null)!)];
        Assert.NotEmpty(figures);
        foreach (IGrouping<Figure, Figure> same in figures.GroupBy(f => f))
            Assert.True(same.Count() <= CatalogueFigures.All.Count(c => c.Figure == same.Key), $"{same.Key} is not in the list.");
    }

    [Fact]
    public void All_Words_AreDistinct() => Assert.Equal(CatalogueFigures.All.Length, CatalogueFigures.All.Select(f => (f.Group, f.What)).Distinct().Count());
}
