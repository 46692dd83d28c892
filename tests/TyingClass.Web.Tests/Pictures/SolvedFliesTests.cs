using TyingClass.Balance.Reports;
using TyingClass.Drawing;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Web.Bench;
using TyingClass.Web.Pictures;
using Xunit;

namespace TyingClass.Web.Tests.Pictures;

public sealed class SolvedFliesTests : IDisposable
{
    private readonly SolvedFlies _flies = new();

    [Fact]
    public void Attitude_OfAFlyKeptWhole_IsTheFlyThatWasKept()
    {
        SolvedFly graded = SolvedFly.Solve(RecipeParser.Parse(BenchStart.Text).Value!);
        _flies.Keep(BenchStart.Text, graded);

        Assert.Same(graded, _flies.Attitude(BenchStart.Text));
        Assert.Same(graded, _flies.Whole(BenchStart.Text));
    }

    // A picture must not tell whether its fly was kept or solved again.
    [Fact]
    public void Pictures_OfAFlyKeptAndOfOneSolvedAgain_AreTheSame()
    {
        SolvedFly lean = _flies.Attitude(BenchStart.Text)!, whole = _flies.Whole(BenchStart.Text)!;

        Assert.Empty(lean.Report.Soaked.Tow);
        Assert.NotEmpty(whole.Report.Soaked.Tow);
        foreach (Func<SolvedFly, DrawingOptions, string> plate in new[] { FlyDrawing.Side, FlyDrawing.Vise, FlyDrawing.Front, FlyDrawing.Hang })
            Assert.Equal(plate(lean, DrawingOptions.Default), plate(whole, DrawingOptions.Default));
        Assert.Equal(FlyDrawing.BeforeAfter(lean, lean, DrawingOptions.Default), FlyDrawing.BeforeAfter(lean, whole, DrawingOptions.Default));
    }

    [Fact]
    public void Whole_AfterItsAttitude_IsTheReportOfAFreshSolve()
    {
        _flies.Attitude(BenchStart.Text);

        BalanceReport fresh = SolvedFly.Solve(RecipeParser.Parse(BenchStart.Text).Value!).Report, kept = _flies.Whole(BenchStart.Text)!.Report;

        Assert.Equal(fresh.Soaked.AtFishingSpeed, kept.Soaked.AtFishingSpeed);
        Assert.Equal(fresh.Soaked.Tolerance.AsIntended, kept.Soaked.Tolerance.AsIntended);
    }

    [Theory]
    [InlineData("")]
    [InlineData("recipe: [")]
    public void Whole_OfNoFly_IsNull(string text) => Assert.Null(_flies.Whole(text));

    public void Dispose() => _flies.Dispose();
}
