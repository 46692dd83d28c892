using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Supplies;
using Xunit;

namespace TyingClass.Recipes.Tests.Parts;

/// <summary>Rattle, rib, weed guard and putty against numbers worked out by hand.</summary>
public sealed class NewPartsTests
{
    private const double Mm = 1e-3;

    private static readonly HookSpec Hook = new() { ShankM = 25 * Mm, WireM = 1 * Mm, GapeM = 9 * Mm };

    // Tube 4 × 12 mm of glass (2500 kg/m³, Morton & Hearle), wall 0.12 × 4 = 0.48 mm: bore 3.04 mm, inside 11.04 mm long.
    // Outside π/4 · 16 · 12 = 150.80 mm³, inside π/4 · 9.2416 · 11.04 = 80.133 mm³, so 70.663 mm³ of glass, 176.66 mg.
    // Balls 0.65 × 3.04 = 1.976 mm of steel (7850 kg/m³): π/6 · 7.7154 = 4.0398 mm³ each, three 12.119 mm³, 95.137 mg.
    [Fact]
    public void Rattle_ByHand_HasMassVolumeAndSealedAir()
    {
        BodyPart rattle = Built(new PartSpec(PartKind.Rattle) { DiameterM = 4 * Mm, LengthM = 12 * Mm, Balls = 3, BallMaterial = "steel", AtM = 5 * Mm });

        Assert.Equal(176.66 + 95.14, 1e6 * MassKg(rattle), 0.05);
        Assert.Equal(70.663 + 12.119, 1e9 * rattle.Solids.Sum(s => s.VolumeM3), 0.01);
        AirElement air = Assert.Single(rattle.Air);
        Assert.Equal(80.133 - 12.119, 1e9 * air.FreshVolumeM3, 0.01);
        Assert.True(double.IsPositiveInfinity(air.SoakTimeS));
    }

    // What a sealed tube pushes aside is its outline, whatever is in it: π/4 · 16 · 12 mm³.
    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    public void Rattle_AnyBalls_DisplacesItsOutline(int balls)
    {
        BodyPart rattle = Built(new PartSpec(PartKind.Rattle) { DiameterM = 4 * Mm, LengthM = 12 * Mm, Balls = balls, AtM = 5 * Mm });

        Assert.Equal(150.796, 1e9 * (rattle.Solids.Sum(s => s.VolumeM3) + rattle.Air.Sum(a => a.FreshVolumeM3)), 0.01);
    }

    // Its middle stands half the wire and half its own width off the shank's axis: 0.5 + 2 mm.
    [Theory]
    [InlineData(Side.Top, 0, 2.5)]
    [InlineData(Side.Under, 0, -2.5)]
    [InlineData(Side.Beside, 2.5, 0)]
    public void Rattle_Side_StandsOffTheShank(Side side, double yMm, double zMm)
    {
        BodyPart rattle = Built(new PartSpec(PartKind.Rattle) { DiameterM = 4 * Mm, LengthM = 12 * Mm, AtM = 5 * Mm, Side = side });

        Assert.Equal(yMm, 1e3 * rattle.Masses.Sum(m => m.MassKg * m.PositionM.Y) / MassKg(rattle), 1e-9);
        Assert.Equal(zMm, 1e3 * rattle.Masses.Sum(m => m.MassKg * m.PositionM.Z) / MassKg(rattle), 1e-9);
    }

    // Copper (8930 kg/m³, handbook) of 0.2 mm over a body of 4 mm, 5 turns on 15 mm: a turn is √((π · 4.2)² + 3²) = 13.532 mm,
    // 67.660 mm in all, times π/4 · 0.04 = 0.031416 mm² is 2.1256 mm³ and 18.98 mg.
    [Fact]
    public void Rib_OverABody_WeighsByItsTurns()
    {
        PartSpec body = new(PartKind.Body) { DiameterM = 4 * Mm, AtM = 5 * Mm, ToM = 20 * Mm };
        BodyPart rib = Built(body, new PartSpec(PartKind.Rib) { DiameterM = 0.2 * Mm, Turns = 5, AtM = 5 * Mm, ToM = 20 * Mm });

        Assert.Equal(18.98, 1e6 * MassKg(rib), 0.01);
        Assert.Empty(rib.Drag);
    }

    // Half a circle across D and a quarter of an ellipse of half axes 25 and D: Ramanujan's second formula (1914) gives its length.
    // Nylon 1140 kg/m³ (Morton & Hearle).
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void WeedGuard_Loops_WeighByTheirLine(int loops)
    {
        BodyPart guard = Built(new PartSpec(PartKind.WeedGuard) { Material = "nylon", DiameterM = 0.5 * Mm, Loops = loops, AtM = 0, ToM = 25 * Mm });
        ResolvedHook hook = HookScale.Resolve(Hook);
        double share = (25 * Mm - hook.PointM.X) / (25 * Mm), depthMm = 1.15 * 9 / Math.Max(0.5, Math.Sqrt(1 - share * share));
        double h = Math.Pow((25 - depthMm) / (25 + depthMm), 2), quarterMm = Math.PI / 4 * (25 + depthMm) * (1 + 3 * h / (10 + Math.Sqrt(4 - 3 * h)));
        double lengthMm = Math.PI / 2 * depthMm + quarterMm;

        Assert.Equal(loops * lengthMm * Math.PI / 4 * 0.25 * 1.140, 1e6 * MassKg(guard), 0.001);
        Assert.True(guard.Masses.Sum(m => m.MassKg * m.PositionM.Z) < 0, "It stands on the point side.");
        Assert.Equal(0, guard.Masses.Sum(m => m.MassKg * m.PositionM.Y), 1e-12);
    }

    [Fact]
    public void WeedGuard_AtThePoint_ClearsIt()
    {
        ResolvedHook hook = HookScale.Resolve(Hook);
        BodyPart guard = Built(new PartSpec(PartKind.WeedGuard) { AtM = 0, ToM = 25 * Mm });

        double belowM = guard.Masses.Where(m => Math.Abs(m.PositionM.X - hook.PointM.X) < 1.5 * Mm).Min(m => m.PositionM.Z);
        Assert.InRange(belowM, -1.35 * 9 * Mm, -1.05 * 9 * Mm);
    }

    // 0.2 g of 10000 kg/m³ is 20 mm³. As a ball on one side: ∛(6 · 20/π) = 3.3678 mm, its middle 0.5 + 1.6839 mm under the axis.
    [Fact]
    public void Putty_Under_IsABallOfItsMass()
    {
        BodyPart putty = Built(new PartSpec(PartKind.Putty) { MassKg = 0.2e-3, AtM = 5 * Mm, Side = Side.Under });

        Assert.Equal(0.2, 1e3 * MassKg(putty), 1e-9);
        Assert.Equal(20, 1e9 * putty.Solids.Sum(s => s.VolumeM3), 1e-6);
        Assert.Equal(-2.1839, 1e3 * putty.Masses.Sum(m => m.MassKg * m.PositionM.Z) / MassKg(putty), 1e-3);
    }

    // Round the shank its outline grows by the wire in it: √((6 · 20/π)^⅔ + 1²) = 3.5131 mm.
    [Fact]
    public void Putty_AroundTheShank_MakesRoomForTheWire()
    {
        Recipe fly = Fly(new PartSpec(PartKind.Putty) { MassKg = 0.2e-3, AtM = 5 * Mm });

        Assert.Equal("3.513 mm", Assert.Single(FlyBuilder.Build(fly).Assumed, a => a.What == "putty size").Value);
    }

    [Theory]
    [InlineData(PartKind.Putty, "tin-lead solder", "lead", "hot")]
    [InlineData(PartKind.Putty, "lead-free solder", "hot", null)]
    [InlineData(PartKind.Rattle, "glass", "glass", null)]
    public void Cautions_OfTheNewParts_AreShown(PartKind kind, string material, string code, string? another)
    {
        string[] codes = [.. Cautions.For(Fly(new PartSpec(kind) { Material = material, AtM = 5 * Mm })).Select(c => c.Code)];

        Assert.Contains(code, codes);
        if (another is not null) Assert.Contains(another, codes);
    }

    [Theory]
    [InlineData("plastic", "glass")]
    [InlineData("glass", "lead")]
    public void Cautions_OfARattle_NameNoOtherDanger(string material, string code) =>
        Assert.DoesNotContain(code, Cautions.For(Fly(new PartSpec(PartKind.Rattle) { Material = material, AtM = 5 * Mm })).Select(c => c.Code));

    [Fact]
    public void SupplyList_OfTheNewParts_IsBoughtAsItIsSold()
    {
        Recipe fly = Fly(
            new PartSpec(PartKind.Rattle) { DiameterM = 4 * Mm, LengthM = 12 * Mm, AtM = 0 }, new PartSpec(PartKind.Rib) { DiameterM = 0.2 * Mm, AtM = 2 * Mm },
            new PartSpec(PartKind.WeedGuard) { AtM = 0 }, new PartSpec(PartKind.Putty) { MassKg = 0.2e-3, AtM = 5 * Mm });
        Supply[] list = [.. SupplyList.For([(fly, 1)])];

        SupplyItem tube = new("rattle") { Substance = "glass", SizeM = 4e-3, LengthM = 12e-3, With = "balls 3 steel" };
        Assert.Equal(1, Assert.Single(list, s => s.Item == tube).Pieces);
        Assert.Equal(5, Assert.Single(list, s => s.Item == new SupplyItem("rib") { Substance = "copper", SizeM = 0.2e-3 }).Turns);
        Assert.InRange(Assert.Single(list, s => s.Item is { What: "weed guard", Substance: "nylon" }).WireM, 0.03, 0.06);
        Assert.Equal(0.2e-3, Assert.Single(list, s => s.Item.What == "tungsten putty").MassKg, 1e-12);
    }

    private static Recipe Fly(params PartSpec[] parts) => new("Alder Test", Intent.PointDown, Hook, [.. parts], new FishingSpec());

    // The last of them.
    private static BodyPart Built(params PartSpec[] parts) => FlyBuilder.Build(Fly(parts)).Body.Parts[^1];

    private static double MassKg(BodyPart part) => part.Masses.Sum(m => m.MassKg);
}
