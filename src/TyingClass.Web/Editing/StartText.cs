using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Kinds;
using TyingClass.Recipes.Text;

namespace TyingClass.Web.Editing;

/// <summary>What stands in the editor before anything is typed.</summary>
internal static class StartText
{
    private static readonly RecipeDraft Bare = RecipeDraft.Empty.With("recipe", "My fly").With("intent", "point down").With("hook.size", "6");

    /// <summary>A bare hook.</summary>
    public static Typed Blank => Typed.AsForm(Bare);

    public static Typed For(Exercise exercise) =>
        !exercise.Kind.AnswerIsRecipe ? Typed.Plain("")
        : exercise.RecipeText is { } given ? Typed.Given(given) is { } draft ? Typed.AsForm(draft) : Typed.AsText(given)
        : Typed.AsForm(WithWhatIsFixed(exercise));

    private static RecipeDraft WithWhatIsFixed(Exercise exercise) =>
        ((RecipeTask)exercise.Task).Fixed.Where(f => f.Words.Length == 1).Aggregate(Bare, (draft, rule) => draft.With(rule.Path, rule.Words[0]));
}
