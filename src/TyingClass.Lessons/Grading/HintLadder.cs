using TyingClass.Lessons.Exercises;

namespace TyingClass.Lessons.Grading;

/// <summary>Hints open one at a time, each with a failed attempt; none before the student has tried.</summary>
internal static class HintLadder
{
    /// <summary>What this failed attempt opens; <paramref name="last"/> once the author's hints are used up.</summary>
    public static string? Next(Exercise exercise, int failedBefore, Func<string?> last) =>
        failedBefore < exercise.Hints.Length ? exercise.Hints[failedBefore] : last();
}
