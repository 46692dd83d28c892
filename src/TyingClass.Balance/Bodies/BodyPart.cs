using System.Collections.Immutable;

namespace TyingClass.Balance.Bodies;

/// <summary>What one part of a fly (the hook, a bead, a wing) contributes to the balance.</summary>
/// <param name="Name">The part as the recipe and the ledger name it: "hook", "cone", "wing 2".</param>
public sealed record BodyPart(string Name)
{
    public ImmutableArray<MassElement> Masses { get; init; } = [];

    public ImmutableArray<VolumeElement> Solids { get; init; } = [];

    public ImmutableArray<AirElement> Air { get; init; } = [];

    public ImmutableArray<DragElement> Drag { get; init; } = [];

    /// <summary>Places where the water is pushed aside when the part lies askew to the flow.</summary>
    public ImmutableArray<SideForceElement> SideForces { get; init; } = [];

    /// <summary>Water the soaked part carries into the air when it is cast, kg. Weightless under water.</summary>
    public double HeldWaterKg { get; init; }

    /// <summary>Tied in for its weight, as a bead or wraps are.</summary>
    public bool IsWeight { get; init; }

    /// <summary>
    /// Pieces of the part that the moment ledger tells apart (the hook's eye, shank, and bend with spear); together they are the part. Empty when it is one
    /// piece.
    /// </summary>
    public ImmutableArray<BodyPart> Pieces { get; init; } = [];

    /// <summary>
    /// How far along the shank the part may slip when tied, and whether it is tied at all: false for the hook, which is what everything else is measured from.
    /// </summary>
    public bool IsTied { get; init; } = true;

    /// <summary>How far the part can still slip to either side of where it sits; anywhere unless it is threaded on the wire.</summary>
    public SideRoom Room { get; init; } = SideRoom.Free;
}

/// <summary>
/// From how far to the left (negative) to how far to the right a part can slip, m: what is threaded on the wire, a bead or a cone, stops where its bore meets
/// the wire.
/// </summary>
public readonly record struct SideRoom(double LowM, double HighM)
{
    public static readonly SideRoom Free = new(double.NegativeInfinity, double.PositiveInfinity);

    /// <summary>What is left of an error that would put the part where it cannot be, m.</summary>
    public double Within(double errorM) => Math.Clamp(errorM, LowM, HighM);
}
