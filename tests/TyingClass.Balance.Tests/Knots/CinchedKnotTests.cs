using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Towing;
using Xunit;

namespace TyingClass.Balance.Tests.Knots;

/// <summary>The moment of a leader cinched on the eye, read from the engine's moment function for a fly with weight but no drag.</summary>
public sealed class CinchedKnotTests
{
    private const double StiffnessNM2 = 1e-6, WetMassKg = 2e-4, TensionN = WetMassKg * 9.80665;

    // First integral of EI θ'' = T sin θ with θ' = 0 far out: M²/2EI = T (1 - cos ψ).
    [Theory]
    [InlineData(1)]
    [InlineData(30)]
    [InlineData(60)]
    [InlineData(90)]
    [InlineData(135)]
    [InlineData(179)]
    public void At_CinchedLeader_StoresTheElasticasEnergy(double degrees)
    {
        double psi = degrees * Math.PI / 180, moment = KnotMoment(psi).Length;
        Assert.Equal(TensionN * (1 - Math.Cos(psi)), moment * moment / (2 * StiffnessNM2), 1e-9 * TensionN);
    }

    [Theory]
    [InlineData(5)]
    [InlineData(30)]
    [InlineData(60)]
    [InlineData(90)]
    [InlineData(120)]
    [InlineData(150)]
    public void At_CinchedLeader_IsTheNumericalBeam(double degrees)
    {
        double psi = degrees * Math.PI / 180;
        double expected = (4 * BeamMoment(psi, 240) - BeamMoment(psi, 120)) / 3;
        Assert.Equal(expected, KnotMoment(psi).Length, 1e-4 * expected);
    }

    [Fact]
    public void At_CinchedLeader_TurnsTheNoseTowardThePull()
    {
        // Pull straight up, nose at -x: turning the nose up is right-handed about +y.
        Vector3D moment = KnotMoment(Math.PI / 2);
        Assert.Equal(0, moment.X, 1e-15);
        Assert.True(moment.Y > 0);
        Assert.Equal(0, moment.Z, 1e-15);
    }

    [Fact]
    public void At_PullAlongOrAgainstTheShank_IsFinite()
    {
        Assert.Equal(0, KnotMoment(0).Length, 1e-12);
        Vector3D against = KnotMoment(Math.PI);
        Assert.True(double.IsFinite(against.Length));
    }

    // Up stands at ψ from the nose (-x), in the plane of the bend.
    private static Vector3D KnotMoment(double psi)
    {
        TowedFly fly = new(new DragField([], new Water(1000, 1e-3), default), WetMassKg, default, StiffnessNM2, 0.02);
        Attitude attitude = new(new Vector3D(Math.Sin(psi), 0, Math.Cos(psi)), new Vector3D(-Math.Cos(psi), 0, Math.Sin(psi)));
        return fly.At(attitude, 0).MomentNM;
    }

    // In units of √(EI/T), clamped at ψ to a pull along x at the far end, 16 lengths out: e^-16 is left of the bend there.
    private static double BeamMoment(double psi, int segments)
    {
        double growth = 40.0 / segments;
        double[] lengths = [.. Enumerable.Range(0, segments).Select(i => Math.Exp(growth * i / 10))];
        double total = lengths.Sum();
        SegmentedBeam beam = new([.. lengths.Select(l => 16 * l / total)], 1);
        for (int step = 1; step <= 4; step++) beam.Solve(psi * step / 4, 1, 0);
        return beam.ClampMoment(psi) * Math.Sqrt(StiffnessNM2 * TensionN);
    }
}
