using TyingClass.Lessons.Exercises;
using TyingClass.Recipes.Text;

namespace TyingClass.Web.Editing;

/// <summary>What stands in the editor before anything is typed.</summary>
internal static class StartText
{
    private static readonly string Blank = RecipeDraft.Empty.With("recipe", "My fly").With("intent", "point down").With("hook.size", "6").ToText();

    public static Typed For(Exercise exercise) => IsRecipe(exercise) ? Typed.FormIfPossible(exercise.RecipeText ?? Blank) : Typed.Plain("");

    public static bool IsRecipe(Exercise exercise) => exercise.Kind is ExerciseKind.Repair or ExerciseKind.Compose;
}
