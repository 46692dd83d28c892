using System.Collections.Immutable;
using TyingClass.Recipes.Supplies;

namespace TyingClass.Storage.Classes;

/// <summary>One class: the people who share a register.</summary>
/// <param name="InstructorIds">At least one.</param>
/// <param name="Code">Three plain words; whoever says them may join.</param>
/// <param name="TimeZoneId">IANA: evenings and due dates are meant in it.</param>
/// <param name="Version">Goes up with each change to name, zone, code or instructors.</param>
public sealed record ClassRoom(string Id, string Name, ImmutableArray<string> InstructorIds, string Code, string TimeZoneId, DateTimeOffset CreatedAt,
    int Version)
{
    public const string DefaultName = "Tying class";

    /// <summary>UTC where this machine does not know the zone.</summary>
    public TimeZoneInfo Zone => TimeZoneInfo.TryFindSystemTimeZoneById(TimeZoneId, out TimeZoneInfo? zone) ? zone : TimeZoneInfo.Utc;

    /// <summary>Out of the way since then: nobody joins it, its people keep their work; null for a class that goes on.</summary>
    public DateTimeOffset? ArchivedAt { get; init; }

    public ImmutableArray<Deputy> Deputies { get; init; } = [];

    /// <summary>What the class's packets hold; null for the usual sizes.</summary>
    public Packets? Packets { get; init; }

    /// <summary>Null while no dates were worked out.</summary>
    public EveningRhythm? Rhythm { get; init; }

    /// <summary>Null for someone who is no deputy here.</summary>
    public Deputy? DeputyOf(string personId) => Deputies.FirstOrDefault(d => d.PersonId == personId);

    public bool IsTaughtBy(string personId) => InstructorIds.Contains(personId);
}
