using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Kinds.Compose;

/// <summary>A fly to build.</summary>
public sealed record ComposeTask : RecipeTask
{
    public override ExerciseKind Kind => ComposeKind.Instance;

    public override EditRules Rules(RecipeDraft? given, RecipeDraft typed) => new ComposeRules(this, typed);
}
