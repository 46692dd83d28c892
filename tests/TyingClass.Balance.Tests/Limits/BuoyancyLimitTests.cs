using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Flies;
using Xunit;

namespace TyingClass.Balance.Tests.Limits;

public sealed class BuoyancyLimitTests
{
    private static readonly ReportOptions Few = new() { Flies = 20 };

    /// <summary>A float that leaves this share of the fly's mass as wet weight.</summary>
    private static FlyBody Floated(FlyBody body, FishingConditions conditions, double wetShare)
    {
        double density = conditions.Water.DensityKgM3;
        MassMoments moments = MassMoments.Of(body.Parts, double.PositiveInfinity);
        double missing = (moments.MassKg * (1 - wetShare) - density * moments.VolumeM3) / density;
        return body with { Parts = body.Parts.Add(new BodyPart("foam") { Solids = [new VolumeElement(missing, new Vector3D(5e-3, 0, 3e-3))] }) };
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1e-15)]
    [InlineData(-1e-15)]
    [InlineData(1e-9)]
    [InlineData(-1e-9)]
    [InlineData(1e-3)]
    [InlineData(0.049)]
    [InlineData(-0.049)]
    public void Report_NearNeutral_LeavesOutWhatIsUndefinedAndNothingIsNaN(double wetShare)
    {
        for (int seed = 50_000; seed < 50_020; seed++)
        {
            (FlyBody body, FishingConditions conditions) = RandomBodies.Fly(seed);
            FlyBody bare = body with { Parts = [.. body.Parts.Select(p => p with { Air = [] })] };
            BalanceReport report = BalanceEngine.Report(Floated(bare, conditions, wetShare), conditions, Few);
            Finite.AssertAll(report);
            Assert.Null(report.BalancePointMm);
            Assert.Null(report.LevelLineKeelMm);
            Assert.All(report.States, s => Assert.Null(s.BalancePointMm));
        }
    }

    [Theory]
    [InlineData(-0.01)]
    [InlineData(-0.2)]
    [InlineData(-2)]
    public void Report_FloatingFly_SaysSo(double wetShare)
    {
        for (int seed = 50_000; seed < 50_030; seed++)
        {
            (FlyBody body, FishingConditions conditions) = RandomBodies.Fly(seed);
            BalanceReport report = BalanceEngine.Report(Floated(body, conditions, wetShare), conditions, Few);
            Finite.AssertAll(report);
            Assert.True(report.WetWeightG < 0);
            Assert.Equal(VerdictKind.Floats, report.Verdict.Kind);
            Assert.Contains(report.Findings, f => f.Code == "floats");
            Assert.True(report.Soaked.Sink is null || report.Soaked.Sink.RateMS < 0, $"body {seed} floats but sinks at {report.Soaked.Sink?.RateMS} m/s");
        }
    }
}
