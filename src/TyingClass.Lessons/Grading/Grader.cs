using TyingClass.Balance.Reports;
using TyingClass.Lessons.Exercises;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Grading;

/// <summary>How feedback is to be worked out and said. None of it changes whether an answer passes, except <see cref="Report"/>.</summary>
public sealed record GradeOptions
{
    public static GradeOptions Default { get; } = new();

    /// <summary>Searching for the last hint takes longer than all the rest.</summary>
    public static GradeOptions WithoutAdvice { get; } = new() { Adviser = (_, _, _) => [] };

    /// <summary>The units the student reads.</summary>
    public UnitSystem Units { get; init; } = UnitSystem.Metric;

    /// <summary>Who gives the last hint; null for the engine's adviser.</summary>
    public AdviserCall? Adviser { get; init; }

    /// <summary>The same answer by field, where it was typed into a form: it need not be read from its text.</summary>
    public RecipeDraft? Draft { get; init; }

    /// <summary>A prediction that went wrong is decided by a fresh fly; false in practice, where the next problem is one by itself.</summary>
    public bool GoesOnFresh { get; init; } = true;

    /// <summary>Null for the default accuracy, sample and seed.</summary>
    public ReportOptions? Report { get; init; }
}

/// <summary>Grades answers. The same exercise, answer and engine always give the same grade.</summary>
public static class Grader
{
    /// <param name="answerText">
    /// Recipe text for repair and compose; a choice or its number for predict; a number with its unit for measure; names in order for sort;
    /// free text for explain; "name: value" lines for tub test.
    /// </param>
    /// <param name="failedAttempts">Attempts of this student that failed before this one, 0 or more: they open hints.</param>
    public static GradeResult Grade(Exercise exercise, string answerText, int failedAttempts, GradeOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(answerText);
        ArgumentOutOfRangeException.ThrowIfNegative(failedAttempts);
        options ??= GradeOptions.Default;
        return exercise.Kind.Grade(exercise, answerText, failedAttempts, options);
    }
}
