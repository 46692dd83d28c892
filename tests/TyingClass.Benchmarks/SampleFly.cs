using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;

namespace TyingClass.Benchmarks;

/// <summary>The fly every figure is measured on: a cone, lead wraps, a dubbed body and a fur wing on a long-shank hook.</summary>
internal static class SampleFly
{
    public static Recipe Recipe { get; } = new(
        "Copper Loach",
        Intent.PointUp,
        new HookSpec { Size = new HookSize(6), ShankSteps = 4, Eye = EyeKind.Down, EyeAngleRad = 25 * Math.PI / 180 },
        [
            new PartSpec(PartKind.Cone) { Material = "brass", SizeM = 5.6e-3 },
            new PartSpec(PartKind.Wraps) { Material = "lead", DiameterM = 0.635e-3, Turns = 18, AtM = 6e-3 },
            new PartSpec(PartKind.Body) { Material = "fur dubbing", MassKg = 0.1e-3, DiameterM = 6e-3, AtM = 6e-3, ToM = 22e-3 },
            new PartSpec(PartKind.Wing) { Material = "fur strip", LengthM = 45e-3, MassKg = 0.25e-3, AtM = 5e-3, Side = Side.Under },
        ],
        new FishingSpec { SpeedMS = 0.4 });

    public static BuiltFly Built { get; } = FlyBuilder.Build(Recipe);
}
