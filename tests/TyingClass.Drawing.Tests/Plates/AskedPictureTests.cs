using TyingClass.Balance.Reports;
using TyingClass.Drawing.Tests.Support;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Reasons;
using Xunit;

namespace TyingClass.Drawing.Tests.Plates;

/// <summary>Pictures made for a question.</summary>
public sealed class AskedPictureTests
{
    [Theory]
    [InlineData(FlyView.Towed)]
    [InlineData(FlyView.Falling)]
    [InlineData(FlyView.Hanging)]
    [InlineData(FlyView.Ahead)]
    [InlineData(FlyView.Level)]
    [InlineData(FlyView.Meant)]
    [InlineData(FlyView.Pulled)]
    [InlineData(FlyView.Vise)]
    [InlineData(FlyView.Weighed)]
    [InlineData(FlyView.Placed)]
    [InlineData(FlyView.Retrieved)]
    [InlineData(FlyView.NoseInPause)]
    public void Pair_TwoFlies_ShareOneScaleAndNoId(FlyView view)
    {
        (string first, string second) = FlyDrawing.Pair(
            view, (Samples.Named("Brook Midge"), DrawingOptions.Default), (Samples.Named("Copper Loach"), DrawingOptions.Default));
        Picture small = new(first), large = new(second);

        Assert.Equal((string?)small.Root.Attribute("data-px-per-mm"), (string?)large.Root.Attribute("data-px-per-mm"));
        Assert.Empty(Ids(small).Intersect(Ids(large)));

        static IEnumerable<string> Ids(Picture picture) => picture.Root.DescendantsAndSelf().Select(e => (string?)e.Attribute("id")).OfType<string>();
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Seen_WhatAQuestionTurnsOn_IsRingedAndNamed(bool eye)
    {
        SolvedFly loach = Samples.Named("Copper Loach");
        string part = eye ? TurnsOn.Eye : loach.Built.Body.Parts[1].Name;

        Picture picture = new(FlyDrawing.Seen(loach, FlyView.Towed, DrawingOptions.Default with { TurnsOn = new TurnsOn(part, "this decides") }));

        Assert.Equal(part, (string?)Assert.Single(picture.All("rect"), r => (string?)r.Attribute("class") == "fly-ring").Attribute("data-part"));
        Assert.Contains(picture.All("text"), t => t.Value == "this decides");
    }

    [Fact]
    public void Seen_PartThatIsNotThere_RingsNothing() => Assert.DoesNotContain(
        "fly-ring", FlyDrawing.Seen(Samples.Named("Copper Loach"), FlyView.Towed, DrawingOptions.Default with { TurnsOn = new TurnsOn("foam", "x") }),
        StringComparison.Ordinal);

    [Fact]
    public void Fall_HeavyHead_PointsTheWayItGoes()
    {
        SolvedFly loach = Samples.Named("Copper Loach");

        Picture picture = new(FlyDrawing.Seen(loach, FlyView.Falling, DrawingOptions.Default));

        var arrow = Assert.Single(picture.All("line"), l => (string?)l.Attribute("data-mark") == "fall");
        Assert.True(Picture.Number(arrow, "y2") > Picture.Number(arrow, "y1"));
        Assert.Contains("falls at", picture.Description, StringComparison.Ordinal);
    }

    // A flipped fly is drawn as it rides, unless the question is of the way it was meant to.
    [Fact]
    public void Meant_FlippedFly_IsHeldTheWayItIsMeantWithItsKeelBelowNothing()
    {
        SolvedFly flipped = Samples.Named("Tin Dace").WithTow(t => t with { LeanDeg = 180, KeelHeightMm = new KeelHeight(-1.2, 1.2) });

        Picture rides = new(FlyDrawing.Seen(flipped, FlyView.Towed, DrawingOptions.Default)),
            meant = new(FlyDrawing.Seen(flipped, FlyView.Meant, DrawingOptions.Default));

        Assert.True(SpearY(rides) < ShankY(rides));
        Assert.True(SpearY(meant) > ShankY(meant));
        Assert.Equal(-1.2, Picture.Number(meant.Marked("keel height"), "data-height-mm"), 0.001);
        Assert.Contains("rolls over", string.Join(' ', meant.Labels), StringComparison.Ordinal);

        static double ShankY(Picture picture) => picture.HookWires().Single(w => w.Count == 4)[3].Y;
        static double SpearY(Picture picture) => picture.HookWires().Single(w => w.Count == 2)[0].Y;
    }

    [Fact]
    public void Meant_FlyThatRidesAsMeant_IsDrawnAsItRides()
    {
        SolvedFly loach = Samples.Named("Copper Loach").WithTow(t => t with { LeanDeg = 0 });

        Assert.Equal(FlyDrawing.Seen(loach, FlyView.Towed, DrawingOptions.Default), FlyDrawing.Seen(loach, FlyView.Meant, DrawingOptions.Default));
    }

    [Fact]
    public void Weighed_EveryPart_StandsWithItsMassAndTheWholeBelow()
    {
        SolvedFly loach = Samples.Named("Copper Loach");

        Picture picture = new(FlyDrawing.Seen(loach, FlyView.Weighed, DrawingOptions.Default));

        foreach (string part in loach.Built.Body.Parts.Where(p => p.Masses.Sum(m => m.MassKg) > 0).Select(p => p.Name))
            Assert.Contains(picture.Labels, l => l.StartsWith(part + " ", StringComparison.Ordinal) && l.Contains(" g", StringComparison.Ordinal));
        Assert.Contains(picture.Labels, l => l.Contains(" dry", StringComparison.Ordinal));
    }

    [Fact]
    public void Placed_MassCenter_StandsAtItsHeightFromTheShank()
    {
        SolvedFly loach = Samples.Named("Copper Loach");

        Picture picture = new(FlyDrawing.Seen(loach, FlyView.Placed, DrawingOptions.Default));

        Assert.Equal(-loach.Report.MassCenterMm.Z, Picture.Number(picture.Marked("mass center, z"), "data-height-mm"), 0.001);
    }

    // What the leader carries: its slope is weight less lift, over drag (statics of a towed body).
    [Fact]
    public void Pulled_Forces_AddUpToTheSlopeOfTheLeader()
    {
        SolvedFly loach = Samples.Named("Copper Loach");

        Picture picture = new(FlyDrawing.Seen(loach, FlyView.Pulled, DrawingOptions.Default));

        double slopeDeg = Picture.Number(picture.Marked("line angle"), "data-angle-deg");
        double weight = Length("weight in the water"), drag = Length("drag"), lift = picture.Has("lift") ? Length("lift") : 0;
        double up = loach.Report.Soaked.AtFishingSpeed.LiftMN < 0 ? weight + lift : weight - lift;
        Assert.Equal(slopeDeg, Math.Abs(Math.Atan2(up, drag)) * 180 / Math.PI, 3.0);

        // Arrow heads are left out of the shaft: all are of one size.
        double Length(string mark)
        {
            IReadOnlyList<(double X, double Y)> path = Picture.Path((string)picture.Marked(mark).Attribute("d")!);
            return Math.Sqrt(Math.Pow(path[^1].X - path[0].X, 2) + Math.Pow(path[^1].Y - path[0].Y, 2)) + Head(picture);
        }

        static double Head(Picture picture) => 0.9 * 0.04 * picture.ViewBox.Width;
    }

    [Fact]
    public void BothWays_LeaningLeftAndRight_IsOneWayBesideTheUprightOne()
    {
        SolvedFly poised = Samples.Named("Copper Loach").WithSoaked(s => s with
        {
            Attitudes = [new StableAttitude(35, 128, 0.35), new StableAttitude(35, 128, 0.35), new StableAttitude(20, 0, 0.3)],
        });

        (string first, string second) = FlyDrawing.BothWays(poised, DrawingOptions.Default)!.Value;

        Assert.Contains("leaning 128", first, StringComparison.Ordinal);
        Assert.DoesNotContain("flipped", first, StringComparison.Ordinal);
        Assert.Contains("no lean", second, StringComparison.Ordinal);
    }
}
