using System.Collections.Immutable;
using TyingClass.Storage.BenchLog;

namespace TyingClass.Web.BenchLog;

/// <param name="Value">As <see cref="LogPost.Fly"/>.</param>
public sealed record FlyChoice(string Value, string Words);

/// <summary>The observation form.</summary>
public sealed record LogForm
{
    public required string Address { get; init; }

    public required LogPost Post { get; init; }

    /// <summary>Flies to choose from; empty when an entry is corrected: its fly stays.</summary>
    public ImmutableArray<FlyChoice> Patterns { get; init; } = [];

    public ImmutableArray<FlyChoice> Exercises { get; init; } = [];

    /// <summary>By field.</summary>
    public IReadOnlyDictionary<string, string> Errors { get; init; } = ImmutableDictionary<string, string>.Empty;

    public string? Notice { get; init; }

    /// <summary>The entry's version the form was opened with; 0 for a new one.</summary>
    public int Expected { get; init; }

    /// <summary>The fly of the entry being corrected.</summary>
    public string? FlyName { get; init; }

    /// <summary>What was saved meanwhile from elsewhere.</summary>
    public LogEntry? Meanwhile { get; init; }

    public bool IsNew => Expected == 0;
}

/// <param name="Kept">The entry, when it was kept.</param>
/// <param name="Form">The form again, when it was not; null for an entry this person does not have.</param>
public sealed record LogResult(LogEntry? Kept, LogForm? Form, int Status = StatusCodes.Status200OK);
