using TyingClass.Balance.Reports;

namespace TyingClass.Storage.BenchLog;

/// <summary>Where the recipe of a tied fly came from.</summary>
public enum FlySource
{
    /// <summary>A revision of a pattern: <see cref="TiedFly.SourceId"/> and <see cref="TiedFly.Revision"/>.</summary>
    Pattern,

    /// <summary>The fly of an exercise: <see cref="TiedFly.SourceId"/>.</summary>
    Exercise,

    /// <summary>Typed in.</summary>
    Text,
}

/// <summary>The fly that was tied, with its recipe as it was on that day.</summary>
/// <param name="SourceId">Pattern or exercise; null for a recipe typed in.</param>
/// <param name="Revision">Of a pattern; else 0.</param>
public sealed record TiedFly(string Name, string RecipeText, FlySource Source, string? SourceId, int Revision);

public enum SeenWay
{
    PointDown,
    PointUp,
    OnItsSide,

    /// <summary>Now so, now so.</summary>
    NoClearWay,
}

/// <summary>What the tub showed, SI. Null where it was not looked at; at least one thing was.</summary>
public sealed record Seen
{
    /// <summary>Between shank and thread, rad.</summary>
    public double? HangAngleRad { get; init; }

    public SeenWay? Way { get; init; }

    /// <summary>Dry, kg.</summary>
    public double? MassKg { get; init; }

    /// <summary>Time over <see cref="SinkDepthM"/>, s; both or neither.</summary>
    public double? SinkTimeS { get; init; }

    public double? SinkDepthM { get; init; }

    /// <summary>How the fly was when it was dropped and towed.</summary>
    public WetState State { get; init; } = WetState.Soaked;

    /// <summary>Of the tub, °C; null for the recipe's own.</summary>
    public double? WaterC { get; init; }

    /// <summary>How far a strip lifted it, m, read off a film.</summary>
    public double? HopM { get; init; }

    /// <summary>From the end of a strip until the nose pointed down, s.</summary>
    public double? NoseDownS { get; init; }

    public double? SinkRateMS => SinkDepthM / SinkTimeS;
}

/// <summary>What the engine said of the fly when the entry was written, SI. A newer engine never changes it.</summary>
/// <param name="Way">"point down", "point up", "on its side" or "no clear way".</param>
public sealed record Foreseen(double HangAngleRad, string Way, double MassKg, double? SinkRateMS, string EngineVersion)
{
    /// <summary>By the retrieve of the recipe, m; null where it was not asked for.</summary>
    public double? HopM { get; init; }

    /// <summary>s; null where it was not asked for, or never comes.</summary>
    public double? NoseDownS { get; init; }
}

/// <summary>One line of the bench log.</summary>
/// <param name="ClassId">The class the tyer belonged to; null for none.</param>
/// <param name="Version">Goes up with every change: whoever edits says which one they saw.</param>
public sealed record LogEntry(
    string Id, string PersonId, string? ClassId, TiedFly Fly, Seen Seen, Foreseen Foreseen, string Note, DateTimeOffset At, int Version)
{
    public const int DaysInTrash = 30;

    /// <summary>In the photo store.</summary>
    public string? PhotoId { get; init; }

    public DateTimeOffset? TrashedAt { get; init; }
}
