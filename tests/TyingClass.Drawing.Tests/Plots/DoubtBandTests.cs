using System.Globalization;
using System.Xml.Linq;
using TyingClass.Balance.Doubting;
using TyingClass.Drawing.Tests.Support;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;
using Xunit;

namespace TyingClass.Drawing.Tests.Plots;

public sealed class DoubtBandTests
{
    private static readonly DrawingOptions Shown = DrawingOptions.Default with { ShowDoubt = true };

    private readonly SolvedFly _fly = Samples.Named("Copper Loach");

    public static TheoryData<string> Kinds => ["pitch", "keel", "depth"];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Curve_WithDoubt_HasAHatchedBandBetweenTwoLinesAKeyAndWords(string kind)
    {
        XElement svg = XElement.Parse(Draw(kind, Shown));

        Assert.Equal(2, Of(svg, "path", "fly-doubt-edge").Length);
        Assert.Equal(2, Of(svg, "path", "fly-doubt").Length + Of(svg, "rect", "fly-doubt").Length);
        Assert.Contains(svg.Descendants().Where(e => e.Name.LocalName == "text"), t => t.Value == "doubt");
        Assert.Contains("nine draws in ten", svg.Descendants().Single(e => e.Name.LocalName == "desc").Value, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Curve_WithoutDoubt_HasNone(string kind) => Assert.DoesNotContain("doubt", Draw(kind, DrawingOptions.Default), StringComparison.Ordinal);

    // At the speed fished the band ends where the report's own interval does.
    [Fact]
    public void Bands_AtTheSpeedFished_AreTheIntervalsOfTheReport()
    {
        DoubtReport doubt = _fly.Doubt;
        SpeedBand band = _fly.DoubtBands.BySpeed.Single(b => b.SpeedMS == _fly.Report.Soaked.AtFishingSpeed.SpeedMS);

        Assert.Equal(doubt.PitchDeg.Low, band.PitchDeg!.Value.Low, 0.02);
        Assert.Equal(doubt.PitchDeg.High, band.PitchDeg.Value.High, 0.02);
        Assert.Equal(doubt.KeelHeightMm!.Value.Low, band.KeelHeightMm!.Value.Low, 0.005);
        Assert.Equal(doubt.KeelHeightMm.Value.High, band.KeelHeightMm.Value.High, 0.005);
    }

    [Theory]
    [InlineData(0.4, 0.9, 0.6)]
    [InlineData(-0.6, 0.9, 0.2)]
    [InlineData(-3, -1, -2)]
    [InlineData(0, 0, 0)]
    public void DoubtBar_AnyRange_HasItsTickOnTheBarAndAllWithinItsFrame(double lowMm, double highMm, double atMm)
    {
        SaidRange range = new(Magnitudes.KeelHeight, 1e-3 * lowMm, 1e-3 * highMm, "");
        XElement[] lines = [.. XElement.Parse(Curves.DoubtBar(range, 1e-3 * atMm, UnitSystem.Metric)).Elements()];
        (double from, double to) = (At(lines[1], "x1"), At(lines[1], "x2"));

        Assert.InRange(At(lines[3], "x1"), from, to);
        Assert.All(lines, l => Assert.InRange(At(l, "x1"), 0, 96));
        // Zero lies left of what is above it and right of what is below it.
        Assert.True(lowMm < 0 || At(lines[2], "x1") <= from);
        Assert.True(highMm > 0 || At(lines[2], "x1") >= to);
    }

    private string Draw(string kind, DrawingOptions options) => kind switch
    {
        "pitch" => Curves.PitchAgainstSpeed(_fly, options),
        "keel" => Curves.KeelHeightAgainstSpeed(_fly, options),
        _ => Curves.DepthInPause(_fly, options),
    };

    private static XElement[] Of(XElement svg, string element, string css) =>
        [.. svg.Descendants().Where(e => e.Name.LocalName == element && ((string?)e.Attribute("class") ?? "").Split(' ').Contains(css))];

    private static double At(XElement line, string attribute) => double.Parse((string)line.Attribute(attribute)!, CultureInfo.InvariantCulture);
}
