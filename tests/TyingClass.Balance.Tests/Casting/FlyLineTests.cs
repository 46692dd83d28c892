using TyingClass.Balance.Bodies;
using TyingClass.Balance.Casting;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using Xunit;

namespace TyingClass.Balance.Tests.Casting;

public sealed class FlyLineTests
{
    // The fly-line weight standard, grains in the first 30 ft (the table of check values).
    [Theory]
    [InlineData(1, 60)]
    [InlineData(2, 80)]
    [InlineData(3, 100)]
    [InlineData(4, 120)]
    [InlineData(5, 140)]
    [InlineData(6, 160)]
    [InlineData(7, 185)]
    [InlineData(8, 210)]
    [InlineData(9, 240)]
    [InlineData(10, 280)]
    [InlineData(11, 330)]
    [InlineData(12, 380)]
    [InlineData(13, 450)]
    [InlineData(14, 500)]
    [InlineData(15, 550)]
    public void All_LineOfTheStandard_HasItsGrains(int number, double grains)
    {
        FlyLine line = FlyLine.All.Single(l => l.Number == number);
        Assert.Equal(grains, line.Grains);
        // 1 grain = 64.79891 mg exactly (international avoirdupois).
        Assert.Equal(grains * 64.79891e-6, line.MassKg, 1e-15);
    }

    // A fly of 1 g with 0.5 g of water on a line of 210 grains = 13.60777 g: 11.0231 %.
    [Fact]
    public void Casting_FlyWithWater_IsItsShareOfTheLine()
    {
        BodyPart part = new("hook")
        {
            Masses = [new(1e-3, new Vector3D(5e-3, 0, 0))],
            Solids = [new(1e-7, default)],
            HeldWaterKg = 5e-4,
            Drag = [DragElement.Cylinder(default, Vector3D.UnitX, 0.02, 1e-3)]
        };
        CastingReport casting = BalanceEngine.Report(
            new FlyBody([part], default, 0.02, Intent.PointDown),
            new FishingConditions(new Water(998.2041, 1001.57e-6), new Leader(0.2e-3, 2.5e9, 1140), Knot.Loop, 0.5),
            new ReportOptions { Flies = 1, SpeedsMS = [0.5] }).Casting;

        Assert.Equal(1, casting.DryG, 1e-12);
        Assert.Equal(1.5, casting.WetG, 1e-12);
        Assert.Equal(0.110231, casting.Lines.Single(l => l.LineNumber == 8).Share, 1e-6);
    }
}
