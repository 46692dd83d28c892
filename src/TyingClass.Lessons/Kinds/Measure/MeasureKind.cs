using System.Collections.Immutable;
using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Kinds.Measure;

internal sealed class MeasureKind : ExerciseKind, IPracticed
{
    public static MeasureKind Instance { get; } = new();

    public override string Word => "measure";

    public override string Invitation => "Work out a figure.";

    public override double Minutes => 3;

    public override bool TellsTheAnswer => false;

    public override bool LastHintTells => true;

    internal override ImmutableArray<string> Keys => ["quantity", "tolerance", "change", "sum"];

    internal override bool NeedsFly => true;

    internal override ExerciseTask? Read(TaskReading reading) => MeasureReader.Read(reading.Fields, reading.Answers);

    internal override GradeResult Grade(Exercise exercise, string answerText, int failedAttempts, GradeOptions options) =>
        MeasureGrader.Grade(exercise, answerText, failedAttempts, options);

    internal override ConditionScope Scope(ExerciseTask task, Recipe? given) =>
        base.Scope(task, given) with { AnswerIsNumber = true, AnswerDimension = ((MeasureTask)task).Query.Quantity.Dimension };

    (QuantityQuery, double[])? IPracticed.TurnsOn(ExerciseTask task) => null;

    string? IPracticed.Figure(Exercise problem)
    {
        QuantityQuery query = ((MeasureTask)problem.Task).Query;
        return query.Of(MeasureTask.Measured(problem)) is { } key ? query.Say(key, UnitSystem.Metric) : null;
    }

    // A figure may not be asked more finely than two flies tied alike differ: then the tolerance widens until some problem is fair.
    IEnumerable<ExerciseTask> IPracticed.At(ExerciseTask task, double level) =>
        ((double[])[level, Math.Min(level, 0.5), 0]).Select(ease => ((MeasureTask)task).At(ease));

    internal override string? KeyComplaint(Exercise exercise) => MeasureChecker.KeyComplaint(exercise);
}
