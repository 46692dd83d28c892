namespace TyingClass.Lessons.Kinds.Explain;

/// <summary>Words for a mentor: the prompt says it all.</summary>
public sealed record ExplainTask : ExerciseTask
{
    public override ExerciseKind Kind => ExplainKind.Instance;
}
