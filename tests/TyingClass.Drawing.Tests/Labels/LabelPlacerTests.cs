using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Labels;
using TyingClass.Drawing.Plates;
using TyingClass.Drawing.Tests.Support;
using TyingClass.Recipes.Reports;
using Xunit;
using UnitSystem = TyingClass.Recipes.Text.UnitSystem;

namespace TyingClass.Drawing.Tests.Labels;

public sealed class LabelPlacerTests
{
    public static TheoryData<string> Names => Samples.Names;

    // A slack leader is a line too: words printed over it cannot be read.
    [Theory, MemberData(nameof(Names))]
    public void Place_WordsOfAFallingFly_KeepOffTheLeader(string name)
    {
        FallPlate plate = new(Samples.Named(name), DrawingOptions.Default);
        Point[] bight = plate.Bight;

        for (int i = 1; i <= 12; i++)
        {
            double t = i / 12.0, u = 1 - t;
            Point at = bight[1] * (3 * u * u * t) + bight[2] * (3 * u * t * t) + bight[3] * (t * t * t);
            Assert.All(plate.Labels, label => Assert.False(label.Box.Holds(at), $"“{label.Wish.Text}” lies over the leader"));
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void Place_EveryViewOfEveryFly_NoTwoLabelsCollideAndAllAreInTheWindow(string name)
    {
        SolvedFly fly = Samples.Named(name);
        foreach (UnitSystem units in Enum.GetValues<UnitSystem>())
        {
            DrawingOptions options = new() { Units = units };
            Plate[] plates = [new SidePlate(fly, options), new FrontPlate(fly, options), new HangPlate(fly, options),
                new SidePlate(fly, options with { FrameAllSpeeds = true })];
            foreach (Plate plate in plates)
            {
                Assert.NotEmpty(plate.Labels);
                foreach (Label label in plate.Labels)
                {
                    Assert.True(plate.Window.Holds(label.Box), $"{plate.Title}: {label.Wish.Text} leaves the window");
                    Assert.All(plate.Labels,
                        other => Assert.False(other != label && other.Box.Meets(label.Box), $"{plate.Title}: {label.Wish.Text} on {other.Wish.Text}"));
                }
            }
        }
    }

    [Fact]
    public void Place_ManyMarksAtOnePlace_StillKeepsWordsApart()
    {
        Box fly = new(0, 0, 60, 20);
        LabelWish[] wishes = [.. Enumerable.Range(0, 7).Select(i => new LabelWish("center of buoyancy", $"{i}", new Point(12, 9), 1))];
        Occupancy covered = new(fly, 0.8, [[new Point(0, 5), new Point(60, 5), new Point(60, 15), new Point(0, 15)]]);
        IReadOnlyList<Label> labels = new LabelPlacer(fly, new Box(0, -30, 60, 50), 2, covered, []).Place(wishes);
        Assert.Equal(7, labels.Count);
        Assert.All(labels, a => Assert.All(labels, b => Assert.False(a != b && a.Box.Meets(b.Box))));
    }

    [Fact]
    public void Place_WireBesideTheMarkAndFreePaperFartherOff_KeepsOffTheWire()
    {
        Box fly = new(0, 0, 60, 20);
        // A wire right under the mark, so thin that a word over it covers little of it.
        Occupancy covered = new(fly, 0.8, [[new Point(4, 12), new Point(56, 12)], [new Point(4, 6.5), new Point(56, 6.5)]]);
        LabelWish wish = new("center of buoyancy", "mark", new Point(30, 9), 1);
        Label placed = Assert.Single(new LabelPlacer(fly, new Box(-20, -30, 80, 50), 2, covered, []).Place([wish]));
        Assert.Equal(0, covered.Share(placed.Box));
    }

    [Theory, MemberData(nameof(Names))]
    public void Place_RingRoundAPart_NoLabelOnItsDashes(string name)
    {
        SolvedFly fly = Samples.Named(name);
        foreach (string part in fly.Built.Body.Parts.Where(p => p.IsTied).Select(p => p.Name).Append(TurnsOn.Eye))
        {
            SidePlate plate = new(fly, DrawingOptions.Default with { TurnsOn = new TurnsOn(part, "this decides") });
            Picture picture = new(plate.ToSvg());
            foreach (System.Xml.Linq.XElement ring in picture.All("rect").Where(r => (string?)r.Attribute("class") == "fly-ring"))
            {
                double left = Picture.Number(ring, "x"), top = Picture.Number(ring, "y");
                Box box = new(left, top, left + Picture.Number(ring, "width"), top + Picture.Number(ring, "height"));
                Assert.All(plate.Labels, label => Assert.True(!label.Box.Meets(box) || box.Holds(label.Box), $"{plate.Title}, {part}: {label.Wish.Text}"));
            }
        }
    }

    [Fact]
    public void Share_HalfCoveredBox_IsHalf()
    {
        Point[] square = [.. Enumerable.Range(0, 41).SelectMany(i => (Point[])[new(i / 4.0, 0), new(i / 4.0, 10), new(0, i / 4.0), new(10, i / 4.0)])];
        Occupancy covered = new(new Box(-20, -20, 30, 30), 0.5, [square]);
        Assert.Equal(0.5, covered.Share(new Box(0, -5, 9.9, 5)), 0.1);
        Assert.Equal(0, covered.Share(new Box(14, 14, 20, 20)));
    }
}
