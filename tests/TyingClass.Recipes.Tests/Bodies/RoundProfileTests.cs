using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Towing;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using Xunit;

namespace TyingClass.Recipes.Tests.Bodies;

/// <summary>What is threaded and wound on the shank is one round body to water that flows askew.</summary>
public sealed class RoundProfileTests
{
    private const double Mm = 1e-3;
    private static readonly Water Fresh = new(998.2041, 1001.57e-6);

    private static readonly PartSpec Bead = new(PartKind.Bead) { SizeM = 4 * Mm };
    private static readonly PartSpec Cone = new(PartKind.Cone) { SizeM = 4 * Mm, LengthM = 4 * Mm };
    private static readonly PartSpec Foam = new(PartKind.Body) { Material = "closed-cell foam", DiameterM = 3 * Mm, ToM = 14 * Mm };

    [Fact]
    public void Build_BeadAlone_HasNone() => Assert.Empty(Steps(Bead));

    [Fact]
    public void Build_AnyChain_EndsAsThinAsItBegan()
    {
        PartSpec[][] chains = [[Foam], [Bead, At(Foam, 4)], [Cone, At(Foam, 4)], [Cone, At(Foam, 6)], [Bead, At(Cone, 6), At(Foam, 11)]];
        foreach (PartSpec[] parts in chains)
        {
            SideForceElement[] steps = Steps(parts);
            Assert.NotEmpty(steps);
            Assert.Equal(0, steps.Sum(s => s.SectionStepM2), 1e-15);
        }
    }

    // Cone and body in touch are one body 14 mm long and 4 wide. Its nose: 1.26 of 1.42 mm² widest, times k₂ - k₁ at 3.5: a body of its own would get far
    // less of it.
    [Fact]
    public void Build_ConeBeforeBody_IsTheNoseOfTheWhole()
    {
        double nose = Steps(Cone, At(Foam, 4)).Where(s => s.SectionStepM2 > 0).Sum(s => s.SectionStepM2);
        Assert.Equal(LambInertia.SideShare(14.0 / 4) * Math.PI * 4, nose / Mm / Mm, 1e-3);
        Assert.DoesNotContain(Steps(Cone), s => s.SectionStepM2 > 0.1 * nose);
    }

    // The step down from cone to body belongs to the cone, the wider of the two.
    [Fact]
    public void Build_ConeBeforeBody_StepsDownToIt()
    {
        BuiltFly fly = Fly(Cone, At(Foam, 4));
        double share = LambInertia.SideShare(14.0 / 4);
        SideForceElement down = Assert.Single(fly.Body.Parts[1].SideForces, s => s.SectionStepM2 < 0);
        Assert.Equal(4, down.PositionM.X / Mm, 1e-9);
        Assert.Equal(-share * Math.PI / 4 * (16 - 9), down.SectionStepM2 / Mm / Mm, 1e-3);
        SideForceElement end = Assert.Single(fly.Body.Parts[2].SideForces);
        Assert.Equal(14, end.PositionM.X / Mm, 1e-9);
    }

    [Theory]
    [InlineData(0.0001)]
    [InlineData(0.1)]
    public void At_AGapOfATenth_DecidesNothing(double gapMm)
    {
        Wrench touching = Askew(Bead, At(Foam, 3.75)), apart = Askew(Bead, At(Foam, 3.75 + gapMm) with { ToM = (14 + gapMm) * Mm });
        Assert.True((touching.ForceN - apart.ForceN).Length < gapMm * touching.ForceN.Length);
        Assert.True((touching.MomentNM - apart.MomentNM).Length < gapMm * touching.MomentNM.Length);
    }

    // A gap of four widths: two bodies.
    [Fact]
    public void At_FarApart_EachIsItsOwn()
    {
        double nose = Fly(Bead, At(Foam, 20) with { ToM = 30 * Mm }).Body.Parts[2].SideForces.Where(s => s.SectionStepM2 > 0).Sum(s => s.SectionStepM2);
        Assert.Equal(LambInertia.SideShare(10.0 / 3) * Math.PI / 4 * 9, nose / Mm / Mm, 0.15);
    }

    private static PartSpec At(PartSpec part, double mm) => part with { AtM = mm * Mm };

    private static BuiltFly Fly(params PartSpec[] parts) => FlyBuilder.Build(
        new Recipe("Hollow Reed", Intent.PointDown, new HookSpec { Size = new HookSize(2), ShankM = 40 * Mm }, [.. parts], new FishingSpec()));

    private static SideForceElement[] Steps(params PartSpec[] parts) => [.. Fly(parts).Body.Parts.SelectMany(p => p.SideForces)];

    private static Wrench Askew(params PartSpec[] parts) => new DragField(
        Fly(parts).Body.Parts.Select(p => p with { Drag = [] }), Fresh, default).At(new Vector3D(0.4, 0.1, 0.15));
}
