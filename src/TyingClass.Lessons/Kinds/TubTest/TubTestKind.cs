using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Yaml;

namespace TyingClass.Lessons.Kinds.TubTest;

internal sealed class TubTestKind : ExerciseKind
{
    public static TubTestKind Instance { get; } = new();

    public override string Word => "tub test";

    public override string Invitation => "Tie it, hang it, drop it, and write down what it did.";

    /// <summary>Done at the vise, not while reading.</summary>
    public override double Minutes => 0;

    public override bool IsMarkedByPerson => true;

    public override bool IsAtTheBench => true;

    internal override ImmutableArray<string> Keys => ["record"];

    internal override bool NeedsFly => true;

    internal override bool AnswerHasNames => true;

    internal override ExerciseTask? Read(TaskReading reading)
    {
        FieldReader fields = reading.Fields;
        if (!fields.Has("record")) fields.Missing("record", "list what to watch for, as in “record: [hang angle, sink rate]”.");
        ImmutableArray<string>.Builder names = ImmutableArray.CreateBuilder<string>();
        foreach (YamlText node in fields.TextNodes("record"))
        {
            if (node.Value.Trim() == TubTestRecord.WhichWayUp) names.Add(TubTestRecord.WhichWayUp);
            else if (QuantityQuery.TryParse(node.Value.Trim(), out QuantityQuery query, out string error)) names.Add(query.Name);
            else fields.Errors.Add(node, error);
        }

        return new TubTestTask(names.ToImmutable());
    }

    internal override GradeResult Grade(Exercise exercise, string answerText, int failedAttempts, GradeOptions options) =>
        TubTestGrader.Grade(exercise, answerText, options);
}
