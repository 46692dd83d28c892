using System.Collections.Immutable;

namespace TyingClass.Lessons.Courses;

/// <summary>What a fly fence may draw.</summary>
public static class FlyViews
{
    public const string Side = "side";
    public const string Front = "front";
    public const string Hang = "hang";
    public const string Pitch = "pitch";
    public const string KeelHeight = "keel height";
    public const string Righting = "righting";
    public const string Depth = "depth";
    public const string Lean = "lean";
    public const string Ledger = "ledger";

    /// <summary>The last round of its retrieve, at true spacing.</summary>
    public const string Film = "film";

    /// <summary>Depth and nose over its retrieve.</summary>
    public const string Retrieve = "retrieve";

    /// <summary>Depth over the last round of its retrieve, to read figures off.</summary>
    public const string LastRound = "last round";

    public static ImmutableArray<string> All { get; } = [Side, Front, Hang, Pitch, KeelHeight, Righting, Depth, Lean, Ledger, Film, Retrieve, LastRound];

    /// <summary>Arguments a fence may carry after the view, and the values each takes.</summary>
    public static ImmutableDictionary<string, ImmutableArray<string>> Arguments { get; } =
        ImmutableDictionary<string, ImmutableArray<string>>.Empty.Add("state", ["fresh", "soaked"]);
}
