using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using Xunit;

namespace TyingClass.Balance.Tests.Reports;

/// <summary>
/// The bounds of the verdicts, on both sides of each. They are definitions and stand in docs/formulas.md. Wilson's interval, by which a sample of a thousand
/// is sure, from his formula (J. Am. Stat. Assoc. 22 (1927) 209) worked by hand: of 1 000 flies 770 give 0.743 at least, 780 give 0.753, of 400 300 give 0.705.
/// </summary>
public sealed class VerdictRulesTests
{
    private const double Heavy = 1e-4;

    [Theory]
    [InlineData(0, VerdictKind.RidesAsIntended)]
    [InlineData(29.99, VerdictKind.RidesAsIntended)]
    [InlineData(30.01, VerdictKind.Leans)]
    [InlineData(59.99, VerdictKind.Leans)]
    [InlineData(60.01, VerdictKind.RidesOnItsSide)]
    [InlineData(119.99, VerdictKind.RidesOnItsSide)]
    [InlineData(120.01, VerdictKind.Flips)]
    [InlineData(180, VerdictKind.Flips)]
    public void ByAttitude_Lean_IsNamedByItsBounds(double leanDeg, VerdictKind expected) =>
        Assert.Equal(expected, VerdictRules.ByAttitude(Heavy, 0, Rad(leanDeg)));

    [Theory]
    [InlineData(59.99, VerdictKind.RidesAsIntended)]
    [InlineData(60.01, VerdictKind.Hangs)]
    [InlineData(-59.99, VerdictKind.RidesAsIntended)]
    [InlineData(-60.01, VerdictKind.Hangs)]
    public void ByAttitude_SteeperThanSixtyDegreesEitherWay_Hangs(double pitchDeg, VerdictKind expected) =>
        Assert.Equal(expected, VerdictRules.ByAttitude(Heavy, Rad(pitchDeg), 0));

    [Theory]
    [InlineData(-1e-9, VerdictKind.Floats)]
    [InlineData(0, VerdictKind.Hangs)]
    public void ByAttitude_LighterThanItsWater_FloatsHoweverItLies(double wetMassKg, VerdictKind expected) =>
        Assert.Equal(expected, VerdictRules.ByAttitude(wetMassKg, Rad(80), Rad(170)));

    [Theory]
    [InlineData(1000, 0.78, VerdictKind.RidesAsIntended)]
    [InlineData(1000, 0.77, VerdictKind.Undecided)]
    [InlineData(400, 0.75, VerdictKind.Undecided)]
    [InlineData(399, 0.75, VerdictKind.RidesAsIntended)]
    [InlineData(100, 0.74, VerdictKind.Undecided)]
    public void Decide_ShareOfFliesThatAgree_MustBeSureInALargeSample(int flies, double share, VerdictKind expected) =>
        Assert.Equal(expected, VerdictRules.Decide(Towed(10, VerdictKind.RidesAsIntended), [], Sample(flies, share, 0, 0, rightWayUp: 0), Heavy));

    [Theory]
    [InlineData(VerdictKind.RidesAsIntended, 10, 0.9, 0, 0)]
    [InlineData(VerdictKind.Flips, 170, 0, 0, 0.9)]
    [InlineData(VerdictKind.Leans, 40, 0, 0.9, 0)]
    [InlineData(VerdictKind.RidesOnItsSide, 90, 0, 0.9, 0)]
    public void Decide_FliesThatDoWhatThisOneDoes_AreTheOnesCounted(VerdictKind verdict, double leanDeg, double asIntended, double leaning, double flipped)
    {
        Assert.Equal(verdict, VerdictRules.Decide(Towed(leanDeg, verdict), [], Sample(1000, asIntended, leaning, flipped, 0), Heavy));
        // As many that agree with one another, but not with it.
        ToleranceReport others = verdict == VerdictKind.Flips ? Sample(1000, 0.9, 0, 0, 0) : Sample(1000, 0, 0, 0.9, 0);
        Assert.Equal(VerdictKind.Undecided, VerdictRules.Decide(Towed(leanDeg, verdict), [], others, Heavy));
    }

    [Theory]
    [InlineData(10, 0.8, VerdictKind.Tilts)]
    [InlineData(60, 0.8, VerdictKind.Tilts)]
    [InlineData(60.1, 0.8, VerdictKind.Undecided)]
    [InlineData(10, 0.77, VerdictKind.Undecided)]
    public void Decide_TheRightWayUpButNotLevel_Tilts(double leanDeg, double rightWayUp, VerdictKind expected) =>
        Assert.Equal(expected, VerdictRules.Decide(Towed(leanDeg, VerdictKind.RidesAsIntended), [], Sample(1000, 0.5, 0.3, 0.2, rightWayUp), Heavy));

    [Theory]
    [InlineData(10, 170, 0.1, true)]
    [InlineData(10, 170, 0.0999, false)]
    // Another verdict, but not thirty degrees away; and thirty degrees away, but the same verdict.
    [InlineData(10, 40, 0.5, false)]
    [InlineData(10, 40.1, 0.5, true)]
    [InlineData(62, 118, 0.5, false)]
    [InlineData(118, 62, 0.5, false)]
    public void HasRival_AnotherWayToRide_CountsFromATenthOfTheReleases(double leanDeg, double otherDeg, double share, bool expected)
    {
        TowReport tow = Towed(leanDeg, VerdictKind.RidesAsIntended);
        ImmutableArray<StableAttitude> ways = [new(0, leanDeg, 1 - share), new(0, otherDeg, share)];
        Assert.Equal(expected, VerdictRules.HasRival(tow, ways));
        VerdictKind verdict = VerdictRules.Decide(tow, ways, Sample(1000, 1, 0, 0, 1), Heavy);
        Assert.Equal(expected ? VerdictKind.Undecided : VerdictKind.RidesAsIntended, verdict);
    }

    [Fact]
    public void HasRival_SeveralOtherWays_AreAddedUp() =>
        Assert.True(VerdictRules.HasRival(Towed(0, VerdictKind.RidesAsIntended), [new(0, 0, 0.88), new(0, 90, 0.06), new(0, 170, 0.06)]));

    [Fact]
    public void Decide_NeverAtRest_IsUndecided() => Assert.Equal(
        VerdictKind.Undecided,
        VerdictRules.Decide(Towed(0, VerdictKind.RidesAsIntended) with { Settles = false }, [], Sample(1000, 1, 0, 0, 1), Heavy));

    [Theory]
    [InlineData(VerdictKind.Hangs, Heavy)]
    [InlineData(VerdictKind.Floats, Heavy)]
    [InlineData(VerdictKind.Flips, -1e-9)]
    public void Decide_HangsOrFloats_WhateverTheSampleSays(VerdictKind verdict, double wetMassKg) =>
        Assert.Equal(verdict, VerdictRules.Decide(Towed(0, verdict), [new(0, 170, 1)], Sample(1000, 0, 0, 0, 0), wetMassKg));

    private static double Rad(double degrees) => degrees * Math.PI / 180;

    private static TowReport Towed(double leanDeg, VerdictKind verdict) => new()
    {
        SpeedMS = 0.4,
        Settles = true,
        PitchDeg = 0,
        LeanDeg = leanDeg,
        SymmetricPitchDeg = 0,
        KeelHeightMm = default,
        DragMN = 1,
        LiftMN = 0,
        LineAngleDeg = 0,
        Verdict = verdict,
    };

    // Of the right way up: six bins of ten degrees; the others lie in the last.
    private static ToleranceReport Sample(int flies, double asIntended, double leaning, double flipped, double rightWayUp)
    {
        int[] bins = new int[18];
        bins[5] = (int)Math.Round(rightWayUp * flies);
        bins[^1] = flies - bins[5];
        return new(TyingAccuracy.Practiced, flies, asIntended, 0, 1, leaning, flipped, [.. bins]);
    }
}
