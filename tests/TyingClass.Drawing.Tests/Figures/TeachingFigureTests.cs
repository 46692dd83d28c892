using System.Collections.Immutable;
using System.Xml.Linq;
using TyingClass.Balance.Sinking;
using TyingClass.Drawing.Tests.Support;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Reports;
using Xunit;

namespace TyingClass.Drawing.Tests.Figures;

/// <summary>The pictures that explain one idea each: what they show must be what the engine finds, or what a textbook's formula gives.</summary>
public sealed class TeachingFigureTests
{
    public static TheoryData<string> Kinds => [.. TeachingFigures.Kinds];

    [Theory, MemberData(nameof(Kinds))]
    public void Draw_AnyKind_IsDescribedAndKeepsThePagesPolicy(string kind)
    {
        const string name = "</title><script>alert(1)</script>";
        foreach (FigurePanel panel in Draw(kind, name))
        {
            Picture picture = new(panel.Svg);
            Assert.Equal("img", (string?)picture.Root.Attribute("role"));
            Assert.True(picture.Description.Length > 40, picture.Description);
            Assert.DoesNotContain("NaN", panel.Svg, StringComparison.Ordinal);
            Assert.All(picture.Root.DescendantsAndSelf(), e =>
            {
                Assert.DoesNotContain(e.Name.LocalName, (string[])["style", "script", "foreignObject", "image", "a"]);
                Assert.DoesNotContain(e.Attributes(), a =>
                    a.Name.LocalName == "style" || a.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase));
            });
        }
    }

    [Theory, MemberData(nameof(Kinds))]
    public void Draw_AnyKind_PanelsShareNoId(string kind)
    {
        string[] ids = [.. Draw(kind).SelectMany(p => new Picture(p.Svg).Root.DescendantsAndSelf()).Select(e => (string?)e.Attribute("id")).OfType<string>()];
        Assert.Equal(ids.Length, ids.Distinct().Count());
    }

    [Theory, MemberData(nameof(Kinds))]
    public void Draw_Squeezed280PxWide_LettersAreElevenPixels(string kind)
    {
        foreach (FigurePanel panel in Draw(kind))
        {
            Picture picture = new(panel.Svg);
            double pxPerUnit = 280 / picture.ViewBox.Width;
            Assert.All(picture.Root.DescendantsAndSelf().Attributes("font-size").Select(a =>
                Picture.Number(a.Value) * pxPerUnit), px => Assert.InRange(px, 11, 13));
        }
    }

    [Fact]
    public void Draw_UnknownKind_IsRefusedByName() => Assert.Contains("\"zeppelin\"",
        Assert.Throws<ArgumentException>(() =>
            TeachingFigures.Draw(new FigureRequest("zeppelin", [], ImmutableDictionary<string, string>.Empty, []), DrawingOptions.Default)).Message,
        StringComparison.Ordinal);

    [Fact]
    public void Hook_UsualWords_PointAtTheHooksOwnPlaces()
    {
        SolvedFly fly = Samples.Named("Copper Loach");
        Picture picture = new(TeachingFigures.Draw(Request("hook", fly), DrawingOptions.Default)[0].Svg);

        Assert.Equal(["barb", "bend", "gape", "point", "ring", "shank"], picture.Labels.Order());
        Assert.Equal(1e3 * fly.Built.Hook.GapeM, Math.Abs(Picture.Number(picture.Marked("gape"), "data-height-mm")), 0.001);
    }

    [Fact]
    public void Fly_WordsOfTheAuthor_AreTheOnlyOnes()
    {
        FigureRequest request = Request("fly", Samples.Named("Copper Loach")) with { Labels = [("ring", "where the leader is tied")] };

        Assert.Equal(["where the leader is tied"], new Picture(TeachingFigures.Draw(request, DrawingOptions.Default)[0].Svg).Labels);
    }

    // Righting arm of a box, wall-sided formula: GZ = (GM + ½ BM tan²φ) sin φ, BM = b²/12d (Barrass and Derrett, Ship Stability for Masters and Mates;
    // formula from memory). The ship of the figure: beam 70, draft 18, G 14 above the keel, so BM = 22.685, KB = 9, GM = 17.685.
    [Theory]
    [InlineData("5", 1.5490)]
    [InlineData("10", 3.1322)]
    [InlineData("20", 6.5625)]
    public void Ship_Heeled_RightingArmIsThatOfTheWallSidedFormula(string heel, double arm)
    {
        Picture ship = new(TeachingFigures.Draw(Request("ship and fly", Samples.Named("Copper Loach")) with
        {
            Values = ImmutableDictionary<string, string>.Empty.Add("heel", heel),
        }, DrawingOptions.Default)[0].Svg);

        (double x1, double _, double x2, double _) = Picture.Line(ship.Marked("arm"));
        Assert.Equal(arm, x2 - x1, 0.001);
    }

    [Fact]
    public void ShipAndFly_Fly_ArmIsKeelHeightTimesTheSineOfTheHeelSeenAlongTheHinge()
    {
        SolvedFly fly = Keeled();
        Picture picture = new(TeachingFigures.Draw(Request("ship and fly", fly), DrawingOptions.Default)[1].Svg);
        Picture hinge = new(TeachingFigures.Draw(Request("garden gate", fly), DrawingOptions.Default)[1].Svg);

        (double x1, double y1, double x2, double y2) = Picture.Line(hinge.Marked("hinge line"));
        double rise = Math.Atan2(y1 - y2, x2 - x1), keel = fly.Report.Soaked.AtFishingSpeed.KeelHeightMm.For(fly.Report.Intent)!.Value;
        (double left, double _, double right, double _) = Picture.Line(picture.Marked("arm"));
        Assert.Equal(Math.Abs(keel) * Math.Cos(rise) * Math.Sin(20 * Math.PI / 180), Math.Abs(right - left), 0.01);
        Assert.Contains(keel > 0 ? "righting arm" : "upsetting arm", picture.Labels);
        // Its weight in water acts at the balance point; a second weight at G would say otherwise.
        Assert.Contains("balance point", picture.Labels);
        Assert.DoesNotContain("G", picture.Labels);
    }

    [Fact]
    public void GardenGate_HingeLine_PassesTheKeelHeightAboveTheBalancePoint()
    {
        SolvedFly fly = Keeled();
        Picture picture = new(TeachingFigures.Draw(Request("garden gate", fly), DrawingOptions.Default)[1].Svg);

        (double x1, double y1, double x2, double y2) = Picture.Line(picture.Marked("hinge line"));
        (double x, double y) = picture.Mark("balance point");
        double above = y - (y1 + (x - x1) * (y2 - y1) / (x2 - x1));
        Assert.Equal(fly.Report.Soaked.AtFishingSpeed.KeelHeightMm.For(fly.Report.Intent)!.Value, above, 0.01);
        // The ring is the origin, and the line runs through it.
        Assert.Equal(0, x1 * y2 - x2 * y1, 0.05);
    }

    [Fact]
    public void Finger_StandsUnderTheMassCenter()
    {
        SolvedFly fly = Samples.Named("Copper Loach");
        Picture picture = new(TeachingFigures.Draw(Request("balance on a finger", fly), DrawingOptions.Default)[0].Svg);

        (double x1, double _, double x2, double _) = Picture.Line(picture.Marked("plumb line"));
        Assert.Equal(picture.Mark("mass center").X, x1, 0.001);
        Assert.Equal(x1, x2, 0.001);
        Assert.Equal(fly.Report.MassCenterMm.X - fly.Report.TowPointMm.X, x1, 0.001);
        Assert.All(fly.Built.Body.Parts, p => Assert.True(picture.Has("weight of " + p.Name), p.Name));
    }

    // A round head, and hair that trails: the push acts where the engine finds it, level with the balance point, and as long as the pull.
    [Fact]
    public void PullAndPush_Arrows_StandAtTheTwoPointsAndAreAlike()
    {
        SolvedFly fly = Samples.Named("Copper Loach");
        Picture picture = new(TeachingFigures.Draw(Request("pull and push", fly), DrawingOptions.Default)[0].Svg);

        double push = 1e3 * PushPoint.BehindFrontM(fly.Built.Body, fly.Built.Conditions, fly.Report.Intent)!.Value;
        (double x, double y) = picture.Mark("balance point");
        Assert.Equal(fly.Report.BalancePointMm!.Value.X - fly.Report.TowPointMm.X, x, 0.001);
        // A path is written to hundredths.
        var up = Picture.Path((string)picture.Marked("push").Attribute("d")!);
        var down = Picture.Path((string)picture.Marked("pull").Attribute("d")!);
        Assert.Equal(push - fly.Report.TowPointMm.X, up[0].X, 0.01);
        Assert.All([up[0].Y, down[0].Y], at => Assert.Equal(y, at, 0.01));
        Assert.True(up[^1].Y < y && down[^1].Y > y);
        Assert.Equal(y - up[^1].Y, down[^1].Y - y, 0.02);
        Assert.Contains(push < fly.Report.BalancePointMm.Value.X ? "the tail goes down" : "the nose goes down", picture.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void EyesAndRings_EachHook_SaysHowFarItsRingStandsOffTheShank()
    {
        SolvedFly fly = Samples.Named("Copper Loach");
        Picture picture = new(TeachingFigures.Draw(Request("eyes and rings", fly, fly), DrawingOptions.Default)[0].Svg);

        double[] heights = [.. picture.Root.Descendants().Where(e => (string?)e.Attribute("data-mark") == "ring height").Select(e => Picture.Line(e).Y2)];
        double expected = (fly.Report.Intent == Balance.Bodies.Intent.PointUp ? -1 : 1) * fly.Report.TowPointMm.Z;
        Assert.Equal(2, heights.Length);
        Assert.All(heights, h => Assert.Equal(expected, h, 0.001));
    }

    [Fact]
    public void TurningOver_EachPicture_WeightPullsStraightDownFromTheBalancePoint()
    {
        Picture picture = new(TeachingFigures.Draw(Request("turning over", Keeled()), DrawingOptions.Default)[0].Svg);

        Assert.Equal(["0", "160", "30", "90"], picture.Root.Descendants().Select(e =>
            (string?)e.Attribute("data-heel-deg")).OfType<string>().Order(StringComparer.Ordinal));
        Assert.Single(picture.Labels, "bend");
    }

    [Fact]
    public void AirLeavingHair_AfterAMinute_IsCaughtAirByItsSoakTimeAndTheSealedAir()
    {
        Material deer = Materials.Find("deer hair");
        double left = 100 * (deer.CaughtAir.Value * Math.Exp(-60 / deer.SoakTime.Value) + deer.SealedAir.Value);

        Picture picture = new(Draw("air leaving hair")[0].Svg);

        Assert.Contains($"Deer hair: {100 * (deer.CaughtAir.Value + deer.SealedAir.Value):0} mm³ when dry, {left:0} mm³ after a minute",
            picture.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Compare_TwoFlies_ShareOnePlotWithALegendThatTellsThemApartWithoutColor()
    {
        Picture picture = new(Draw("compare")[0].Svg);

        string[] dashes = [.. picture.All("path").Where(e => ((string?)e.Attribute("class"))?.Contains("fly-series", StringComparison.Ordinal) == true)
            .Select(e => (string?)e.Attribute("stroke-dasharray") ?? "")];
        Assert.Equal(2, dashes.Length);
        Assert.Equal(2, dashes.Distinct().Count());
        Assert.Contains(picture.All("text"), t => t.Value == "first");
        Assert.Contains(picture.All("text"), t => t.Value == "second");
    }

    [Fact]
    public void SlackAndTaut_BothPictures_AreToOneScale()
    {
        ImmutableArray<FigurePanel> panels = Draw("slack and taut");

        Assert.Equal(new Picture(panels[0].Svg).ViewBox.Width, new Picture(panels[1].Svg).ViewBox.Width, 0.01);
    }

    private static SolvedFly Keeled() => Samples.OfSheet.First(f =>
        f.Report.Soaked.AtFishingSpeed.KeelHeightMm.For(f.Report.Intent) > 0.5 && f.Report.BalancePointMm is { } b && b.X - f.Report.TowPointMm.X > 3);

    private static ImmutableArray<FigurePanel> Draw(string kind, string? name = null)
    {
        SolvedFly first = Keeled(), second = Samples.Named("Copper Loach");
        if (name is not null) first = first.Renamed(name);
        FigureRequest request = kind switch
        {
            "eyes and rings" => Request(kind, first, second),
            "compare" => Request(kind, first, second) with { Values = ImmutableDictionary<string, string>.Empty.Add("curve", "keel height") },
            "air leaving hair" => Request(kind) with { Values = ImmutableDictionary<string, string>.Empty.Add("materials", "fur strip, deer hair") },
            _ => Request(kind, first),
        };
        return TeachingFigures.Draw(request, new DrawingOptions { IdPrefix = "p7" });
    }

    private static FigureRequest Request(string kind, params SolvedFly[] flies) =>
        new(kind, [.. flies.Select((f, i) => new FigureFly(i == 0 ? "first" : "second", f))], ImmutableDictionary<string, string>.Empty, []);
}
