using System.Collections.Immutable;

namespace TyingClass.Balance.Reports;

public enum FindingKind
{
    Leans,
    RidesOnItsSide,
    Flips,
    Undecided,
    Hangs,
    Floats,
    OnlyWhileDry,
    OnlyWhenSoaked,
    Spins,
    TwoWaysUp,
    KnotHoldsTheNoseUp,
    Hovers,
    SinksAnyWayUp,
    Tumbles,
    BendOutweighsBead,
    RuleOfThumbDisagrees,
    SpeedDecides,
    PlanesDown,
    PlanesUp,
    Tilts,
    TwoWaysToSink,
}

/// <summary>Something worth telling, as its kind and the figures it turns on.</summary>
public abstract record Finding(FindingKind Kind)
{
    /// <summary>"only while dry": stays the same between versions; lessons and stored attempts name it.</summary>
    public string Code => CodeOf(Kind);

    public static string CodeOf(FindingKind kind) => kind switch
    {
        FindingKind.Leans => "leans",
        FindingKind.RidesOnItsSide => "rides on its side",
        FindingKind.Flips => "flips",
        FindingKind.Undecided => "undecided",
        FindingKind.Hangs => "hangs",
        FindingKind.Floats => "floats",
        FindingKind.OnlyWhileDry => "only while dry",
        FindingKind.OnlyWhenSoaked => "only when soaked",
        FindingKind.Spins => "spins",
        FindingKind.TwoWaysUp => "two ways up",
        FindingKind.KnotHoldsTheNoseUp => "knot holds the nose up",
        FindingKind.Hovers => "hovers",
        FindingKind.SinksAnyWayUp => "sinks any way up",
        FindingKind.Tumbles => "tumbles",
        FindingKind.BendOutweighsBead => "bend outweighs bead",
        FindingKind.RuleOfThumbDisagrees => "rule of thumb disagrees",
        FindingKind.SpeedDecides => "speed decides",
        FindingKind.PlanesDown => "planes down",
        FindingKind.PlanesUp => "planes up",
        FindingKind.Tilts => "tilts",
        FindingKind.TwoWaysToSink => "two ways to sink",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such finding."),
    };
}

/// <summary>A verdict other than "rides as intended": its figures are those of the soaked state.</summary>
public sealed record VerdictFinding(FindingKind Kind) : Finding(Kind);

/// <summary>One whose kind says it all.</summary>
public sealed record PlainFinding(FindingKind Kind) : Finding(Kind);

/// <param name="LiftsDeg">How far the cinched leader holds the nose above where a loop would let it ride; negative below.</param>
public sealed record KnotFinding(double LiftsDeg) : Finding(FindingKind.KnotHoldsTheNoseUp);

/// <param name="Rises">It would rise, not sink.</param>
/// <param name="RateMS">How fast, either way, where it is the same in any attitude.</param>
public sealed record NoSinkFinding(FindingKind Kind, bool Rises, double? RateMS) : Finding(Kind);

/// <param name="Ways">The stable ways that many releases end in, the commonest first.</param>
public sealed record SinkWaysFinding(ImmutableArray<SinkWay> Ways) : Finding(FindingKind.TwoWaysToSink)
{
    public bool Equals(SinkWaysFinding? other) => other is not null && Ways.SequenceEqual(other.Ways);

    public override int GetHashCode() => Ways.Length;
}

/// <param name="BendGmm">Keel moment of the bend, g·mm.</param>
/// <param name="WeightsGmm">Of the weights together.</param>
/// <param name="Weights">The weights by name.</param>
public sealed record BendFinding(double BendGmm, double WeightsGmm, ImmutableArray<string> Weights) : Finding(FindingKind.BendOutweighsBead);

/// <param name="LevelLineMm">By the rule of thumb; positive is below the level line.</param>
/// <param name="KeelHeightMm">As solved.</param>
public sealed record RuleOfThumbFinding(double LevelLineMm, double KeelHeightMm) : Finding(FindingKind.RuleOfThumbDisagrees);

/// <param name="LiftMN">Positive up.</param>
public sealed record LiftFinding(double LiftMN) : Finding(LiftMN < 0 ? FindingKind.PlanesDown : FindingKind.PlanesUp);
