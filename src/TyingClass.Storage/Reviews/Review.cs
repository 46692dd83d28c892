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
}

/// <summary>What a comment is about.</summary>
public enum CommentSubject
{
    Whole,

    /// <summary>A part of the fly, or its hook.</summary>
    Part,

    /// <summary>A finding of the diagnosis.</summary>
    Finding,
}

/// <param name="Revision">The one that was being read.</param>
/// <param name="About">The part as the recipe names it ("cone", "wing 2", "hook") or the finding's code; empty for the whole.</param>
public sealed record ReviewComment(
    string Id, string PatternId, string ReviewId, int Revision, string ById, DateTimeOffset At, CommentSubject Subject, string About, string Text);
