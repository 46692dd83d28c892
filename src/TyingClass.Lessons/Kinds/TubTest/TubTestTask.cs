using System.Collections.Immutable;

namespace TyingClass.Lessons.Kinds.TubTest;

/// <summary>A fly to tie, hang and drop.</summary>
/// <param name="Record">The quantities to watch for.</param>
public sealed record TubTestTask(ImmutableArray<string> Record) : ExerciseTask
{
    public override ExerciseKind Kind => TubTestKind.Instance;
}
