using TyingClass.Drawing.Tests.Support;
using TyingClass.Recipes.Reports;
using Xunit;

namespace TyingClass.Drawing.Tests.Plates;

public sealed class HangPlateTests
{
    public static TheoryData<string> Names => Samples.Names;

    [Theory, MemberData(nameof(Names))]
    public void Hang_EveryFly_MassCenterIsPlumbUnderTheTowPoint(string name)
    {
        SolvedFly fly = Samples.Named(name);
        Picture picture = new(FlyDrawing.Hang(fly, DrawingOptions.Default));
        Assert.Equal((0, 0), picture.Mark("tow point"));
        Assert.Equal(0, picture.Mark("mass center").X, 0.01);
        Assert.Equal((fly.Report.MassCenterMm - fly.Report.TowPointMm).Length, picture.Mark("mass center").Y, 0.1);
    }

    [Theory, MemberData(nameof(Names))]
    public void Hang_EveryFly_ShankStandsOffPlumbByTheReportsAngle(string name)
    {
        SolvedFly fly = Samples.Named(name);
        Picture picture = new(FlyDrawing.Hang(fly, DrawingOptions.Default));
        IReadOnlyList<(double X, double Y)> shank = picture.HookWires().Single(w => w.Count == 4);
        double off = Math.Abs(Math.Atan2(shank[3].X - shank[2].X, shank[3].Y - shank[2].Y)) * 180 / Math.PI;
        // A lopsided fly also tips out of the page, which the side view foreshortens: a third of a degree at most here.
        Assert.Equal(fly.Report.Hang.ShankFromPlumbDeg, off, name == "Lopsided Loach" ? 1.5 : 0.4);
        Assert.Contains("off the plumb line", picture.Description, StringComparison.Ordinal);
    }
}
