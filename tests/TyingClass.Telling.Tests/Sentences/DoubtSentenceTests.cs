using TyingClass.Balance.Doubting;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;
using Xunit;

namespace TyingClass.Telling.Tests.Sentences;

public sealed class DoubtSentenceTests
{
    [Theory]
    [InlineData(1.0, "The model is sure: with its guesses drawn otherwise, it says the same of a perfectly tied fly in practically every draw.")]
    [InlineData(0.93, "The model is sure: with its guesses drawn otherwise, it says the same of a perfectly tied fly in 93 of 100 draws.")]
    public void Of_NineInTenAlike_SaysTheModelIsSure(double same, string expected) => Assert.Equal(expected, DoubtSentence.Of(Doubt(same)));

    [Fact]
    public void Of_AGuessThatCanBeMeasured_SaysWhatToMeasure() => Assert.Equal(
        "The model’s own guesses decide here: with them drawn otherwise, it says the same of a perfectly tied fly in only 64 of 100 draws. Measure your "
            + "hook’s wire first, and write it into the recipe.",
        DoubtSentence.Of(Doubt(0.64, ("hook wire by the scale", 0.5), ("suppleness of marabou", 0.2))));

    [Fact]
    public void Of_AGuessNobodyCanMeasure_SendsToTheTub() => Assert.EndsWith(
        "What matters most is “suppleness of marabou”, which no recipe can say. Try the fly in a tub.",
        DoubtSentence.Of(Doubt(0.64, ("suppleness of marabou", 0.7), ("hook wire by the scale", 0.2))), StringComparison.Ordinal);

    [Fact]
    public void Of_MeasuringThatMattersHalfAsMuch_IsAdvised() => Assert.EndsWith(
        "Weigh the bucktail first, and write it into the recipe.",
        DoubtSentence.Of(Doubt(0.64, ("suppleness of bucktail", 0.4), ("mass per length of bucktail", 0.25))), StringComparison.Ordinal);

    [Fact]
    public void Of_NoGuessThatStandsOut_SaysSo() =>
        Assert.EndsWith("No one guess stands out. Try the fly in a tub.", DoubtSentence.Of(Doubt(0.5, ("spear", 0.05))), StringComparison.Ordinal);

    // The hands have a sentence of their own.
    [Theory]
    [InlineData(0.2)]
    [InlineData(0.97)]
    public void Of_AnyDoubt_SpeaksOfAPerfectlyTiedFlyAndOfNoHands(double same)
    {
        string said = DoubtSentence.Of(Doubt(same, ("spear", 0.5)));

        Assert.Contains("a perfectly tied fly", said, StringComparison.Ordinal);
        Assert.DoesNotContain("flies tied like it", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Ranges_Metric_AreInTheDigitsOfTheirFigures() => Assert.Equal(
        ["−0.2 to 0.9 mm", "21 to 34°", "0.24 to 0.36 m/s"], DoubtSentence.Ranges(Doubt(1), UnitSystem.Metric).Select(r => r.Text));

    [Fact]
    public void Ranges_Imperial_AreInTheReadersUnits() =>
        Assert.Equal("−0.009 to 0.035 in", DoubtSentence.Ranges(Doubt(1), UnitSystem.Imperial)[0].Text);

    [Fact]
    public void Ranges_OfNoWidth_AreOneFigure() => Assert.Equal(
        "0.5 mm", DoubtSentence.Ranges(Doubt(1) with { KeelHeightMm = new Interval(0.49, 0.51) }, UnitSystem.Metric)[0].Text);

    // A row that goes by another name would send its reader to the tub instead of the scales.
    [Fact]
    public void MeasureFirst_EveryKey_IsAnEstimateOfTheTable()
    {
        IEnumerable<Figure> all = CatalogueFigures.All.Select(f => f.Figure).Concat(Materials.All.SelectMany(m => m.Figures).Select(f => f.Figure));
        string[] measurable = [.. all.Select(f => f.Name).OfType<string>().Where(name => MeasureFirst.Of(name) is not null)];

        Assert.Contains("hook gape by the scale", measurable);
        Assert.Contains("mass per length of marabou", measurable);
        Assert.DoesNotContain("suppleness of marabou", measurable);
    }

    private static DoubtReport Doubt(double same, params (string Name, double Share)[] shares) => new()
    {
        Draws = 200,
        KeelHeightMm = new Interval(-0.24, 0.88),
        PitchDeg = new Interval(21.2, 33.7),
        SinkRateMS = new Interval(0.243, 0.361),
        SameVerdict = same,
        Shares = [.. shares.Select(s => new EstimateShare(s.Name, s.Share))],
    };
}
