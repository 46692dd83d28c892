using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Quantities;
using TyingClass.Telling.Reasons;
using Xunit;
using static TyingClass.Lessons.Tests.Reasons.Solved;

namespace TyingClass.Lessons.Tests.Reasons;

/// <summary>What is told first of a fly on which a part sits aside or turned, put to the engine: the fly is solved anew with that part set straight.</summary>
public sealed class CrookedPartTests
{
    [Theory]
    [InlineData("left-hand-bursar")]
    [InlineData("lockgate-bitterling")]
    [InlineData("weathercock")]
    public void First_ThePartThatSitsCrookedDecides_SetStraightItRidesAsMeant(string file)
    {
        (string first, Reason reason, FlyFigures fly) = ToldOf(File(file));

        Assert.StartsWith($"The {reason.Top!.What.Word} turned about the shank to one side decide", first, StringComparison.Ordinal);
        Assert.EndsWith($"set straight it would ride {(fly.Body.Intent == Intent.PointUp ? "point up" : "point down")}.", first, StringComparison.Ordinal);
        Assert.Equal("clocked", Assert.Single(reason.Top.Turned).Key);
        int crooked = fly.Recipe.Parts.ToList().FindIndex(p => p.ClockedRad != 0);
        FlyFigures straight = new(fly.Recipe with { Parts = fly.Recipe.Parts.SetItem(crooked, fly.Recipe.Parts[crooked] with { ClockedRad = 0 }) });
        Assert.InRange(Tow(straight).LeanDeg, 0, UprightDeg);
    }

    // A fly said to ride as it is meant is not told that a part set straight would let it do just that, though it lists a little and a part sits crooked.
    [Theory]
    [InlineData("8°", "0.5 mm")]
    [InlineData("5°", "0.6 mm")]
    [InlineData("12°", "0.4 mm")]
    public void First_ItListsALittle_NoPartIsSaidToTurnItWhereItIs(string clocked, string offset)
    {
        (string first, _, FlyFigures fly) = ToldOf(Crooked(clocked, offset));

        Assert.InRange(Tow(fly).LeanDeg, 15, UprightDeg);
        Assert.Contains("it rides point up", first, StringComparison.Ordinal);
        Assert.DoesNotContain(" set ", first, StringComparison.Ordinal);
    }

    // Aside and turned as well: what is named is what would mend it, the turn here and the offset there.
    [Theory]
    [InlineData("40°", "0.1 mm", "turned about the shank to one side")]
    [InlineData("3°", "3 mm", "set to one side")]
    public void First_OnePartIsAsideAndTurned_WhatWouldMendItIsNamed(string clocked, string offset, string named)
    {
        string recipe = Crooked(clocked, "0 mm").Replace($"clocked: {clocked}", $"clocked: {clocked}\n    side offset: {offset}", StringComparison.Ordinal);

        (string first, Reason reason, FlyFigures fly) = ToldOf(recipe);

        Assert.InRange(Tow(fly).LeanDeg, UprightDeg, TurnedDeg);
        Assert.StartsWith($"The dumbbell eyes {named} decide", first, StringComparison.Ordinal);
        Assert.Single(reason.Shares, s => s.What.Word == "dumbbell eyes");
    }

    // A fly that leans over by up to 60° may have its right side up: what sits crooked is the cause, and not whatever helps by being left off.
    [Theory]
    [InlineData("10°", "1 mm", "wing set to one side")]
    [InlineData("20°", "-2 mm", "wing set to one side")]
    [InlineData("35°", "0.2 mm", "dumbbell eyes turned about the shank to one side")]
    public void First_ItLeansAndOnePartSetStraightWouldDo_ThatPartIsNamed(string clocked, string offset, string named)
    {
        (string first, Reason reason, FlyFigures fly) = ToldOf(Crooked(clocked, offset));

        Assert.InRange(Tow(fly).LeanDeg, UprightDeg, 60);
        Assert.StartsWith($"The {named} decide", first, StringComparison.Ordinal);
        // Its right side is up already, so that is not what it gains.
        bool rightSideUp = fly.Report.Verdict.Kind is VerdictKind.RidesAsIntended or VerdictKind.Tilts;
        string gained = FormattableString.Invariant($"would lean by {Math.Round(reason.Top!.FromSi!.Value * 180 / Math.PI)}° only");
        Assert.EndsWith($" it {(rightSideUp ? gained : "would ride point up")}.", first, StringComparison.Ordinal);
        Assert.Equal(Tow(fly).LeanDeg * Math.PI / 180, reason.ToSi!.Value, 6);
        Assert.InRange(reason.Top!.FromSi!.Value * 180 / Math.PI, 0, UprightDeg);
    }

    // Either part set straight would do; the one that leaves the taller keel is the one to set.
    [Theory]
    [InlineData("25°", "0.5 mm")]
    [InlineData("12°", "0.7 mm")]
    public void First_EitherOfTwoPartsSetStraightWouldDo_TheOneThatLeavesTheTallerKeelIsNamed(string clocked, string offset)
    {
        (string first, Reason reason, FlyFigures fly) = ToldOf(Crooked(clocked, offset));

        FlyFigures eyesSet = Fly(Crooked("0°", offset)), wingSet = Fly(Crooked(clocked, "0 mm"));
        Assert.InRange(Tow(fly).LeanDeg, UprightDeg, TurnedDeg);
        Assert.InRange(Tow(eyesSet).LeanDeg, 0, UprightDeg);
        Assert.InRange(Tow(wingSet).LeanDeg, 0, UprightDeg);
        Assert.Equal(Keel(eyesSet) > Keel(wingSet) ? "dumbbell eyes" : "wing", reason.Top!.What.Word);
        Assert.StartsWith($"The {reason.Top.What.Word} ", first, StringComparison.Ordinal);
        Assert.Contains(" set ", first, StringComparison.Ordinal);
    }

    // Without the eyes it would turn over, and with a straight ring too: the author's word decides which of the two is told.
    [Theory]
    [InlineData("What does the jig eye do?", "The jig eye sets the ring above the metal, so it rides point up; straight, it would ride point down.")]
    [InlineData("What?", "The dumbbell eyes decide: it rides point up, and without them, it would ride point down.")]
    public void First_TwoThingsWouldEachTurnIt_TheOneTheExerciseSpeaksOfIsTold(string prompt, string said)
    {
        string jig = Crooked("0°", "0 mm").Replace("eye: straight", "eye: jig 60°", StringComparison.Ordinal)
            .Replace("size: 3.2 mm", "size: 4 mm", StringComparison.Ordinal).Replace("side: under", "side: top", StringComparison.Ordinal);

        (string first, _, FlyFigures fly) = ToldOf(jig, prompt);

        Assert.Equal(said, first);
        Assert.True(IsPointUp(fly, Tow(fly)));
        Assert.False(IsPointUp(fly, Tow(Lacking(fly, "dumbbell eyes"))));
        Assert.False(IsPointUp(fly, Tow(Fly(jig.Replace("jig 60°", "straight", StringComparison.Ordinal)))));
    }

    // Eyes on top and hair under the shank, as is sound, each a little crooked.
    private static string Crooked(string clocked, string offset) => $"""
        recipe: Test
        intent: point up
        hook:
          size: 4
          eye: straight
        parts:
          - part: dumbbell eyes
            material: brass
            size: 3.2 mm
            at: 3 mm
            side: top
            clocked: {clocked}
          - part: wing
            material: bucktail
            length: 35 mm
            mass: 0.06 g
            at: 6 mm
            side: under
            side offset: {offset}
        fishing:
          knot: loop
          speed: 0.4 m/s

        """;
}
