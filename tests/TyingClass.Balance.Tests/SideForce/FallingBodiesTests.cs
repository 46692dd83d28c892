using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Sinking;
using Xunit;

namespace TyingClass.Balance.Tests.SideForce;

/// <summary>
/// Cylinders and discs let go in still water fall broadside: Marchildon, Clamen and Gauvin, Can. J. Chem. Eng. 42 (1964) 178, at Reynolds numbers 70 to 2400
/// on the
/// mean; Jayaweera and Mason, J. Fluid Mech. 22 (1965) 709 (from memory), cylinders and cones above some hundredths.
/// </summary>
public sealed class FallingBodiesTests(ITestOutputHelper output)
{
    private static readonly Water Fresh = new(998.2041, 1001.57e-6);

    [Theory]
    [InlineData(30, 4)]
    [InlineData(30, 1)]
    [InlineData(10, 2)]
    [InlineData(12, 8)]
    public void Ways_UniformRod_FallsBroadsideHoweverLetGo(double lengthMm, double diameterMm)
    {
        AssertAllEnd(Rod(lengthMm, diameterMm, 2000, 0), upAlongAxis: 0);
    }

    // ½ρ C_D d ℓ v² = (2000 - ρ) g V with C_D of a cylinder 7.5 widths long, 0.98 × 0.78/1.20 at Re 1200 (Wieselsberger 1922, tabulated in books): 0.31 m/s.
    [Fact]
    public void Ways_RodThirtyByFour_FallsAtAboutThreeTenths()
    {
        Assert.Equal(0.31, Rod(30, 4, 2000, 0).Ways()[0].Sink.RateMS, 0.02);
    }

    [Theory]
    [InlineData(1, 10)]
    [InlineData(2, 8)]
    public void Ways_UniformDisc_FallsFlat(double thicknessMm, double diameterMm)
    {
        // None settles otherwise; a thin disc let go on edge may flutter for ever, as discs do (Willmarth, Hawk and Harvey, Phys. Fluids 7 (1964) 197, from
        // memory).
        AssertAllEnd(Rod(thicknessMm, diameterMm, 2000, 0), upAlongAxis: 1, least: 0.75);
    }

    private static void AssertAllEnd(SinkingFly body, double upAlongAxis, double least = 0.9)
    {
        (SteadySink Sink, double Share)[] ways = [.. body.Ways()];
        Assert.All(ways, w => Assert.Equal(upAlongAxis, Math.Abs(w.Sink.Up.X), 0.01));
        Assert.InRange(ways.Sum(w => w.Share), least, 1.0001);
    }

    // The farther its weight lies toward one end the steeper it falls, and with a fifth of its length it no longer falls on its side at all.
    [Fact]
    public void Ways_WeightOffCenter_TurnsTheHeavyEndDown()
    {
        double last = -1;
        double? endFirst = null;
        for (int percent = 0; percent <= 30; percent += 2)
        {
            SteadySink sink = Rod(30, 4, 2000, -percent / 100.0).Ways()[0].Sink;
            double deg = Math.Asin(Math.Clamp(sink.Up.X, -1, 1)) * 180 / Math.PI;
            output.WriteLine(FormattableString.Invariant($"weight {percent} % of the length forward: nose {deg:F1}° down, {sink.RateMS:F3} m/s"));
            Assert.True(deg > last - 1e-6, $"{percent} %: {deg}° after {last}°");
            if (deg > 60) endFirst ??= percent;
            last = deg;
        }

        output.WriteLine(FormattableString.Invariant($"end first from {endFirst} %"));
        Assert.InRange(endFirst ?? 99, 4, 28);
    }

    /// <param name="weightAt">Mass center from the middle, in lengths, along +x.</param>
    private static SinkingFly Rod(double lengthMm, double diameterMm, double densityKgM3, double weightAt)
    {
        double length = 1e-3 * lengthMm, diameter = 1e-3 * diameterMm, volume = Math.PI / 4 * diameter * diameter * length;
        Vector3D half = new(length / 2, 0, 0);
        BodyPart rod = new("rod")
        {
            // A hundredth of its width below the axis: a perfect rod may lie rolled any way, which is no way to come to rest.
            Masses = [new(densityKgM3 * volume, new Vector3D(weightAt * length, 0, -0.01 * diameter))],
            Solids = [new(volume, default)],
            // The small ball stands for the friction of the end faces, which the law of a cylinder has not: without any, a disc that lies flat slips aside
            // freely.
            Drag = [DragElement.Cylinder(default, Vector3D.UnitX, length, diameter, 1, length / diameter), DragElement.Sphere(default, 0.1 * diameter)],
            SideForces = [.. SideForceElement.Rod(-half, half, diameter, length / diameter)],
        };
        return new SinkingFly(
            new FlyBody([rod], -half, length, Intent.PointDown), new FishingConditions(Fresh, new Leader(0.2e-3, 2.5e9, 1140), Knot.Loop, 0.5),
            double.PositiveInfinity);
    }
}
