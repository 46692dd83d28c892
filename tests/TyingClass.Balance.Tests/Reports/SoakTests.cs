using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Flies;
using TyingClass.Recipes.Bodies;
using Xunit;

namespace TyingClass.Balance.Tests.Reports;

public sealed class SoakTests
{
    // 200 mg of steel-dense stuff holding 50 mm³ of air with τ = 40 s and 100 mg of water: after 40 s 18.394 mm³ (e^-1) are left, so 63.212 mg of water are in.
    [Fact]
    public void Soak_OneAirElement_FollowsItsExponential()
    {
        SoakPoint at = Report(40, 50e-9).Soak[1];

        Assert.Equal(0.2 + 0.063212, at.MassG, 1e-6);
        // 0.2 g less 998.2041 kg/m³ times (25 + 18.394) mm³.
        Assert.Equal(0.2 - 998.2041e-6 * (25 + 18.39397), at.WetWeightG, 1e-7);
    }

    [Fact]
    public void Soak_FromFreshToLong_EndsWhereTheStatesStand()
    {
        for (int seed = 80_000; seed < 80_025; seed++)
        {
            BuiltFly fly = FlyBuilder.Build(RandomRecipes.Fly(seed));
            BalanceReport report = BalanceEngine.Report(fly.Body, fly.Conditions, new ReportOptions { Flies = 1, SpeedsMS = [0.5], SoakTimesS = [0, 1e6] });
            foreach ((SoakPoint point, StateReport state) in report.Soak.Zip(report.States))
            {
                Assert.Equal(state.WetWeightG, point.WetWeightG, 1e-9);
                Assert.Equal(state.AtFishingSpeed.PitchDeg, point.PitchDeg, 1e-6);
                Assert.Equal(state.AtFishingSpeed.Verdict, point.Verdict);
                Assert.Equal(state.Sink?.RateMS, point.SinkRateMS);
            }

            Assert.Equal(report.MassG + report.HeldWaterG, report.Soak[1].MassG, 1e-9);
        }
    }

    [Fact]
    public void Soak_AsAirGoes_WeighsMoreAndMore()
    {
        BalanceReport report = Report(40, 50e-9);
        Assert.Equal(report.Soak.Select(p => p.WetWeightG).Order(), report.Soak.Select(p => p.WetWeightG));
        Assert.Equal(report.Soak.Select(p => p.MassG).Order(), report.Soak.Select(p => p.MassG));
        Assert.True(report.Soak[^1].WetWeightG > report.Soak[0].WetWeightG + 0.04);
    }

    [Fact]
    public void Soak_NoAir_IsTheSameThroughout() =>
        Assert.Single(Report(40, 0).Soak.Select(p => p with { SoakS = 0 }).Distinct());

    [Fact]
    public void Soak_NoTimesAsked_IsEmpty() => Assert.Empty(Report(40, 50e-9, []).Soak);

    private static BalanceReport Report(double soakTimeS, double airM3, double[]? times = null)
    {
        BodyPart part = new("hook")
        {
            Masses = [new(2e-4, new Vector3D(5e-3, 0, -1e-3))],
            Solids = [new(25e-9, new Vector3D(5e-3, 0, -1e-3))],
            Air = [new(airM3, soakTimeS, new Vector3D(5e-3, 0, 1e-3))],
            Drag = [DragElement.Cylinder(new Vector3D(5e-3, 0, 0), Vector3D.UnitX, 0.02, 1e-3)],
            HeldWaterKg = 1e-4,
        };
        ReportOptions options = new() { Flies = 1, SpeedsMS = [0.5], SoakTimesS = [.. times ?? [0, 40, 80, 160]] };
        return BalanceEngine.Report(new FlyBody([part], new Vector3D(-1e-3, 0, 0), 0.02, Intent.PointDown), Fished.Plainly, options);
    }
}
