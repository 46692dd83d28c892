namespace TyingClass.Recipes.Catalogue;

/// <summary>What a part is made of. Shares run from 0 to 1.</summary>
/// <param name="Name">As a recipe writes it, lower case.</param>
/// <param name="Density">Of the substance itself, kg/m³; of the whole, cells included, for foam, cork and balsa.</param>
public sealed record Material(string Name, Figure Density)
{
    private static readonly Figure None = new(0, "1", Figure.Estimate);

    /// <summary>0 stands like wire, 1 hangs like thread.</summary>
    public Figure Suppleness { get; init; } = None;

    /// <summary>Air caught among the fibers fresh from the cast, mm³ per mg of dry stuff.</summary>
    public Figure CaughtAir { get; init; } = None with { Unit = "mm³/mg" };

    /// <summary>Time in which the caught air falls to 1/e, s.</summary>
    public Figure SoakTime { get; init; } = None with { Unit = "s" };

    /// <summary>Air sealed in the hair's own cells, which never soaks, mm³ per mg of dry stuff.</summary>
    public Figure SealedAir { get; init; } = None with { Unit = "mm³/mg" };

    /// <summary>Share of a dressing's outline that is not fiber: bulk density is density × (1 - void share).</summary>
    public Figure VoidShare { get; init; } = None;

    /// <summary>Water carried when cast, kg per kg of dry stuff.</summary>
    public Figure HeldWater { get; init; } = None with { Unit = "kg/kg" };

    /// <summary>Drag coefficient on the wetted outline of the supple share, trailing.</summary>
    public Figure StreamerCoefficient { get; init; } = None;

    /// <summary>Mass of a usual bunch, strip or strand, mg per mm of its length; used when a recipe gives no mass.</summary>
    public Figure LinearDensity { get; init; } = None with { Unit = "mg/mm" };

    /// <summary>Share of a solid body's side force that is left of it where water goes through.</summary>
    public Figure SideForceShare { get; init; } = new(1, "1", "solid: no water goes through it");

    /// <summary>Width of what is flat, share of its whole length; 0 for what is round.</summary>
    public Figure FlatWidth { get; init; } = None with { Unit = "× length" };

    /// <summary>What is flat stands on edge, in the plane of the hook, and does not lie on the shank.</summary>
    public bool StandsOnEdge { get; init; }

    public double DensityKgM3 => Density.Value;

    /// <summary>Every number of the entry.</summary>
    public IEnumerable<(string What, Figure Figure)> Figures =>
    [
        ("density", Density), ("suppleness", Suppleness), ("caught air", CaughtAir), ("soak time", SoakTime),
        ("sealed air", SealedAir), ("void share", VoidShare), ("held water", HeldWater),
        ("streamer coefficient", StreamerCoefficient), ("mass per length", LinearDensity), ("side force share", SideForceShare),
        ("width when flat", FlatWidth),
    ];
}
