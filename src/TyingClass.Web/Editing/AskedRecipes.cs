using TyingClass.Lessons.Exercises;

namespace TyingClass.Web.Editing;

/// <summary>The flies a question is about, in the order shown.</summary>
internal static class AskedRecipes
{
    public static IEnumerable<string> Of(Exercise exercise) =>
        new[] { exercise.RecipeText, (exercise.Question as WhichHasMore)?.SecondRecipeText }.Concat(exercise.Items.Select(i => i.RecipeText)).OfType<string>();
}
