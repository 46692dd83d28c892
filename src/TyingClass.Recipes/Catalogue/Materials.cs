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

        Dressing(Solid("fur dubbing", 1310, MortonHearle + ", keratin"),
            new(Supple: 0, Air: 1.2, Soak: 40, SealedAir: 0.05, Voids: 0.90, Water: 2.5, Streamer: 0.05, MgPerMm: 2.0)),
        Dressing(Solid("synthetic dubbing", 910, MortonHearle + ", polypropylene"),
            new(Supple: 0, Air: 1.0, Soak: 30, SealedAir: 0, Voids: 0.90, Water: 2.0, Streamer: 0.05, MgPerMm: 1.5)),
        Dressing(Solid("wool", 1310, MortonHearle),
            new(Supple: 0.9, Air: 1.0, Soak: 30, SealedAir: 0, Voids: 0.85, Water: 2.0, Streamer: 0.06, MgPerMm: 1.5)),
        Dressing(Solid("chenille", 1340, MortonHearle + ", as silk"),
            new(Supple: 0.6, Air: 0.8, Soak: 20, SealedAir: 0, Voids: 0.85, Water: 2.0, Streamer: 0.06, MgPerMm: 2.5)),
        Dressing(Solid("floss", 1340, MortonHearle + ", silk"),
            new(Supple: 0.95, Air: 0.2, Soak: 10, SealedAir: 0, Voids: 0.40, Water: 0.6, Streamer: 0.05, MgPerMm: 0.4)),
        Dressing(Solid("tinsel", 1390, MortonHearle + ", polyester"),
            new(Supple: 0.7, Air: 0.05, Soak: 5, SealedAir: 0, Voids: 0.20, Water: 0.1, Streamer: 0.05, MgPerMm: 0.3)),
        Dressing(Solid("flash", 1390, MortonHearle + ", polyester"),
            new(Supple: 0.9, Air: 0.05, Soak: 5, SealedAir: 0, Voids: 0.60, Water: 0.3, Streamer: 0.05, MgPerMm: 0.2)),
        Dressing(Solid("synthetic hair", 1140, MortonHearle + ", nylon"),
            new(Supple: 0.7, Air: 0.3, Soak: 10, SealedAir: 0, Voids: 0.75, Water: 0.8, Streamer: 0.05, MgPerMm: 1.2)),
        Dressing(Solid("deer hair", 1310, MortonHearle + ", keratin"),
            new(Supple: 0.3, Air: 0.8, Soak: 120, SealedAir: 0.9, Voids: 0.75, Water: 0.8, Streamer: 0.05, MgPerMm: 1.0)),
        Dressing(Solid("bucktail", 1310, MortonHearle + ", keratin"),
            new(Supple: 0.5, Air: 0.5, Soak: 60, SealedAir: 0.25, Voids: 0.75, Water: 0.8, Streamer: 0.05, MgPerMm: 1.2)),
        Dressing(Solid("goat hair", 1310, MortonHearle + ", keratin"),
            new(Supple: 0.7, Air: 0.4, Soak: 30, SealedAir: 0.05, Voids: 0.75, Water: 1.0, Streamer: 0.05, MgPerMm: 1.2)),
        Dressing(Solid("fur strip", 1310, MortonHearle + ", keratin"),
            new(Supple: 0.9, Air: 1.0, Soak: 60, SealedAir: 0.10, Voids: 0.85, Water: 2.0, Streamer: 0.05, MgPerMm: 5.5)),
        Dressing(Solid("marabou", 1310, MortonHearle + ", keratin"),
            new(Supple: 0.97, Air: 0.8, Soak: 15, SealedAir: 0, Voids: 0.92, Water: 3.0, Streamer: 0.04, MgPerMm: 1.0)),
        Dressing(Solid("feather", 1310, MortonHearle + ", keratin"),
            new(Supple: 0.6, Air: 0.6, Soak: 40, SealedAir: 0.10, Voids: 0.85, Water: 1.0, Streamer: 0.05, MgPerMm: 0.4)),
        Dressing(Guessed("rubber", 950, 900, 1100, "with its filler"),
            new(Supple: 0.8, Air: 0, Soak: 1, SealedAir: 0, Voids: 0.1, Water: 0.02, Streamer: 0.05, MgPerMm: 1.6)),
        Dressing(Guessed("silicone rubber", 1150, 1080, 1250, "with its filler"),
            new(Supple: 0.9, Air: 0, Soak: 1, SealedAir: 0, Voids: 0.1, Water: 0.02, Streamer: 0.05, MgPerMm: 1.6)),

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

    /// <summary>What it does in water; units as in <see cref="Material"/>.</summary>
    private readonly record struct InWater(
        double Supple, double Air, double Soak, double SealedAir, double Voids, double Water, double Streamer, double MgPerMm);

    private static Material Dressing(Material fiber, InWater wet) =>
        fiber with
        {
            Suppleness = DressingRanges.Suppleness(fiber.Name, wet.Supple),
            CaughtAir = DressingRanges.CaughtAir(fiber.Name, wet.Air),
            SoakTime = wet.Air > 0 ? DressingRanges.SoakTime(fiber.Name, wet.Soak) : new(wet.Soak, "s", Figure.Estimate),
            SealedAir = DressingRanges.SealedAir(fiber.Name, wet.SealedAir),
            VoidShare = DressingRanges.VoidShare(fiber.Name, wet.Voids),
            HeldWater = DressingRanges.HeldWater(fiber.Name, wet.Water),
            StreamerCoefficient = wet.Supple > 0 ? DressingRanges.StreamerCoefficient(fiber.Name, wet.Streamer) : new(wet.Streamer, "1", Figure.Estimate),
            LinearDensity = DressingRanges.LinearDensity(fiber.Name, wet.MgPerMm),
            SideForceShare = Tight(fiber.Name) is < 1 and var share ? DressingRanges.SideForceShare(fiber.Name, share) : fiber.SideForceShare,
            FlatWidth = DressingRanges.FlatWidth(fiber.Name, fiber.Name switch { "fur strip" => 0.1, "feather" => 0.25, _ => 0 }),
            // Hide lies on the shank; a pair of feathers is set on edge, in the plane of the hook.
            StandsOnEdge = fiber.Name == "feather",
        };

    // What is left of a solid body's side force. A strip's hide is as good as solid, and so are tinsel and rubber.
    private static double Tight(string material) => material switch
    {
        "floss" => 0.95,
        "fur dubbing" or "synthetic dubbing" or "wool" => 0.8,
        "chenille" or "deer hair" => 0.7,
        "flash" or "synthetic hair" or "bucktail" or "goat hair" or "feather" => 0.5,
        "marabou" => 0.4,
        _ => 1,
    };
}
