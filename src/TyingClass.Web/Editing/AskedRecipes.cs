using TyingClass.Lessons.Exercises;

namespace TyingClass.Web.Editing;

/// <summary>The flies a question is about, in the order shown.</summary>
internal static class AskedRecipes
{
    /// <summary>The fly before and after, where the question is what a change does; null for any other.</summary>
    public static (string Before, string After)? Change(Exercise exercise) =>
        exercise is { Task.ChangedRecipe: { } after, RecipeText: { } before } ? (before, after) : null;

    public static IEnumerable<string> Of(Exercise exercise) =>
        new[] { exercise.RecipeText }.OfType<string>().Concat(exercise.Task.OtherRecipes);
}
