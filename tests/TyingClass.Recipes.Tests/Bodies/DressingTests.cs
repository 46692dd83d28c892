using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;
using Xunit;
using static TyingClass.Recipes.Tests.Bodies.TestFly;

namespace TyingClass.Recipes.Tests.Bodies;

public sealed class DressingTests
{
    // A strip of s = 0.9, 40 long, tied in at 5: its weight acts (1 - 0.9) · 20 = 2 along the strip from the tie-in, whatever its angle.
    [Theory]
    [InlineData(Side.Top)]
    [InlineData(Side.Under)]
    [InlineData(Side.Around)]
    public void AddWing_SuppleStrip_WeighsNearItsTieIn(Side side)
    {
        BodyPart wing = Part(new PartSpec(PartKind.Wing) { Material = "fur strip", LengthM = 40 * Mm, MassKg = 0.2e-3, AtM = 5 * Mm, Side = side });
        Vector3D center = wing.MassCenterMm();

        Assert.InRange(center.X, 5 + 2 * Math.Cos(Math.PI / 9), 7.0000001);
        Assert.Equal(0, center.Y, 1e-12);
        Assert.Equal(side == Side.Top ? 1 : side == Side.Under ? -1 : 0, Math.Sign(Math.Round(center.Z, 9)));
        AssertNear(center, wing.BuoyancyCenterMm(), 1e-9);
        DragElement streamer = Assert.Single(wing.Drag, e => e.Shape == DragShape.Streamer);
        AssertNear(center, streamer.PositionM / Mm, 1e-9);
    }

    [Fact]
    public void AddWing_TopAndUnder_AreMirrorImages()
    {
        PartSpec spec = new(PartKind.Wing) { Material = "bucktail", LengthM = 30 * Mm, MassKg = 0.05e-3, AtM = 3 * Mm };

        BodyPart top = Part(spec with { Side = Side.Top }), under = Part(spec with { Side = Side.Under });

        Vector3D mirrored = top.MassCenterMm() with { Z = -top.MassCenterMm().Z };
        AssertNear(mirrored, under.MassCenterMm(), 1e-9);
        Assert.Equal(top.Drag.Sum(e => e.PositionM.Z), -under.Drag.Sum(e => e.PositionM.Z), 1e-12);
    }

    // Stiff between the ties at 2 and 14: 12 of 40 mm of strip, 0.06 of 0.2 g, middle at 8; the other 28 trail from 14, weight (1 - 0.9) · 14 behind it.
    [Fact]
    public void AddWing_TiedAtBothEnds_IsStiffBetweenTies()
    {
        BodyPart wing = Part(new PartSpec(PartKind.Wing)
        {
            Material = "fur strip",
            LengthM = 40 * Mm,
            MassKg = 0.2e-3,
            AtM = 2 * Mm,
            ToM = 14 * Mm,
            Tied = TieDown.BothEnds,
        });

        Assert.Equal(0.2, wing.MassG(), 1e-9);
        Assert.Equal((0.06 * 8 + 0.14 * 15.4) / 0.2, wing.MassCenterMm().X, 1e-9);
        // Hide lies flat: a plate of a tenth of its length across, with no cylinder beside it.
        Assert.Empty(wing.Cylinders());
        SideForceElement bound = wing.SideForces[0];
        Assert.Equal((SideForceShape.Plate, Vector3D.UnitZ), (bound.Shape, bound.Normal));
        Assert.Equal(12, bound.LengthM / Mm, 1e-9);
        Assert.Equal(4, bound.WidthM / Mm, 1e-9);
        Assert.Equal(8, bound.PositionM.X / Mm, 1e-9);
    }

    // Tube 4 mm across on a 1 mm shank, 10 mm long: π/4 (16 - 1) 10 = 117.810 mm³. 140 mg of keratin fill 106.870 of them (1310 kg/m³), so of the 168 mm³ of
    // air
    // that 1.2 mm³/mg would catch only 10.940 find room; the 7 mm³ sealed in the fibers stay theirs.
    [Fact]
    public void AddBody_MoreAirThanRoom_HoldsWhatTheFibersLeave()
    {
        BodyPart body = Part(new PartSpec(PartKind.Body) { Material = "fur dubbing", MassKg = 140e-6, DiameterM = 4 * Mm, AtM = 2 * Mm, ToM = 12 * Mm });

        Assert.Equal(10.940 + 7, 1e9 * body.Air.Sum(e => e.VolumeM3(0)), 2e-3);
        Assert.Equal(7, 1e9 * body.Air.Sum(e => e.VolumeM3(double.PositiveInfinity)), 1e-6);
    }

    // Keratin 1310 with 1.0 mm³ of caught and 0.10 mm³ of sealed air to the mg (catalogue estimates): 200 mg hold 200 mm³ that soaks and 20 that never does.
    [Fact]
    public void AddWing_FurStrip_HoldsAirAndWater()
    {
        BodyPart wing = Part(new PartSpec(PartKind.Wing) { Material = "fur strip", LengthM = 40 * Mm, MassKg = 0.2e-3, AtM = 5 * Mm });

        Assert.Equal(200 / 1.31, wing.SolidMm3(), 1e-6);
        Assert.Equal(220, 1e9 * wing.Air.Sum(e => e.VolumeM3(0)), 1e-6);
        Assert.Equal(20, 1e9 * wing.Air.Sum(e => e.VolumeM3(double.PositiveInfinity)), 1e-6);
        Assert.Equal(0.4e-3, wing.HeldWaterKg, 1e-12);
    }

    // 10 mm of dubbing 6 across on a 1 mm shank: π/4 (36 - 1) 10 = 274.889 mm³ of outline, one tenth of it keratin: 36.0105 mg.
    [Fact]
    public void AddSleeve_DubbedBodyWithoutMass_IsEstimatedFromItsOutline()
    {
        Recipe recipe = Recipe(new PartSpec(PartKind.Body) { Material = "fur dubbing", AtM = 4 * Mm, ToM = 14 * Mm, DiameterM = 6 * Mm });

        BuiltFly fly = FlyBuilder.Build(recipe);

        Assert.Equal(36.0105e-3, fly.Body.Parts[1].MassG(), 1e-6);
        AssertNear(new Vector3D(9, 0, 0), fly.Body.Parts[1].MassCenterMm(), 1e-9);
        Assert.Contains(fly.Assumed, a => a.What == "body mass" && a.Value == "0.03601 g" && a.Why.Contains("estimate", StringComparison.Ordinal));
    }

    // The same body over 5 turns of 1 mm wire (outside diameter 3, 5 mm long): π/4 (9 - 1) 5 = 31.416 mm³ less, a tenth of it keratin: 4.1155 mg less.
    [Fact]
    public void AddSleeve_OverWraps_HoldsLessDubbing()
    {
        PartSpec body = new(PartKind.Body) { Material = "fur dubbing", AtM = 4 * Mm, ToM = 14 * Mm, DiameterM = 6 * Mm };
        BuiltFly fly = FlyBuilder.Build(Recipe(new PartSpec(PartKind.Wraps) { DiameterM = 1 * Mm, Turns = 5, AtM = 6 * Mm }, body));

        Assert.Equal((36.0105 - 4.1155) * 1e-3, fly.Body.Parts[2].MassG(), 1e-6);
        Assert.Empty(fly.Body.Parts[1].Drag);
    }

    // Foam 80 kg/m³, 10 mm by 4 across: π/4 (16 - 1) 10 = 117.810 mm³, 9.4248 mg, and all of that volume floats, fresh or soaked.
    [Fact]
    public void AddSleeve_Foam_NeverSoaks()
    {
        BodyPart foam = Part(new PartSpec(PartKind.Foam) { Material = "closed-cell foam", AtM = 2 * Mm, ToM = 12 * Mm, DiameterM = 4 * Mm });

        Assert.Equal(9.4248e-3, foam.MassG(), 1e-7);
        Assert.Equal(117.810, foam.SolidMm3(), 1e-3);
        Assert.Empty(foam.Air);
    }

    [Fact]
    public void AddSleeve_FoamOnTop_SitsOnTheShank()
    {
        BodyPart foam = Part(new PartSpec(PartKind.Foam) { AtM = 2 * Mm, ToM = 12 * Mm, DiameterM = 4 * Mm, Side = Side.Top });

        AssertNear(new Vector3D(7, 0, 2.5), foam.MassCenterMm(), 1e-9);
    }

    // A body 4 across behind a bead 3 across stands proud of it by 1 - 9/16 = 0.4375 of its front; a rounded nose shows a quarter of that.
    [Fact]
    public void AddSleeve_BehindBead_MeetsTheFlowOnlyWhereItStandsProud()
    {
        BuiltFly fly = FlyBuilder.Build(Recipe(
            new PartSpec(PartKind.Bead) { SizeM = 3 * Mm },
            new PartSpec(PartKind.Body) { AtM = 2.8 * Mm, ToM = 12 * Mm, DiameterM = 4 * Mm }));
        double behindBead = Assert.Single(fly.Body.Parts[2].Drag).BluntShare;

        double alone = Assert.Single(Part(new PartSpec(PartKind.Body) { AtM = 2.8 * Mm, ToM = 12 * Mm, DiameterM = 4 * Mm }).Drag).BluntShare;

        Assert.Equal(0.25 * 0.4375, behindBead, 1e-9);
        Assert.Equal(0.25 * 0.9375, alone, 1e-9);
    }

    [Fact]
    public void AddHackle_Palmered_IsCenteredOnTheShankAndDragsAlongTheFlow()
    {
        BodyPart hackle = Part(new PartSpec(PartKind.Hackle) { AtM = 4 * Mm, ToM = 14 * Mm, DiameterM = 12 * Mm });

        AssertNear(new Vector3D(9, 0, 0), hackle.MassCenterMm(), 1e-9);
        Assert.Equal(DragShape.Streamer, Assert.Single(hackle.Drag).Shape);
        // 30 fibers a mm, 0.05 mm thick, 5.5 long, keratin: 300 · π/4 0.0025 · 5.5 · 1.31 = 4.2441 mg.
        Assert.Equal(4.2441e-3, hackle.MassG(), 1e-6);
    }

    [Fact]
    public void AddLegs_Pair_BalancesLeftAndRight()
    {
        BodyPart legs = Part(new PartSpec(PartKind.Legs) { Material = "rubber", LengthM = 20 * Mm, AtM = 6 * Mm });

        Assert.Equal(0, legs.MassCenterMm().Y, 1e-12);
        Assert.True(legs.SpreadMm2().Y > 1);
    }

    [Fact]
    public void Build_EveryMaterialAsEveryKind_GivesFinitePositiveMass()
    {
        foreach (Material material in Materials.All)
        {
            foreach (PartKind kind in KindsOfPart.All.Select(k => k.Kind))
            {
                BodyPart part = Part(new PartSpec(kind) { Material = material.Name, AtM = 3 * Mm });

                Assert.True(part.MassG() > 0 && double.IsFinite(part.MassG()), $"{material.Name} as {kind}");
                Assert.All(part.Drag, e => Assert.True(double.IsFinite(e.PositionM.Length + e.StreamerAreaM2 + e.LengthM)));
            }
        }
    }
}
