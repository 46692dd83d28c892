using System.Collections.Immutable;

namespace TyingClass.Lessons.Kinds.Predict;

/// <summary>A question with choices; the right one is computed.</summary>
/// <param name="Offered">The choices in the order shown.</param>
/// <param name="Quantity">The quantity asked about; null where the question is no single figure's.</param>
public sealed record PredictTask(Question Question, ImmutableArray<string> Offered, string? Quantity) : ExerciseTask
{
    /// <summary>Why it comes out so, to choose from once the fly has been shown; empty where the author gives none.</summary>
    public ImmutableArray<string> Reasons { get; init; } = [];

    /// <summary>The one that holds, from 1.</summary>
    public int RightReason { get; init; }

    /// <summary>The reason that holds, in the author's words; null where none is given.</summary>
    public string? Because => Reasons.ElementAtOrDefault(RightReason - 1);

    public override ExerciseKind Kind => PredictKind.Instance;

    public override ImmutableArray<string> Choices => Offered;

    internal override string? AskedQuantity => Quantity;

    public override ImmutableArray<string> OtherRecipes => Question is WhichHasMore more ? [more.SecondRecipeText] : [];

    internal override FlyChange? Change => (Question as ChangeIn)?.Change;

    internal override ExerciseTask With(FlyChange change) => this with { Question = new ChangeIn(change) };
}
