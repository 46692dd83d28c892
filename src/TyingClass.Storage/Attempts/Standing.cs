namespace TyingClass.Storage.Attempts;

/// <summary>Where one person stands with one exercise: the sum of the attempts, kept in step with them so that a register need not read them.</summary>
public sealed record Standing(string PersonId, string ExerciseId)
{
    public int Attempts { get; init; }

    /// <summary>Attempts that neither passed nor wait for a person's mark.</summary>
    public int Failed { get; init; }

    /// <summary>True once any attempt counts as a success.</summary>
    public bool Passed { get; init; }

    /// <summary>True while the latest attempt waits for a mark and none has passed.</summary>
    public bool AwaitsReview { get; init; }

    public DateTimeOffset LastAt { get; init; }

    /// <summary>
    /// When the first attempt came in that passed or was handed to a person to read: what a due date is held against. Null until then, and in records from
    /// before there were due dates.
    /// </summary>
    public DateTimeOffset? HandedInAt { get; init; }

    /// <summary>The latest attempt that fell short, kept after a success too; null where none did, and where everything waits for a mark.</summary>
    public FailedTry? LastFailed { get; init; }

    /// <summary>What it shows is what is held now: nothing has passed, and nothing waits to be read.</summary>
    public bool IsOpen => this is { Passed: false, AwaitsReview: false, Failed: > 0 };

    /// <summary>What the whole of one person's attempts at one exercise comes to.</summary>
    /// <param name="attempts">Oldest first.</param>
    internal static Standing Of(string personId, string exerciseId, IEnumerable<Attempt> attempts) =>
        attempts.Aggregate(new Standing(personId, exerciseId), (standing, attempt) => standing.After(attempt));

    internal Standing After(Attempt attempt) => this with
    {
        Attempts = Attempts + 1,
        Failed = Failed + (attempt.Counts || attempt.Waits ? 0 : 1),
        Passed = Passed || attempt.Counts,
        AwaitsReview = attempt.Waits && !Passed && !attempt.Counts,
        LastAt = attempt.At,
        HandedInAt = HandedInAt ?? (attempt.Counts || attempt.AwaitsReview ? attempt.At : null),
        LastFailed = attempt.Counts || attempt.Waits ? LastFailed : FailedTry.Of(AttemptNote.Of(attempt)),
    };
}

/// <summary>What a class shares is found among these, without reading the attempts.</summary>
/// <param name="AnswerKey">As <see cref="AttemptNote.AnswerKey"/>.</param>
/// <param name="Misreading">As the student was told; null where the answer matched none.</param>
/// <param name="Missed">The first goal not met, as asked.</param>
public sealed record FailedTry(string AttemptId, int Number, DateTimeOffset At, string AnswerKey, string? Misreading, string? MisreadConcept, string? Missed)
{
    internal static FailedTry Of(AttemptNote note) =>
        new(note.Id, note.Number, note.At, note.AnswerKey, note.Misreading, note.MisreadConcept, note.Missed.FirstOrDefault());
}
