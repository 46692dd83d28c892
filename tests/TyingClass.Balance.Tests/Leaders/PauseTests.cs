using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Sinking;
using Xunit;

namespace TyingClass.Balance.Tests.Leaders;

public sealed class PauseTests
{
    private static readonly Water Fresh = new(998.2041, 1001.57e-6);

    // With k v² for the fly and a pull f on every meter, and no mass to speak of: ds/dt = √((W - f s)/k), so s = (W/f)(1 - (1 - f t/(2√(kW)))²).
    [Theory]
    [InlineData(0.2e-3)]
    [InlineData(1e-3)]
    public void Run_SameFrictionEverywhere_IsTheClosedForm(double pullNM)
    {
        const double drive = 3e-3, drag = 0.04;
        Pause pause = new(1e-9, drive, v => drag * v * v) { LeaderN = (_, s) => pullNM * s };
        (var gone, _) = pause.Run(Math.Sqrt(drive / drag), 4, 40, double.PositiveInfinity);
        for (int i = 0; i <= 40; i++)
        {
            double left = 1 - pullNM * 4 * i / 40 / (2 * Math.Sqrt(drag * drive));
            Assert.Equal(drive / pullNM * (1 - left * left), gone[i], 1e-4);
        }
    }

    // From rest with no leader: s = (m/k) ln cosh(t √(kW)/m) (any textbook of mechanics).
    [Fact]
    public void Run_NoLeader_IsTheTextbooksFallFromRest()
    {
        const double mass = 1e-3, drive = 3e-3, drag = 0.04;
        (var gone, double? meter) = new Pause(mass, drive, v => drag * v * v).Run(Math.Sqrt(drive / drag), 10, 40, 1);
        for (int i = 0; i <= 40; i++)
        {
            Assert.Equal(mass / drag * Math.Log(Math.Cosh(0.25 * i * Math.Sqrt(drag * drive) / mass)), gone[i], 2e-4);
        }

        Assert.Equal(mass / Math.Sqrt(drag * drive) * Math.Acosh(Math.Exp(drag / mass)), meter!.Value, 0.02);
    }

    // The leader's weight in water goes with the fly: heavy enough, it sinks faster with every meter.
    [Theory]
    [InlineData(1000, -1)]
    [InlineData(4000, 1)]
    public void DepthFromRest_LeadersWeight_DecidesWhetherItSlowsOrSpeeds(double leaderKgM3, int sign)
    {
        var points = Ball(new Leader(0.4e-3, 2e9, leaderKgM3)).Points;
        double early = points[8].DepthM - points[4].DepthM, late = points[40].DepthM - points[36].DepthM;
        Assert.Equal(sign, Math.Sign(late - early));
    }

    [Fact]
    public void DepthFromRest_NoDiameter_IsTheFlyAlone()
    {
        (var points, double? meter) = Ball(new Leader(0, 2e9, 1140));
        double rate = points[40].DepthM - points[36].DepthM;
        Assert.Equal(points[24].DepthM - points[20].DepthM, rate, 1e-9);
        Assert.InRange(meter!.Value, 0.8 * rate, rate);
    }

    [Fact]
    public void DepthFromRest_ThickerLeaderOfTheWatersDensity_IsSlower()
    {
        double[] depths = [.. new[] { 0, 0.1e-3, 0.2e-3, 0.5e-3, 1.5e-3 }.Select(d => Ball(new Leader(d, 2e9, Fresh.DensityKgM3)).Points[20].DepthM)];
        Assert.Equal(depths.OrderDescending(), depths);
        Assert.True(depths[^1] < 0.9 * depths[0]);
    }

    [Fact]
    public void DepthFromRest_Fluorocarbon_SinksFasterThanNylon() =>
        Assert.True(Ball(new Leader(0.3e-3, 2e9, 1765)).Points[20].DepthM > Ball(new Leader(0.3e-3, 2e9, 1140)).Points[20].DepthM);

    // What rises draws no leader down.
    [Fact]
    public void DepthFromRest_FloatingBall_RisesAsIfThereWereNone()
    {
        (var thick, double? meter) = Ball(new Leader(0.5e-3, 2e9, 1140), 300);
        Assert.Equal(Ball(new Leader(0, 2e9, 1140), 300).Points[20].DepthM, thick[20].DepthM);
        Assert.True(thick[20].DepthM < 0);
        Assert.Null(meter);
    }

    private static (ImmutableArray<(double TimeS, double DepthM)> Points, double? FirstMeterMS) Ball(
        Leader leader, double densityKgM3 = 2500)
    {
        const double diameter = 3e-3, volume = Math.PI / 6 * diameter * diameter * diameter;
        BodyPart ball = new("ball")
        {
            Masses = [new(densityKgM3 * volume, default)],
            Solids = [new(volume, default)],
            Drag = [DragElement.Sphere(default, diameter)],
        };
        SinkingFly fly = new(
            new FlyBody([ball], default, diameter, Intent.PointDown), new FishingConditions(Fresh, leader, Knot.Loop, 0.5), double.PositiveInfinity);
        Assert.True(fly.TryFindSteady(Vector3D.UnitZ, out SteadySink steady));
        return fly.DepthFromRest(steady, 10, 40);
    }
}
