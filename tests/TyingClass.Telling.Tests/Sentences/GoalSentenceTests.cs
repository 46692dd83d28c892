using TyingClass.Balance.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;
using Xunit;

namespace TyingClass.Telling.Tests.Sentences;

public sealed class GoalSentenceTests
{
    private const double Any = double.PositiveInfinity;

    [Theory]
    [InlineData(0.4e-3, Any, UnitSystem.Metric, "keel height: at least 0.4 mm")]
    [InlineData(-Any, 0.4e-3, UnitSystem.Imperial, "keel height: at most 0.016 in")]
    [InlineData(0.4e-3, 0.6e-3, UnitSystem.Metric, "keel height: between 0.4 mm and 0.6 mm")]
    public void Asked_Bounds_AreSaid(double lowSi, double highSi, UnitSystem units, string expected) =>
        Assert.Equal(expected, GoalSentence.Asked("keel height", Magnitudes.KeelHeight, lowSi, highSi, units));

    // As what it reaches is told: "a strip lifts it by 46 cm", "0.31 m deep".
    [Theory]
    [InlineData("hop", 0.1, UnitSystem.Metric, "hop: at least 10 cm")]
    [InlineData("hop", 0.1, UnitSystem.Imperial, "hop: at least 3.94 in")]
    [InlineData("deepest", 0.3, UnitSystem.Metric, "deepest: at least 0.3 m")]
    [InlineData("deepest", 0.3, UnitSystem.Imperial, "deepest: at least 0.98 ft")]
    public void Asked_Bound_IsInTheUnitOfWhatIsReached(string name, double lowSi, UnitSystem units, string expected) =>
        Assert.Equal(expected, GoalSentence.Asked(name, Magnitudes.Find(name), lowSi, Any, units));

    [Fact]
    public void Asked_Count_HasNoUnit() => Assert.Equal("parts: at most 3", GoalSentence.Asked("parts", null, -Any, 3, UnitSystem.Metric));

    // 0.399 is told as 0.4, which would contradict "missed" beside "at least 0.4".
    [Theory]
    [InlineData(0.399e-3, "0.399 mm")]
    [InlineData(0.3e-3, "0.3 mm")]
    [InlineData(0.41e-3, "0.4 mm")]
    [InlineData(0.4e-3 * (1 - 1e-7), "0.39999996 mm")]
    public void Reached_MissedByAHair_IsToldApartFromItsBound(double si, string expected) =>
        Assert.Equal(expected, GoalSentence.Reached(Magnitudes.KeelHeight, si, 0.4e-3, Any, UnitSystem.Metric));

    [Fact]
    public void NotReached_NoSuchPart_NamesIt() => Assert.Equal("none: there is no bead on this fly", GoalSentence.NotReached(VerdictKind.Leans, "bead"));

    [Fact]
    public void NotReached_NoPartsThatComeInTwos_IsInThePlural() =>
        Assert.Equal("none: there are no dumbbell eyes on this fly", GoalSentence.NotReached(VerdictKind.Leans, "dumbbell eyes"));

    [Theory]
    [InlineData(0.9, double.PositiveInfinity, "of 100 flies tied like it, at least 90 ride as intended")]
    [InlineData(double.NegativeInfinity, 0.05, "of 100 flies tied like it, at most 5 ride as intended")]
    [InlineData(0.3, 0.6, "of 100 flies tied like it, between 30 and 60 ride as intended")]
    public void Asked_AShareOfFlies_IsCountedInFlies(double low, double high, string said) =>
        Assert.Equal(said, GoalSentence.Asked(Magnitudes.RidesAsIntended.Phrase, Magnitudes.RidesAsIntended, low, high, UnitSystem.Metric));
}
