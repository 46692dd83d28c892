using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;

namespace TyingClass.Lessons.Grading;

/// <summary>Hints open one at a time, each with a failed attempt; none before the student has tried.</summary>
public static class HintLadder
{
    /// <summary>The hints a student has earned so far, the newest last.</summary>
    public static ImmutableArray<string> Opened(Exercise exercise, int failedAttempts)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentOutOfRangeException.ThrowIfNegative(failedAttempts);
        return [.. exercise.Hints.Take(failedAttempts)];
    }

    /// <summary>What this failed attempt opens; <paramref name="last"/> once the author's hints are used up.</summary>
    internal static string? Next(Exercise exercise, int failedBefore, Func<string?> last) =>
        failedBefore < exercise.Hints.Length ? exercise.Hints[failedBefore] : last();
}
