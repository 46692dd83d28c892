using System.Text.RegularExpressions;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;
using Xunit;

namespace TyingClass.Lessons.Tests.Reasons;

/// <summary>What is told first to whoever was asked which way up a fly rides, put to the engine: the fly is solved anew as the sentence says it.</summary>
public sealed partial class WayReasonTests
{
    private const string Asked = "id: p-1\nkind: predict\ntitle: P\nconcepts: [keel side]\nprompt: What?\nhints: [A hint.]\nask: which way up\nrecipe: |\n  ";

    // As in a sentence: under 20° of lean it rides as it is meant, over 150° the other way up.
    private const double UprightDeg = 20, TurnedDeg = 150;

    // With a fifth of its keel height left a fly is hardly held.
    private const double Barely = 0.2;

    [Theory]
    [InlineData("barge-hand")]
    [InlineData("cellar-prawn")]
    [InlineData("collar-hook")]
    [InlineData("culvert-eel")]
    [InlineData("ferry-ruffe")]
    [InlineData("gravel-bullhead")]
    [InlineData("mooring-dace")]
    [InlineData("osier-crayfish")]
    [InlineData("tin-roach")]
    public void First_ThePartDecides_WithoutItTheFlyTurnsAndNoOtherTurnsItMore(string file)
    {
        (string first, Reason reason, FlyFigures fly) = Told(file);

        Match said = Without().Match(first);
        Assert.True(said.Success, first);
        Assert.StartsWith($"The {reason.Top!.What.Word} decide", first, StringComparison.Ordinal);
        TowReport without = Tow(Lacking(fly, reason.Top.What.Part));
        Assert.Equal(said.Groups["way"].Value == "up", IsPointUp(fly, without));
        Assert.NotEqual(IsPointUp(fly, Tow(fly)), IsPointUp(fly, without));
        double now = Keel(fly) ?? 0;
        foreach (string other in fly.Body.Parts.Where(p => p.IsTied && p.Name != reason.Top.What.Part).Select(p => p.Name))
        {
            FlyFigures lacking = Lacking(fly, other);
            if (Keel(lacking) is { } keel && (Tow(lacking).LeanDeg < UprightDeg) != (Tow(fly).LeanDeg < UprightDeg))
                Assert.True(Math.Abs(now - keel) <= Math.Abs(reason.Top.Si), $"The {other} turns it more.");
        }
    }

    [Theory]
    [InlineData("pier-lizard")]
    [InlineData("kiln-sprat")]
    [InlineData("tailrace-lamprey")]
    [InlineData("stiff-usher")]
    public void First_HardlyHeldWithoutIt_AFifthOfTheKeelIsLeftAndNoPartTurnsTheFly(string file)
    {
        (string first, Reason reason, FlyFigures fly) = Told(file);

        Assert.EndsWith(", it would hardly be held that way.", first, StringComparison.Ordinal);
        Assert.InRange(Keel(Lacking(fly, reason.Top!.What.Part))!.Value, 0, Barely * Keel(fly)!.Value);
        Assert.All(fly.Body.Parts.Where(p => p.IsTied), p => Assert.InRange(Tow(Lacking(fly, p.Name)).LeanDeg, 0, UprightDeg));
    }

    [Theory]
    [InlineData("chalk-shrimp")]
    [InlineData("lane-warden")]
    [InlineData("parlor-vole")]
    [InlineData("reed-darter")]
    [InlineData("topside-bream")]
    [InlineData("weir-drifter")]
    public void First_ThePartOnTheWrongSideDecides_OnTheOtherItRidesAsMeantAndNoOtherPartWouldDoBetter(string file)
    {
        (string first, Reason reason, FlyFigures fly) = Told(file);

        Match said = OtherSide().Match(first);
        Assert.True(said.Success, first);
        Assert.Equal(reason.Top!.What.Word, said.Groups["part"].Value);
        Assert.NotEqual(said.Groups["was"].Value, said.Groups["is"].Value);
        Assert.Equal(said.Groups["way"].Value == "up", fly.Body.Intent == Intent.PointUp);
        int index = fly.Recipe.Parts.IndexOf(fly.Recipe.Parts.Single(p => p.Kind.ToString().Replace(" ", "", StringComparison.Ordinal).Equals(
            reason.Top.What.Part.Replace(" ", "", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase)));
        Assert.Equal(said.Groups["was"].Value == "under", fly.Recipe.Parts[index].Side == Side.Under);
        FlyFigures mended = OnTheOtherSide(fly, index);
        Assert.InRange(Tow(mended).LeanDeg, 0, UprightDeg);
        Assert.Equal(Keel(mended)!.Value, reason.Top.FromSi!.Value, 9);
        for (int i = 0; i < fly.Recipe.Parts.Length; i++)
        {
            if (fly.Recipe.Parts[i].Side is Side.Top or Side.Under && OnTheOtherSide(fly, i) is var other && Tow(other).LeanDeg < UprightDeg)
                Assert.True(Keel(other) <= Keel(mended), $"Part {i} set on the other side would hold it better.");
        }
    }

    [Theory]
    [InlineData("left-hand-bursar")]
    [InlineData("lockgate-bitterling")]
    [InlineData("weathercock")]
    public void First_ThePartThatSitsCrookedDecides_SetStraightItRidesAsMeant(string file)
    {
        (string first, Reason reason, FlyFigures fly) = Told(file);

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
        Assert.EndsWith(" it would ride point up.", first, StringComparison.Ordinal);
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

        FlyFigures eyesSet = Of(Crooked("0°", offset)), wingSet = Of(Crooked(clocked, "0 mm"));
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
        Assert.False(IsPointUp(fly, Tow(Of(jig.Replace("jig 60°", "straight", StringComparison.Ordinal)))));
    }

    // Taken one by one the moments say the opposite of what leaving a part off does: then they are not told.
    [Theory]
    [InlineData("barge-hand")]
    [InlineData("culvert-eel")]
    [InlineData("gravel-bullhead")]
    [InlineData("kiln-sprat")]
    [InlineData("mooring-dace")]
    [InlineData("osier-crayfish")]
    [InlineData("varnish-sprat")]
    public void Why_TheMoments_AreToldOnlyWhereTheyDoNotSpeakAgainstTheFirstSentence(string file)
    {
        (_, Reason reason, FlyFigures fly) = Told(file);
        bool upright = Tow(fly).LeanDeg < 90;
        double counted = fly.Ledger(KeelHeight()).Where(e => e.Part == reason.Top!.What.Part).Sum(e => e.KeelMomentGmm);

        string why = Result(Repo.Recipe($"recipes/{file}.fly.yaml")!, "What?").Feedback!.Why;

        Assert.Equal(upright ? counted >= 0.005 : counted <= -0.005, why.Contains("All parts together", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("amber-stickleback")]
    [InlineData("breakwater-chub")]
    [InlineData("guarded-runner")]
    [InlineData("pebble-nymph")]
    [InlineData("sluice-nymph")]
    public void First_NoPartTurnsIt_WhatTheLedgerCountsHighestForItIsNamed(string file)
    {
        (string first, Reason reason, FlyFigures fly) = Told(file);

        bool asMeant = Tow(fly).LeanDeg < UprightDeg;
        LedgerEntry most = fly.Ledger(KeelHeight()).Where(e => e.KeelMomentGmm > 0 == asMeant).MaxBy(e => Math.Abs(e.KeelMomentGmm))!;
        Assert.StartsWith($"The {new Thing(ThingKind.Part, most.Part).Word} decide", first, StringComparison.Ordinal);
        Assert.All(fly.Body.Parts.Where(p => p.IsTied), p => Assert.Equal(asMeant, Tow(Lacking(fly, p.Name)).LeanDeg < UprightDeg));
        if (asMeant) Assert.Contains(" weight hangs below the hinge line, so it rides point ", first, StringComparison.Ordinal);
        else Assert.Contains($"the {reason.Shares[0].What.Word} has too little say against ", first, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("brass-gudgeon")]
    [InlineData("drowsy-dace")]
    [InlineData("late-porter")]
    public void First_TheHandsDecide_TheErrorThatCostsMostIsNamed(string file)
    {
        (string first, Reason reason, _) = Told(file);

        Assert.StartsWith($"The hands decide here: the {reason.Top!.What.Word} ", first, StringComparison.Ordinal);
        Assert.EndsWith(" costs the most flies.", first, StringComparison.Ordinal);
        Assert.Equal(ReasonForm.Hands, reason.Form);
        Assert.All(reason.Shares, s => Assert.True(s.Si >= reason.Top.Si && s.Si < 0));
    }

    [Fact]
    public void First_BareHook_NothingIsTiedOn() =>
        Assert.StartsWith("Nothing is tied on this hook yet", Told("plain-hook").First, StringComparison.Ordinal);

    private static (string First, Reason Reason, FlyFigures Fly) Told(string file) => ToldOf(Repo.Recipe($"recipes/{file}.fly.yaml")!);

    private static (string First, Reason Reason, FlyFigures Fly) ToldOf(string recipe, string prompt = "What?")
    {
        GradeResult result = Result(recipe, prompt);
        return (result.Feedback!.First!, result.Why[0], Of(recipe));
    }

    private static GradeResult Result(string recipe, string prompt) => Grader.Grade(
        Repo.Exercise(Asked.Replace("What?", prompt, StringComparison.Ordinal) + recipe.Replace("\n", "\n  ", StringComparison.Ordinal)), "point up", 0);

    private static FlyFigures Of(string recipe) => new(RecipeParser.Parse(recipe).Value!);

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

    private static FlyFigures Lacking(FlyFigures fly, string part) =>
        fly.Tied(fly.Body with { Parts = [.. fly.Body.Parts.Where(p => p.Name != part)] }, null);

    private static FlyFigures OnTheOtherSide(FlyFigures fly, int part)
    {
        PartSpec spec = fly.Recipe.Parts[part];
        return new FlyFigures(fly.Recipe with { Parts = fly.Recipe.Parts.SetItem(part, spec with { Side = spec.Side == Side.Top ? Side.Under : Side.Top }) });
    }

    private static TowReport Tow(FlyFigures fly) => fly.Tow(KeelHeight());

    private static double? Keel(FlyFigures fly) => KeelHeight().Of(fly);

    private static QuantityQuery KeelHeight()
    {
        Assert.True(QuantityQuery.TryParse("keel height", out QuantityQuery keel, out string error), error);
        return keel;
    }

    private static bool IsPointUp(FlyFigures fly, TowReport tow)
    {
        Assert.True(tow.Settles && tow.LeanDeg is < UprightDeg or > TurnedDeg, $"It leans by {tow.LeanDeg}°.");
        return fly.Body.Intent == Intent.PointUp == tow.LeanDeg < UprightDeg;
    }

    [GeneratedRegex("^The .* decides?: it rides point (?<now>up|down), and without (it|them), it would ride point (?<way>up|down)\\.$")]
    private static partial Regex Without();

    [GeneratedRegex("^The (?<part>.*) (?<was>on top of|under) the shank decides?: it (rides point (up|down)|can ride either way up), "
        + "and (?<is>on top of|under) the shank it would ride point (?<way>up|down)\\.$")]
    private static partial Regex OtherSide();
}
