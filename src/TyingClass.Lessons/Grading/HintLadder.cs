using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Exercises;
using TyingClass.Recipes.Model;

namespace TyingClass.Lessons.Grading;

/// <summary>Hints open one at a time, each with a failed attempt; none before the student has tried.</summary>
internal static class HintLadder
{
    /// <summary>What this failed attempt opens; <paramref name="last"/> once the author's hints are used up.</summary>
    public static string? Next(Exercise exercise, int failedBefore, Func<string?> last) =>
        failedBefore < exercise.Hints.Length ? exercise.Hints[failedBefore] : last();

    /// <summary>The same, past hints at what this answer has done already.</summary>
    public static string? Next(Exercise exercise, int failedBefore, Func<string?> last, (Recipe? Given, ConditionFacts Answer) said)
    {
        if (exercise.HintsUnless.All(unless => unless is null)) return Next(exercise, failedBefore, last);
        ConditionScope scope = ExerciseReader.ScopeOf(exercise, said.Given);
        return Next(exercise, Enumerable.Range(0, exercise.Hints.Length).Where(i => i >= failedBefore).FirstOrDefault(Says, exercise.Hints.Length), last);

        bool Says(int i) => exercise.HintsUnless[i] is not { } unless || ConditionParser.Parse(unless, scope).Condition?.Holds(said.Answer) != true;
    }
}
