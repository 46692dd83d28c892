using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Model;

namespace TyingClass.Lessons.Kinds;

/// <summary>A kind whose problems can be drawn by seed, for practice.</summary>
internal interface IPracticed
{
    /// <summary>Why a task of this kind cannot be drawn with other flies, and the key that says so; null when it can.</summary>
    (string Key, string Text)? CannotVary(ExerciseTask task) => null;

    /// <summary>Whether a drawn problem has a clear answer.</summary>
    bool IsFair(Exercise problem, Recipe given) => problem.Kind.KeyComplaint(problem) is null;

    /// <summary>What a problem turns on, and at which values; null when there is no single figure.</summary>
    (QuantityQuery Query, double[] ThresholdsSi)? TurnsOn(ExerciseTask task);

    /// <summary>The figure that is the answer, told: two problems with the same one ask the same in other words. Null where the answer is no figure.</summary>
    string? Figure(Exercise problem) => null;

    /// <summary>What to draw from at a level, 0 plain to 1 close: the first that gives a fair problem is taken.</summary>
    IEnumerable<ExerciseTask> At(ExerciseTask task, double level) => [task];
}
