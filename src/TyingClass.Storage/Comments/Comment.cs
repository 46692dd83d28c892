namespace TyingClass.Storage.Comments;

/// <summary>A word from mentor or instructor to one student.</summary>
/// <param name="ByName">As it was then.</param>
/// <param name="ExerciseId">Null for a word about nothing in particular.</param>
/// <param name="Text">Any text: never markup.</param>
/// <param name="SeenAt">When the student said it was read.</param>
public sealed record Comment(string Id, string PersonId, string ByPersonId, string ByName, string? ExerciseId, DateTimeOffset At, string Text,
    DateTimeOffset? SeenAt)
{
    /// <summary>When its writer last corrected it; null where nobody did.</summary>
    public DateTimeOffset? CorrectedAt { get; init; }
}
