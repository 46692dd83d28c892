using CsCheck;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Flies;
using TyingClass.Balance.Towing;
using Xunit;

namespace TyingClass.Balance.Tests.Properties;

public sealed class ScaleTests
{
    private static readonly Gen<(int Seed, double Factor, double Pitch)> Cases = Gen.Select(Gen.Int[0, 100_000], Gen.Double[0.3, 4], Gen.Double[-1, 1]);

    // All masses, the water's density and viscosity and the leader's stiffness times k: the same Reynolds numbers, every force times k.
    [Fact]
    public void At_EverythingDenser_ScalesMoments() => Seeded.Check(Cases, 200, c =>
    {
        (FlyBody body, FishingConditions conditions) = RandomBodies.Fly(c.Seed);
        Attitude attitude = Attitude.Symmetric(body.Intent, c.Pitch).Turned(new Vector3D(0.3, c.Pitch, 0.2));
        Wrench here = TowedFly.From(body, conditions, 0).At(attitude, conditions.SpeedMS);
        Wrench there = TowedFly.From(body.HeavierBy(c.Factor), Denser(conditions, c.Factor), 0).At(attitude, conditions.SpeedMS);
        Assert.True((c.Factor * here.MomentNM - there.MomentNM).Length < 1e-9 * c.Factor * here.MomentNM.Length);
        Assert.True((c.Factor * here.ForceN - there.ForceN).Length < 1e-9 * c.Factor * here.ForceN.Length);
    });

    [Fact]
    public void Report_EverythingDenser_RidesTheSame() => Seeded.Check(Cases, 60, c =>
    {
        ReportOptions quick = new() { Flies = 1, SpeedsMS = [0.5] };
        (FlyBody body, FishingConditions conditions) = RandomBodies.Fly(c.Seed);
        StateReport here = BalanceEngine.Report(body, conditions, quick).Soaked;
        StateReport there = BalanceEngine.Report(body.HeavierBy(c.Factor), Denser(conditions, c.Factor), quick).Soaked;
        Assert.Equal(here.AtFishingSpeed.PitchDeg, there.AtFishingSpeed.PitchDeg, 1e-4);
        Assert.Equal(here.AtFishingSpeed.LeanDeg, there.AtFishingSpeed.LeanDeg, 1e-3);
        Assert.Equal(here.AtFishingSpeed.KeelHeightMm.For(body.Intent) ?? 0, there.AtFishingSpeed.KeelHeightMm.For(body.Intent) ?? 0, 1e-5);
        Assert.Equal(c.Factor * here.AtFishingSpeed.DragMN, there.AtFishingSpeed.DragMN, 1e-5 * there.AtFishingSpeed.DragMN);
        Assert.Equal(c.Factor * here.WetWeightG, there.WetWeightG, 1e-9);
        Assert.Equal(here.Sink?.PitchDeg ?? 0, there.Sink?.PitchDeg ?? 0, 1e-3);
        Assert.Equal(here.Sink?.RateMS ?? 0, there.Sink?.RateMS ?? 0, 1e-6);
        Assert.Equal(here.Sink?.DepthAfter5sM ?? 0, there.Sink?.DepthAfter5sM ?? 0, 1e-5);
    });

    private static FishingConditions Denser(FishingConditions c, double factor) => c with
    {
        Water = new Water(factor * c.Water.DensityKgM3, factor * c.Water.ViscosityPaS),
        Leader = c.Leader with { YoungsModulusPa = factor * c.Leader.YoungsModulusPa, DensityKgM3 = factor * c.Leader.DensityKgM3 },
    };
}
