using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Tests.Support;
using TyingClass.Recipes.Reports;
using Xunit;

namespace TyingClass.Drawing.Tests.Plates;

public sealed class FrontPlateTests
{
    [Theory, InlineData(0), InlineData(12), InlineData(75), InlineData(180)]
    public void Front_LopsidedFly_MarksAreTurnedByTheLean(double leanDeg)
    {
        SolvedFly fly = Samples.Named("Lopsided Loach").WithTow(t => t with { LeanDeg = leanDeg, PitchDeg = 33 });
        Picture picture = new(FlyDrawing.Front(fly, DrawingOptions.Default));
        Vector3D from = fly.Report.MassCenterMm - fly.Report.TowPointMm;
        Assert.True(Math.Abs(from.Y) > 0.05, "a fly with its weight to one side");
        // Point up, so turned half round and then by the lean; seen from ahead the tyer's right is the onlooker's left.
        double roll = (180 + leanDeg) * Math.PI / 180;
        double aside = from.Y * Math.Cos(roll) - from.Z * Math.Sin(roll), up = from.Y * Math.Sin(roll) + from.Z * Math.Cos(roll);
        Assert.Equal(-aside, picture.Mark("mass center").X, 0.1);
        Assert.Equal(-up, picture.Mark("mass center").Y, 0.1);
    }

    [Theory, InlineData(12), InlineData(75), InlineData(120)]
    public void Front_LeaningFly_ItsOwnLineStandsOffPlumbByTheLean(double leanDeg)
    {
        SolvedFly fly = Samples.Named("Tin Dace").WithTow(t => t with { LeanDeg = leanDeg });
        Picture picture = new(FlyDrawing.Front(fly, DrawingOptions.Default));
        (double x1, double y1, double x2, double y2) = Picture.Line(picture.Marked("line of the fly"));
        Assert.Equal(leanDeg, Math.Abs(Math.Atan2(x1 - x2, y2 - y1)) * 180 / Math.PI, 0.1);
        Assert.Equal(leanDeg, Picture.Number(picture.Marked("lean"), "data-angle-deg"), 0.1);
        Assert.Contains($"lean {leanDeg}°", picture.Labels);
        Assert.Contains($"leaning {leanDeg}° from as intended", picture.Description, StringComparison.Ordinal);
    }
}
