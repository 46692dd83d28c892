using TyingClass.Balance.Geometry;
using TyingClass.Balance.Sinking;
using TyingClass.Balance.Towing;
using Xunit;

namespace TyingClass.Balance.Tests.Knots;

/// <summary>A slack leader held back by the water: lengths in (EI/f)^⅓, moments in (f EI²)^⅓.</summary>
public sealed class SlackLeaderTests
{
    // For small angles θ'''' carries f θ², solved by θ = 60/s³; then M = 180/s⁴ = 180 (ψ/60)^(4/3). Derived, no source; exact as ψ goes to 0.
    [Theory]
    [InlineData(1e-8, 1e-4)]
    [InlineData(1e-6, 1e-4)]
    [InlineData(0.02, 2e-3)]
    [InlineData(0.05, 5e-3)]
    [InlineData(0.1, 1e-2)]
    public void ClampMoment_SmallAngle_IsTheClosedForm(double psi, double share)
    {
        double expected = 180 * Math.Pow(psi / 60, 4.0 / 3);
        Assert.Equal(expected, ClampMoment(psi), share * expected);
    }

    [Theory]
    [InlineData(30)]
    [InlineData(60)]
    [InlineData(90)]
    [InlineData(120)]
    [InlineData(150)]
    public void On_LargeAngle_IsTheNumericalBeam(double degrees)
    {
        double psi = degrees * Math.PI / 180;
        (double moment, double along, double across) = Extrapolated(psi);
        Assert.Equal(moment, ClampMoment(psi), 3e-3 * moment);

        // Flow at ψ from the nose; f = 1, EI = 1, speed 1.
        Vector3D nose = -Vector3D.UnitX, flow = new(-Math.Cos(psi), 0, Math.Sin(psi));
        Wrench wrench = SlackLeader.On(flow, 1, 1);
        Assert.Equal(along, Vector3D.Dot(wrench.ForceN, flow), 3e-3 * Math.Abs(along));
        Vector3D side = (nose - Vector3D.Dot(nose, flow) * flow).Normalized();
        Assert.Equal(across, Vector3D.Dot(wrench.ForceN, side), 3e-3 * Math.Abs(along));
        // It turns the nose the way the water goes.
        Assert.Equal(moment, Vector3D.Dot(wrench.MomentNM, Vector3D.Cross(nose, flow).Normalized()), 3e-3 * moment);
    }

    // f = 1, EI = 1, speed 1.
    private static double ClampMoment(double psi) => SlackLeader.On(new Vector3D(-Math.Cos(psi), 0, Math.Sin(psi)), 1, 1).MomentNM.Length;

    private static (double Moment, double Along, double Across) Extrapolated(double psi)
    {
        (double M, double X, double Y) coarse = Beam(psi, 100), fine = Beam(psi, 200);
        return ((4 * fine.M - coarse.M) / 3, (4 * fine.X - coarse.X) / 3, (4 * fine.Y - coarse.Y) / 3);
    }

    // The tail dies away only as 60/s³: 300 lengths of line, the segments growing outward, its end free.
    private static (double M, double X, double Y) Beam(double psi, int segments)
    {
        double[] lengths = [.. Enumerable.Range(0, segments).Select(i => Math.Exp(6.0 * i / segments))];
        double total = lengths.Sum();
        SegmentedBeam beam = new([.. lengths.Select(l => 300 * l / total)], 1, angle =>
        {
            double sin = Math.Sin(angle), push = Math.Abs(sin);
            return (push * sin * sin, -push * sin * Math.Cos(angle));
        });
        for (double reached = 0; reached < psi;)
        {
            reached = Math.Min(psi, reached + 0.15);
            beam.Solve(reached, 0, 0);
        }

        (double x, double y) = beam.TotalSpreadLoad();
        return (beam.ClampMoment(psi), x, y);
    }
}
