using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Exercises;
using TyingClass.Recipes.Model;

namespace TyingClass.Lessons.Grading;

internal static class MisreadingCheck
{
    /// <summary>The first misreading, in the author's order, that the answer matches.</summary>
    public static Misreading? Find(Exercise exercise, Recipe? given, ConditionFacts facts)
    {
        ConditionScope scope = ExerciseReader.ScopeOf(exercise, given);
        return exercise.Misreadings.FirstOrDefault(m => ConditionParser.Parse(m.When, scope).Condition?.Holds(facts) == true);
    }
}
