using CsCheck;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;
using Xunit;
using static TyingClass.Recipes.Tests.Bodies.TestFly;

namespace TyingClass.Recipes.Tests.Bodies;

public sealed class RigidMotionTests
{
    private static readonly PartSpec Eyes = new(PartKind.DumbbellEyes) { SizeM = 5 * Mm, AtM = 2 * Mm };

    private static readonly PartKind[] PlacedByFront =
        [PartKind.Bead, PartKind.Cone, PartKind.DumbbellEyes, PartKind.Wraps, PartKind.Wing, PartKind.Legs];

    // Turned a quarter right-handed about +x, what stood up (+z) points to -y; then set over 0.3 to +y.
    [Fact]
    public void Build_ClockedQuarterAndOffset_TurnsThenShifts()
    {
        BodyPart eyes = Part(Eyes with { ClockedRad = Math.PI / 2, SideOffsetM = 0.3 * Mm });

        AssertNear(new Vector3D(4.5, 0.3 - 1.375, 0), eyes.MassCenterMm(), 1e-9);
        Assert.All(eyes.Drag, e => Assert.Equal(1, Math.Abs(e.Axis.Z), 1e-12));
    }

    [Fact]
    public void Build_AnyErrorOfTying_KeepsMassVolumeDragAndShape() =>
        Gen.Select(Gen.OneOfConst(KindsOfPart.All.Select(k => k.Kind).ToArray()), Gen.Double[-3, 3], Gen.Double[-2, 2]).Sample((kind, clockedRad, offsetMm) =>
        {
            PartSpec spec = new(kind) { AtM = 3 * Mm };
            BodyPart straight = Part(spec), moved = Part(spec with { ClockedRad = clockedRad, SideOffsetM = offsetMm * Mm });

            Assert.Equal(straight.MassG(), moved.MassG(), 1e-12);
            Assert.Equal(straight.SolidMm3(), moved.SolidMm3(), 1e-9);
            Assert.Equal(straight.Drag.Sum(e => e.LengthM + e.StreamerAreaM2), moved.Drag.Sum(e => e.LengthM + e.StreamerAreaM2), 1e-12);
            Vector3D a = straight.SpreadMm2(), b = moved.SpreadMm2();
            Assert.Equal(a.X, b.X, 1e-9);
            Assert.Equal(a.Y + a.Z, b.Y + b.Z, 1e-9);
            Vector3D center = straight.MassCenterMm();
            // What is threaded on the wire goes no farther aside than its bore allows.
            double sideMm = Math.Clamp(offsetMm, 1e3 * straight.Room.LowM, 1e3 * straight.Room.HighM);
            AssertNear(
                new Vector3D(
                    center.X,
                    Math.Cos(clockedRad) * center.Y - Math.Sin(clockedRad) * center.Z + sideMm,
                    Math.Sin(clockedRad) * center.Y + Math.Cos(clockedRad) * center.Z),
                moved.MassCenterMm(), 1e-9);
        });

    [Fact]
    public void Build_MovedAlongTheShank_CarriesEveryElementAlong() =>
        Gen.Select(Gen.Int[0, PlacedByFront.Length - 1].Select(i => PlacedByFront[i]), Gen.Double[0, 9])
            .Sample((kind, shiftMm) =>
            {
                PartSpec spec = new(kind) { AtM = 1 * Mm, LengthM = 5 * Mm, Turns = 4, SizeM = 4 * Mm };
                BodyPart here = Part(spec), there = Part(spec with { AtM = (1 + shiftMm) * Mm });

                AssertNear(here.MassCenterMm() + new Vector3D(shiftMm, 0, 0), there.MassCenterMm(), 1e-9);
                for (int i = 0; i < here.Drag.Length; i++)
                {
                    AssertNear(here.Drag[i].PositionM / Mm + new Vector3D(shiftMm, 0, 0), there.Drag[i].PositionM / Mm, 1e-9);
                }
            });

    // Twice as long in every dimension: eight times the mass, twice the levers, four times the areas.
    [Fact]
    public void Build_Scaled_FollowsCubeAndSquare() =>
        Gen.Select(Gen.Double[0.5, 3], Gen.Enum<BendKind>(), Gen.Enum<EyeKind>()).Sample((k, bend, eye) =>
        {
            FlyBody one = FlyBuilder.Build(Scaled(1, bend, eye)).Body, many = FlyBuilder.Build(Scaled(k, bend, eye)).Body;
            for (int i = 0; i < one.Parts.Length; i++)
            {
                Assert.Equal(k * k * k * one.Parts[i].MassG(), many.Parts[i].MassG(), 1e-9 * k * k * k);
                AssertNear(k * one.Parts[i].MassCenterMm(), many.Parts[i].MassCenterMm(), 1e-9 * k);
                Assert.Equal(
                    k * k * one.Parts[i].Drag.Sum(e => e.LengthM * e.DiameterM + e.StreamerAreaM2),
                    many.Parts[i].Drag.Sum(e => e.LengthM * e.DiameterM + e.StreamerAreaM2), 1e-12 * k * k);
            }

            AssertNear(k * one.TowPointM, many.TowPointM, 1e-12);
        });

    [Fact]
    public void Build_NoErrorOfTying_IsSymmetricLeftToRight()
    {
        FlyBody body = FlyBuilder.Build(Scaled(1, BendKind.Round, EyeKind.Down)).Body;

        Assert.All(body.Parts, part =>
        {
            Assert.Equal(0, part.MassCenterMm().Y, 1e-12);
            Assert.Equal(0, part.Drag.Sum(e => e.PositionM.Y * (e.LengthM + e.DiameterM)), 1e-15);
        });
    }

    private static Recipe Scaled(double k, BendKind bend, EyeKind eye)
    {
        double s = k * Mm, massScale = k * k * k * 1e-3;
        return Recipe(
            new HookSpec { ShankM = 20 * s, GapeM = 8 * s, WireM = 1 * s, Bend = bend, Eye = eye },
            new PartSpec(PartKind.Cone) { SizeM = 5 * s },
            new PartSpec(PartKind.Wraps) { DiameterM = 0.6 * s, Turns = 8, AtM = 6 * s },
            new PartSpec(PartKind.Body) { AtM = 5 * s, ToM = 15 * s, DiameterM = 4 * s },
            new PartSpec(PartKind.Wing) { LengthM = 30 * s, MassKg = 0.1 * massScale, AtM = 5 * s },
            new PartSpec(PartKind.DumbbellEyes) { SizeM = 4 * s, AtM = 15 * s });
    }
}
