using TyingClass.Lessons.Exercises;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Grading;

/// <summary>A goal as a student reads it, before an answer and beside what it reached.</summary>
public static class GoalWords
{
    /// <summary>"of 100 flies tied like it, at least 90 ride as intended".</summary>
    public static string Asked(Goal goal, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(goal);
        return GoalCheck.Query(goal).Asked(goal, units);
    }
}
