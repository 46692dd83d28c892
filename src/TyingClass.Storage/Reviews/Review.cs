namespace TyingClass.Storage.Reviews;

public enum ReviewState
{
    Waiting,
    Returned,
    SignedOff,

    /// <summary>Taken back by its owner before anyone decided.</summary>
    Withdrawn,
}

/// <summary>One round: a student asks about a revision, a mentor returns it or signs it off.</summary>
/// <param name="ClassId">Whose mentors are asked.</param>
/// <param name="Revision">The one asked about.</param>
/// <param name="Question">In the student's words; may be empty.</param>
/// <param name="Version">Goes up with every change: whoever decides says which one they saw.</param>
public sealed record Review(
    string Id, string PatternId, string OwnerId, string ClassId, int Revision, string Question, DateTimeOffset AskedAt, ReviewState State, int Version)
{
    public string? DecidedById { get; init; }

    public DateTimeOffset? DecidedAt { get; init; }

    /// <summary>What the mentor wrote with the decision.</summary>
    public string Words { get; init; } = "";

    /// <summary>The mentor's own version of the recipe, sent back with it; null for none.</summary>
    public string? Proposal { get; init; }

    /// <summary>Why it was signed off although the engine says it does not ride as meant; null where it does.</summary>
    public string? Despite { get; init; }
}

/// <summary>What a mentor decides of a round.</summary>
/// <param name="Proposal">A recipe that can be read; null for none.</param>
/// <param name="Despite">As <see cref="Review.Despite"/>.</param>
public sealed record ReviewDecision(bool SignOff, string? Words, string? Proposal = null, string? Despite = null);

/// <summary>What a comment is about.</summary>
public enum CommentSubject
{
    Whole,

    /// <summary>A part of the fly, or its hook.</summary>
    Part,

    /// <summary>A finding of the diagnosis.</summary>
    Finding,

    /// <summary>An entry of the bench log: what the real fly did.</summary>
    Log,
}

/// <param name="Revision">The one that was being read.</param>
/// <param name="About">The part as the recipe names it ("cone", "wing 2", "hook"), the finding's code or the entry's id; empty for the
/// whole.</param>
public sealed record ReviewComment(
    string Id, string PatternId, string ReviewId, int Revision, string ById, DateTimeOffset At, CommentSubject Subject, string About, string Text)
{
    /// <summary>When its writer last corrected it; null where nobody did.</summary>
    public DateTimeOffset? CorrectedAt { get; init; }
}
