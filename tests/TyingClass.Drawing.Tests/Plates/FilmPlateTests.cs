using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using TyingClass.Balance.Retrieving;
using TyingClass.Drawing.Tests.Support;
using TyingClass.Recipes.Reports;
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

    private static IEnumerable<(RetrievePoint Point, double X, double Y)> Poses(Picture picture) =>
        picture.All("g").Where(g => (string?)g.Attribute("class") == "fly-film-pose").Select(g =>
        {
            double time = Picture.Number(g, "data-time-s");
            Match at = Translate().Match((string)g.Elements().Single(e => (string?)e.Attribute("class") == "fly-film-fly").Attribute("transform")!);
            return (Loach.Retrieve.Path.MinBy(p => Math.Abs(p.TimeS - time)), Number(at, 1), Number(at, 2));
        });

    private static double Number(Match match, int group) => double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"translate\((\S+) (\S+)\)")]
    private static partial Regex Translate();
}
