using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using TyingClass.Balance.Retrieving;
using TyingClass.Drawing.Tests.Support;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Reasons;
using Xunit;

namespace TyingClass.Drawing.Tests.Plates;

/// <summary>The film strip: what is drawn stands where the path says, at the size the hook says.</summary>
public sealed partial class FilmPlateTests
{
    private static readonly SolvedFly Loach = Samples.Named("Copper Loach");

    [Fact]
    public void Film_Poses_StandAtTrueSpacingAlongThePath()
    {
        Picture picture = new(FlyDrawing.Film(Loach, DrawingOptions.Default));
        (RetrievePoint Point, double X, double Y)[] poses = [.. Poses(picture)];
        Assert.InRange(poses.Length, 3, 12);
        foreach (((RetrievePoint a, double ax, double ay), (RetrievePoint b, double bx, double by)) in poses.Zip(poses.Skip(1)))
        {
            Assert.Equal(-1e3 * (b.AlongM - a.AlongM), bx - ax, 0.02);
            Assert.Equal(1e3 * (b.DepthM - a.DepthM), by - ay, 0.02);
        }
    }

    [Fact]
    public void Film_Depths_AreRuledInTheReadersUnitsAndTheLineIsThere()
    {
        Picture picture = new(FlyDrawing.Film(Loach, DrawingOptions.Default));
        Assert.Contains(picture.Labels, l => l.EndsWith(" m deep", StringComparison.Ordinal));
        Assert.Contains(new Picture(FlyDrawing.Film(Loach, DrawingOptions.Default with { Units = Recipes.Text.UnitSystem.Imperial })).Labels,
            l => l.EndsWith(" ft deep", StringComparison.Ordinal));
        Assert.True(picture.Has("taut line") || picture.Has("slack line"));
    }

    // Letters are a twenty-fifth of the width; a serif is hardly wider than 0.5 em a letter.
    [Fact]
    public void Film_Words_StandApartAndInsideThePage()
    {
        foreach (SolvedFly fly in Samples.OfSheet.Where(f => f.Retrieve.HasFigures))
        {
            Picture picture = new(FlyDrawing.Film(fly, DrawingOptions.Default));
            double letter = 0.04 * picture.ViewBox.Width;
            (string Text, double Left, double Top, double Right, double Bottom)[] words = [.. picture.All("text").Select(t =>
            {
                double wide = 0.5 * letter * t.Value.Length, x = Picture.Number(t, "x"), y = Picture.Number(t, "y");
                double left = (string?)t.Attribute("text-anchor") == "start" ? x : x - wide / 2;
                return (t.Value, left, y - 0.7 * letter, left + wide, y + 0.05 * letter);
            })];
            Assert.All(words, w => Assert.True(
                w.Left >= picture.ViewBox.Left && w.Right <= picture.ViewBox.Left + picture.ViewBox.Width, $"{fly.Recipe.Name}: {w.Text} leaves the page"));
            for (int i = 0; i < words.Length; i++)
            {
                foreach (var other in words.Skip(i + 1))
                {
                    bool apart = words[i].Right <= other.Left || other.Right <= words[i].Left || words[i].Bottom <= other.Top || other.Bottom <= words[i].Top;
                    Assert.True(apart, $"{fly.Recipe.Name}: “{words[i].Text}” lies on “{other.Text}”");
                }
            }
        }
    }

    [Fact]
    public void Film_FlySmallBesideItsPath_IsDrawnLargerAndSaysSo()
    {
        int[] times = [.. Samples.OfSheet.Where(f => f.Retrieve.HasFigures).Select(fly =>
        {
            Picture picture = new(FlyDrawing.Film(fly, DrawingOptions.Default));
            int[] scales = [.. picture.All("use").Select(u => (int)Number(Scale().Match((string)u.Attribute("transform")!), 1))];
            string caption = string.Join(' ', picture.All("text").Where(t => (string?)t.Attribute("data-label") == "caption").Select(t => t.Value));
            int common = Assert.Single(scales.Distinct());
            Assert.Equal(common > 1, caption.Contains($"drawn {common} times its size", StringComparison.Ordinal));
            return common;
        })];
        Assert.Contains(1, times);
        Assert.Contains(times, t => t > 1);
    }

    // Nine hairy flies drawn out would be a third of a megabyte.
    [Fact]
    public void Film_FlyThatStaysUpright_IsDrawnOnceOrTwiceAndPointedAt()
    {
        Picture picture = new(FlyDrawing.Film(Loach, DrawingOptions.Default));
        Assert.True(picture.All("defs").Single().Elements().Count() < picture.All("use").Count());
    }

    [Fact]
    public void Film_MovingFly_IsUnseenUntilAskedAndHasTheWholeRound()
    {
        XElement moving = new Picture(FlyDrawing.Film(Loach, DrawingOptions.Default)).All("g").Single(g => (string?)g.Attribute("class") == "fly-film-moving");
        Assert.Equal("hidden", (string?)moving.Attribute("visibility"));
        int points = ((string)moving.Attribute("data-times-s")!).Split(' ').Length;
        Assert.True(points > 20);
        foreach (string list in (string[])["data-x-mm", "data-y-mm", "data-pitches-deg", "data-poses"])
            Assert.Equal(points, ((string)moving.Attribute(list)!).Split(' ').Length);
    }

    [Fact]
    public void Films_TwoFlies_ShareOneScale()
    {
        (string first, string second) = FlyDrawing.Films(Samples.Named("Brook Midge"), Loach, DrawingOptions.Default);
        Assert.Equal((string?)new Picture(first).Root.Attribute("data-px-per-mm"), (string?)new Picture(second).Root.Attribute("data-px-per-mm"));
    }

    [Fact]
    public void Row_FliesRetrieved_ShareOneRulerOfDepth()
    {
        SolvedFly[] flies = [Samples.Named("Brook Midge"), Loach, Samples.Named("Salt Shrimp")];
        Picture[] films = [.. FlyDrawing.Row(FlyView.Retrieved, flies, DrawingOptions.Default).Select(svg => new Picture(svg))];
        string[][] depths = [.. films.Select(f => Ruled(f))];
        Assert.All(depths, d => Assert.Equal(depths[0], d));
        // The same depth stands at the same height of the page in each.
        foreach (string depth in depths[0])
        {
            double[] heights = [.. films.Select(f => Height(f, depth))];
            Assert.All(heights, h => Assert.Equal(heights[0], h, 0.02));
        }

        Assert.Single(films.Select(f => f.ViewBox.Width).Distinct());

        static string[] Ruled(Picture film) => [.. Lines(film).Select(l => SvgDepth(film, l)).Order(StringComparer.Ordinal)];
        static IEnumerable<XElement> Lines(Picture film) =>
            film.All("g").Single(g => (string?)g.Attribute("data-mark") == "depth").Elements().Where(e => e.Name.LocalName == "line");
        static string SvgDepth(Picture film, XElement line) => (Picture.Number(line, "y1") - Surface(film)).ToString("F0", CultureInfo.InvariantCulture);
        static double Height(Picture film, string depth) =>
            Lines(film).Select(l => Picture.Number(l, "y1")).MinBy(y => Math.Abs(y - Surface(film) - double.Parse(depth, CultureInfo.InvariantCulture)))
                - film.ViewBox.Top;
    }

    [Fact]
    public void Film_DeepestPlace_IsMarkedWithItsDepth()
    {
        Picture film = new(FlyDrawing.Film(Loach, DrawingOptions.Default));
        XElement dot = film.Marked("deepest");
        Assert.Equal(Loach.Retrieve.DeepestM, Picture.Number(dot, "data-depth-m"), 1e-4);
        Assert.Equal(1e3 * Loach.Retrieve.DeepestM, Picture.Number(dot, "cy") - Surface(film), 0.05);
        Assert.Contains(film.Labels, l => l == $"deepest {Loach.Retrieve.DeepestM.ToString("F2", CultureInfo.InvariantCulture)} m");
    }

    [Fact]
    public void Film_NoseAskedAbout_IsMarkedOnAPoseWithItsAngle()
    {
        Picture film = new(FlyDrawing.Seen(Loach, FlyView.NoseInPause, DrawingOptions.Default));
        double dive = Loach.Retrieve.DivePitchDeg!.Value;
        Assert.Equal(Math.Abs(dive), Picture.Number(film.Marked("nose"), "data-angle-deg"), 0.01);
        Assert.Contains(
            film.All("g").Where(g => (string?)g.Attribute("class") == "fly-film-pose"), g => Math.Abs(Picture.Number(g, "data-pitch-deg") - dive) < 1e-3);
        Assert.False(film.Has("deepest"));
    }

    [Fact]
    public void Film_DepthAskedFor_IsALineAcrossTheStripWhereverItIs()
    {
        foreach (double depthM in (double[])[0.02, 4])
        {
            Picture film = new(FlyDrawing.Film(Loach, DrawingOptions.Default with { DepthGoal = new DepthGoal(depthM, "deepest: at most so much") }));
            double y = Picture.Number(film.Marked("goal"), "y1");
            Assert.Equal(1e3 * depthM, y - Surface(film), 0.05);
            Assert.InRange(y, film.ViewBox.Top, film.ViewBox.Top + film.ViewBox.Height);
            Assert.Contains("deepest: at most so much", film.Labels);
        }
    }

    // From any pose: its place on the page less its depth.
    private static double Surface(Picture film)
    {
        XElement pose = film.All("g").First(g => (string?)g.Attribute("class") == "fly-film-pose");
        Match at = Translate().Match((string)pose.Elements().Single(e => (string?)e.Attribute("class") == "fly-film-fly").Attribute("transform")!);
        return Number(at, 2) - 1e3 * Picture.Number(pose, "data-depth-m");
    }

    private static IEnumerable<(RetrievePoint Point, double X, double Y)> Poses(Picture picture) =>
        picture.All("g").Where(g => (string?)g.Attribute("class") == "fly-film-pose").Select(g =>
        {
            double time = Picture.Number(g, "data-time-s");
            Match at = Translate().Match((string)g.Elements().Single(e => (string?)e.Attribute("class") == "fly-film-fly").Attribute("transform")!);
            return (Loach.Retrieve.Path.MinBy(p => Math.Abs(p.TimeS - time)), Number(at, 1), Number(at, 2));
        });

    private static double Number(Match match, int group) => double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"scale\((\d+)\)")]
    private static partial Regex Scale();

    [GeneratedRegex(@"translate\((\S+) (\S+)\)")]
    private static partial Regex Translate();
}
