using TyingClass.Balance.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;
using Xunit;

namespace TyingClass.Telling.Tests.Sentences;

public sealed class VerdictSentenceTests
{


    private static readonly BalanceReport Report = Flies.Rides.Report;

    [Theory]
    [InlineData(UnitSystem.Metric,
        "Soaked and pulled at 0.4 m/s on a loop knot, it leans over by 41°. In the point-up attitude its weight acts 0.7 mm below the hinge line (keel "
            + "height 0.7 mm).")]
    [InlineData(UnitSystem.Imperial,
        "Soaked and pulled at 1.31 ft/s on a loop knot, it leans over by 41°. In the point-up attitude its weight acts 0.026 in below the hinge line "
            + "(keel height 0.026 in).")]
    public void Of_FlyThatLeans_SpeaksTheReadersUnits(UnitSystem units, string expected) =>
        Assert.Equal(expected, VerdictSentence.Of(Report.With(VerdictKind.Leans, s => Towed(s, 41, 0.66)), units));

    [Fact]
    public void Of_FlyOnTheEdge_DoesNotReadAsZero() => Assert.Contains(
        "acts 0.04 mm above the hinge line (keel height −0.04 mm).",
        VerdictSentence.Of(Report.With(VerdictKind.Flips, s => Towed(s, 170, -0.0385)), UnitSystem.Metric), StringComparison.Ordinal);

    [Fact]
    public void Of_FlyPoised_SaysNothingHoldsIt() => Assert.Contains(
        "acts right on the hinge line, so nothing holds it there.",
        VerdictSentence.Of(Report.With(VerdictKind.Undecided, s => Towed(s, 10, 0.002)), UnitSystem.Metric), StringComparison.Ordinal);

    [Fact]
    public void Of_FlyThatFloats_TellsItsLiftAsAMass() => Assert.Equal(
        "It floats: it weighs 1.9 gr less than the water it pushes aside.",
        VerdictSentence.Of(Report.With(VerdictKind.Floats, s => s with { WetWeightG = -0.123 }), UnitSystem.Imperial));

    [Fact]
    public void Of_FlyThatHangs_TellsHowSteeply() => Assert.Contains(
        "the shank points 72° nose down, too steep",
        VerdictSentence.Of(Report.With(VerdictKind.Hangs, s => s with { AtFishingSpeed = s.AtFishingSpeed with { PitchDeg = -72.3 } }), UnitSystem.Metric),
        StringComparison.Ordinal);

    [Fact]
    public void Of_FliesOfTwoMinds_TellsHowManyDoWhat() => Assert.EndsWith(
        "Of 100 flies tied like it, about 52 would ride point up, 8 would lean and 40 would flip.",
        VerdictSentence.Of(
            Report.With(VerdictKind.Undecided, s => s with { Tolerance = s.Tolerance with { AsIntended = 0.52, Leaning = 0.08, Flipped = 0.4 } }),
            UnitSystem.Metric), StringComparison.Ordinal);

    [Theory]
    [InlineData(VerdictKind.RidesAsIntended)]
    [InlineData(VerdictKind.Leans)]
    [InlineData(VerdictKind.RidesOnItsSide)]
    [InlineData(VerdictKind.Flips)]
    [InlineData(VerdictKind.Undecided)]
    [InlineData(VerdictKind.Hangs)]
    [InlineData(VerdictKind.Floats)]
    public void Of_EveryKind_IsWholeSentencesWithoutDoubledSpaces(VerdictKind kind)
    {
        string said = VerdictSentence.Of(Report.With(kind), UnitSystem.Imperial);

        Assert.EndsWith(".", said, StringComparison.Ordinal);
        Assert.DoesNotContain("  ", said, StringComparison.Ordinal);
        Assert.DoesNotContain(" mm", said, StringComparison.Ordinal);
    }

    private static StateReport Towed(StateReport state, double leanDeg, double keelMm) =>
        state with { AtFishingSpeed = state.AtFishingSpeed with { LeanDeg = leanDeg, KeelHeightMm = new KeelHeight(keelMm, keelMm) } };
}
