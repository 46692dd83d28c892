using System.Xml.Linq;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Drawing.Tests.Support;
using TyingClass.Recipes.Reports;
using Xunit;

namespace TyingClass.Drawing.Tests.Plates;

public sealed class TipPlateTests
{
    [Theory, MemberData(nameof(Samples.Names), MemberType = typeof(Samples))]
    public void Tip_Twenty_TheBalancePointStandsTheKeelHeightBelowTheHingeLineSeenAlongIt(string name)
    {
        SolvedFly fly = Samples.Named(name);
        StateReport state = fly.Report.Soaked;
        if (state.BalancePointMm is not { } balance)
            return;
        Picture picture = new(FlyDrawing.Tip(fly, [], DrawingOptions.Default));

        // Symmetric attitude: a half turn about x for point up, then pitched about y (nose up positive); from ahead, the tyer's right is the
        // onlooker's left. The hinge line passes the keel height straight above the balance point; a fly that has none is seen along the flow.
        TowReport tow = state.AtFishingSpeed;
        double way = fly.Report.Intent == Intent.PointUp ? -1 : 1;
        Vector3D from = balance - fly.Report.TowPointMm;
        double x = from.X, y = way * from.Y, z = way * from.Z, pitch = tow.SymmetricPitchDeg * Math.PI / 180;
        double aft = x * Math.Cos(pitch) + z * Math.Sin(pitch), up = -x * Math.Sin(pitch) + z * Math.Cos(pitch);
        double rise = tow.KeelHeightMm.For(fly.Report.Intent) is { } keel && aft >= 0.8 ? Math.Atan2(up + keel, aft) : 0;
        double upFromLine = up * Math.Cos(rise) - aft * Math.Sin(rise);
        Assert.Equal(-y, picture.Mark("balance point").X, 0.1);
        Assert.Equal(-upFromLine, picture.Mark("balance point").Y, 0.1);
    }

    [Fact]
    public void Tip_AFly_CarriesTheRightingCurveOfTheReport()
    {
        SolvedFly fly = Samples.Named("Copper Loach");
        XElement tipping =
            new Picture(FlyDrawing.Tip(fly, [40, 10, 0], DrawingOptions.Default)).All("g").Single(g => (string?)g.Attribute("class") == "fly-tipping");
        double[] heels = [.. ((string)tipping.Attribute("data-heels-deg")!).Split(' ').Select(Picture.Number)];
        double[] moments = [.. ((string)tipping.Attribute("data-restoring-gmm")!).Split(' ').Select(Picture.Number)];
        Assert.Equal(fly.Report.Soaked.Roll.Points.Select(p => p.HeelDeg), heels, (a, b) => Math.Abs(a - b) < 1e-3);
        Assert.Equal(fly.Report.Soaked.Roll.Points.Select(p => p.RestoringGmm), moments, (a, b) => Math.Abs(a - b) < 1e-3);
        Assert.Equal(fly.Report.Soaked.Roll.RangeDeg, Picture.Number(tipping, "data-range-deg"), 0.01);
    }

    [Fact]
    public void Tip_Steps_AreTheOneFlyTurnedByTheHeel()
    {
        Picture picture = new(FlyDrawing.Tip(Samples.Named("Copper Loach"), [40, 20, 0], new DrawingOptions { IdPrefix = "t" }));
        XElement[] steps = [.. picture.All("use")];
        Assert.Equal([40, 20, 0], steps.Select(s => Picture.Number(s, "data-heel-deg")));
        Assert.All(steps, s => Assert.EndsWith($"rotate({s.Attribute("data-heel-deg")!.Value})", (string)s.Attribute("transform")!, StringComparison.Ordinal));
        Assert.All(steps, s => Assert.Equal("#t-tipped", (string)s.Attribute("href")!));
        Assert.Contains("40°", picture.Labels);
    }
}
