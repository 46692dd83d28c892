namespace TyingClass.Storage.Patterns;

/// <summary>How a pattern stands with its mentors.</summary>
public enum PatternState
{
    /// <summary>Nobody has been asked.</summary>
    Own,
    Waiting,
    Returned,
    SignedOff,
}

/// <summary>A fly of one's own: the head of a row of revisions.</summary>
/// <param name="Name">As the latest revision names the fly.</param>
/// <param name="Revision">The latest, from 1: whoever edits says which one they saw.</param>
/// <param name="State">By the latest round of review.</param>
public sealed record Pattern(string Id, string OwnerId, string Name, int Revision, PatternState State, DateTimeOffset CreatedAt, DateTimeOffset ChangedAt)
{
    /// <summary>Days a pattern can still be taken back out of the trash.</summary>
    public const int DaysInTrash = 30;

    /// <summary>The revision that stands in the class pattern book; null when none does.</summary>
    public int? SignedOffRevision { get; init; }

    /// <summary>The class whose book it stands in.</summary>
    public string? BookClassId { get; init; }

    public DateTimeOffset? TrashedAt { get; init; }
}

/// <param name="Number">From 1, without gaps.</param>
/// <param name="RecipeText">Exactly as saved.</param>
/// <param name="Note">What was done, in the owner's words or the program's; may be empty.</param>
public sealed record PatternRevision(string PatternId, int Number, string RecipeText, string Note, DateTimeOffset At);
