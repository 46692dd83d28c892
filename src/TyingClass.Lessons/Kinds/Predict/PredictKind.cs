using System.Collections.Immutable;
using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Model;

namespace TyingClass.Lessons.Kinds.Predict;

internal sealed class PredictKind : ExerciseKind, IPracticed, IPutToRoom
{
    public static PredictKind Instance { get; } = new();

    public override string Word => "predict";

    public override string Invitation => "Say what will happen, then see what the engine says.";

    public override double Minutes => 1.5;

    public override string? RightAnswer(Exercise exercise) => Prediction.Answer(exercise)?.Choice;

    public override IEnumerable<string> WrongAnswers(Exercise exercise, string? right) => Of(exercise).Choices.Where(c => c != right);

    public override Exercise Answered(Exercise exercise, string answerText) =>
        PredictAnswer.Read(answerText) is { Fresh: > 0 } answer && FreshProblem.Of(exercise, answer.Fresh) is { } fresh ? fresh : Of(exercise);

    public override (string? Right, string? Wrong) After(Exercise exercise, int failed)
    {
        if (failed == 0 || FreshProblem.Of(exercise, failed) is not { } fresh) return base.After(exercise, failed);
        string? key = RightAnswer(fresh);
        int reason = OfferedReasons.Of(exercise)?.Right ?? 1;
        return (Text(key), Text(fresh.Choices.FirstOrDefault(c => c != key)));

        string? Text(string? choice) => choice is null ? null : new PredictAnswer(failed, reason, choice).Text;
    }

    public override string Shown(Exercise exercise, string answerText) => PredictAnswer.Read(answerText) is not { } answer ? answerText
        : OfferedReasons.Of(exercise)?.At(answer.Reason) is { } said
            ? $"{said.TrimEnd('.')}. Of a fresh fly: {answer.Choice}"
            : $"Of a fresh fly: {answer.Choice}";

    public ImmutableArray<string> RoomChoices(Exercise exercise) => Of(exercise).Choices;

    public (string Choice, Feedback Feedback)? RoomAnswer(Exercise exercise) => Prediction.Answer(exercise);

    public string RoomPrompt => "What will it do?";

    internal override ImmutableArray<string> Keys => ["ask", "choices", "change", "other recipe", "reasons"];

    internal override bool NeedsFly => true;

    internal override ExerciseTask? Read(TaskReading reading)
    {
        if (QuestionReader.Read(reading.Fields, reading.Given, reading.Recipes, reading.Answers) is not { } read) return null;
        (ImmutableArray<string> reasons, int right) = reading.Fields.Has("reasons") ? ReasonsReader.Read(reading.Fields, "why it comes out so") : ([], 0);
        PredictTask task = new(read.Question, read.Choices, read.Quantity) { Reasons = reasons, RightReason = right };
        if (reading.Given is not { } given) return task;
        foreach (YamlText node in read.When) ConditionReader.Check(node, OwnScope(task, given), reading.Errors);
        return task;
    }

    internal override GradeResult Grade(Exercise exercise, string answerText, int failedAttempts, GradeOptions options) =>
        PredictGrader.Grade(exercise, answerText, failedAttempts, options);

    internal override string? KeyComplaint(Exercise exercise) => PredictChecker.KeyComplaint(exercise);

    (string Key, string Text)? IPracticed.CannotVary(ExerciseTask task) => ((PredictTask)task).Question is WhichHasMore
        ? ("ask", "Practice draws one fly at a time: ask which way up, nose, a change in something, or use own choices.")
        : null;

    // A near miss is found by the first look, far quicker than by the whole test.
    bool IPracticed.IsFair(Exercise problem, Recipe given) => ((PredictTask)problem.Task).Question is not ChangeIn
        ? KeyComplaint(problem) is null
        : AskedFlies.Of(problem, null) is var flies && PredictKey.Of(problem, flies) is { } key
            && PredictChecker.MayBeClear(problem, flies, key) && KeyComplaint(problem) is null;

    (QuantityQuery, double[])? IPracticed.TurnsOn(ExerciseTask task) => ((PredictTask)task).Question switch
    {
        WhichWayUp => (QuantityQuery.Known("keel height"), [0.0]),
        WhereTheNosePoints => (QuantityQuery.Known("pitch"), [-WhereTheNosePoints.LevelDeg * Math.PI / 180, WhereTheNosePoints.LevelDeg * Math.PI / 180]),
        _ => null,
    };

    /// <summary>For the author's own choices: they cannot speak of the answer, being it.</summary>
    internal ConditionScope OwnScope(PredictTask task, Recipe given) => Scope(task, given) with { Choices = [] };
}
