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
}
