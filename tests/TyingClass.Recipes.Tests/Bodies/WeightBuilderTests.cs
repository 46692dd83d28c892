using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using Xunit;
using static TyingClass.Recipes.Tests.Bodies.TestFly;

namespace TyingClass.Recipes.Tests.Bodies;

public sealed class WeightBuilderTests
{
    // 4 mm brass bead bored 1.4 mm: length √(16 - 1.96) = 3.74700; napkin ring π/6 · 3.74700³ = 27.5455 mm³; 8520 kg/m³: 0.234688 g.
    [Fact]
    public void AddBead_FourMillimeterBrass_IsBoredBall()
    {
        BodyPart bead = Part(new PartSpec(PartKind.Bead) { Material = "brass", SizeM = 4 * Mm, AtM = 1 * Mm });

        Assert.Equal(0.234688, bead.MassG(), 2e-6);
        Assert.Equal(27.5455, bead.SolidMm3(), 2e-4);
        AssertNear(new Vector3D(2.87350, 0, 0), bead.MassCenterMm(), 1e-5);
        DragElement drag = Assert.Single(bead.Drag);
        Assert.Equal((DragShape.Sphere, 4 * Mm), (drag.Shape, drag.DiameterM));
    }

    // Cone 6 across, nose 3, length 5.4, bore 2.1: frustum π 5.4/3 (9 + 4.5 + 2.25) = 89.0641, bore π 1.1025 · 5.4 = 18.7034, solid 70.3607 mm³.
    // Its lever: π 5.4² (2.25 + 2·4.5 + 3·9)/12 = 292.0031 less 18.7034 · 2.7 = 50.4993: 241.5038 mm⁴ from the nose.
    // Hollow behind, a hole 3.3 across and 2.43 deep past the bore: π/4 (3.3² - 2.1²) 2.43 = 12.3672, its middle at 5.4 - 1.215 = 4.185, lever 51.7567.
    // Left: 57.9935 mm³, 189.7471 / 57.9935 = 3.27187 from the nose.
    [Fact]
    public void AddCone_SixMillimeterTungsten_HasWideEndAft()
    {
        BodyPart cone = Part(new PartSpec(PartKind.Cone) { DensityKgM3 = 17000, SizeM = 6 * Mm });

        Assert.Equal(57.9935, cone.SolidMm3(), 5e-4);
        Assert.Equal(57.9935 * 17e-3, cone.MassG(), 1e-5);
        AssertNear(new Vector3D(3.27187, 0, 0), cone.MassCenterMm(), 1e-4);
    }

    // Lead wire, mg per cm by diameter in thousandths of an inch (trade table, common practice; the table of check values). 10 turns close wound on a
    // 1 mm shank: one turn is √((π (1 + d))² + d²) long. The table itself is π/4 d² · 11.34 rounded to 0.01 mg.
    [Theory]
    [InlineData(10, 5.75)]
    [InlineData(15, 12.93)]
    [InlineData(20, 22.98)]
    [InlineData(25, 35.91)]
    [InlineData(30, 51.71)]
    [InlineData(35, 70.39)]
    public void AddWraps_LeadWire_WeighsWhatTheTableSays(int thousandths, double mgPerCm)
    {
        double dMm = thousandths * 0.0254;
        double wireCm = 10 * Math.Sqrt(Math.Pow(Math.PI * (1 + dMm), 2) + dMm * dMm) / 10;

        BodyPart wraps = Part(new PartSpec(PartKind.Wraps) { Material = "lead", DiameterM = dMm * Mm, Turns = 10, AtM = 4 * Mm });

        Assert.Equal(mgPerCm * wireCm, 1e3 * wraps.MassG(), 2e-3 * mgPerCm * wireCm);
        AssertNear(new Vector3D(4 + 5 * dMm, 0, 0), wraps.MassCenterMm(), 1e-9);
        DragElement drag = Assert.Single(wraps.Drag);
        Assert.Equal(1 + 2 * dMm, drag.DiameterM / Mm, 1e-9);
    }

    // 12 turns of 1 mm wire in a run of 8 mm: 8 turns at radius 1, then 4 at radius 2 lying over the front 4 mm.
    // Wire: 8 √((2π)² + 1) = 50.8975 at x 4, 4 √((4π)² + 1) = 50.4244 at x 2; mass 101.3219 · 0.785398 · 11.34 = 902.41 mg; x 3.00467.
    [Fact]
    public void AddWraps_MoreTurnsThanFit_MakesSecondLayer()
    {
        BodyPart wraps = Part(new PartSpec(PartKind.Wraps) { Material = "lead", DiameterM = 1 * Mm, Turns = 12, ToM = 8 * Mm });

        Assert.Equal(0.90241, wraps.MassG(), 2e-5);
        Assert.Equal(3.00467, wraps.MassCenterMm().X, 2e-5);
        Assert.Equal(5, Assert.Single(wraps.Drag).DiameterM / Mm, 1e-9);
    }

    // Shank 1 mm; 8 turns of 1 mm wire make it 3 mm across, so 8 turns of 0.5 mm over them run at radius 1.5 + 0.25 = 1.75: 8 √((2π 1.75)² + 0.25) = 88.0554
    // mm,
    // times π/4 · 0.25 · 11.34 mg = 196.066 mg; on the bare shank it would be at 0.75 and weigh less than half. Outside 4 mm.
    [Fact]
    public void AddWraps_OverWraps_AreWoundOnThem()
    {
        PartSpec first = new(PartKind.Wraps) { Material = "lead", DiameterM = 1 * Mm, Turns = 8, AtM = 2 * Mm };
        PartSpec second = new(PartKind.Wraps) { Material = "lead", DiameterM = 0.5 * Mm, Turns = 8, AtM = 3 * Mm };

        BodyPart over = FlyBuilder.Build(Recipe(first, second)).Body.Parts[2];

        Assert.Equal(0.196066, over.MassG(), 2e-6);
        Assert.Equal(4, Assert.Single(over.Drag).DiameterM / Mm, 1e-9);
        // Behind the first wraps the same wire lies on the shank.
        Assert.Equal(2, Assert.Single(FlyBuilder.Build(Recipe(first, second with { AtM = 11 * Mm })).Body.Parts[2].Drag).DiameterM / Mm, 1e-9);
    }

    // Trade: lead eyes of 1/50, 1/36 and 1/24 oz measure about 5/32, 3/16 and 7/32 in (common practice, no source; a tenth allowed).
    [Theory]
    [InlineData(50, 5.0 / 32)]
    [InlineData(36, 3.0 / 16)]
    [InlineData(24, 7.0 / 32)]
    public void AddDumbbell_LeadByWeight_IsAboutTheTradesSize(int perOunce, double inches)
    {
        BodyPart eyes = Part(new PartSpec(PartKind.DumbbellEyes) { Material = "lead", MassKg = 28.349523e-3 / perOunce });

        Assert.Equal(28.349523 / perOunce, eyes.MassG(), 1e-9);
        Assert.Equal(inches * 25.4, eyes.Drag.Max(e => e.DiameterM) / Mm, 0.1 * inches * 25.4);
    }

    // Eyes 5 across on a 1 mm wire: waist 1.75 thick, so its middle lies 0.5 + 0.875 above the shank's; eyes at 2 and 2 + 5, middle 4.5.
    [Theory]
    [InlineData(null, 1.375)]
    [InlineData(Side.Top, 1.375)]
    [InlineData(Side.Under, -1.375)]
    public void AddDumbbell_EitherSide_SitsOnShank(Side? side, double z)
    {
        BodyPart eyes = Part(new PartSpec(PartKind.DumbbellEyes) { Material = "brass", SizeM = 5 * Mm, AtM = 2 * Mm, Side = side });

        AssertNear(new Vector3D(4.5, 0, z), eyes.MassCenterMm(), 1e-9);
        AssertNear(new Vector3D(4.5, 0, z), eyes.BuoyancyCenterMm(), 1e-9);
    }

    [Fact]
    public void AddBead_MassAndSize_KeepsMassAndMatchesVolumeToIt()
    {
        BodyPart bead = Part(new PartSpec(PartKind.Bead) { Material = "glass", SizeM = 4 * Mm, MassKg = 0.05e-3 });

        Assert.Equal(0.05, bead.MassG(), 1e-12);
        Assert.Equal(20, bead.SolidMm3(), 1e-9);
    }
}
