using System.Collections.Immutable;
using System.Text.Json.Serialization;
using TyingClass.Lessons.Grading;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Attempts;

/// <summary>One graded answer, kept as it was graded: a newer engine never changes it.</summary>
public sealed record Attempt
{
    public required string Id { get; init; }

    public required string PersonId { get; init; }

    public required string ExerciseId { get; init; }

    /// <summary>1 for a person's first attempt at this exercise, without gaps.</summary>
    public required int Number { get; init; }

    public required DateTimeOffset At { get; init; }

    /// <summary>Exactly as typed.</summary>
    public required string AnswerText { get; init; }

    public required string EngineVersion { get; init; }

    /// <summary>The exercise as it was asked.</summary>
    public string ExerciseVersion { get; init; } = "";

    /// <summary>As computed; see <see cref="Counts"/>.</summary>
    public required bool Passed { get; init; }

    /// <summary>No computed grade: a person decides.</summary>
    public required bool AwaitsReview { get; init; }

    /// <summary>What people said of it, oldest first; the last word stands.</summary>
    public ImmutableArray<Judgment> Judgments { get; init; } = [];

    /// <summary>Whether it stands as a success: the last judgment, or the computed grade where there is none.</summary>
    public bool Counts => Judgments is [.., { } last] ? last.Accepted : Passed;

    /// <summary>Still waits for a person's word.</summary>
    public bool Waits => AwaitsReview && Judgments.IsEmpty;

    /// <summary>With the goals it was graded against.</summary>
    public Feedback? Feedback { get; init; }

    /// <summary>Of the report it was graded with.</summary>
    public ImmutableArray<KeptFigure> Figures { get; init; } = [];

    /// <summary>What the goals were held against, SI.</summary>
    public ImmutableArray<GradedFigure> GradedFigures { get; init; } = [];

    /// <summary>Tub test: seen beside predicted.</summary>
    public ImmutableArray<Observation> Observations { get; init; } = [];

    /// <summary>
    /// Of the form it came in: the same answer out of the same form is the same attempt, sent again because its page never arrived. Null in attempts from
    /// before forms had one, and of no use to another server.
    /// </summary>
    [JsonIgnore]
    public string? Form { get; init; }

    /// <summary>A graded answer as it is to be kept, under a new id.</summary>
    /// <exception cref="ArgumentException">The answer could not be graded, so it is no attempt.</exception>
    public static Attempt Of(string personId, string exerciseId, int number, DateTimeOffset at, string answerText, GradeResult grade)
    {
        ArgumentNullException.ThrowIfNull(grade);
        if (!grade.IsAttempt) throw new ArgumentException("An answer that could not be read is not an attempt.", nameof(grade));
        return new Attempt
        {
            Id = RandomId.New(),
            PersonId = personId,
            ExerciseId = exerciseId,
            Number = number,
            At = at,
            AnswerText = answerText,
            EngineVersion = grade.EngineVersion,
            Passed = grade.Passed,
            AwaitsReview = grade.AwaitsReview,
            Feedback = grade.Feedback,
            ExerciseVersion = grade.ExerciseVersion,
            GradedFigures = grade.Figures,
            Observations = grade.Observations,
            Figures = grade.Report is null ? [] : Attempts.Figures.Of(grade.Report),
        };
    }
}

/// <param name="Name">Ends in its unit: "keelHeightMm".</param>
public readonly record struct KeptFigure(string Name, double Value);
