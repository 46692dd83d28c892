using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Reasons;
using TyingClass.Telling.Reasons;
using Xunit;
using static TyingClass.Lessons.Tests.Reasons.Solved;

namespace TyingClass.Lessons.Tests.Reasons;

/// <summary>What soaking, a knot and a speed do to one fly, put to the engine by a recipe that says so.</summary>
public sealed class CircumstanceReasonTests
{
    private static readonly string Herring = File("kite-herring");

    [Theory]
    [InlineData("pitch")]
    [InlineData("wet weight")]
    [InlineData("keel height")]
    public void Soaking_TheAirOfEachPart_SharesAddUpToWhatSoakingDoes(string quantity)
    {
        FlyFigures fly = Fly(Herring.Replace("  - part: wing", "  - part: tail\n    material: deer hair\n    length: 20 mm\n    mass: 0.04 g\n    at: 14 mm\n"
            + "  - part: wing", StringComparison.Ordinal));

        Reason reason = CircumstanceReason.Soaking(Query(quantity), fly);

        Assert.Equal(Query($"{quantity} when fresh").Of(fly), reason.FromSi);
        Assert.Equal(Query(quantity).Of(fly), reason.ToSi);
        Assert.Equal(["air in the tail", "air in the wing"], reason.Shares.Select(s => s.What.Word).Order());
        Assert.Equal(reason.ToSi!.Value - reason.FromSi!.Value, reason.Shares.Sum(s => s.Si), 12);
        Assert.Equal(reason.Shares.OrderByDescending(s => Math.Abs(s.Si)), reason.Shares);
    }

    // In fresh water at 12 °C a cubic centimeter of air held up 0.9995 g (density of water: from memory).
    [Fact]
    public void Soaking_WetWeight_GrowsByTheWaterThatTheAirHadDisplaced()
    {
        FlyFigures fly = Fly(Herring);
        double airM3 = fly.Body.Parts.Single(p => p.Name == "wing").Air.Where(a => double.IsFinite(a.SoakTimeS)).Sum(a => a.FreshVolumeM3);

        Reason reason = CircumstanceReason.Soaking(Query("wet weight"), fly);

        Assert.Equal("air in the wing", Assert.Single(reason.Shares).What.Word);
        Assert.InRange((reason.ToSi!.Value - reason.FromSi!.Value) / (airM3 * 999.5), 0.9999, 1.0001);
        Assert.True(reason.IsNoticeable);
    }

    [Fact]
    public void Soaking_NothingHoldsAir_HasNoShares()
    {
        FlyFigures fly = Fly(Herring[..Herring.IndexOf("  - part: wing", StringComparison.Ordinal)] + "fishing:\n  knot: loop\n  speed: 0.8 m/s\n");

        Reason reason = CircumstanceReason.Soaking(Query("wet weight"), fly);

        Assert.Empty(reason.Shares);
        Assert.Equal(reason.FromSi, reason.ToSi);
    }

    [Fact]
    public void Knotted_FromALoopToACinchedKnot()
    {
        string stout = Herring.Replace("fishing:", "fishing:\n  leader: 0.50 mm nylon", StringComparison.Ordinal);
        QuantityQuery pitch = Query("pitch while sinking");

        Reason reason = CircumstanceReason.Knotted(pitch, Fly(stout));

        Assert.Equal(pitch.Of(Fly(stout))!.Value, reason.FromSi!.Value, 9);
        Assert.Equal(pitch.Of(Fly(stout.Replace("knot: loop", "knot: cinched", StringComparison.Ordinal)))!.Value, reason.ToSi!.Value, 9);
        ReasonShare knot = Assert.Single(reason.Shares);
        Assert.Equal((new Thing(ThingKind.Knot), new TurnedLine("knot", "loop", "cinched")), (knot.What, Assert.Single(knot.Turned)));
        Assert.Equal(reason.ToSi.Value - reason.FromSi.Value, knot.Si, 12);
        Assert.True(reason.IsNoticeable);
    }

    [Fact]
    public void Sped_FromTheSlowerToTheFaster()
    {
        QuantityQuery drag = Query("drag");

        Reason reason = CircumstanceReason.Sped(drag, 0.4, 0.8, Fly(Herring));

        Assert.Equal(drag.Of(Fly(Herring.Replace("speed: 0.8 m/s", "speed: 0.4 m/s", StringComparison.Ordinal)))!.Value, reason.FromSi!.Value, 9);
        Assert.Equal(drag.Of(Fly(Herring))!.Value, reason.ToSi!.Value, 9);
        ReasonShare speed = Assert.Single(reason.Shares);
        Assert.Equal((ThingKind.Speed, new TurnedLine("speed", "0.4 m/s", "0.8 m/s")), (speed.What.Kind, Assert.Single(speed.Turned)));
        Assert.True(speed.Si > 0, "Twice as fast the water pulls harder.");
    }
}
