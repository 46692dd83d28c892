using System.Xml.Linq;
using TyingClass.Balance.Reports;
using TyingClass.Drawing.Plots;
using TyingClass.Drawing.Tests.Support;
using TyingClass.Recipes.Reports;
using Xunit;

namespace TyingClass.Drawing.Tests.Plots;

public sealed class CurveTests
{
    private readonly SolvedFly _fly = Samples.Named("Copper Loach");

    // The axes are read back from their printed figures, as a reader would, and not from the code's own scale.
    private static (Func<double, double> X, Func<double, double> Y) Axes(Picture picture)
    {
        XElement axis = picture.All("g").Single(g => (string?)g.Attribute("class") == "fly-axis");
        XElement[] figures = [.. axis.Elements().Where(e => e.Name.LocalName == "text" && (string?)e.Attribute("font-style") == "normal")];
        (double Value, double At)[] Read(string anchor, string place) =>
            [.. figures.Where(f => (string?)f.Attribute("text-anchor") == anchor)
            .Select(f => (Picture.Number(f.Value.Replace('\u2212', '-')), Picture.Number(f, place)))];
        Func<double, double> Line((double Value, double At)[] ticks, double shift)
        {
            (double v0, double p0) = ticks[0];
            (double v1, double p1) = ticks[^1];
            return at => v0 + (at + shift - p0) / (p1 - p0) * (v1 - v0);
        }

        // Figures of the y axis stand four units under their ruling.
        return (Line(Read("middle", "x"), 0), Line(Read("end", "y"), 4));
    }

    private static (double X, double Y)[] Points(Picture picture, bool filled) =>
        [.. picture.All("circle")
        .Where(c => ((string)c.Attribute("class")!).Contains(filled ? "filled" : "open", StringComparison.Ordinal) && Picture.Number(c, "cy") > 35)
            .Select(c => (Picture.Number(c, "cx"), Picture.Number(c, "cy")))];

    [Fact]
    public void PitchAgainstSpeed_EachSolvedSpeed_IsPlottedAtItsPitch()
    {
        Picture picture = new(Curves.PitchAgainstSpeed(_fly, DrawingOptions.Default));
        (Func<double, double> x, Func<double, double> y) = Axes(picture);
        foreach (StateReport state in _fly.Report.States)
        {
            (double X, double Y)[] points = Points(picture, state.State == WetState.Soaked);
            Assert.Equal(state.Tow.Length, points.Length);
            Assert.All(state.Tow.Zip(points), pair =>
            {
                Assert.Equal(pair.First.SpeedMS, x(pair.Second.X), 0.005);
                Assert.Equal(pair.First.PitchDeg, y(pair.Second.Y), 0.5);
            });
        }
    }

    [Fact]
    public void KeelAgainstSpeed_WordsOfItsTwoHalves_StandClearOfTheCurves()
    {
        int looked = 0;
        foreach (SolvedFly any in Samples.OfSheet)
        {
            Picture picture = new(Curves.KeelHeightAgainstSpeed(any, DrawingOptions.Default));
            foreach (XElement words in picture.All("text").Where(t => t.Value is "returns when tipped" or "turns over"))
            {
                looked++;
                double width = 0.42 * 12.8 * words.Value.Length, x = Picture.Number(words, "x"), y = Picture.Number(words, "y");
                double left = x - (string)words.Attribute("text-anchor")! switch { "end" => width, "middle" => width / 2, _ => 0 };
                foreach (bool filled in new[] { true, false })
                {
                    (double X, double Y)[] points = Points(picture, filled);
                    // Twenty steps along each stretch of the line.
                    IEnumerable<(double X, double Y)> along = points.Zip(points.Skip(1)).SelectMany(s => Enumerable.Range(0, 21).Select(i =>
                        (s.First.X + i / 20.0 * (s.Second.X - s.First.X), s.First.Y + i / 20.0 * (s.Second.Y - s.First.Y))));
                    Assert.DoesNotContain(along, p => p.X > left && p.X < left + width && p.Y > y - 9 && p.Y < y + 2);
                }
            }
        }

        Assert.True(looked >= Samples.OfSheet.Length, "The words have changed: nothing was looked at.");
    }

    [Theory]
    [InlineData(SoakFigure.KeelHeight)]
    [InlineData(SoakFigure.SinkRate)]
    [InlineData(SoakFigure.Mass)]
    public void AgainstSoak_EachTime_IsPlottedAtItsFigure(SoakFigure figure)
    {
        Picture picture = new(Curves.AgainstSoak(_fly, figure, DrawingOptions.Default));
        (Func<double, double> x, Func<double, double> y) = Axes(picture);
        double?[] expected =
            [.. _fly.Report.Soak.Select(p => figure switch { SoakFigure.KeelHeight => p.KeelHeightMm, SoakFigure.SinkRate => p.SinkRateMS, _ => p.MassG })];
        Assert.All(expected, v => Assert.NotNull(v));
        (double X, double Y)[] points = Points(picture, filled: true);
        Assert.Equal(expected.Length, points.Length);
        double size = expected.Max(v => Math.Abs(v!.Value));
        for (int i = 0; i < points.Length; i++)
        {
            Assert.Equal(_fly.Report.Soak[i].SoakS, x(points[i].X), 0.5);
            Assert.Equal(expected[i]!.Value, y(points[i].Y), 0.01 * size);
        }

        Assert.Contains("fresh from the cast", picture.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void SinkTimedAgainstComputed_EachFly_IsMarkedAtItsTwoRates()
    {
        TimedSink[] flies =
        [
            new("Mill Candle", 0.30, 0.26, WetState.Soaked), new("Duckweed Newt", 0.39, 0.44, WetState.Soaked),
            new("Tallow Shrimp", 0.56, 0.56, WetState.Soaked), new("Rush Frog", 0.12, 0.15, WetState.Fresh),
        ];
        Picture picture = new(Curves.SinkTimedAgainstComputed("Timed against computed", flies, DrawingOptions.Default));
        (Func<double, double> x, Func<double, double> y) = Axes(picture);

        (double X, double Y)[] soaked = Points(picture, filled: true);
        Assert.Equal(3, soaked.Length);
        Assert.All(flies.Take(3).Zip(soaked), pair =>
        {
            Assert.Equal(pair.First.PredictedMS, x(pair.Second.X), 0.005);
            Assert.Equal(pair.First.SeenMS, y(pair.Second.Y), 0.005);
        });
        XElement fresh = picture.All("path").Single(p => ((string?)p.Attribute("data-value"))?.StartsWith("Rush Frog", StringComparison.Ordinal) == true);
        IReadOnlyList<(double X, double Y)> corners = Picture.Path((string)fresh.Attribute("d")!);
        Assert.Equal(0.12, x((corners.Min(c => c.X) + corners.Max(c => c.X)) / 2), 0.005);
        Assert.Equal(0.15, y((corners.Min(c => c.Y) + corners.Max(c => c.Y)) / 2), 0.005);

        // The line on which the two agree runs through the origin and equal rates.
        XElement even = picture.All("line").Single(
            l => ((string?)l.Attribute("class"))?.Contains("fly-guide", StringComparison.Ordinal) == true && l.Attribute("stroke-dasharray") is not null);
        (double x1, double y1, double x2, double y2) = Picture.Line(even);
        Assert.Equal((0.0, 0.0), (Math.Round(x(x1), 2), Math.Round(y(y1), 2)));
        Assert.Equal(x(x2), y(y2), 0.005);
        Assert.Contains("2 flies sank faster than computed, 1 slower", picture.Description, StringComparison.Ordinal);
        Assert.Contains("Mill Candle: computed 0.3 m/s, seen 0.26 m/s", picture.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void PitchAgainstSpeed_FlippedFly_IsMarkedByShape()
    {
        Picture picture = new(Curves.PitchAgainstSpeed(Samples.Named("Heavy Cone"), DrawingOptions.Default));
        Assert.Empty(Points(picture, true));
        Assert.Contains("flipped at", picture.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void KeelHeightAgainstSpeed_SpeedsWithoutOne_AreLeftOut()
    {
        Picture picture = new(Curves.KeelHeightAgainstSpeed(_fly, DrawingOptions.Default));
        (Func<double, double> x, Func<double, double> y) = Axes(picture);
        TowReport[] known = [.. _fly.Report.Soaked.Tow.Where(t => t.KeelHeightMm.PointUp is not null)];
        Assert.True(known.Length < _fly.Report.Soaked.Tow.Length, "this fly hangs at the slowest speeds");
        Assert.All(known.Zip(Points(picture, true)), pair =>
        {
            Assert.Equal(pair.First.SpeedMS, x(pair.Second.X), 0.005);
            Assert.Equal(pair.First.KeelHeightMm.PointUp!.Value, y(pair.Second.Y), 0.02);
        });
    }

    [Fact]
    public void Righting_RangeInTheReport_IsMarkedAndSaid()
    {
        SolvedFly limited = _fly.WithSoaked(s => s with
        {
            Roll = new RollCurve([.. Enumerable.Range(0, 19).Select(i => new RollPoint(10 * i, Math.Sin(i * Math.PI / 9)))], 90),
        });
        Picture picture = new(Curves.Righting(limited, DrawingOptions.Default));
        (Func<double, double> x, _) = Axes(picture);
        XElement span = picture.All("line").Single(l => ((string)l.Attribute("class")!).Contains("fly-range-span", StringComparison.Ordinal));
        Assert.Equal(90, x(Picture.Number(span, "x2")), 0.2);
        Assert.Contains("returns from up to 90°", picture.Description, StringComparison.Ordinal);
        // sin 80° = 0.985 at the fifth point, the highest of those given.
        Assert.Contains("0.98 g·mm at 40° of heel", picture.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void DepthInPause_AfterFiveSeconds_IsTheReportsDepthAndGrowsDownThePage()
    {
        Picture picture = new(Curves.DepthInPause(_fly, DrawingOptions.Default));
        (Func<double, double> x, Func<double, double> y) = Axes(picture);
        (double X, double Y) at = Points(picture, true).Single();
        Assert.Equal(5, x(at.X), 0.02);
        Assert.Equal(_fly.Report.Soaked.Sink!.DepthAfter5sM, y(at.Y), 0.02);
        Assert.True(y(100) < y(200));
    }

    [Fact]
    public void DepthInPause_FlyThatNeitherSinksNorRises_SaysSo()
    {
        SolvedFly still = _fly with { Report = _fly.Report with { States = [.. _fly.Report.States.Select(s => s with { Sink = null })] } };
        Assert.Contains("hangs still", new Picture(Curves.DepthInPause(still, DrawingOptions.Default)).Description, StringComparison.Ordinal);
    }

    [Fact]
    public void LeanHistogram_Bars_AreAsTallAsTheirCounts()
    {
        SolvedFly mixed = _fly.WithSoaked(s => s with
        {
            Tolerance = new ToleranceReport(TyingAccuracy.Practiced, 1000, 0.62, 0.589, 0.65, 0.13, 0.25,
                [400, 150, 70, 60, 0, 30, 20, 20, 0, 0, 0, 0, 0, 0, 0, 0, 50, 200]),
        });
        Picture picture = new(Curves.LeanHistogram(mixed, DrawingOptions.Default));
        (Func<double, double> x, Func<double, double> y) = Axes(picture);
        XElement[] bars = [.. picture.All("rect").Where(r => ((string)r.Attribute("data-name")!).Contains("flies from", StringComparison.Ordinal))];
        Assert.Equal([400, 150, 70, 60, 30, 20, 20, 50, 200], bars.Select(b => Math.Round(y(Picture.Number(b, "y")))));
        Assert.Equal([0, 10, 20, 30, 50, 60, 70, 160, 170], bars.Select(b => Math.Round(x(Picture.Number(b, "x")) / 10) * 10));
        Assert.Contains("62 % ride within 30° of point up (95 % interval 58.9 to 65 %), 13 % lean further, 25 % flip", picture.Description,
            StringComparison.Ordinal);
        Assert.Equal(3, bars.Select(b => (string?)b.Attribute("fill")).Distinct().Count());
    }

    [Fact]
    public void Ledger_Bars_HaveTheSignAndProportionOfTheirMoments()
    {
        Picture picture = new(Curves.Ledger(_fly, DrawingOptions.Default));
        XElement[] bars = [.. picture.All("rect")];
        Assert.Equal(_fly.Report.Soaked.Ledger.Length + 1, bars.Length);
        double zero = Picture.Number(picture.All("line").Last(), "x1");
        double perGmm = Picture.Number(bars[1], "width") / Math.Abs(_fly.Report.Soaked.Ledger[1].KeelMomentGmm);
        Assert.All(_fly.Report.Soaked.Ledger.Zip(bars), pair =>
        {
            (double left, double width) = (Picture.Number(pair.Second, "x"), Picture.Number(pair.Second, "width"));
            Assert.Equal(Math.Abs(pair.First.KeelMomentGmm) * perGmm, width, 0.6);
            Assert.Equal(zero, pair.First.KeelMomentGmm >= 0 ? left : left + width, 0.02);
        });
        Assert.Matches(@"in all(, each figure rounded,)? \+", picture.Description);
    }

    [Fact]
    public void Draw_LongPartName_IsCutOnTheChartButWholeInWords()
    {
        SolvedFly named = _fly.WithSoaked(s => s with { Ledger = [new LedgerEntry("dumbbell eyes lashed twice", 0.4)] });
        Picture picture = new(Curves.Ledger(named, DrawingOptions.Default));
        Assert.Contains("dumbbell eyes lashed twice +0.40;", picture.Description, StringComparison.Ordinal);
        Assert.Contains(picture.All("text"), t => t.Value.EndsWith('…'));
    }
}
