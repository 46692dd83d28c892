using System.Text.RegularExpressions;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Model;
using TyingClass.Telling.Reasons;
using Xunit;
using static TyingClass.Lessons.Tests.Reasons.Solved;

namespace TyingClass.Lessons.Tests.Reasons;

/// <summary>What is told first to whoever was asked which way up a fly rides, put to the engine: the fly is solved anew as the sentence says it.</summary>
public sealed partial class WayReasonTests
{
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
        double counted = fly.Ledger(Query("keel height")).Where(e => e.Part == reason.Top!.What.Part).Sum(e => e.KeelMomentGmm);

        string why = Result(File(file)).Feedback!.Why;

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
        LedgerEntry most = fly.Ledger(Query("keel height")).Where(e => e.KeelMomentGmm > 0 == asMeant).MaxBy(e => Math.Abs(e.KeelMomentGmm))!;
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

    private static (string First, Reason Reason, FlyFigures Fly) Told(string file) => ToldOf(File(file));

    private static FlyFigures OnTheOtherSide(FlyFigures fly, int part)
    {
        PartSpec spec = fly.Recipe.Parts[part];
        return new FlyFigures(fly.Recipe with { Parts = fly.Recipe.Parts.SetItem(part, spec with { Side = spec.Side == Side.Top ? Side.Under : Side.Top }) });
    }

    [GeneratedRegex("^The .* decides?: it rides point (?<now>up|down), and without (it|them), it would ride point (?<way>up|down)\\.$")]
    private static partial Regex Without();

    [GeneratedRegex("^The (?<part>.*) (?<was>on top of|under) the shank decides?: it (rides point (up|down)|can ride either way up), "
        + "and (?<is>on top of|under) the shank it would ride point (?<way>up|down)\\.$")]
    private static partial Regex OtherSide();
}
