using System.Collections.Immutable;

namespace TyingClass.Lessons.Kinds;

/// <summary>What an exercise of one kind holds beyond what every exercise does. One record a kind.</summary>
public abstract record ExerciseTask
{
    public abstract ExerciseKind Kind { get; }

    /// <summary>What an answer may say, in the order shown; empty where it is no choice.</summary>
    public virtual ImmutableArray<string> Choices => [];

    /// <summary>Flies asked about beside the exercise's own, in the order shown.</summary>
    public virtual ImmutableArray<string> OtherRecipes => [];

    /// <summary>The exercise's own fly with a change made, where the question is what that does.</summary>
    public virtual string? ChangedRecipe => Change?.ChangedRecipeText;

    /// <summary>That change, where it can be done to another fly as well.</summary>
    internal virtual FlyChange? Change => null;

    /// <summary>The same question about another change.</summary>
    internal virtual ExerciseTask With(FlyChange change) => this;

    /// <summary>What a drawn problem says of the change.</summary>
    internal virtual string Told(Exercises.Exercise problem, FlyChange change) => change.Said(problem.RecipeText!);

    /// <summary>The quantity the question is about; null where it is no single figure's.</summary>
    internal virtual string? AskedQuantity => null;
}
