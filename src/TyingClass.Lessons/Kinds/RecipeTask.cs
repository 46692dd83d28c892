using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Kinds;

/// <summary>A task whose answer is a fly.</summary>
public abstract record RecipeTask : ExerciseTask
{
    /// <summary>What the fly must do.</summary>
    public ImmutableArray<Goal> Goals { get; init; } = [];

    /// <summary>The kinds of part that may be used; empty for any.</summary>
    public ImmutableArray<BoxEntry> PartsBox { get; init; } = [];

    /// <summary>What hook, fishing and intent must be, by path ("hook.size").</summary>
    public ImmutableArray<AllowedChange> Fixed { get; init; } = [];

    /// <summary>The answer is the fly given, changed: the two are told side by side.</summary>
    public virtual bool ChangesGiven => false;

    /// <summary>What an editor lets a student change.</summary>
    /// <param name="given">The fly given; null where there is none that can be shown by field.</param>
    /// <param name="typed">What stands in the editor now.</param>
    public abstract EditRules Rules(RecipeDraft? given, RecipeDraft typed);
}
