using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;

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
        Solid("tungsten", 17800, Figure.Estimate + ", sintered beads 17000-18500 after ASTM B777 classes, from memory"),
        Solid("aluminum", 2700, Handbook),
        Solid("glass", 2500, MortonHearle),
        Solid("plastic", 1050, Figure.Estimate),
        Solid("nylon wire", 1140, MortonHearle),
        Solid("nylon", 1140, MortonHearle),
        Solid("fluorocarbon", FishingScale.FluorocarbonDensity.Value, FishingScale.FluorocarbonDensity.Source),
        Solid("tungsten putty", 10000, Figure.Estimate + ", half tungsten powder by volume in a soft binder"),
        Solid("lead-free solder", 7380, "tables of solder alloys, tin with 3 % silver and 0.5 % copper"),
        Solid("tin-lead solder", 8510, "Journal of Electronic Materials 34 (2005) 1414, Sn-40Pb at 25 °C"),

        Dressing("fur dubbing", 1310, MortonHearle + ", keratin", supple: 0, air: 1.2, soak: 40, sealedAir: 0.05, voids: 0.90, water: 2.5, streamer: 0.05,
            mgPerMm: 2.0) with { SideForceShare = Tight(0.8, 0.5, 1) },
        Dressing("synthetic dubbing", 910, MortonHearle + ", polypropylene", supple: 0, air: 1.0, soak: 30, sealedAir: 0, voids: 0.90, water: 2.0,
            streamer: 0.05, mgPerMm: 1.5) with { SideForceShare = Tight(0.8, 0.5, 1) },
        Dressing("wool", 1310, MortonHearle, supple: 0.9, air: 1.0, soak: 30, sealedAir: 0, voids: 0.85, water: 2.0,
            streamer: 0.06, mgPerMm: 1.5) with { SideForceShare = Tight(0.8, 0.5, 1) },
        Dressing("chenille", 1340, MortonHearle + ", as silk", supple: 0.6, air: 0.8, soak: 20, sealedAir: 0, voids: 0.85, water: 2.0, streamer: 0.06,
            mgPerMm: 2.5) with { SideForceShare = Tight(0.7, 0.4, 0.95) },
        Dressing("floss", 1340, MortonHearle + ", silk", supple: 0.95, air: 0.2, soak: 10, sealedAir: 0, voids: 0.40, water: 0.6,
            streamer: 0.05, mgPerMm: 0.4) with { SideForceShare = Tight(0.95, 0.8, 1) },
        Dressing("tinsel", 1390, MortonHearle + ", polyester", supple: 0.7, air: 0.05, soak: 5, sealedAir: 0, voids: 0.20, water: 0.1, streamer: 0.05,
            mgPerMm: 0.3) with { SideForceShare = Tight(0.9, 0.7, 1) },
        Dressing("flash", 1390, MortonHearle + ", polyester", supple: 0.9, air: 0.05, soak: 5, sealedAir: 0, voids: 0.60, water: 0.3, streamer: 0.05,
            mgPerMm: 0.2) with { SideForceShare = Tight(0.5, 0.2, 0.8) },
        Dressing("synthetic hair", 1140, MortonHearle + ", nylon", supple: 0.7, air: 0.3, soak: 10, sealedAir: 0, voids: 0.75, water: 0.8, streamer: 0.05,
            mgPerMm: 1.2) with { SideForceShare = Tight(0.5, 0.2, 0.8) },
        Dressing("deer hair", 1310, MortonHearle + ", keratin", supple: 0.3, air: 0.8, soak: 120, sealedAir: 0.9, voids: 0.75, water: 0.8, streamer: 0.05,
            mgPerMm: 1.0) with { SideForceShare = Tight(0.7, 0.4, 0.95) },
        Dressing("bucktail", 1310, MortonHearle + ", keratin", supple: 0.5, air: 0.5, soak: 60, sealedAir: 0.25, voids: 0.75, water: 0.8, streamer: 0.05,
            mgPerMm: 1.2) with { SideForceShare = Tight(0.5, 0.2, 0.8) },
        Dressing("goat hair", 1310, MortonHearle + ", keratin", supple: 0.7, air: 0.4, soak: 30, sealedAir: 0.05, voids: 0.75, water: 1.0, streamer: 0.05,
            mgPerMm: 1.2) with { SideForceShare = Tight(0.5, 0.2, 0.8) },
        Dressing("fur strip", 1310, MortonHearle + ", keratin", supple: 0.9, air: 1.0, soak: 60, sealedAir: 0.10, voids: 0.85, water: 2.0, streamer: 0.05,
            mgPerMm: 5.5) with
        {
            FlatWidth = new(0.1, "× length", Figure.Estimate + ", range 0.05-0.2: strips are cut 2 to 5 mm wide"),
        },
        Dressing("marabou", 1310, MortonHearle + ", keratin", supple: 0.97, air: 0.8, soak: 15, sealedAir: 0, voids: 0.92, water: 3.0, streamer: 0.04,
            mgPerMm: 1.0) with { SideForceShare = Tight(0.4, 0.1, 0.7) },
        Dressing("feather", 1310, MortonHearle + ", keratin", supple: 0.6, air: 0.6, soak: 40, sealedAir: 0.10, voids: 0.85, water: 1.0, streamer: 0.05,
            mgPerMm: 0.4) with
        {
            SideForceShare = Tight(0.5, 0.2, 0.8),
            FlatWidth = new(0.25, "× length", Figure.Estimate + ", range 0.15-0.4, of a pair set on edge"),
            StandsOnEdge = true,
        },
        Dressing("rubber", 950, Figure.Estimate, supple: 0.8, air: 0, soak: 1, sealedAir: 0, voids: 0.1, water: 0.02,
            streamer: 0.05, mgPerMm: 1.6) with { SideForceShare = Tight(1, 0.8, 1) },
        Dressing("silicone rubber", 1150, Figure.Estimate, supple: 0.9, air: 0, soak: 1, sealedAir: 0, voids: 0.1, water: 0.02,
            streamer: 0.05, mgPerMm: 1.6) with { SideForceShare = Tight(1, 0.8, 1) },

        Solid("closed-cell foam", 80, Figure.Estimate + ", closed-cell foams 25-200, in part from memory"),
        Solid("cork", 200, Figure.Estimate + ", cork 120-240, in part from memory"),
        Solid("balsa", 160, Figure.Estimate + ", balsa 40-340, in part from memory"),
        Solid("uv resin", 1150, Figure.Estimate),
        Solid("epoxy resin", 1150, Figure.Estimate),
        Solid("head cement", 1050, Figure.Estimate),
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

    // By Darcy's law hardly any water goes through packed fibers at fishing speeds; a loose, fuzzy outline lets it round its own fibers. No published figure.
    private static Figure Tight(double share, double low, double high) =>
        new(share, "1", string.Create(CultureInfo.InvariantCulture, $"{Figure.Estimate}, range {low}-{high}"));

    private static Material Solid(string name, double densityKgM3, string source) => new(name, new Figure(densityKgM3, "kg/m³", source));

    private static Material Dressing(
        string name, double densityKgM3, string source,
        double supple, double air, double soak, double sealedAir, double voids, double water, double streamer, double mgPerMm) =>
        Solid(name, densityKgM3, source) with
        {
            Suppleness = new(supple, "1", Figure.Estimate),
            CaughtAir = new(air, "mm³/mg", Figure.Estimate),
            SoakTime = new(soak, "s", Figure.Estimate),
            SealedAir = new(sealedAir, "mm³/mg", Figure.Estimate),
            VoidShare = new(voids, "1", Figure.Estimate),
            HeldWater = new(water, "kg/kg", Figure.Estimate),
            StreamerCoefficient = new(streamer, "1", Figure.Estimate),
            LinearDensity = new(mgPerMm, "mg/mm", Figure.Estimate),
        };
}
