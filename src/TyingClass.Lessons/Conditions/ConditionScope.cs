using System.Collections.Immutable;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Conditions;

/// <summary>What conditions of an exercise may speak of.</summary>
/// <param name="HasFly">There is a fly whose figures can be named.</param>
/// <param name="HasStart">There is a fly to compare it with.</param>
/// <param name="AnswerDimension">What a numeric answer measures; null when the answer is no number.</param>
/// <param name="Choices">What the answer may say; empty when it is no choice.</param>
/// <param name="PartNames">Parts of the fly given; empty for any kind.</param>
public sealed record ConditionScope(
    bool HasFly, bool HasStart, Dimension? AnswerDimension, bool AnswerIsNumber, ImmutableArray<string> Choices, ImmutableArray<string> PartNames);
