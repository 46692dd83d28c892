using System.Xml.Linq;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Tests.Support;
using TyingClass.Recipes.Reports;
using Xunit;

namespace TyingClass.Drawing.Tests.Plates;

public sealed class RunPlateTests
{
    [Fact]
    public void Run_ASolvedFly_GivesTheAttitudesOfTheReport()
    {
        SolvedFly fly = Samples.Named("Slate Minnow");
        XElement line = Run(fly).All("g").Single(g => (string?)g.Attribute("class") == "fly-run-line");
        double[] List(string name) => [.. ((string)line.Attribute(name)!).Split(' ').Select(Picture.Number)];
        Assert.Equal(fly.Report.Soaked.Tow.Select(t => t.SpeedMS), List("data-speeds-ms"), (a, b) => Math.Abs(a - b) < 1e-3);
        Assert.Equal(fly.Report.Soaked.Tow.Select(t => t.PitchDeg), List("data-pitches-deg"), (a, b) => Math.Abs(a - b) < 1e-3);
        Assert.Equal(fly.Report.Soaked.Tow.Select(t => t.LineAngleDeg), List("data-lines-deg"), (a, b) => Math.Abs(a - b) < 1e-3);
    }

    [Theory, MemberData(nameof(Samples.Names), MemberType = typeof(Samples))]
    public void Run_EveryPose_HoldsTheMassCenterAtItsPitchAndLean(string name)
    {
        SolvedFly fly = Samples.Named(name);
        Vector3D from = fly.Report.MassCenterMm - fly.Report.TowPointMm;
        foreach (XElement pose in Run(fly).All("g").Where(g => (string?)g.Attribute("class") == "fly-pose"))
        {
            double pitch = Picture.Number(pose, "data-pitch-deg") * Math.PI / 180;
            double roll = (Picture.Number(pose, "data-lean-deg") + (fly.Report.Intent == Intent.PointUp ? 180 : 0)) * Math.PI / 180;
            double z = from.Y * Math.Sin(roll) + from.Z * Math.Cos(roll);
            double x = from.X * Math.Cos(pitch) + z * Math.Sin(pitch), up = -from.X * Math.Sin(pitch) + z * Math.Cos(pitch);
            string at = (string)pose.Elements().Single(e => (string?)e.Attribute("data-mark") == "mass center").Attribute("transform")!;
            double[] seen = [.. at["translate(".Length..^1].Split(' ').Select(Picture.Number)];
            Assert.Equal(x, seen[0], 0.1);
            Assert.Equal(-up, seen[1], 0.1);
        }
    }

    [Fact]
    public void Run_FlyThatFlipsWithSpeed_HasAPoseOnEitherSide()
    {
        SolvedFly fly = Samples.Named("Tin Dace").WithSoaked(s => s with { Tow = [.. s.Tow.Select((t, i) => t with { LeanDeg = i < 4 ? 180 : 0 })] });
        double[] leans =
            [.. Run(fly).All("g").Where(g => (string?)g.Attribute("class") == "fly-pose").Select(g => Picture.Number(g, "data-lean-deg")).Distinct()];
        Assert.Equal([180, 0], leans);
    }

    private static Picture Run(SolvedFly fly) => new(FlyDrawing.Run(fly, DrawingOptions.Default));
}
