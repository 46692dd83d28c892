using System.Collections.Immutable;
using TyingClass.Balance.Bodies;

namespace TyingClass.Recipes.Model;

/// <summary>
/// A fly as its recipe text states it: what the tyer wrote, in SI, nothing filled in. Values are rounded to 12 significant digits when parsed, so that a grade
/// never depends on the unit typed.
/// </summary>
public sealed record Recipe(string Name, Intent Intent, HookSpec Hook, ImmutableArray<PartSpec> Parts, FishingSpec Fishing)
{
    /// <summary>Tying notes, in the order they are followed. No figure hangs on them.</summary>
    public ImmutableArray<string> Steps { get; init; } = [];

    /// <summary>Equal when every stated value is equal, part by part.</summary>
    public bool Equals(Recipe? other) =>
        other is not null && Name == other.Name && Intent == other.Intent && Hook == other.Hook
        && Fishing == other.Fishing && Parts.SequenceEqual(other.Parts) && Steps.SequenceEqual(other.Steps);

    public override int GetHashCode() => HashCode.Combine(Name, Intent, Hook, Parts.Length, Fishing);
}

/// <summary>A size on the generic scale: plain 2 … 20 is kept as n, 1/0 … 6/0 as 0, -1 … -5.</summary>
public readonly record struct HookSize(int Number)
{
    public override string ToString() => Number > 0 ? $"{Number}" : $"{1 - Number}/0";
}

public enum EyeKind { Straight, Up, Down, Jig }

public enum BendKind { Round, Long, Square }

/// <summary>The hook. Steps count sizes: ShankSteps +4 is 4XL, -1 is 1XS; WireSteps +1 is 1XH, -2 is 2XF.</summary>
public sealed record HookSpec
{
    public HookSize? Size { get; init; }

    public int ShankSteps { get; init; }

    /// <summary>Measured shank, m: overrides size and steps.</summary>
    public double? ShankM { get; init; }

    public int WireSteps { get; init; }

    /// <summary>Measured wire diameter, m.</summary>
    public double? WireM { get; init; }

    /// <summary>Measured gape, m.</summary>
    public double? GapeM { get; init; }

    public EyeKind Eye { get; init; } = EyeKind.Straight;

    /// <summary>Angle of the eye leg from the shank's line, rad, when stated; always stated for a jig eye.</summary>
    public double? EyeAngleRad { get; init; }

    public BendKind Bend { get; init; } = BendKind.Round;

    /// <summary>Mass as weighed, kg.</summary>
    public double? MassKg { get; init; }
}

/// <summary>Where around the shank, as clamped in the vise point down: Under is the point side, Beside the tyer's right looking forward (+y).</summary>
public enum Side { Around, Top, Under, Beside }

public enum TieDown { Front, BothEnds }

/// <summary>One part, in tying order. Which dimensions apply depends on the kind; see docs/recipes.md.</summary>
public sealed record PartSpec(PartKind Kind)
{
    /// <summary>A name of the materials table, or null when a density is given or the kind's usual material is meant.</summary>
    public string? Material { get; init; }

    public double? DensityKgM3 { get; init; }

    /// <summary>Bead, cone, dumbbell eyes: the maker's nominal size (widest diameter, or one eye's), m.</summary>
    public double? SizeM { get; init; }

    public double? MassKg { get; init; }

    /// <summary>Wire diameter of wraps; outer diameter of a body, hackle, foam or resin, m.</summary>
    public double? DiameterM { get; init; }

    public int? Turns { get; init; }

    /// <summary>Rattle: how many balls.</summary>
    public int? Balls { get; init; }

    /// <summary>Rattle: what the balls are made of, a name of the materials table, when stated.</summary>
    public string? BallMaterial { get; init; }

    /// <summary>Weed guard: one loop or two.</summary>
    public int? Loops { get; init; }

    /// <summary>Measures said in words; the numbers here are what they come to on this hook, once <see cref="Parts.Places"/> has settled them.</summary>
    public Sayings Said { get; init; } = Sayings.None;

    /// <summary>Front edge, from the front of the shank, m.</summary>
    public double AtM { get; init; }

    /// <summary>Rear edge, m.</summary>
    public double? ToM { get; init; }

    public double? LengthM { get; init; }

    public Side? Side { get; init; }

    public TieDown? Tied { get; init; }

    /// <summary>Lateral error, toward the tyer's right looking forward along the shank (+y), m.</summary>
    public double SideOffsetM { get; init; }

    /// <summary>Turned about the shank, right-handed about +x, rad.</summary>
    public double ClockedRad { get; init; }
}

public enum LeaderMaterial { Nylon, Fluorocarbon }

public enum WaterKind { Fresh, Sea }

public sealed record FishingSpec
{
    /// <summary>Diameter, m, when stated as one.</summary>
    public double? LeaderDiameterM { get; init; }

    /// <summary>Breaking strength, N, when stated as one.</summary>
    public double? LeaderStrengthN { get; init; }

    public LeaderMaterial? LeaderMaterial { get; init; }

    public Knot? Knot { get; init; }

    public WaterKind? Water { get; init; }

    /// <summary>Salinity of sea water, kg of salt per kg, when stated.</summary>
    public double? SalinityKgKg { get; init; }

    public double? TemperatureC { get; init; }

    public double? SpeedMS { get; init; }

    /// <summary>How it is stripped and let fall.</summary>
    public RetrieveSpec Retrieve { get; init; } = RetrieveSpec.Unstated;
}
