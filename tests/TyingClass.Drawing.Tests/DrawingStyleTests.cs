using System.Reflection;
using System.Text.RegularExpressions;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Tests.Support;
using TyingClass.Recipes.Reports;
using Xunit;

namespace TyingClass.Drawing.Tests;

public sealed partial class DrawingStyleTests
{
    // Every tone that has a name, and the dyes.
    private static IEnumerable<Tone> Tones => typeof(Tone).GetFields(BindingFlags.Public | BindingFlags.Static).Select(f => f.GetValue(null)).OfType<Tone>()
        .Concat(Enumerable.Range(0, 5).Select(Tone.Dye)).Distinct();

    [Fact]
    public void Css_EveryTone_HasALightAndADarkColorAndBothRules()
    {
        foreach (Tone tone in Tones)
        {
            Assert.Contains($".fly-fill-{tone.Name} {{ fill: var(--fly-{tone.Name}); }}", DrawingStyle.Css, StringComparison.Ordinal);
            Assert.Contains($".fly-stroke-{tone.Name} {{ stroke: var(--fly-{tone.Name}); }}", DrawingStyle.Css, StringComparison.Ordinal);
            // Once for light, once for a dark system, once for dark by choice; print may say it again.
            Assert.InRange(Regex.Count(DrawingStyle.Css, $"--fly-{tone.Name}: #"), 3, 4);
        }
    }

    [Fact]
    public void Css_AttributeColors_AreTheLightSheetsOwn() =>
        Assert.All(Tones.Where(t => t.Name is not ("thread" or "water")),
        t => Assert.Contains($"--fly-{t.Name}: {t.Color};", DrawingStyle.Css, StringComparison.Ordinal));

    [Fact]
    public void Css_EveryClassInEveryDrawing_IsDocumented()
    {
        string docs = File.ReadAllText(Path.Combine(Repository(), "docs", "drawing.md"));
        SortedSet<string> used = [];
        foreach (SolvedFly fly in Samples.OfSheet)
        {
            string[] all =
            [
                FlyDrawing.Side(fly, DrawingOptions.Default), FlyDrawing.Front(fly, DrawingOptions.Default), FlyDrawing.Hang(fly, DrawingOptions.Default),
                FlyDrawing.Tip(fly, [40, 0], DrawingOptions.Default), FlyDrawing.Run(fly, DrawingOptions.Default),
                FlyDrawing.BeforeAfter(fly, fly, DrawingOptions.Default), Curves.PitchAgainstSpeed(fly, DrawingOptions.Default),
                Curves.KeelHeightAgainstSpeed(fly, DrawingOptions.Default),
                Curves.Righting(fly, DrawingOptions.Default), Curves.DepthInPause(fly, DrawingOptions.Default),
                Curves.LeanHistogram(fly, DrawingOptions.Default), Curves.Ledger(fly, DrawingOptions.Default),
            ];
            used.UnionWith(all.SelectMany(svg => Classes().Matches(svg)).SelectMany(m => m.Groups[1].Value.Split(' ')));
        }

        string[] undocumented = [
            .. used.Where(
                c => !c.StartsWith("fly-fill-", StringComparison.Ordinal) && !c.StartsWith("fly-stroke-", StringComparison.Ordinal)
                    && !docs.Contains($"`{c}`", StringComparison.Ordinal))];
        Assert.Empty(undocumented);
    }

    private static string Repository()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "TyingClass.sln")))
            folder = Path.GetDirectoryName(folder);
        return folder ?? throw new InvalidOperationException("TyingClass.sln is not above the tests.");
    }

    [GeneratedRegex("class=\"([^\"]*)\"")]
    private static partial Regex Classes();
}
