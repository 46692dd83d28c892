using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Kinds.Repair;

/// <summary>A fly to mend.</summary>
/// <param name="Allow">What may be changed, and how far.</param>
public sealed record RepairTask(ImmutableArray<AllowedChange> Allow) : RecipeTask
{
    public override ExerciseKind Kind => RepairKind.Instance;

    public override bool ChangesGiven => true;

    public override EditRules Rules(RecipeDraft? given, RecipeDraft typed) =>
        given is null ? new Compose.ComposeRules(this, typed) : new RepairRules(this, given);
}
