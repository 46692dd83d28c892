using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Flies;
using Xunit;

namespace TyingClass.Balance.Tests.Sinking;

/// <summary>
/// Water in a soaked dressing weighs nothing under water, yet it has to be set going: the fly sinks as fast in the end, and starts more slowly.
/// </summary>
public sealed class HeldWaterTests
{
    [Fact]
    public void Sink_DressingFullOfWater_IsAsFastInTheEndAndLaterThere()
    {
        SinkReport dry = Sink(WetState.Soaked, 0, 0), full = Sink(WetState.Soaked, 3e-3, 0);

        Assert.Equal(dry.RateMS, full.RateMS, 1e-6);
        Assert.True(full.DepthAfterM(0.5) < 0.95 * dry.DepthAfterM(0.5), $"{full.DepthAfterM(0.5)} m and {dry.DepthAfterM(0.5)} m");
        Assert.True(full.DepthAfterM(0.5) > 0);
    }

    // Nor does it matter in which part it is.
    [Fact]
    public void Sink_WaterInTwoParts_IsAsInOne()
    {
        SinkReport one = Sink(WetState.Soaked, 3e-3, 0), two = Sink(WetState.Soaked, 2e-3, 1e-3);

        Assert.Equal(one.DepthAfterM(0.5), two.DepthAfterM(0.5), 1e-9);
    }

    [Fact]
    public void Sink_FreshFly_HasNotDrunkYet() =>
        Assert.Equal(Sink(WetState.Fresh, 0, 0).DepthAfterM(0.5), Sink(WetState.Fresh, 3e-3, 0).DepthAfterM(0.5), 1e-12);

    private static SinkReport Sink(WetState state, double inOneKg, double inTheOtherKg)
    {
        BodyPart hook = new("hook")
        {
            Masses = [new(3e-4, new Vector3D(2e-3, 0, -1e-3))],
            Solids = [new(4e-8, new Vector3D(2e-3, 0, -1e-3))],
            Drag = [DragElement.Cylinder(new Vector3D(1e-2, 0, 0), Vector3D.UnitX, 0.02, 1e-3)],
            HeldWaterKg = inOneKg,
        };
        BodyPart wing = new("wing") { Masses = [new(1e-6, new Vector3D(2e-3, 0, -1e-3))], HeldWaterKg = inTheOtherKg };
        FlyBody body = new([hook, wing], new Vector3D(-1e-3, 0, 0), 0.02, Intent.PointDown);
        return PartialReports.Sink(body, Fished.Plainly, state)!;
    }
}
