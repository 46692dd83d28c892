using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Reasons;
using TyingClass.Lessons.Tests.Grading;
using TyingClass.Recipes.Model;
using TyingClass.Telling.Reasons;
using Xunit;
using static TyingClass.Lessons.Tests.Reasons.Solved;

namespace TyingClass.Lessons.Tests.Reasons;

/// <summary>Which cause is told depends on what was asked: of two flies, of one fly fresh and soaked, of a retrieve.</summary>
public sealed class AskedReasonTests
{
    private const string Head = "id: p-1\nkind: predict\ntitle: P\nconcepts: [keel side]\nprompt: What?\nhints: [A hint.]\n";

    // Two flies of different make: one's metal sits to one side, the other's goes around the shank and holds nothing.
    [Theory]
    [InlineData("osier-crayfish", "slate-minnow", "sit on top of the shank, while the other's bead goes evenly around it")]
    [InlineData("sluice-nymph", "bottle-midge", "sits under the shank, while the other's ")]
    public void TallerKeel_FlyOfAnotherMake_NamesTheMetalThatHoldsItAndItsSide(string taller, string other, string said)
    {
        FlyFigures holds = Fly(File(taller)), less = Fly(File(other));
        Assert.True(Query("keel height").Of(holds) > Query("keel height").Of(less));
        GradeResult result = Grader.Grade(Repo.Exercise($"{Head}file: recipes/{taller}.fly.yaml\nask: which has more keel height\n"
            + $"other recipe: |\n  {File(other).Replace("\n", "\n  ", StringComparison.Ordinal)}"), holds.Recipe.Name, 0);

        Assert.True(result.Passed, string.Join(' ', result.Problems));
        Assert.StartsWith($"{holds.Recipe.Name} has the taller keel: its {result.Why[0].Top!.What.Word} ", result.Feedback!.First, StringComparison.Ordinal);
        Assert.Contains(said, result.Feedback.First, StringComparison.Ordinal);
        string held = holds.Ledger(Query("keel height")).Where(e => WayOpening.IsMetal(e.Part)).MaxBy(e => e.KeelMomentGmm)!.Part;
        Assert.Equal(held, result.Why[0].Top!.What.Part);
    }

    // As much of another dressing weighs the same dry; what sets the two apart is the water in the fur on the scale, or the air in hollow hair.
    [Theory]
    [InlineData("fur strip", "mass with held water", ThingKind.HeldWater)]
    [InlineData("deer hair", "wet weight when fresh", ThingKind.Air)]
    [InlineData("fur strip", "mass center, x", ThingKind.Part)]
    public void TwoFlies_OneOfAnotherDressing_WhatSetsThemApartIsNamed(string material, string quantity, ThingKind kind)
    {
        string fur = Flies.Darter.Replace("bucktail", material, StringComparison.Ordinal).Replace("Reed Darter", "Other Darter", StringComparison.Ordinal);
        FlyFigures a = Fly(Flies.Darter), b = Fly(fur);
        GradeResult result = Grader.Grade(Repo.Exercise($"{Head}file: recipes/reed-darter.fly.yaml\nother recipe: |\n  "
            + fur.Replace("\n", "\n  ", StringComparison.Ordinal) + $"\nask: which has more {quantity}\n"),
            Query(quantity).Of(a) > Query(quantity).Of(b) ? "Reed Darter" : "Other Darter", 0);

        Assert.True(result.Passed, string.Join(' ', result.Problems));
        Assert.Equal(new Thing(kind, "wing"), result.Why[0].Top!.What);
    }

    [Fact]
    public void OwnChoices_SameFigureFreshAndSoaked_TheAirIsTheReason()
    {
        GradeResult result = Grader.Grade(Repo.Exercise(Head + """
            file: recipes/kite-herring.fly.yaml
            choices:
              - say: more than at first
                when: wet weight - wet weight when fresh > 0.005 g
              - say: no more than at first
                when: wet weight - wet weight when fresh <= 0.005 g
            """), "more than at first", 0);

        Assert.True(result.Passed);
        Assert.Equal(new Thing(ThingKind.Air, "wing"), result.Why[0].Top!.What);
    }

    // Whoever said less than it weighs dry was not misled by the water; whoever said its dry weight was.
    [Theory]
    [InlineData("under 0.1 g", ThingKind.Part)]
    [InlineData("about as dry", ThingKind.HeldWater)]
    [InlineData("more", ThingKind.HeldWater)]
    public void OwnChoices_WeightWithItsWater_TheWaterIsToldToWhoeverForgotIt(string choice, ThingKind kind)
    {
        FlyFigures fly = Fly(Flies.Darter);
        double dryG = 1e3 * Query("mass").Of(fly)!.Value, wetG = 1e3 * Query("mass with held water").Of(fly)!.Value;
        string least = FormattableString.Invariant($"{(dryG + wetG) / 2:0.000} g");
        Assert.True(wetG - dryG > 0.05, $"{dryG} g dry and {wetG} g wet: the water has to count here.");

        GradeResult result = Grader.Grade(Repo.Exercise($"""
            {Head}file: recipes/reed-darter.fly.yaml
            choices:
              - say: under 0.1 g
                when: mass with held water < 0.1 g
              - say: about as dry
                when: mass with held water >= 0.1 g and mass with held water <= {least}
              - say: more
                when: mass with held water > {least}
            """), choice, 0);

        Assert.Equal(choice == "more", result.Passed);
        Assert.Equal(kind, result.Why[0].Top!.What.Kind);
    }

    [Theory]
    [InlineData("What does the knot do?", ReasonForm.Change)]
    [InlineData("What?", ReasonForm.Without)]
    public void OwnChoices_CinchedKnotDecides_IsToldAsAChangeWhereTheExerciseSpeaksOfKnots(string prompt, ReasonForm form)
    {
        string stout = File("kite-herring").Replace("knot: loop", "leader: 0.60 mm nylon\n  knot: cinched", StringComparison.Ordinal);
        double cinched = Query("pitch while sinking").Of(Fly(stout))!.Value * 180 / Math.PI,
            loop = Query("pitch while sinking").Of(Fly(stout.Replace("cinched", "loop", StringComparison.Ordinal)))!.Value * 180 / Math.PI;
        string middle = FormattableString.Invariant($"{(cinched + loop) / 2:0.0}°"), key = cinched > loop ? "higher" : "lower";
        GradeResult result = Grader.Grade(Repo.Exercise(Head.Replace("What?", prompt, StringComparison.Ordinal) + "recipe: |\n  "
            + stout.Replace("\n", "\n  ", StringComparison.Ordinal) + $"""

            choices:
              - say: higher
                when: pitch while sinking > {middle}
              - say: lower
                when: pitch while sinking <= {middle}
            """), key, 0);

        Assert.True(Math.Abs(cinched - loop) > 10, $"{cinched}° and {loop}°: the knot has to decide here.");
        Assert.True(result.Passed, string.Join(' ', result.Problems));
        Assert.Equal((form, ThingKind.Knot), (result.Why[0].Form, result.Why[0].Top!.What.Kind));
    }

    // What the line hand gives is seen by giving half as much: a long count goes deep, many rounds are held up by their strips or deepened by their pauses.
    [Theory]
    [InlineData("quarry-bream", 4, 20, Thing.Count)]
    [InlineData("quarry-bream", 12, 2, Thing.Pauses)]
    [InlineData("reed-runner", 12, 2, Thing.Strips)]
    public void Deepest_TheHandSaysMost_ItsShareIsAgainstHalfOfIt(string file, int rounds, int countS, string what)
    {
        FlyFigures fly = Fly($"{File(file)}  retrieve: strip and pause\n  repeat: {rounds}\n  count down: {countS} s\n");
        QuantityQuery deepest = Query("deepest");

        Reason reason = OneFlyReason.Of(deepest, fly);

        ReasonShare hand = reason.Shares[0];
        Assert.Equal(new Thing(ThingKind.Retrieve, what), hand.What);
        Assert.Equal(deepest.Of(fly), hand.ToSi);
        double[] halves = [.. new[] { Thing.Strips, Thing.Pauses, Thing.Count }.Select(w => deepest.Of(Halved(fly, w))!.Value)];
        Assert.Equal(halves.OrderByDescending(h => Math.Abs(deepest.Of(fly)!.Value - h)).First(), hand.FromSi!.Value, 9);
        Assert.Equal(hand.ToSi!.Value - hand.FromSi.Value, hand.Si, 12);
        Assert.True(reason.Shares.Skip(1).All(s => s.SaySi <= hand.SaySi));
    }

    private static FlyFigures Halved(FlyFigures fly, string what)
    {
        RetrieveSpec spec = fly.Recipe.Fishing.Retrieve;
        Assert.False(spec.Round.IsEmpty);
        return new FlyFigures(fly.Recipe with
        {
            Fishing = fly.Recipe.Fishing with
            {
                Retrieve = what switch
                {
                    Thing.Count => spec with { CountDownS = spec.CountDownS!.Value * 0.5 },
                    Thing.Pauses => spec with { Name = null, Round = [.. spec.Round.Select(s => s.IsStrip ? s : s with { DurationS = s.DurationS * 0.5 })] },
                    _ => spec with { Name = null, Round = [.. spec.Round.Select(s => s.IsStrip ? s with { StripM = s.StripM * 0.5 } : s)] },
                },
            },
        });
    }
}
