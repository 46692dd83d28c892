using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Reasons;
using TyingClass.Lessons.Tests.Grading;
using TyingClass.Telling.Reasons;
using Xunit;
using static TyingClass.Lessons.Tests.Reasons.Solved;

namespace TyingClass.Lessons.Tests.Reasons;

public sealed class OneFlyReasonTests
{
    private const string Cinched = "leader: 0.60 mm nylon\n  knot: cinched";
    private static readonly string Minnow = File("slate-minnow");
    private static readonly string MinnowTurned = File("slate-minnow-tail-heavy");

    // Masses add, and so do the volumes that they displace.
    [Theory]
    [InlineData("mass")]
    [InlineData("wet weight")]
    [InlineData("displaced volume")]
    [InlineData("mass with held water")]
    public void Of_WhatIsASum_SharesAddUpToIt(string quantity)
    {
        Reason reason = Of(quantity, Flies.Darter);

        Assert.Equal(ReasonForm.MadeOf, reason.Form);
        Assert.Equal(reason.ToSi!.Value, reason.Shares.Sum(s => s.Si), 12);
        Assert.All(reason.Shares, s => Assert.Equal(s.ToSi!.Value - s.Si, s.FromSi!.Value, 12));
    }

    [Fact]
    public void Of_Mass_TellsTheHeaviestFirst()
    {
        Reason reason = Of("mass", Flies.Darter);

        Assert.Equal(["dumbbell eyes", "hook", "wing", "body"], reason.Shares.Select(s => s.What.Word));
        Assert.Equal(reason.Shares.OrderByDescending(s => s.Si), reason.Shares);
    }

    // What was too heavy before it drank is so by what was tied on: the hook is given, however heavy.
    [Fact]
    public void Of_TooHeavyBeforeItDrinks_TellsTheHookLast()
    {
        FlyFigures fly = Fly(Flies.Darter);

        Reason reason = OneFlyReason.Of(Query("mass with held water"), fly, 0.9 * Query("mass").Of(fly)!.Value);

        Assert.Equal(["dumbbell eyes", "wing", "body"], reason.Shares.Take(3).Select(s => s.What.Word));
        Assert.Equal(ThingKind.Hook, reason.Shares.First(s => s.What.Kind is not ThingKind.Part).What.Kind);
        Assert.True(reason.Shares.Single(s => s.What.Kind == ThingKind.Hook).Si > reason.Shares[1].Si);
    }

    [Fact]
    public void Of_HeldWater_TellsOnlyWhatDrinks()
    {
        Reason reason = Of("held water", Flies.Darter);

        Assert.Equal(["water in the wing", "water in the body"], reason.Shares.Select(s => s.What.Word));
        Assert.Equal(reason.ToSi!.Value, reason.Shares.Sum(s => s.Si), 12);
    }

    // Out of the water the hair's own water is lighter than the brass, yet it is what the question is about.
    [Fact]
    public void Of_MassWithHeldWater_TellsTheWaterFirstWhereItIsWhatMakesItTooHeavy()
    {
        FlyFigures fly = Fly(Flies.Darter);
        QuantityQuery query = Query("mass with held water");
        double dryKg = Query("mass").Of(fly)!.Value;

        Reason asked = OneFlyReason.Of(query, fly), drunk = OneFlyReason.Of(query, fly, dryKg * 1.01), dry = OneFlyReason.Of(query, fly, dryKg * 0.99);

        Assert.Equal(ThingKind.HeldWater, asked.Top!.What.Kind);
        Assert.Equal(ThingKind.HeldWater, drunk.Top!.What.Kind);
        Assert.Equal(new Thing(ThingKind.Part, "dumbbell eyes"), dry.Top!.What);
        Assert.True(dry.Top.Si > drunk.Top.Si);
    }

    [Fact]
    public void Of_MassOfOnePart_IsThatPartAlone()
    {
        Reason reason = Of("mass of wing", Flies.Darter);

        Assert.Equal(["wing"], reason.Shares.Select(s => s.What.Word));
        Assert.Equal("wing", reason.Part);
        Assert.Equal(0.06e-3, reason.Top!.Si, 12);
    }

    [Fact]
    public void Of_KeelHeight_EachShareIsWhatTheFlyWouldLackWithoutThePart()
    {
        FlyFigures fly = Fly(Flies.DarterOnTop);
        QuantityQuery keel = Query("keel height");

        Reason reason = OneFlyReason.Of(keel, fly);

        Assert.Equal(ReasonForm.Without, reason.Form);
        Assert.Equal(["body", "dumbbell eyes", "wing"], reason.Shares.Select(s => s.What.Word).Order());
        Assert.Equal("dumbbell eyes", reason.Top!.What.Word);
        foreach (ReasonShare share in reason.Shares)
        {
            double without = keel.Of(fly.Tied(fly.Body with { Parts = [.. fly.Body.Parts.Where(p => p.Name != share.What.Part)] }, null))!.Value;
            Assert.Equal(without, share.FromSi!.Value, 12);
            Assert.Equal(reason.ToSi!.Value - without, share.Si, 12);
        }

        Assert.Equal(reason.Shares.Select(s => s.SaySi).OrderDescending(), reason.Shares.Select(s => s.SaySi));
    }

    [Fact]
    public void Of_CinchedKnot_ItsShareIsAgainstALoop()
    {
        FlyFigures cinched = Fly(Minnow.Replace("leader: 0.20 mm\n  knot: loop", Cinched, StringComparison.Ordinal));
        QuantityQuery pitch = Query("pitch while sinking");

        ReasonShare knot = OneFlyReason.Of(pitch, cinched).Shares.Single(s => s.What.Kind == ThingKind.Knot);

        double loop = pitch.Of(Fly(Minnow.Replace("leader: 0.20 mm", "leader: 0.60 mm nylon", StringComparison.Ordinal)))!.Value;
        Assert.Equal(loop, knot.FromSi!.Value, 6);
        Assert.Equal(pitch.Of(cinched)!.Value - loop, knot.Si, 6);
    }

    [Theory]
    [InlineData("pitch while sinking", false)]
    [InlineData("mass", true)]
    public void Of_NoKnotToBlame_NamesNone(string quantity, bool cinched)
    {
        Reason reason = Of(quantity, cinched ? Minnow.Replace("leader: 0.20 mm\n  knot: loop", Cinched, StringComparison.Ordinal) : Minnow);

        Assert.DoesNotContain(reason.Shares, s => s.What.Kind == ThingKind.Knot);
    }

    [Theory]
    [InlineData("straight", false)]
    [InlineData("up 25°", true)]
    [InlineData("down 25°", true)]
    [InlineData("jig 60°", true)]
    public void Of_BentEye_ItsShareIsAgainstAStraightOne(string eye, bool named)
    {
        QuantityQuery keel = Query("keel height");
        FlyFigures fly = Fly(Flies.Darter.Replace("eye: straight", $"eye: {eye}", StringComparison.Ordinal));

        ReasonShare[] eyes = [.. OneFlyReason.Of(keel, fly).Shares.Where(s => s.What.Kind == ThingKind.Eye)];

        Assert.Equal(named ? [keel.Of(Fly(Flies.Darter))!.Value] : [], eyes.Select(s => Math.Round(s.FromSi!.Value, 12)).ToArray(), Same);
    }

    // A crooked part is why a fly leans, whatever heavier thing is on it.
    [Fact]
    public void Of_Lean_TellsTheCrookedPartFirst()
    {
        QuantityQuery lean = Query("lean");
        FlyFigures crooked = Fly(Flies.DarterOnTop.Replace("mass: 0.06 g", "mass: 0.06 g\n    side offset: 2 mm", StringComparison.Ordinal));

        Reason reason = OneFlyReason.Of(lean, crooked);

        Assert.Equal("wing", reason.Top!.What.Word);
        Assert.Equal("side offset", Assert.Single(reason.Top.Turned).Key);
        Assert.Equal(lean.Of(Fly(Flies.DarterOnTop))!.Value, reason.Top.FromSi!.Value, 9);
        Assert.Single(reason.Shares, s => s.What.Word == "wing");
    }

    // Of two crooked parts the one that leans it more.
    [Fact]
    public void Of_LeanWithTwoCrookedParts_TellsTheOneThatLeansItMoreFirst()
    {
        string wing = Flies.DarterOnTop.Replace("mass: 0.06 g", "mass: 0.06 g\n    side offset: 0.2 mm", StringComparison.Ordinal);

        Reason reason = Of("lean", wing.Replace("size: 4 mm", "size: 4 mm\n    side offset: 1 mm", StringComparison.Ordinal));

        Assert.Equal(["dumbbell eyes", "wing"], reason.Shares.Take(2).Select(s => s.What.Word));
        Assert.True(Math.Abs(reason.Shares[0].Si) > Math.Abs(reason.Shares[1].Si));
    }

    [Fact]
    public void Of_NoMetalTiedOn_TheHooksOwnWireIsTheBallast()
    {
        string bare = Flies.Darter.Replace("part: dumbbell eyes\n    material: brass\n    size: 4 mm\n    at: 2 mm\n    side: under\n  - ", "",
            StringComparison.Ordinal);

        Reason reason = Of("level-line keel", bare), weighted = Of("level-line keel", Flies.Darter);

        Assert.Contains(reason.Shares, s => s.What.Part == "bend");
        Assert.DoesNotContain(reason.Shares, s => s.What.Kind == ThingKind.Eye);
        Assert.DoesNotContain(weighted.Shares, s => s.What.Part == "bend" || s.What.Kind == ThingKind.Hook);
    }

    // It falls by the tail: the bead at the tail is named before the hair, which has as much say by the drag it makes.
    [Fact]
    public void Of_FallingTailFirst_TheMetalAtTheTailIsNamed()
    {
        Reason reason = Of("pitch while sinking", MinnowTurned);

        Assert.True(WayOpening.IsMetal(reason.Top!.What.Part), reason.Top.What.Word);
        Assert.True(reason.ToSi > 0);
        Assert.True(reason.Top.FromSi < reason.ToSi);
    }

    [Fact]
    public void Of_RidesAsIntended_TellsOnlyErrorsThatCostFliesTheDearestFirst()
    {
        Reason reason = Of("rides as intended", File("russet-loach"));

        Assert.Equal(ReasonForm.Hands, reason.Form);
        Assert.NotEmpty(reason.Shares);
        Assert.All(reason.Shares, s => Assert.True(s.FromSi > s.ToSi && s.Si < 0 && s.What.Kind == ThingKind.Hands));
        Assert.Equal(reason.Shares.OrderBy(s => s.Si), reason.Shares);
        Assert.NotNull(reason.Top!.Error);
    }

    private static bool Same(double a, double b) => Math.Abs(a - b) < 1e-9;

    private static Reason Of(string quantity, string recipe) => OneFlyReason.Of(Query(quantity), Fly(recipe));
}
