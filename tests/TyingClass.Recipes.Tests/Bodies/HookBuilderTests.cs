using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using Xunit;
using static TyingClass.Recipes.Tests.Bodies.TestFly;

namespace TyingClass.Recipes.Tests.Bodies;

/// <summary>A bent wire by hand, from the published centroids of line, arc and ring. All in mm and g.</summary>
public sealed class HookBuilderTests
{
    // Straight eye, round bend, shank 20, gape 8, wire 1. Piece: length, x, z
    //   ring    2π · 1.25 =  7.85398   -(1 + 1.25) = -2.25      0
    //   leg                  1         -0.5                     0
    //   shank               20         10                       0
    //   bend    π · 4     = 12.56637   20 + 2·4/π = 22.54648   -4      (semicircular arc: 0.63662 r)
    //   spear   0.75 · 8  =  6         20 - 3 = 17             -8
    //   sum                 47.42035   567.15595 / 47.42035 = 11.96018   -98.26548 / 47.42035 = -2.07222
    // Mass 47.42035 · π/4 · 7.85 mg = 292.364 mg.
    [Fact]
    public void Build_RoundBend_MatchesBentWireByHand()
    {
        BodyPart hook = BuiltHook(Hook);

        Assert.Equal(0.292364, hook.MassG(), 2e-6);
        Assert.Equal(37.24386, hook.SolidMm3(), 1e-4);
        AssertNear(new Vector3D(11.96018, 0, -2.07222), hook.MassCenterMm(), 2e-5);
        AssertNear(new Vector3D(11.96018, 0, -2.07222), hook.BuoyancyCenterMm(), 2e-5);
    }

    // Square: two quarter arcs of radius 2 (each π long, centroid 2·2/π = 1.27324 along each edge) and a straight of 4 at x = 22.
    //   ring, leg, shank, spear as above:                 length 34.85398, Σ l x = -17.67146 - 0.5 + 200 + 102 = 283.82854, Σ l z = -48
    //   arcs    2 · 3.14159, x 21.27324, mean z -4        length  6.28319, Σ l x = 133.66371,  Σ l z = -25.13274
    //   straight                                          length  4,       Σ l x = 88,         Σ l z = -16
    //   sum 45.13717: x 505.49225 / 45.13717 = 11.19902,  z -89.13274 / 45.13717 = -1.97471
    [Fact]
    public void Build_SquareBend_MatchesBentWireByHand()
    {
        BodyPart hook = BuiltHook(Hook with { Bend = BendKind.Square });

        AssertNear(new Vector3D(11.19902, 0, -1.97471), hook.MassCenterMm(), 2e-5);
        Assert.Equal(45.13717 * 0.7853982 * 7.85e-3, hook.MassG(), 2e-6);
    }

    // Half an ellipse 5.6 deep and 8 across, followed here as a polyline: independent of the builder's quadrature.
    [Fact]
    public void Build_LongBend_MatchesFinePolyline()
    {
        const int n = 100_000;
        double length = 34.85398, lx = 283.82854, lz = -48;
        for (int i = 0; i < n; i++)
        {
            double t = Math.PI * (i + 0.5) / n, dt = Math.PI / n;
            double step = dt * Math.Sqrt(Math.Pow(5.6 * Math.Cos(t), 2) + Math.Pow(4 * Math.Sin(t), 2));
            length += step;
            lx += step * (20 + 5.6 * Math.Sin(t));
            lz += step * (-4 + 4 * Math.Cos(t));
        }

        BodyPart hook = BuiltHook(Hook with { Bend = BendKind.Long });

        AssertNear(new Vector3D(lx / length, 0, lz / length), hook.MassCenterMm(), 2e-5);
    }

    // Down eye 30°: the ring's center lies 2.25 from the shank, 2.25 cos 30° = 1.94856 forward and 1.125 down. A jig leg is 3.5 wires: 4.75 at 60°.
    [Theory]
    [InlineData(EyeKind.Straight, 0, -2.25, 0)]
    [InlineData(EyeKind.Down, 30, -1.94856, -1.125)]
    [InlineData(EyeKind.Up, 30, -1.94856, 1.125)]
    [InlineData(EyeKind.Jig, 60, -2.375, -4.11362)]
    [InlineData(EyeKind.Jig, 90, 0, -4.75)]
    public void TowPoint_EachEye_IsRingCenter(EyeKind eye, double angleDeg, double x, double z)
    {
        HookSpec spec = Hook with { Eye = eye, EyeAngleRad = angleDeg * Math.PI / 180 };

        AssertNear(new Vector3D(x, 0, z), FlyBuilder.Build(Recipe(spec)).Body.TowPointM / Mm, 1e-5);
    }

    // Leg and ring pull with 1 · 0.5 + 7.85398 · 2.25 = 18.17146 about the shank's end, now along a line 30° down. Level they gave -18.17146 of the
    // 567.15595; turned they give -18.17146 cos 30° = -15.73695 and, downward, -18.17146 sin 30° = -9.08573: sums 569.59046 and -107.35121.
    [Fact]
    public void Build_DownEye_LowersMassCenterByLegAndRing()
    {
        BodyPart hook = BuiltHook(Hook with { Eye = EyeKind.Down, EyeAngleRad = Math.PI / 6 });

        AssertNear(new Vector3D(569.59046 / 47.42035, 0, -107.35121 / 47.42035), hook.MassCenterMm(), 2e-5);
    }

    [Fact]
    public void Build_Weighed_ScalesMassAndSteelButNotItsCenter()
    {
        BodyPart hook = BuiltHook(Hook with { MassKg = 0.350e-3 });

        Assert.Equal(0.350, hook.MassG(), 1e-9);
        Assert.Equal(350 / 7.85, hook.SolidMm3(), 1e-6);
        AssertNear(new Vector3D(11.96018, 0, -2.07222), hook.MassCenterMm(), 2e-5);
    }

    // Second moments along x and z about the mass center, by following the wire in 0.001 mm steps.
    [Fact]
    public void Build_RoundBend_CarriesInertiaWithinOnePercent()
    {
        const double step = 0.001;
        List<(double X, double Y, double Z)> wire = [];
        for (double s = 0; s < 2 * Math.PI * 1.25; s += step) wire.Add((-2.25 + 1.25 * Math.Cos(s / 1.25), 1.25 * Math.Sin(s / 1.25), 0));
        for (double s = -1; s < 20; s += step) wire.Add((s, 0, 0));
        for (double s = 0; s < Math.PI * 4; s += step) wire.Add((20 + 4 * Math.Sin(s / 4), 0, -4 + 4 * Math.Cos(s / 4)));
        for (double s = 14; s < 20; s += step) wire.Add((s, 0, -8));
        double meanX = wire.Average(p => p.X), meanZ = wire.Average(p => p.Z);

        Vector3D spread = BuiltHook(Hook).SpreadMm2();

        double xx = wire.Average(p => Math.Pow(p.X - meanX, 2)), zz = wire.Average(p => Math.Pow(p.Z - meanZ, 2)), yy = wire.Average(p => p.Y * p.Y);
        Assert.Equal(xx, spread.X, 0.01 * xx);
        Assert.Equal(zz, spread.Z, 0.01 * zz);
        // Across its plane the wire's thickness counts: r²/4 = 0.0625 everywhere but in the ring, whose metal lies mostly outside its center line: 3r²/8 =
        // 0.09375.
        yy += (0.0625 * (47.42035 - 7.85398) + 0.09375 * 7.85398) / 47.42035;
        Assert.Equal(yy, spread.Y, 0.01 * yy);
    }

    [Fact]
    public void Build_BareHook_DragsOverItsWholeWireInFewElements()
    {
        BodyPart hook = BuiltHook(Hook);

        Assert.InRange(hook.Drag.Length, 10, 16);
        Assert.Equal(47.42035, hook.Drag.Sum(e => e.LengthM) / Mm, 1e-4);
        Assert.Single(hook.Drag, e => Math.Abs(e.LengthM - 20 * Mm) < 1e-12);
        // The drag's lever is the wire's: Σ l z of the bend and spear, as for the mass.
        Assert.Equal(-98.26548, hook.Drag.Sum(e => e.LengthM * e.PositionM.Z) / Mm / Mm, 1e-4);
        Assert.Equal(567.15595, hook.Drag.Sum(e => e.LengthM * e.PositionM.X) / Mm / Mm, 1e-4);
    }

    // A hidden stretch of shank meets no water: body from 5 to 12 and a bead's 3 mm at the front leave 20 - 7 - its bored length.
    [Fact]
    public void Build_ShankUnderBodyAndBead_IsNotDraggedTwice()
    {
        BodyPart hook = FlyBuilder.Build(Recipe(
            new PartSpec(PartKind.Bead) { SizeM = 3 * Mm },
            new PartSpec(PartKind.Body) { AtM = 5 * Mm, ToM = 12 * Mm, DiameterM = 4 * Mm })).Body.Parts[0];

        // Bore 0.35 · 3 = 1.05, so the bead takes √(9 - 1.1025) = 2.81025 of shank.
        Assert.Equal(47.42035 - 7 - 2.81025, hook.Drag.Sum(e => e.LengthM) / Mm, 1e-4);
        Assert.Single(hook.Drag, e => Math.Abs(e.LengthM - (5 - 2.81025) * Mm) < 1e-8);
        Assert.Single(hook.Drag, e => Math.Abs(e.LengthM - 8 * Mm) < 1e-8);
    }

    [Theory]
    [InlineData(BendKind.Round)]
    [InlineData(BendKind.Long)]
    [InlineData(BendKind.Square)]
    public void Build_ElementsDoubled_SameMassAndLever(BendKind bend)
    {
        Recipe recipe = Recipe(Hook with { Bend = bend });

        BodyPart coarse = FlyBuilder.Build(recipe).Body.Parts[0], fine = FlyBuilder.Build(recipe, 2).Body.Parts[0];

        Assert.True(fine.Drag.Length > 1.5 * coarse.Drag.Length);
        AssertNear(coarse.MassCenterMm(), fine.MassCenterMm(), 1e-6);
        Assert.Equal(coarse.Drag.Sum(e => e.LengthM), fine.Drag.Sum(e => e.LengthM), 1e-9);
        Assert.Equal(coarse.Drag.Sum(e => e.LengthM * e.PositionM.Z), fine.Drag.Sum(e => e.LengthM * e.PositionM.Z), 1e-12);
    }
}
