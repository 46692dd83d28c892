using System.Collections.Immutable;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Telling.Reasons;

public enum ReasonForm
{
    /// <summary>From one fly to another: what each difference gave. The shares sum to the whole.</summary>
    Change,

    /// <summary>One fly: what it would be without each part.</summary>
    Without,

    /// <summary>One fly: what each part brings to a sum.</summary>
    MadeOf,

    /// <summary>The share of flies: what each tying error costs.</summary>
    Hands,
}

/// <summary>Why a figure is as it is, worked out by solving the fly anew. SI throughout.</summary>
/// <param name="Quantity">As authors write it: "keel height".</param>
/// <param name="Phrase">As a sentence names it, with speed, state and knot where the question states them.</param>
/// <param name="FromSi">The earlier fly's figure; null where it has none, and where there is no earlier fly.</param>
/// <param name="ToSi">The figure asked about; null where the fly has none.</param>
/// <param name="Shares">The largest first.</param>
public sealed record Reason(
    ReasonForm Form, string Quantity, Func<UnitSystem, string> Phrase, double? FromSi, double? ToSi, ImmutableArray<ReasonShare> Shares)
{
    /// <summary>For "mass of": the part.</summary>
    public string? Part { get; init; }

    /// <summary>A smaller difference is about the same.</summary>
    public double NoticeableSi { get; init; }

    /// <summary>A fly of it lies over to one side, and is seen best from ahead.</summary>
    public bool LeansOver { get; init; }

    public Magnitude? Magnitude => Magnitudes.Find(Quantity);

    /// <summary>The one with the most say; null where nothing has any.</summary>
    public ReasonShare? Top => Shares.IsEmpty ? null : Shares[0];

    public bool IsNoticeable => FromSi is null != ToSi is null || (FromSi is { } a && ToSi is { } b && Math.Abs(b - a) >= NoticeableSi);
}

/// <summary>One thing's say in a figure.</summary>
/// <param name="Si">What it gave: positive made the figure larger.</param>
/// <param name="FromSi">The figure without it, or before; null where there is none.</param>
/// <param name="ToSi">The figure with it, or after.</param>
public sealed record ReasonShare(Thing What, double Si, double? FromSi, double? ToSi)
{
    /// <summary>The figure of the bare hook, and of the hook with nothing but this; null where not worked out.</summary>
    public double? BareSi { get; init; }

    /// <inheritdoc cref="BareSi"/>
    public double? AloneSi { get; init; }

    /// <summary>How much say it has: as the last thing tied on and as the first, on the average.</summary>
    public double SaySi => (Math.Abs(Si) + Math.Abs(AloneSi - BareSi ?? Si)) / 2;

    /// <summary>What was done to it.</summary>
    public ImmutableArray<TurnedLine> Turned { get; init; } = [];

    /// <summary>The error that costs most, where hands are asked about.</summary>
    public HandsError? Error { get; init; }
}

/// <summary>One line of a recipe, before and after.</summary>
/// <param name="Key">"side"; empty for a whole part put in or taken out.</param>
public sealed record TurnedLine(string Key, string? Before, string? After);

/// <summary>What a tyer's hand gets a little wrong.</summary>
public enum HandsError
{
    Aside,
    Clocked,
    Along,
    Mass,
    Air,
}
