using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Towing;
using Xunit;

namespace TyingClass.Balance.Tests.Fluid;

public sealed class CylinderDragTests
{
    // Wieselsberger 1922, digitized to ±5 %.
    [Theory]
    [InlineData(31.7, 1.73, 0.05)]
    [InlineData(196, 1.27, 0.05)]
    [InlineData(892, 0.964, 0.05)]
    [InlineData(2270, 0.886, 0.05)]
    [InlineData(5150, 0.944, 0.05)]
    [InlineData(1.5e4, 1.14, 0.05)]
    [InlineData(6.55e4, 1.17, 0.05)]
    public void CrossFlow_AtReynolds_IsWieselsbergersMeasurement(double reynolds, double expected, double share) =>
        Assert.Equal(expected, CylinderDrag.CrossFlow(reynolds), share * expected);

    // Wieselsberger's lowest point, 4.87 at Re 3.18 (digitized, ±5 %), is the one that the fit does not meet: the reference that gives both says of the fit
    // "up to 13 % high below Re 10", to whole percents, and it is 13.5 % high. No pass by 5 % here, and none is claimed: docs/formulas.md#drag says what it
    // costs.
    [Fact]
    public void CrossFlow_BelowReynolds10_IsHighByWhatTheFitIsKnownToBe() =>
        Assert.InRange(CylinderDrag.CrossFlow(3.18) / 4.87, 1.05, 1.135);

    // Two other published fits at the same place, both from memory: Sucker and Brauer 1975 (as in White, Viscous Fluid Flow) and Clift, Grace and Weber 1978
    // for cylinders.
    // They lie 3 % under and 11 % over the same point, so the fits of the literature differ among themselves by as much.
    [Fact]
    public void CrossFlow_BelowReynolds10_LiesAboveOnePublishedFitAndByAnother()
    {
        const double re = 3.18;
        double suckerBrauer = 1.18 + 6.8 / Math.Pow(re, 0.89) + 1.96 / Math.Sqrt(re) - 4e-4 * re / (1 + 3.64e-7 * re * re);
        double cliftGraceWeber = 9.689 * Math.Pow(re, -0.78) * (1 + 0.147 * Math.Pow(re, 0.82));
        Assert.Equal(4.87, suckerBrauer, 0.05 * 4.87);
        Assert.Equal(cliftGraceWeber, CylinderDrag.CrossFlow(re), 0.02 * cliftGraceWeber);
        Assert.InRange(CylinderDrag.CrossFlow(re) / suckerBrauer, 1.15, 1.2);
    }

    // Computed from the fit `11 Re^-0.75 + 0.9(1-e^(-1000/Re)) + 1.2(1-e^(-(Re/4500)^0.7))`.
    [Theory]
    [InlineData(100, 1.3285)]
    [InlineData(1e3, 0.9842)]
    [InlineData(1e4, 1.0879)]
    public void CrossFlow_AtReynolds_IsTheFit(double reynolds, double expected) =>
        Assert.Equal(expected, CylinderDrag.CrossFlow(reynolds), 6e-5);

    // Wieselsberger 1922, as tabulated: drag coefficient of cylinders of finite length, against 1.20.
    [Theory]
    [InlineData(1, 0.63)]
    [InlineData(2, 0.68)]
    [InlineData(5, 0.74)]
    [InlineData(10, 0.82)]
    [InlineData(40, 0.98)]
    [InlineData(double.PositiveInfinity, 1.20)]
    public void FiniteLengthShare_TabulatedSlenderness_IsTheTable(double slenderness, double expected) =>
        Assert.Equal(expected, 1.20 * CylinderDrag.FiniteLengthShare(slenderness), 1e-12);

    [Fact]
    public void FiniteLengthShare_LongerCylinder_NeverLosesDrag()
    {
        double before = 0;
        for (double slenderness = 0.1; slenderness < 1e4; slenderness *= 1.1)
        {
            double share = CylinderDrag.FiniteLengthShare(slenderness);
            Assert.InRange(share, before, 1);
            before = share;
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void FiniteLengthShare_NoSlenderness_Throws(double slenderness) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CylinderDrag.FiniteLengthShare(slenderness));

    // Blasius: 1.328/√Re. Published in any boundary-layer text, to the digits shown.
    [Theory]
    [InlineData(1e3, 0.0420, 6e-5)]
    [InlineData(1e4, 0.01328, 6e-6)]
    public void Blasius_AtReynolds_IsThePlateFormula(double reynolds, double expected, double tolerance) =>
        Assert.Equal(expected, SkinFriction.Blasius(reynolds), tolerance);

    // Çengel and Cimbala, Fluid Mechanics, ex. 11-4: pipe 2.2 cm × 30 m across 4 m/s, 999.1 kg/m³, Cd 1.0: 5275 N.
    [Fact]
    public void DragField_PipeAcrossAStream_IsTheWorkedExample()
    {
        DragField pipe = new([new BodyPart("pipe") { Drag = [DragElement.Streamer(default, 1.0 * 0.022 * 30)] }], new Water(999.1, 1.138e-3), default);
        Assert.Equal(5275, pipe.At(new Vector3D(4, 0, 0)).ForceN.X, 0.5);
    }

    // The same pipe with the engine's own curve: Wieselsberger's 1.17 at Re 6.55e4, Re here 7.7e4, ±5 % digitized.
    [Fact]
    public void DragField_PipeByItsOwnCurve_IsWithinTheMeasurements()
    {
        DragField pipe = new([new BodyPart("pipe") { Drag = [DragElement.Cylinder(default, Vector3D.UnitY, 30, 0.022)] }], new Water(999.1, 1.138e-3), default);
        Assert.Equal(1.17 * 5275, pipe.At(new Vector3D(4, 0, 0)).ForceN.X, 0.05 * 1.17 * 5275);
    }

    // Hoerner 1965: only the normal velocity makes the normal force.
    [Theory]
    [InlineData(15)]
    [InlineData(45)]
    [InlineData(70)]
    public void DragField_InclinedCylinder_FeelsTheNormalVelocityAlone(double degreesFromFlow)
    {
        double angle = degreesFromFlow * Math.PI / 180;
        Vector3D axis = new(Math.Cos(angle), 0, Math.Sin(angle)), across = new(-Math.Sin(angle), 0, Math.Cos(angle));
        Water water = new(998.2041, 1001.57e-6);
        DragField inclined = new([new BodyPart("pipe") { Drag = [DragElement.Cylinder(default, axis, 0.02, 1e-3)] }], water, default);
        DragField square = new([new BodyPart("pipe") { Drag = [DragElement.Cylinder(default, Vector3D.UnitZ, 0.02, 1e-3)] }], water, default);
        double normal = Vector3D.Dot(inclined.At(new Vector3D(0.6, 0, 0)).ForceN, across);
        Assert.Equal(-square.At(new Vector3D(0.6 * Math.Sin(angle), 0, 0)).ForceN.X, normal, 1e-9);
    }
}
