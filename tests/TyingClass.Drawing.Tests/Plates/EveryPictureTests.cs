using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using TyingClass.Balance.Reports;
using TyingClass.Drawing.Tests.Support;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Reasons;
using Xunit;
using UnitSystem = TyingClass.Recipes.Text.UnitSystem;

namespace TyingClass.Drawing.Tests.Plates;

/// <summary>What holds of every kind of picture.</summary>
public sealed partial class EveryPictureTests
{
    private static readonly Dictionary<string, Func<SolvedFly, DrawingOptions, string>> Kinds = new()
    {
        ["side"] = FlyDrawing.Side,
        ["front"] = FlyDrawing.Front,
        ["hang"] = FlyDrawing.Hang,
        ["fall"] = (f, o) => FlyDrawing.Seen(f, FlyView.Falling, o),
        ["level"] = (f, o) => FlyDrawing.Seen(f, FlyView.Level, o),
        ["vise"] = FlyDrawing.Vise,
        ["tip"] = (f, o) => FlyDrawing.Tip(f, [], o),
        ["run"] = FlyDrawing.Run,
        ["pair"] = (f, o) => FlyDrawing.BeforeAfter(f, Samples.Named("Reed Darter"), o),
        ["pitch"] = Curves.PitchAgainstSpeed,
        ["keel"] = Curves.KeelHeightAgainstSpeed,
        ["righting"] = Curves.Righting,
        ["depth"] = Curves.DepthInPause,
        ["lean"] = Curves.LeanHistogram,
        ["ledger"] = Curves.Ledger,
        ["film"] = FlyDrawing.Film,
        ["retrieve"] = Curves.Retrieve,
        ["round"] = Curves.LastRound,
    };

    public static TheoryData<string> AllKinds => [.. Kinds.Keys];

    [Theory, MemberData(nameof(AllKinds))]
    public void Draw_AnyFly_IsNamedAndDescribedForAScreenReader(string kind)
    {
        foreach (SolvedFly fly in Samples.OfSheet)
        {
            Picture picture = new(Kinds[kind](fly, new DrawingOptions { IdPrefix = "p7" }));
            Assert.Equal("img", (string?)picture.Root.Attribute("role"));
            string[] labelledBy = ((string)picture.Root.Attribute("aria-labelledby")!).Split(' ');
            Assert.Equal([(string?)picture.Element("title").Attribute("id"), (string?)picture.Element("desc").Attribute("id")], labelledBy);
            Assert.Contains(fly.Recipe.Name, picture.Title, StringComparison.Ordinal);
            Assert.Matches(@"\d", picture.Description);
            Assert.DoesNotContain("NaN", picture.Root.ToString(), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("side")]
    [InlineData("front")]
    [InlineData("hang")]
    public void Draw_LongestCaption_IsWholeInAsManyLinesAsItNeeds(string kind)
    {
        foreach (SolvedFly fly in Samples.OfSheet.Select(f => f.WithTow(t => t with { LeanDeg = 102, PitchDeg = 48 })))
        {
            string[] lines = [
                .. new Picture(Kinds[kind](fly, DrawingOptions.Default)).All("text").Where(t => (string?)t.Attribute("data-label") == "caption")
                    .Select(t => t.Value)];
            Assert.DoesNotContain(lines, l => l.Contains('…', StringComparison.Ordinal));
            if (kind != "hang") Assert.EndsWith("leaning 102° from as intended", string.Join(' ', lines), StringComparison.Ordinal);
        }
    }

    [Theory, MemberData(nameof(AllKinds))]
    public void Draw_AnyFly_HoldsNothingThatThePagesPolicyForbids(string kind)
    {
        Picture picture = new(Kinds[kind](Samples.Named("Salt Shrimp"), DrawingOptions.Default));
        Assert.All(picture.Root.DescendantsAndSelf(), e =>
        {
            Assert.DoesNotContain(e.Name.LocalName, (string[])["style", "script", "foreignObject", "image", "a"]);
            // A drawing may point at a piece of itself, and at nothing else.
            if (e.Name.LocalName == "use") Assert.StartsWith($"#{DrawingOptions.Default.IdPrefix}-", (string?)e.Attribute("href"), StringComparison.Ordinal);
            Assert.DoesNotContain(e.Attributes(), a => a.Name.LocalName == "style" || a.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase));
        });
    }

    [Theory, MemberData(nameof(AllKinds))]
    public void Draw_IdPrefix_StartsEveryIdAndNoneTwice(string kind)
    {
        Picture picture = new(Kinds[kind](Samples.Named("Alder Leech"), new DrawingOptions { IdPrefix = "bench-2" }));
        string[] ids = [.. picture.Root.DescendantsAndSelf().Select(e => (string?)e.Attribute("id")).OfType<string>()];
        Assert.Equal(ids.Length, ids.Distinct().Count());
        Assert.All(ids, id => Assert.StartsWith("bench-2-", id, StringComparison.Ordinal));
        string[] used = [.. UrlReference().Matches(picture.Root.ToString()).Select(m => m.Groups[1].Value)];
        Assert.All(used, id => Assert.Contains(id, ids));
    }

    [Theory, MemberData(nameof(AllKinds))]
    public void Draw_HostileName_StaysText(string kind)
    {
        const string name = "</title></svg><script>alert(1)</script>\" onload='x' & <b>]]>\u0001\uD800";
        SolvedFly fly = Samples.Named("Copper Loach").Renamed(name);
        Picture picture = new(Kinds[kind](fly, DrawingOptions.Default));
        Assert.Empty(picture.All("script"));
        Assert.Empty(picture.All("b"));
        Assert.Contains("</title></svg><script>alert(1)</script>\" onload='x' & <b>]]>\uFFFD\uFFFD", picture.Title, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(AllKinds))]
    public void Draw_Squeezed280PxWide_LettersAreElevenPixels(string kind)
    {
        // 280 px is what a phone 390 px wide leaves in a task within a lesson. The style sheet may shrink letters only in wider frames.
        Picture picture = new(Kinds[kind](Samples.Named("Copper Loach"), DrawingOptions.Default));
        double pxPerUnit = 280 / picture.ViewBox.Width;
        double[] letters = [.. picture.Root.DescendantsAndSelf().Attributes("font-size").Select(a => Picture.Number(a.Value) * pxPerUnit)];
        Assert.NotEmpty(letters);
        Assert.All(letters, px => Assert.InRange(px, 11, 13));
    }

    [Theory, MemberData(nameof(AllKinds))]
    public void Draw_Twice_IsTheSameText(string kind)
    {
        SolvedFly fly = Samples.Named("Alder Leech"), again = SolvedFly.Solve(fly.Recipe);
        Assert.Equal(Kinds[kind](fly, DrawingOptions.Default), Kinds[kind](again, DrawingOptions.Default));
    }

    [Theory, MemberData(nameof(AllKinds))]
    public void Draw_ReaderWithDecimalCommas_GetsTheSameText(string kind)
    {
        SolvedFly fly = Samples.Named("Reed Darter");
        string plain = Kinds[kind](fly, DrawingOptions.Default);
        CultureInfo before = CultureInfo.CurrentCulture, commas = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        commas.NumberFormat.NumberDecimalSeparator = ",";
        commas.NumberFormat.NegativeSign = "~";
        try
        {
            CultureInfo.CurrentCulture = commas;
            Assert.Equal(plain, Kinds[kind](fly, DrawingOptions.Default));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory, MemberData(nameof(AllKinds))]
    public void Draw_FreshAndImperial_SpeaksThatStateAndThoseUnits(string kind)
    {
        DrawingOptions options = new() { State = WetState.Fresh, Units = UnitSystem.Imperial };
        Picture picture = new(Kinds[kind](Samples.Named("Copper Loach"), options));
        string all = string.Join(" ", picture.Root.Descendants().Where(e => !e.HasElements).Select(e => e.Value));
        Assert.DoesNotMatch(@"\d (mm|m/s|m|g|g·mm)\b", all);
        // In air there is neither; a retrieve begins as the fly lands and soaks on the way.
        if (kind is not ("hang" or "vise" or "film" or "retrieve" or "round"))
            Assert.Contains("fresh", all, StringComparison.OrdinalIgnoreCase);
    }

    [Theory, InlineData(""), InlineData("7up"), InlineData("a b"), InlineData("a\"b"), InlineData("é")]
    public void Draw_BadIdPrefix_IsRefusedByName(string prefix)
    {
        ArgumentException error =
            Assert.Throws<ArgumentException>(() => FlyDrawing.Side(Samples.Named("Copper Loach"), new DrawingOptions { IdPrefix = prefix }));
        Assert.Contains("id prefix", error.Message, StringComparison.Ordinal);
    }

    [Theory, InlineData(99), InlineData(4001)]
    public void Draw_WidthOutOfRange_IsRefusedByName(int widthPx)
    {
        ArgumentException error =
            Assert.Throws<ArgumentException>(() => Curves.Ledger(Samples.Named("Copper Loach"), new DrawingOptions { WidthPx = widthPx }));
        Assert.Contains($"width is {widthPx} px", error.Message, StringComparison.Ordinal);
    }

    [GeneratedRegex(@"url\(#([^)]+)\)")]
    private static partial Regex UrlReference();
}
