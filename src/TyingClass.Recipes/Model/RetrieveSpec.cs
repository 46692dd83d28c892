using System.Collections.Immutable;
using TyingClass.Balance.Retrieving;

namespace TyingClass.Recipes.Model;

/// <summary>How a fly is stripped and let fall, as stated; what is left out is null.</summary>
public sealed record RetrieveSpec
{
    public static readonly RetrieveSpec Unstated = new();

    /// <summary>One round; empty when not stated.</summary>
    public ImmutableArray<RetrieveStep> Round { get; init; } = [];

    /// <summary>The round's name, when it was stated by one.</summary>
    public string? Name { get; init; }

    public int? Repeat { get; init; }

    /// <summary>Before the first strip, s.</summary>
    public double? CountDownS { get; init; }

    /// <summary>How fast the line sinks, m/s; 0 for one that floats.</summary>
    public double? LineSinkMS { get; init; }

    /// <summary>From rod tip to fly, leader and all, m.</summary>
    public double? LineOutM { get; init; }

    public double? LeaderLengthM { get; init; }

    /// <summary>Rod tip above the water, m; under 0 below it.</summary>
    public double? RodTipM { get; init; }

    public double? WaterDepthM { get; init; }

    /// <summary>m/s, positive away from the rod.</summary>
    public double? CurrentMS { get; init; }

    /// <summary>Seconds the dressing has been wet before it lands.</summary>
    public double? WettedS { get; init; }

    public bool Equals(RetrieveSpec? other) =>
        other is not null && Round.SequenceEqual(other.Round) && (Name, Repeat, CountDownS, LineSinkMS, LineOutM) ==
        (other.Name, other.Repeat, other.CountDownS, other.LineSinkMS, other.LineOutM)
        && (LeaderLengthM, RodTipM, WaterDepthM, CurrentMS, WettedS) ==
        (other.LeaderLengthM, other.RodTipM, other.WaterDepthM, other.CurrentMS, other.WettedS);

    public override int GetHashCode() => HashCode.Combine(Round.Length, Name, Repeat, CountDownS, LineSinkMS, LineOutM, RodTipM);
}
