using System.Globalization;
using System.Xml.Linq;
using TyingClass.Drawing.Tests.Support;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Reasons;
using Xunit;

namespace TyingClass.Drawing.Tests.Plates;

/// <summary>A fly held level: what the level-line keel is measured on.</summary>
public sealed class LevelPlateTests
{
    [Theory]
    [InlineData("Copper Loach")]
    [InlineData("Slate Minnow")]
    [InlineData("Reed Darter")]
    public void Level_OfAFly_MeasuresTheKeelThatTheReportGives(string name)
    {
        SolvedFly fly = Samples.Named(name);
        Picture picture = new(FlyDrawing.Seen(fly, FlyView.Level, DrawingOptions.Default));

        XElement keel = picture.All("g").Single(g => (string?)g.Attribute("data-mark") == "level-line keel");
        double drawn = double.Parse((string)keel.Attribute("data-height-mm")!, CultureInfo.InvariantCulture);
        // Drawings are written to a ten-thousandth of a millimeter.
        Assert.Equal(fly.Report.Soaked.LevelLineKeelMm!.Value.For(fly.Report.Intent), drawn, 5.1e-5);
        XElement line = picture.All("line").Single(l => (string?)l.Attribute("data-mark") == "level line");
        // Through the ring, which is the origin of every page, and level.
        Assert.Equal(("0", "0"), ((string?)line.Attribute("y1"), (string?)line.Attribute("y2")));
    }
}
