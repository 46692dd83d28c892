using System.Xml.Linq;
using TyingClass.Drawing.Tests.Support;
using TyingClass.Recipes.Reports;
using Xunit;

namespace TyingClass.Drawing.Tests.Plates;

public sealed class PairPlateTests
{
    [Fact]
    public void BeforeAfter_TwoFlies_ShareOneScaleAndSayBoth()
    {
        SolvedFly small = Samples.Named("Brook Midge"), large = Samples.Named("Copper Loach");
        Picture picture = new(FlyDrawing.BeforeAfter(small, large, DrawingOptions.Default));
        XElement[] halves = [.. picture.All("svg").Where(e => e.Attribute("data-half") is not null)];
        Assert.Equal(["before", "after"], halves.Select(h => (string)h.Attribute("data-half")!));
        foreach (XElement half in halves)
        {
            double[] box = [.. ((string)half.Attribute("viewBox")!).Split(' ').Select(Picture.Number)];
            Assert.Equal(1, Picture.Number(half, "width") / box[2], 1e-6);
            Assert.Equal(1, Picture.Number(half, "height") / box[3], 1e-6);
        }

        Assert.Contains("Brook Midge", picture.Title, StringComparison.Ordinal);
        Assert.Contains("After: Meant to ride point up", picture.Description, StringComparison.Ordinal);
    }
}
