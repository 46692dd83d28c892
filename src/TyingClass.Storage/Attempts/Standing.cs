namespace TyingClass.Storage.Attempts;

/// <summary>Where one person stands with one exercise: the sum of the attempts, kept in step with them so that a register need not read them.</summary>
public sealed record Standing(string PersonId, string ExerciseId)
{
    public int Attempts { get; init; }

    /// <summary>Attempts that neither passed nor wait for a person's mark.</summary>
    public int Failed { get; init; }

    /// <summary>True once any attempt passed.</summary>
    public bool Passed { get; init; }

    /// <summary>True while the latest attempt waits for a mark and none has passed.</summary>
    public bool AwaitsReview { get; init; }

    public DateTimeOffset LastAt { get; init; }

    /// <summary>When the first attempt came in that passed or was handed to a person to read: what a due date is held against. Null until then, and in records from before there were due dates.</summary>
    public DateTimeOffset? HandedInAt { get; init; }

    internal Standing After(Attempt attempt) => this with
    {
        Attempts = Attempts + 1,
        Failed = Failed + (attempt.Passed || attempt.AwaitsReview ? 0 : 1),
        Passed = Passed || attempt.Passed,
        AwaitsReview = attempt.AwaitsReview && !Passed && !attempt.Passed,
        LastAt = attempt.At,
        HandedInAt = HandedInAt ?? (attempt.Passed || attempt.AwaitsReview ? attempt.At : null),
    };
}
