using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Towing;
using Xunit;

namespace TyingClass.Balance.Tests.Ships;

/// <summary>The books' righting arms, from the engine's own righting curve.</summary>
/// <remarks>A body of weight and buoyancy, held level by a drogue far aft that cannot resist heel. Tonnes stand as kilograms, so moments in kg·m are the books'
/// t·m. A submerged body has no waterline: its arm is BG sin φ (standard; from memory), so BG takes the place of GM.</remarks>
public sealed class RightingArmTests
{
    // Derrett and Barrass: box 65 × 12 × 8 m, 3198 t, GM 1 m: at 5° 0.0872 m, 278.9 t·m (the book multiplies the rounded arm).
    [Fact]
    public void Curve_BoxOfGmOneMeter_HasTheBooksArmAtFiveDegrees()
    {
        double moment = RestoringTm(3198, 1, 5, 36);
        Assert.Equal(0.0872, moment / 3198, 6e-5);
        Assert.Equal(278.9, moment, 0.2);
    }

    // Nicholls's Seamanship: KM 16, KG 13.8 ft, 8°: 0.306 ft, 1836 ft·t, hence 6000 t.
    [Fact]
    public void Curve_NichollssShip_HasTheBooksArmAtEightDegrees()
    {
        double moment = RestoringTm(6000, 16 - 13.8, 8, 45);
        Assert.Equal(0.306, moment / 6000, 6e-4);
        Assert.Equal(1836, moment, 3.0);
    }

    // Derrett and Barrass: KB 3, KM 6, KG 5.5 m, 25°, 6000 t, wall-sided (GM + ½BM tan²φ) sin φ: 0.35 m, 2100 t·m, unrounded 0.34915. The bracket is 0.82616 m.
    [Fact]
    public void Curve_WallSidedShip_HasTheBooksArmAt25Degrees()
    {
        double moment = RestoringTm(6000, 0.82616, 25, 36);
        Assert.Equal(0.34915, moment / 6000, 1e-5);
        Assert.Equal(2100, moment, 10.0);
    }

    // Submerged: W·BG·sin φ (standard; from memory), stable with G below B all the way round.
    [Fact]
    public void Curve_SubmergedBody_IsASineOfTheHeel()
    {
        ImmutableArray<RightingPoint> curve = Curve(500, 0.4, 36);
        Assert.Equal(37, curve.Length);
        Assert.Equal(500 * 0.4 * 0.5, curve[6].RestoringNM / 9.80665, 1e-6);
        Assert.Equal(500 * 0.4, curve[18].RestoringNM / 9.80665, 1e-6);
        Assert.Equal(500 * 0.4 * 0.5, curve[30].RestoringNM / 9.80665, 1e-6);
        Assert.Equal(Math.PI, Righting.RangeRad(curve), 1e-9);
    }

    [Fact]
    public void Curve_GravityAboveBuoyancy_NeverRestores()
    {
        ImmutableArray<RightingPoint> curve = Curve(500, -0.4, 36);
        Assert.True(curve[3].RestoringNM < 0);
        Assert.Equal(0, Righting.RangeRad(curve));
    }

    // With no drag to tilt it, a fly's keel height is how far its balance point hangs below its ring: the definition, worked by hand.
    [Theory]
    [InlineData(0.8)]
    [InlineData(3.5)]
    [InlineData(-1.2)]
    public void Report_NoDragButADrogue_KeelHeightIsTheDepthOfTheBalancePoint(double belowMm)
    {
        Vector3D eye = new(-2e-3, 0, 1e-3), balance = new(-2e-3, 0, 1e-3 - 1e-3 * belowMm);
        FlyBody body = new(
            [new BodyPart("hook") { Masses = [new(3e-4, balance)], Solids = [new(4e-8, balance)],
                Drag = [DragElement.Streamer(new Vector3D(0.03, 0, 1e-3), 1e-4)] }],
            eye, 0.02, Intent.PointDown);
        StateReport state = BalanceEngine.Report(body, new FishingConditions(new Water(998.2041, 1001.57e-6), new Leader(0.2e-3, 2.5e9, 1140), Knot.Loop, 0.5),
            new ReportOptions { Flies = 1 }).Soaked;
        Assert.Equal(belowMm, state.AtFishingSpeed.KeelHeightMm.PointDown!.Value, 1e-5);
        Assert.Equal(-belowMm, state.AtFishingSpeed.KeelHeightMm.PointUp!.Value, 1e-5);
        Assert.Equal(belowMm, state.LevelLineKeelMm!.Value.PointDown, 1e-9);
        Assert.Equal(0, state.AtFishingSpeed.SymmetricPitchDeg, 1e-6);
    }

    private static double RestoringTm(double tonnes, double bgM, double heelDeg, int steps)
    {
        RightingPoint point = Curve(tonnes, bgM, steps).Single(p => Math.Abs(p.HeelRad * 180 / Math.PI - heelDeg) < 1e-9);
        return point.RestoringNM / 9.80665;
    }

    // Weight and buoyancy balance, G the distance BG under B; the eye at B, the drogue 100 m aft.
    private static ImmutableArray<RightingPoint> Curve(double tonnes, double bgM, int steps)
    {
        Water water = new(1025, 1.1e-3);
        BodyPart hull = new("hull")
        {
            Masses = [new(tonnes, new Vector3D(0, 0, -bgM))],
            Solids = [new(tonnes / 1025, default)],
            Drag = [DragElement.Streamer(new Vector3D(100, 0, 0), 10)],
        };
        TowedFly ship = TowedFly.From(
            new FlyBody([hull], default, 65, Intent.PointDown),
            new FishingConditions(water, new Leader(0.2e-3, 2.5e9, 1140), Knot.Loop, 2), double.PositiveInfinity);
        return Righting.Curve(ship, Attitude.Symmetric(Intent.PointDown, 0), 2, steps);
    }
}
