using System.Collections.Immutable;
using CsCheck;
using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;

namespace TyingClass.Recipes.Tests.Text;

/// <summary>Valid recipes at random: every kind of part, every field now stated and now left out, values to 12 digits.</summary>
internal static class RecipeGen
{
    private const double ShankM = 0.09;

    private static readonly string[] MaterialNames = [.. Materials.All.Select(m => m.Name)];

    public static readonly Gen<Recipe> Valid =
        from name in Gen.Char["abcXYZ 0123456789é鱒:#&*!|>'\"%@`-?{}[],\\<>~"].Array[1, 30].Select(c => new string(c).Trim())
        from intent in Gen.Enum<Intent>()
        from hook in Hook
        from parts in Gen.Select(Gen.Int[0, KindsOfPart.All.Length - 1].Select(i => KindsOfPart.All[i].Kind), Gen.Int[0, 9]).Array[0, 6].SelectMany(Parts)
        from fishing in Fishing
        select new Recipe(name.Length == 0 ? "x" : name, intent, hook, parts, fishing);

    private static Gen<HookSpec> Hook =>
        from measured in Gen.Bool
        from size in Gen.Int[-5, 20].Where(n => n != 1)
        from wireSteps in Gen.Int[-6, 6]
        from wireM in Number(0.3e-3, 1e-3)
        from gapeM in Number(4e-3, 20e-3)
        from eye in Gen.Enum<EyeKind>()
        from angleRad in Maybe(Number(0, 1))
        from jig in Gen.OneOf("45°", "60°", "90°")
        from bend in Gen.Enum<BendKind>()
        from massKg in Maybe(Number(1e-5, 1e-3))
        select new HookSpec
        {
            Size = measured ? null : new HookSize(size),
            ShankM = ShankM,
            WireSteps = measured ? 0 : wireSteps,
            WireM = measured ? wireM : null,
            GapeM = measured ? gapeM : null,
            Eye = eye,
            EyeAngleRad = eye switch { EyeKind.Jig => Rad(jig), EyeKind.Straight => null, _ => angleRad },
            Bend = bend,
            MassKg = massKg,
        };

    private static Gen<FishingSpec> Fishing =>
        from diameterM in Maybe(Number(0.1e-3, 1e-3))
        from strengthN in Maybe(Number(10, 200))
        from material in Maybe(Gen.Enum<LeaderMaterial>())
        from knot in Maybe(Gen.Enum<Knot>())
        from water in Maybe(Gen.Enum<WaterKind>())
        from salinity in Maybe(Number(0.001, 0.04))
        from temperatureC in Maybe(Number(0, 40))
        from speedMS in Maybe(Number(0.05, 2))
        select new FishingSpec
        {
            LeaderDiameterM = diameterM,
            LeaderStrengthN = diameterM is null ? strengthN : null,
            LeaderMaterial = diameterM is null && strengthN is null ? null : material,
            Knot = knot,
            Water = water,
            SalinityKgKg = water == WaterKind.Sea ? salinity : null,
            TemperatureC = water is null ? null : temperatureC,
            SpeedMS = speedMS,
        };

    // Each part in its own 14 mm of shank, so that none can be in another's way.
    private static Gen<ImmutableArray<PartSpec>> Parts((PartKind Kind, int)[] kinds) =>
        kinds.Length == 0
            ? Gen.Const(ImmutableArray<PartSpec>.Empty)
            : kinds.Select((k, i) => Part(k.Kind, i * 14e-3)).Aggregate(
                Gen.Const(ImmutableArray<PartSpec>.Empty),
                (all, next) => Gen.Select(all, next, (list, part) => list.Add(part)));

    private static Gen<PartSpec> Part(PartKind kind, double fromM) =>
        from material in Maybe(Gen.OneOf(MaterialNames))
        from density in Maybe(Number(10, 20000))
        from sizeM in Number(1e-3, 8e-3)
        from massKg in Maybe(Number(1e-6, 2e-3))
        from wireM in Number(0.25e-3, 0.9e-3)
        from turns in Gen.Int[1, 8]
        from inM in Number(0, 2e-3)
        from toM in Maybe(Number(10e-3, 13e-3))
        from lengthM in Maybe(Number(3e-3, 10e-3))
        from side in Maybe(Gen.OneOf(Side.Top, Side.Under))
        from tied in Maybe(Gen.Enum<TieDown>())
        from offsetM in Number(-1e-3, 1e-3)
        from clockedRad in Number(-1, 1)
        let has = KindsOfPart.Of(kind).Keys
        select new PartSpec(kind)
        {
            Material = material,
            DensityKgM3 = density,
            SizeM = has.Contains("size") ? sizeM : null,
            // A lump is as long as its mass makes it, and may be of cork here.
            MassKg = kind == PartKind.Putty ? Units.Rounded(1e-3 * sizeM) : massKg,
            DiameterM = has.Contains("diameter") ? kind == PartKind.Rattle ? sizeM : wireM : null,
            Turns = has.Contains("turns") ? turns : null,
            Balls = has.Contains("balls") ? turns : null,
            BallMaterial = has.Contains("balls") && turns % 2 == 0 ? "glass" : null,
            Loops = has.Contains("loops") ? turns % 2 + 1 : null,
            AtM = Units.Rounded(fromM + inM),
            ToM = has.Contains("to") && (kind != PartKind.Wing || tied == TieDown.BothEnds) && toM is { } m ? Units.Rounded(fromM + m) : null,
            // A rattle that says no length is three times as long as it is wide: longer than the stretch of shank it has here.
            LengthM = !has.Contains("length") ? null : kind == PartKind.Rattle ? lengthM ?? 10e-3 : lengthM,
            Side = has.Contains("side") ? side : null,
            Tied = has.Contains("tied") ? tied : null,
            SideOffsetM = turns % 2 == 0 ? offsetM : 0,
            ClockedRad = turns % 3 == 0 ? clockedRad : 0,
        };

    private static Gen<double> Number(double low, double high) =>
        Gen.OneOf(Gen.Double[low, high], Gen.Int[0, 100].Select(i => low + i * (high - low) / 100)).Select(Units.Rounded);

    private static Gen<T?> Maybe<T>(Gen<T> gen)
        where T : struct => Gen.Select(Gen.Bool, gen, (given, value) => given ? value : (T?)null);

    private static Gen<string?> Maybe(Gen<string> gen) => Gen.Select(Gen.Bool, gen, (given, value) => given ? value : null);

    private static double Rad(string text) =>
        Units.TryParse(text, Dimension.Angle, out double rad, out string? error) ? rad : throw new ArgumentException(error);
}
