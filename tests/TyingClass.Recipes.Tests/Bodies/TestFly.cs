using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Tests.Bodies;

/// <summary>A hook of round numbers, in mm: shank 20, gape 8, wire 1. And ways to weigh what is built on it.</summary>
internal static class TestFly
{
    public const double Mm = 1e-3;

    public static HookSpec Hook { get; } = new() { ShankM = 20 * Mm, GapeM = 8 * Mm, WireM = 1 * Mm };

    public static Recipe Recipe(HookSpec hook, params ReadOnlySpan<PartSpec> parts) =>
        new("Slate Minnow", Intent.PointDown, hook, [.. parts], new FishingSpec());

    public static Recipe Recipe(params ReadOnlySpan<PartSpec> parts) => Recipe(Hook, parts);

    public static BodyPart Part(PartSpec part, int refinement = 1) => FlyBuilder.Build(Recipe(part), refinement).Body.Parts[1];

    public static BodyPart BuiltHook(HookSpec hook) => FlyBuilder.Build(Recipe(hook)).Body.Parts[0];

    public static double MassG(this BodyPart part) => 1e3 * part.Masses.Sum(e => e.MassKg);

    public static double SolidMm3(this BodyPart part) => 1e9 * part.Solids.Sum(e => e.VolumeM3);

    public static Vector3D MassCenterMm(this BodyPart part) =>
        Sum(part.Masses.Select(e => e.MassKg * e.PositionM)) / part.Masses.Sum(e => e.MassKg) / Mm;

    public static Vector3D BuoyancyCenterMm(this BodyPart part) =>
        Sum(part.Solids.Select(e => e.VolumeM3 * e.PositionM)) / part.Solids.Sum(e => e.VolumeM3) / Mm;

    /// <summary>Mean square distance from the mass center along each axis, mm².</summary>
    public static Vector3D SpreadMm2(this BodyPart part)
    {
        Vector3D center = part.MassCenterMm();
        double mass = part.Masses.Sum(e => e.MassKg);
        return Sum(part.Masses.Select(e =>
        {
            Vector3D r = e.PositionM / Mm - center;
            return e.MassKg / mass * new Vector3D(r.X * r.X, r.Y * r.Y, r.Z * r.Z);
        }));
    }

    public static void AssertNear(Vector3D expected, Vector3D actual, double tolerance)
    {
        Xunit.Assert.Equal(expected.X, actual.X, tolerance);
        Xunit.Assert.Equal(expected.Y, actual.Y, tolerance);
        Xunit.Assert.Equal(expected.Z, actual.Z, tolerance);
    }

    public static ImmutableArray<DragElement> Cylinders(this BodyPart part) => [.. part.Drag.Where(e => e.Shape == DragShape.Cylinder)];

    private static Vector3D Sum(IEnumerable<Vector3D> vectors) => vectors.Aggregate(Vector3D.Zero, (a, b) => a + b);
}
