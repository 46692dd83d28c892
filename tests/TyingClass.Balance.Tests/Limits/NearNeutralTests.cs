using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using Xunit;

namespace TyingClass.Balance.Tests.Limits;

/// <summary>
/// Keel height is the restoring moment over the wet weight: with next to no weight left it runs away as the balance point does, so one rule silences both.
/// </summary>
public sealed class NearNeutralTests
{
    [Theory]
    [InlineData(0.04, false)]
    [InlineData(0.06, true)]
    public void Report_ShareOfWeightLeft_DecidesWhetherKeelAndBalancePointAreTold(double left, bool told)
    {
        Vector3D place = new(5e-3, 0, -1e-3);
        const double massKg = 3e-4, density = 998.2041;
        BodyPart hook = new("hook")
        {
            Masses = [new(massKg, place)],
            Solids = [new((1 - left) * massKg / density, place)],
            Drag = [DragElement.Streamer(new Vector3D(0.03, 0, 0), 1e-4)],
        };
        StateReport state = BalanceEngine.Report(
            new FlyBody([hook], default, 0.02, Intent.PointDown),
            new FishingConditions(new Water(density, 1001.57e-6), new Leader(0.2e-3, 2.5e9, 1140), Knot.Loop, 0.4), new ReportOptions { Flies = 1 }).Soaked;
        Assert.Equal(told, state.BalancePointMm is not null);
        Assert.Equal(told, state.AtFishingSpeed.KeelHeightMm.PointDown is not null);
        Assert.All(state.Tow, t => Assert.Equal(told, t.KeelHeightMm.PointDown is not null));
    }
}
