using TyingClass.Lessons.Exercises;

namespace TyingClass.Web.Editing;

/// <summary>The flies a question is about, in the order shown.</summary>
internal static class AskedRecipes
{
    /// <summary>The fly before and after, where the question is what a change does; null for any other.</summary>
    public static (string Before, string After)? Change(Exercise exercise) =>
        exercise is { Question: ChangeIn change, RecipeText: { } before } ? (before, change.ChangedRecipeText) : null;

    public static IEnumerable<string> Of(Exercise exercise) =>
        new[] { exercise.RecipeText, (exercise.Question as WhichHasMore)?.SecondRecipeText }.Concat(exercise.Items.Select(i => i.RecipeText)).OfType<string>();
}
