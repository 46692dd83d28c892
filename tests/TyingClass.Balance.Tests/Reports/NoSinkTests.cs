using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Flies;
using Xunit;

namespace TyingClass.Balance.Tests.Reports;

/// <summary>A report without a sink says why.</summary>
public sealed class NoSinkTests
{
    // 3 mm tungsten at 19 300 kg/m³ in water of 20 °C: 1.359 m/s by Brown and Lawler (the table of check values).
    [Fact]
    public void Report_LoneBall_SinksAnyWayUpAtItsRate()
    {
        double volume = Math.PI / 6 * 27e-9;
        BalanceReport report = Report(
            new BodyPart("ball") { Masses = [new(19_300 * volume, default)], Solids = [new(volume, default)], Drag = [DragElement.Sphere(default, 3e-3)] });

        Assert.Null(report.Soaked.Sink);
        Finding finding = Assert.Single(report.Findings, f => f.Code == "sinks any way up");
        Assert.Equal(1.36, Assert.IsType<NoSinkFinding>(finding).RateMS!.Value, 0.005);
        Assert.False(Assert.IsType<NoSinkFinding>(finding).Rises);
    }

    // The same ball of cork rises.
    [Fact]
    public void Report_LoneBallOfCork_RisesAnyWayUp()
    {
        double volume = Math.PI / 6 * 27e-9;
        BalanceReport report = Report(
            new BodyPart("ball") { Masses = [new(240 * volume, default)], Solids = [new(volume, default)], Drag = [DragElement.Sphere(default, 3e-3)] });

        Assert.Null(report.Soaked.Sink);
        Assert.True(Assert.IsType<NoSinkFinding>(Assert.Single(report.Findings, f => f.Code == "sinks any way up")).Rises);
    }

    [Fact]
    public void Report_WeightOfItsWater_Hovers()
    {
        BalanceReport report = Report(new BodyPart("hook")
        {
            Masses = [new(998.2041e-6 * 1.0001, new Vector3D(5e-3, 0, 0))],
            Solids = [new(1e-6, new Vector3D(5e-3, 0, 0))],
            Drag = [DragElement.Cylinder(new Vector3D(5e-3, 0, 0), Vector3D.UnitX, 0.02, 1e-3)],
        });

        Assert.Null(report.Soaked.Sink);
        Assert.Single(report.Findings, f => f.Code == "hovers");
    }

    [Fact]
    public void Report_FlyWithASink_HasNoneOfThese()
    {
        BalanceReport report = Report(new BodyPart("hook")
        {
            Masses = [new(3e-4, new Vector3D(2e-3, 0, -1e-3))],
            Solids = [new(4e-8, new Vector3D(2e-3, 0, -1e-3))],
            Drag = [DragElement.Cylinder(new Vector3D(1e-2, 0, 0), Vector3D.UnitX, 0.02, 1e-3)],
        });

        Assert.NotNull(report.Soaked.Sink);
        Assert.DoesNotContain(report.Findings, f => f.Code is "hovers" or "tumbles" or "sinks any way up");
    }

    private static BalanceReport Report(BodyPart part) =>
        BalanceEngine.Report(new FlyBody([part], new Vector3D(-1e-3, 0, 0), 0.02, Intent.PointDown), Fished.Plainly,
        new ReportOptions { Flies = 1, SpeedsMS = [0.5] });
}
