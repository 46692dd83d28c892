using System.Collections.Immutable;

namespace TyingClass.Balance.Retrieving;

/// <summary>One thing the line hand does.</summary>
/// <param name="StripM">Line drawn in, m; 0 in a pause.</param>
/// <param name="DurationS">How long it takes, s, over 0.</param>
public readonly record struct RetrieveStep(double StripM, double DurationS)
{
    public bool IsStrip => StripM > 0;
}

/// <summary>The line between rod and leader.</summary>
/// <param name="MassKgM">kg per meter.</param>
/// <param name="DiameterM">m.</param>
/// <param name="StiffnessN">Pull over stretch, N.</param>
/// <param name="FrictionFactor">Friction along it over that of a smooth wire in laminar flow.</param>
public readonly record struct RunningLine(double MassKgM, double DiameterM, double StiffnessN, double FrictionFactor);

/// <summary>How the fly is fished: what the line hand does over and over, and where.</summary>
public sealed record RetrievePlan
{
    /// <summary>One round, in order; at least one step.</summary>
    public required ImmutableArray<RetrieveStep> Round { get; init; }

    /// <summary>Rounds, 1 or more.</summary>
    public required int Repeat { get; init; }

    /// <summary>Left to sink before the first strip, s.</summary>
    public required double CountDownS { get; init; }

    public required RunningLine Line { get; init; }

    /// <summary>From rod tip to fly at the start, leader and all, m.</summary>
    public required double LineOutM { get; init; }

    /// <summary>m, under the line out.</summary>
    public required double LeaderM { get; init; }

    /// <summary>Rod tip above the water, m; under 0 held below it.</summary>
    public required double RodTipM { get; init; }

    /// <summary>Depth of the water, m; null when there is no bottom to reach.</summary>
    public double? BottomM { get; init; }

    /// <summary>Steady current, m/s, positive away from the rod.</summary>
    public double CurrentMS { get; init; }

    /// <summary>Seconds the dressing has been wet before the fly lands.</summary>
    public double WettedS { get; init; }
}
