using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace TyingClass.Recipes.Catalogue;

/// <summary>
/// The materials table. Densities are published where a source stands beside them; what hair, fur and feather do in water has no published figure for a fished
/// fly and is marked as an estimate.
/// </summary>
public static class Materials
{
    private const string MortonHearle = "Morton & Hearle, Physical Properties of Textile Fibres, table 5.1";
    private const string Handbook = "engineering handbook tables of metals";

    public static ImmutableArray<Material> All { get; } =
    [
        Solid("lead", 11340, Handbook),
        Solid("tin", 7280, Handbook),
        Solid("bismuth", 9780, Handbook),
        Solid("lead-free wire", 7280, Handbook + ", as tin"),
        Solid("copper", 8930, Handbook),
        Solid("brass", 8520, Handbook + ", 60/40 brass"),
        Solid("steel", 7850, Handbook + ", carbon steel"),
        Guessed("tungsten", 17800, 17000, 18500, "sintered beads 17000-18500 after ASTM B777 classes, from memory"),
        Solid("aluminum", 2700, Handbook),
        Solid("glass", 2500, MortonHearle),
        Guessed("plastic", 1050, 900, 1250, "common plastics, nylon to acetal to polystyrene"),
        Solid("nylon wire", 1140, MortonHearle),
        Solid("nylon", 1140, MortonHearle),
        Solid("fluorocarbon", FishingScale.FluorocarbonDensity.Value, FishingScale.FluorocarbonDensity.Source),
        Guessed("tungsten putty", 10000, 8500, 11500, "half tungsten powder by volume in a soft binder"),
        Solid("lead-free solder", 7380, "tables of solder alloys, tin with 3 % silver and 0.5 % copper"),
        Solid("tin-lead solder", 8510, "Journal of Electronic Materials 34 (2005) 1414, Sn-40Pb at 25 °C"),

        Dressing(Solid("fur dubbing", 1310, MortonHearle + ", keratin"), supple: 0, air: 1.2, soak: 40, sealedAir: 0.05, voids: 0.90, water: 2.5,
            streamer: 0.05, mgPerMm: 2.0),
        Dressing(Solid("synthetic dubbing", 910, MortonHearle + ", polypropylene"), supple: 0, air: 1.0, soak: 30, sealedAir: 0, voids: 0.90, water: 2.0,
            streamer: 0.05, mgPerMm: 1.5),
        Dressing(Solid("wool", 1310, MortonHearle), supple: 0.9, air: 1.0, soak: 30, sealedAir: 0, voids: 0.85, water: 2.0, streamer: 0.06, mgPerMm: 1.5),
        Dressing(Solid("chenille", 1340, MortonHearle + ", as silk"), supple: 0.6, air: 0.8, soak: 20, sealedAir: 0, voids: 0.85, water: 2.0, streamer: 0.06,
            mgPerMm: 2.5),
        Dressing(Solid("floss", 1340, MortonHearle + ", silk"), supple: 0.95, air: 0.2, soak: 10, sealedAir: 0, voids: 0.40, water: 0.6, streamer: 0.05,
            mgPerMm: 0.4),
        Dressing(Solid("tinsel", 1390, MortonHearle + ", polyester"), supple: 0.7, air: 0.05, soak: 5, sealedAir: 0, voids: 0.20, water: 0.1, streamer: 0.05,
            mgPerMm: 0.3),
        Dressing(Solid("flash", 1390, MortonHearle + ", polyester"), supple: 0.9, air: 0.05, soak: 5, sealedAir: 0, voids: 0.60, water: 0.3, streamer: 0.05,
            mgPerMm: 0.2),
        Dressing(Solid("synthetic hair", 1140, MortonHearle + ", nylon"), supple: 0.7, air: 0.3, soak: 10, sealedAir: 0, voids: 0.75, water: 0.8,
            streamer: 0.05, mgPerMm: 1.2),
        Dressing(Solid("deer hair", 1310, MortonHearle + ", keratin"), supple: 0.3, air: 0.8, soak: 120, sealedAir: 0.9, voids: 0.75, water: 0.8,
            streamer: 0.05, mgPerMm: 1.0),
        Dressing(Solid("bucktail", 1310, MortonHearle + ", keratin"), supple: 0.5, air: 0.5, soak: 60, sealedAir: 0.25, voids: 0.75, water: 0.8, streamer: 0.05,
            mgPerMm: 1.2),
        Dressing(Solid("goat hair", 1310, MortonHearle + ", keratin"), supple: 0.7, air: 0.4, soak: 30, sealedAir: 0.05, voids: 0.75, water: 1.0,
            streamer: 0.05, mgPerMm: 1.2),
        Dressing(Solid("fur strip", 1310, MortonHearle + ", keratin"), supple: 0.9, air: 1.0, soak: 60, sealedAir: 0.10, voids: 0.85, water: 2.0,
            streamer: 0.05, mgPerMm: 5.5),
        Dressing(Solid("marabou", 1310, MortonHearle + ", keratin"), supple: 0.97, air: 0.8, soak: 15, sealedAir: 0, voids: 0.92, water: 3.0, streamer: 0.04,
            mgPerMm: 1.0),
        Dressing(Solid("feather", 1310, MortonHearle + ", keratin"), supple: 0.6, air: 0.6, soak: 40, sealedAir: 0.10, voids: 0.85, water: 1.0, streamer: 0.05,
            mgPerMm: 0.4),
        Dressing(Guessed("rubber", 950, 900, 1100, "with its filler"), supple: 0.8, air: 0, soak: 1, sealedAir: 0, voids: 0.1, water: 0.02, streamer: 0.05,
            mgPerMm: 1.6),
        Dressing(Guessed("silicone rubber", 1150, 1080, 1250, "with its filler"), supple: 0.9, air: 0, soak: 1, sealedAir: 0, voids: 0.1, water: 0.02,
            streamer: 0.05, mgPerMm: 1.6),

        Guessed("closed-cell foam", 80, 25, 200, "closed-cell foams 25-200, in part from memory"),
        Guessed("cork", 200, 120, 240, "cork 120-240, in part from memory"),
        Guessed("balsa", 160, 40, 340, "balsa 40-340, in part from memory"),
        Guessed("uv resin", 1150, 1080, 1250, "cured"),
        Guessed("epoxy resin", 1150, 1080, 1250, "cured"),
        Guessed("head cement", 1050, 950, 1150, "dried, with what is left of its solvent"),
    ];

    private static readonly FrozenDictionary<string, Material> ByName =
        All.ToFrozenDictionary(m => m.Name, StringComparer.OrdinalIgnoreCase);

    /// <summary>Finds a material by its name; case and outer spaces do not matter.</summary>
    public static bool TryFind(string? name, [NotNullWhen(true)] out Material? material)
    {
        material = null;
        return name is not null && ByName.TryGetValue(name.Trim(), out material);
    }

    /// <summary>Finds a material that must be there.</summary>
    /// <exception cref="ArgumentException">No such material.</exception>
    public static Material Find(string name) =>
        TryFind(name, out Material? material)
            ? material
            : throw new ArgumentException($"There is no material named '{name}' in the materials table.", nameof(name));

    private static Material Solid(string name, double densityKgM3, string source) => new(name, new Figure(densityKgM3, "kg/m³", source));

    private static Material Guessed(string name, double densityKgM3, double low, double high, string why) =>
        new(name, Figure.Guess($"density of {name}", densityKgM3, "kg/m³", low, high, why));

    private static Material Dressing(
        Material fiber, double supple, double air, double soak, double sealedAir, double voids, double water, double streamer, double mgPerMm) => fiber with
        {
            Suppleness = DressingRanges.Suppleness(fiber.Name, supple),
            CaughtAir = DressingRanges.CaughtAir(fiber.Name, air),
            SoakTime = air > 0 ? DressingRanges.SoakTime(fiber.Name, soak) : new(soak, "s", Figure.Estimate),
            SealedAir = DressingRanges.SealedAir(fiber.Name, sealedAir),
            VoidShare = DressingRanges.VoidShare(fiber.Name, voids),
            HeldWater = DressingRanges.HeldWater(fiber.Name, water),
            StreamerCoefficient = supple > 0 ? DressingRanges.StreamerCoefficient(fiber.Name, streamer) : new(streamer, "1", Figure.Estimate),
            LinearDensity = DressingRanges.LinearDensity(fiber.Name, mgPerMm),
        };
}
