using System.Collections.Immutable;
using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Model;

namespace TyingClass.Lessons.Kinds.Explain;

internal sealed class ExplainKind : ExerciseKind
{
    public static ExplainKind Instance { get; } = new();

    public override string Word => "explain";

    public override string Invitation => "Say why, in your own words. A person reads it.";

    public override double Minutes => 4;

    public override bool IsMarkedByPerson => true;

    internal override ImmutableArray<string> Keys => [];

    internal override bool NeedsModelAnswer => true;

    internal override ExerciseTask? Read(TaskReading reading) => new ExplainTask();

    internal override GradeResult Grade(Exercise exercise, string answerText, int failedAttempts, GradeOptions options) =>
        ExplainGrader.Grade(exercise, answerText, options);

    internal override ConditionScope Scope(ExerciseTask task, Recipe? given) => base.Scope(task, given) with { HasFly = false };
}
