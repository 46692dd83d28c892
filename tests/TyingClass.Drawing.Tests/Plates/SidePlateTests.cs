using CsCheck;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Tests.Support;
using TyingClass.Recipes.Reports;
using Xunit;
using UnitSystem = TyingClass.Recipes.Text.UnitSystem;

namespace TyingClass.Drawing.Tests.Plates;

public sealed class SidePlateTests
{
    private const double TenthMm = 0.1;

    public static TheoryData<string> Names => Samples.Names;

    // Written out anew from the recipe format's signs: lean turns about the shank, pitch is nose up, the page's y is down.
    private static (double X, double Y) OnPage(Vector3D fromEyeMm, double pitchDeg, double leanDeg, Intent intent)
    {
        double roll = (leanDeg + (intent == Intent.PointUp ? 180 : 0)) * Math.PI / 180, pitch = pitchDeg * Math.PI / 180;
        double up = fromEyeMm.Y * Math.Sin(roll) + fromEyeMm.Z * Math.Cos(roll);
        return (fromEyeMm.X * Math.Cos(pitch) + up * Math.Sin(pitch), fromEyeMm.X * Math.Sin(pitch) - up * Math.Cos(pitch));
    }

    [Theory, MemberData(nameof(Names))]
    public void Side_EveryFly_MarksStandWhereTheReportPutsThem(string name)
    {
        SolvedFly fly = Samples.Named(name);
        foreach (WetState wet in new[] { WetState.Fresh, WetState.Soaked })
        {
            StateReport state = wet == WetState.Fresh ? fly.Report.Fresh : fly.Report.Soaked;
            TowReport tow = state.AtFishingSpeed;
            Picture picture = new(FlyDrawing.Side(fly, new DrawingOptions { State = wet }));
            Check("tow point", fly.Report.TowPointMm);
            Check("mass center", fly.Report.MassCenterMm);
            Check("center of buoyancy", state.CenterOfBuoyancyMm);
            if (state.BalancePointMm is { } balance)
                Check("balance point", balance);
            else
                Assert.False(picture.Has("balance point"));

            void Check(string mark, Vector3D placeMm)
            {
                (double x, double y) = OnPage(placeMm - fly.Report.TowPointMm, tow.PitchDeg, tow.LeanDeg, fly.Report.Intent);
                (double X, double Y) drawn = picture.Mark(mark);
                Assert.Equal(x, drawn.X, TenthMm);
                Assert.Equal(y, drawn.Y, TenthMm);
            }
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void Side_EveryFly_ShankLiesAtThePitch(string name)
    {
        SolvedFly fly = Samples.Named(name);
        TowReport tow = fly.Report.Soaked.AtFishingSpeed;
        Picture picture = new(FlyDrawing.Side(fly, DrawingOptions.Default));
        // Of the hook's wires the shank is the one of four places: ring, leg, turn and the end at the bend.
        IReadOnlyList<(double X, double Y)> shank = picture.HookWires().Single(w => w.Count == 4);
        double dx = shank[3].X - shank[2].X, dy = shank[3].Y - shank[2].Y;
        Assert.Equal(tow.PitchDeg, Math.Atan2(dy, dx) * 180 / Math.PI, 0.3);
        double lengthMm = fly.Built.Hook.ShankM * 1e3 - 0.25 * fly.Built.Hook.WireM * 1e3;
        Assert.Equal(lengthMm, Math.Sqrt(dx * dx + dy * dy), TenthMm);
    }

    [Theory, MemberData(nameof(Names))]
    public void Side_EveryFly_LineLeavesTheEyeAtTheReportsAngle(string name)
    {
        SolvedFly fly = Samples.Named(name);
        Picture picture = new(FlyDrawing.Side(fly, DrawingOptions.Default));
        IReadOnlyList<(double X, double Y)> leader = Picture.Path((string)picture.Marked("leader").Attribute("d")!);
        Assert.Equal(fly.Report.Soaked.AtFishingSpeed.LineAngleDeg, Math.Atan2(-leader[^1].Y, -leader[^1].X) * 180 / Math.PI, 0.3);
    }

    [Theory, MemberData(nameof(Names))]
    public void Side_EveryFly_KeelDimensionSpansTheKeelHeightFromTheBalancePoint(string name)
    {
        SolvedFly fly = Samples.Named(name);
        TowReport tow = fly.Report.Soaked.AtFishingSpeed;
        Intent rides = tow.LeanDeg > 90 == (fly.Report.Intent == Intent.PointDown) ? Intent.PointUp : Intent.PointDown;
        Picture picture = new(FlyDrawing.Side(fly, DrawingOptions.Default));
        if (tow.KeelHeightMm.For(rides) is not { } heightMm || !picture.Has("keel height"))
        {
            Assert.False(tow.KeelHeightMm.For(rides) is { } h && Math.Abs(h) < 5 && tow.LeanDeg is < 30 or > 150);
            return;
        }

        (double _, double y1, double _, double y2) =
            Picture.Line(picture.Marked("keel height").Elements().Single(e => (string?)e.Attribute("class") == "fly-dimension-line"));
        double level = fly.Report.Soaked.BalancePointMm is null ? picture.Mark("mass center").Y : picture.Mark("balance point").Y;
        Assert.Equal(Math.Abs(heightMm), y2 - y1, TenthMm);
        Assert.Equal(level, heightMm > 0 ? y2 : y1, TenthMm);
    }

    // Keel height is counted from the line that a towed fly rolls about, not from the leader's line drawn on through the ring.
    [Theory, MemberData(nameof(Names))]
    public void Side_EveryFlyWithAKeelDrawn_HingeLineRunsFromTheRingToTheHeightAboveTheBalancePoint(string name)
    {
        SolvedFly fly = Samples.Named(name);
        Picture picture = new(FlyDrawing.Side(fly, DrawingOptions.Default));
        if (!picture.Has("hinge line"))
        {
            Assert.False(picture.Has("keel height") && picture.Mark("balance point").X > 1);
            return;
        }

        double heightMm = Picture.Number(picture.Marked("keel height"), "data-height-mm");
        (double x1, double y1, double x2, double y2) = Picture.Line(picture.Marked("hinge line"));
        (double x, double y) = picture.Mark("balance point");
        Assert.Equal((0, 0), (x1, y1));
        Assert.True(x2 > 0);
        Assert.Equal(y - heightMm, y2 / x2 * x, TenthMm);
    }

    [Fact]
    public void Side_AnyAttitude_MarksFollowAndTheTextStaysWellFormed()
    {
        SolvedFly fly = Samples.Named("Lopsided Loach");
        Gen.Select(Gen.Double[-90, 90], Gen.Double[0, 180], Gen.Double[-60, 90]).Sample(
            (pitch, lean, line) =>
            {
                SolvedFly turned = fly.WithTow(t => t with { PitchDeg = pitch, LeanDeg = lean, LineAngleDeg = line });
                Picture picture = new(FlyDrawing.Side(turned, DrawingOptions.Default));
                (double x, double y) = OnPage(fly.Report.MassCenterMm - fly.Report.TowPointMm, pitch, lean, fly.Report.Intent);
                (double X, double Y) drawn = picture.Mark("mass center");
                Assert.Equal(x, drawn.X, TenthMm);
                Assert.Equal(y, drawn.Y, TenthMm);
            },
            iter: 60, threads: 1);
    }

    [Theory, InlineData(180, true), InlineData(0, false)]
    public void Side_PointDownFly_PointStandsOverTheShankOnlyWhenFlipped(double leanDeg, bool over)
    {
        SolvedFly fly = Samples.Named("Tin Dace").WithTow(t => t with { PitchDeg = 0, LeanDeg = leanDeg });
        Picture picture = new(FlyDrawing.Side(fly, DrawingOptions.Default));
        double shankY = picture.HookWires().Single(w => w.Count == 4)[3].Y, spearY = picture.HookWires().Single(w => w.Count == 2)[0].Y;
        Assert.Equal(over, spearY < shankY);
        Assert.Equal(fly.Built.Hook.GapeM * 1e3, Math.Abs(spearY - shankY), TenthMm);
        Assert.Contains(over ? "flipped" : "no lean", picture.Labels.Single(l => l.StartsWith("soaked", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Theory, InlineData(UnitSystem.Metric), InlineData(UnitSystem.Imperial)]
    public void Side_ScaleBar_IsAsLongAsItSays(UnitSystem units)
    {
        Picture picture = new(FlyDrawing.Side(Samples.Named("Copper Loach"), new DrawingOptions { Units = units, WidthPx = 500 }));
        string[] words = picture.Marked("scale bar").Elements().Single(e => e.Name.LocalName == "text").Value.Split(' ');
        double[] fraction = [.. words[0].Split('/').Select(Picture.Number)];
        double saysMm = (fraction.Length == 2 ? fraction[0] / fraction[1] : fraction[0]) * (words[1] == "in" ? 25.4 : 1);
        Assert.Equal(saysMm, Picture.Number(picture.Marked("scale bar").Elements().First(), "width"), 0.001);
        Assert.Equal(500, Picture.Number(picture.Root, "data-px-per-mm") * picture.ViewBox.Width, 0.1);
    }

    [Fact]
    public void Side_SpeedAsked_DrawsTheSolvedTowNearestIt()
    {
        SolvedFly fly = Samples.Named("Copper Loach");
        TowReport wanted = fly.Report.Fresh.Tow[^1];
        Picture picture = new(FlyDrawing.Side(fly, new DrawingOptions { State = WetState.Fresh, SpeedMS = wanted.SpeedMS + 0.01 }));
        (double x, double y) = OnPage(fly.Report.MassCenterMm - fly.Report.TowPointMm, wanted.PitchDeg, wanted.LeanDeg, fly.Report.Intent);
        Assert.Equal(x, picture.Mark("mass center").X, TenthMm);
        Assert.Equal(y, picture.Mark("mass center").Y, TenthMm);
        Assert.Contains("fresh from the cast, at 1.5 m/s", picture.Title, StringComparison.Ordinal);
    }

    [Fact]
    public void Side_FrameForAllSpeeds_IsTheSameAtEachAndHoldsTheWords()
    {
        SolvedFly fly = Samples.Named("Heavy Cone");
        string[] boxes = [.. fly.Report.Soaked.Tow.Select(t =>
            (string)new Picture(FlyDrawing.Side(fly, new DrawingOptions { SpeedMS = t.SpeedMS, FrameAllSpeeds = true })).Root.Attribute("viewBox")!)];
        Assert.Single(boxes.Distinct());
        Assert.True(fly.Report.Soaked.Tow[0].PitchDeg - fly.Report.Soaked.Tow[^1].PitchDeg > 20, "the fly must really turn for this to mean anything");
    }

    [Fact]
    public void Side_MarksLeftOut_AreNotDrawn()
    {
        Picture picture = new(FlyDrawing.Side(Samples.Named("Copper Loach"), new DrawingOptions { Marks = MarkSet.MassCenter, Caption = false }));
        Assert.True(picture.Has("mass center"));
        Assert.All((string[])["tow point", "balance point", "center of buoyancy", "line of pull", "leader", "hinge line", "keel height", "flow", "scale bar"],
            m => Assert.False(picture.Has(m), m));
        Assert.Equal(["mass center"], picture.Labels);
    }

    [Fact]
    public void Side_NoBalancePoint_SaysSoInWords()
    {
        SolvedFly fly = Samples.Named("Copper Loach").WithSoaked(s => s with { BalancePointMm = null });
        Picture picture = new(FlyDrawing.Side(fly, DrawingOptions.Default));
        Assert.False(picture.Has("balance point"));
        Assert.Contains("too near neutral buoyancy", picture.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Side_FlyThatNeverSettles_ShowsNoKeelHeightAndSaysSo()
    {
        SolvedFly fly = Samples.Named("Copper Loach").WithTow(t => t with { Settles = false });
        Picture picture = new(FlyDrawing.Side(fly, DrawingOptions.Default));
        Assert.False(picture.Has("keel height"));
        Assert.Contains("never comes to rest", picture.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Side_Description_SpeaksTheReportsFigures()
    {
        SolvedFly fly = Samples.Named("Slate Minnow").WithTow(t => t with
        {
            PitchDeg = -12.4,
            LeanDeg = 3.2,
            LineAngleDeg = 21.3,
            SpeedMS = 0.4,
            KeelHeightMm = new KeelHeight(-2, 0.64),
        });
        Picture picture = new(FlyDrawing.Side(fly, DrawingOptions.Default));
        Assert.Equal("Slate Minnow: side view, soaked, at 0.4 m/s", picture.Title);
        Assert.StartsWith(
            "Meant to ride point up, the fly rides point up, nose down 12°, leaning 3°, in water flowing from left to right at 0.4 m/s, soaked. The line "
                + "leaves the eye 21° above the horizontal. ",
            picture.Description, StringComparison.Ordinal);
        Assert.Contains("Keel height point up: 0.6 mm, so tipped a little it returns.", picture.Description, StringComparison.Ordinal);
        Assert.EndsWith("In tying order: dumbbell eyes, body, wing.", picture.Description, StringComparison.Ordinal);
        Assert.Contains("keel height 0.6 mm", picture.Labels);
    }

    // In a file of its own no style sheet gives it the color of the paper.
    [Fact]
    public void Draw_HingeLine_LiesOnAStripOfPaperAndNotOfInk()
    {
        Picture picture = new(FlyDrawing.Side(Samples.Named("Copper Loach"), DrawingOptions.Default));
        foreach (System.Xml.Linq.XElement halo in picture.All("line").Where(l => (string?)l.Attribute("class") == "fly-halo"))
            Assert.Equal(Tone.Paper.Color, (string?)halo.Attribute("stroke"));
        Assert.Contains(picture.All("line"), l => (string?)l.Attribute("class") == "fly-halo");
    }
}
