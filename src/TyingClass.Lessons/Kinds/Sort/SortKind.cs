using System.Collections.Immutable;
using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Model;

namespace TyingClass.Lessons.Kinds.Sort;

internal sealed class SortKind : ExerciseKind
{
    public static SortKind Instance { get; } = new();

    public override string Word => "sort";

    public override string Name => "Put in order";

    public override string Invitation => "Put these in order.";

    public override double Minutes => 3;

    public override bool TellsTheAnswer => false;

    public override bool LastHintTells => true;

    public override string InShort(Exercise exercise, string answerText, string? earlierText) => AnswerLine.Of(answerText, ", then ");

    internal override ImmutableArray<string> Keys => ["flies", "by", "order"];

    internal override ExerciseTask? Read(TaskReading reading) => SortReader.Read(reading.Fields, reading.Recipes);

    internal override GradeResult Grade(Exercise exercise, string answerText, int failedAttempts, GradeOptions options) =>
        SortGrader.Grade(exercise, answerText, failedAttempts, options);

    internal override ConditionScope Scope(ExerciseTask task, Recipe? given) => base.Scope(task, given) with { HasFly = false };

    internal override string? KeyComplaint(Exercise exercise) => SortChecker.KeyComplaint(exercise);
}
