using TyingClass.Balance.Bodies;
using TyingClass.Balance.Doubting;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Flies;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Doubting;
using TyingClass.Recipes.Model;
using Xunit;

namespace TyingClass.Balance.Tests.Doubting;

public sealed class DoubtTests
{
    private const string Wire = "hook wire by the scale";

    private static readonly Recipe Fly = new(
        "Slate Sprat",
        Intent.PointUp,
        new HookSpec { Size = new HookSize(4), ShankSteps = 1 },
        [
            new PartSpec(PartKind.DumbbellEyes) { Material = "brass", SizeM = 4.5e-3, AtM = 3e-3, Side = Side.Top },
            new PartSpec(PartKind.Wing) { Material = "bucktail", LengthM = 45e-3, AtM = 9e-3, Side = Side.Under },
            new PartSpec(PartKind.Tail) { Material = "marabou", LengthM = 20e-3, AtM = 20e-3 },
        ],
        new FishingSpec { SpeedMS = 0.5 });

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 24)];

    [Fact]
    public void Of_SameFlyTwice_IsTheSame()
    {
        DoubtReport a = Of(Fly), b = Of(Fly);

        Assert.Equal(a with { Shares = [] }, b with { Shares = [] });
        Assert.Equal(a.Shares, b.Shares);
    }

    [Fact]
    public void Of_AnyRangeOpen_HasTheUsualFigureWithin()
    {
        DoubtReport doubt = Of(Fly);
        TowReport tow = PartialReports.Tow(FlyBuilder.Build(Fly).Body, FlyBuilder.Build(Fly).Conditions, WetState.Soaked);

        Assert.Equal(200, doubt.Draws);
        Assert.InRange(tow.KeelHeightMm.PointUp!.Value, doubt.KeelHeightMm!.Value.Low, doubt.KeelHeightMm.Value.High);
        Assert.InRange(tow.PitchDeg, doubt.PitchDeg.Low, doubt.PitchDeg.High);
        Assert.True(doubt.KeelHeightMm.Value.High - doubt.KeelHeightMm.Value.Low > 0.1);
    }

    // Parts that neither touch nor cover one another may be tied, and written down, in any order.
    [Fact]
    public void Of_PartsInAnotherOrder_IsTheSame()
    {
        DoubtReport first = Of(Fly), last = Of(Fly with { Parts = [.. Fly.Parts.Reverse()] });

        AssertAlike(first, last, 1e-9);
        Assert.Equal(first.Shares.Select(s => s.Estimate), last.Shares.Select(s => s.Estimate));
    }

    [Fact]
    public void Of_MirroredFly_IsTheSame() => AssertAlike(Of(Leaning(0.4e-3)), Of(Leaning(-0.4e-3)), 1e-6);

    [Fact]
    public void Of_RangesOfNoWidth_LeavesNoDoubt()
    {
        DoubtReport doubt = Of(Fly, new DoubtOptions(Width: 0));

        Assert.Equal(doubt.KeelHeightMm!.Value.Low, doubt.KeelHeightMm.Value.High, 1e-9);
        Assert.Equal(doubt.PitchDeg.Low, doubt.PitchDeg.High, 1e-7);
        Assert.Equal(doubt.SinkRateMS!.Value.Low, doubt.SinkRateMS.Value.High, 1e-9);
        Assert.Equal(1, doubt.SameVerdict);
        Assert.Null(doubt.MostlyBy);
    }

    [Fact]
    public void Of_OneEstimateWithWiderRange_HasNoNarrowerInterval()
    {
        double[] widths = [.. new[] { 0.25, 0.5, 1, 1.5, 2 }.Select(w => Width(Of(Fly, new DoubtOptions(Width: w, Varies: f => f.Name == Wire))))];

        Assert.Equal(widths.Order(), widths);
        Assert.True(widths[4] > 4 * widths[0], "Eight times the range should leave far more open.");
    }

    // Of a figure that rises or falls all through a range, the quantile of the figure is the figure at the quantile: no sampling needed.
    [Fact]
    public void Of_OneEstimateDrawn_HasTheQuantilesOfTheEstimate()
    {
        DoubtReport doubt = Of(Fly, new DoubtOptions(Varies: f => f.Name == Wire));
        double[] ends = [.. new[] { 0.05, 0.95 }.Select(q => KeelMm(new Guesses(f => f.Name == Wire ? f.Low + q * (f.High - f.Low) : f.Value))).Order()];

        Assert.Equal(ends[0], doubt.KeelHeightMm!.Value.Low, 2e-3);
        Assert.Equal(ends[1], doubt.KeelHeightMm.Value.High, 2e-3);
        Assert.Equal(Wire, doubt.MostlyBy);
        Assert.InRange(doubt.Shares[0].Share, 0.95, 1);
    }

    [Fact]
    public void Of_MeasuredHook_LeavesLessOpenAndNoDoubtOfTheScale()
    {
        // No wing: its angle would drown what the hook leaves open.
        Recipe guessed = Fly with { Parts = [Fly.Parts[0]] };
        ResolvedHook hook = HookScale.Resolve(Fly.Hook);
        Recipe measured = guessed with { Hook = Fly.Hook with { ShankM = hook.ShankM, GapeM = hook.GapeM, WireM = hook.WireM } };
        DoubtReport before = Of(guessed), after = Of(measured);

        Assert.True(Width(after) < Width(before));
        Assert.DoesNotContain(after.Shares, s => s.Estimate.EndsWith("by the scale", StringComparison.Ordinal));
    }

    // A warm start may not find anything else than the report of that very fly, unless it has more than one way to lie.
    [Fact]
    public void At_DrawsOfRandomFlies_AreWhatTheirOwnReportsSay()
    {
        int asked = 0, pitchAlike = 0, keelAlike = 0, sinkAsked = 0, sinkAlike = 0;
        for (int seed = 1; seed <= 40; seed++)
        {
            Recipe recipe = RandomRecipes.Fly(seed);
            BuiltFly usual = FlyBuilder.Build(recipe);
            DoubtCalculation calculation = new(usual.Body, usual.Conditions);
            foreach (BuiltFly fly in Doubt.Flies(recipe, new DoubtOptions(10)).OfType<BuiltFly>())
            {
                DrawnFly drawn = calculation.At(fly.Body, fly.Conditions);
                TowReport tow = PartialReports.Tow(fly.Body, fly.Conditions, WetState.Soaked);
                double? sink = PartialReports.Sink(fly.Body, fly.Conditions, WetState.Soaked)?.RateMS;
                asked++;
                pitchAlike += Math.Abs(tow.PitchDeg - drawn.PitchDeg) < 0.01 ? 1 : 0;
                keelAlike += Near(tow.KeelHeightMm.For(recipe.Intent), drawn.KeelHeightMm, 1e-3) ? 1 : 0;
                if (calculation.Usual.SinkRateMS is null)
                {
                    Assert.Null(drawn.SinkRateMS);
                    continue;
                }

                sinkAsked++;
                sinkAlike += Near(sink, drawn.SinkRateMS, 1e-3) ? 1 : 0;
            }
        }

        Assert.True(asked >= 390, $"Only {asked} draws could be built.");
        Assert.InRange(pitchAlike / (double)asked, 0.95, 1);
        Assert.InRange(keelAlike / (double)asked, 0.97, 1);
        Assert.True(sinkAsked > 300, $"Only {sinkAsked} draws of flies that sink.");
        Assert.InRange(sinkAlike / (double)sinkAsked, 0.9, 1);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Of_RandomFly_HasWholeFiguresInOrder(int seed)
    {
        DoubtReport doubt = Of(RandomRecipes.Fly(seed));

        Assert.InRange(doubt.Draws, 190, 200);
        Assert.InRange(doubt.SameVerdict, 0, 1);
        foreach (Interval range in new[] { doubt.KeelHeightMm, doubt.PitchDeg, doubt.SinkRateMS }.OfType<Interval>())
        {
            Assert.True(double.IsFinite(range.Low) && double.IsFinite(range.High) && range.Low <= range.High);
        }

        Assert.Equal(doubt.Shares.OrderByDescending(s => s.Share).Select(s => s.Estimate), doubt.Shares.Select(s => s.Estimate));
        Assert.All(doubt.Shares, s => Assert.InRange(s.Share, 0, 1));
    }

    private static DoubtReport Of(Recipe recipe, DoubtOptions? options = null) => Doubt.Of(recipe, FlyBuilder.Build(recipe), options);

    private static Recipe Leaning(double sideM) =>
        Fly with { Parts = [.. Fly.Parts.Select(p => p.Kind == PartKind.Wing ? p with { SideOffsetM = sideM, ClockedRad = 100 * sideM } : p)] };

    private static double KeelMm(Guesses guesses)
    {
        BuiltFly fly = FlyBuilder.Build(Fly, guesses);
        return PartialReports.Tow(fly.Body, fly.Conditions, WetState.Soaked).KeelHeightMm.PointUp!.Value;
    }

    private static double Width(DoubtReport doubt) => doubt.KeelHeightMm!.Value.High - doubt.KeelHeightMm.Value.Low;

    private static bool Near(double? a, double? b, double within) => a is null == b is null && Math.Abs((a ?? 0) - (b ?? 0)) < within;

    private static void AssertAlike(DoubtReport a, DoubtReport b, double within)
    {
        Assert.Equal(a.SameVerdict, b.SameVerdict);
        foreach ((Interval? x, Interval? y) in new[] { (a.KeelHeightMm, b.KeelHeightMm), (a.PitchDeg, b.PitchDeg), (a.SinkRateMS, b.SinkRateMS) })
        {
            Assert.Equal(x is null, y is null);
            Assert.Equal(x?.Low ?? 0, y?.Low ?? 0, within);
            Assert.Equal(x?.High ?? 0, y?.High ?? 0, within);
        }
    }
}
