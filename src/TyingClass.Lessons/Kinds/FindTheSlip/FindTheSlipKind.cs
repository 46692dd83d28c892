using System.Collections.Immutable;
using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Model;

namespace TyingClass.Lessons.Kinds.FindTheSlip;

internal sealed class FindTheSlipKind : ExerciseKind, IPutToRoom
{
    public static FindTheSlipKind Instance { get; } = new();

    public override string Word => "find the slip";

    public override string Invitation => "A tyer argues in steps, and one of them is wrong. Find it, and say why.";

    public override double Minutes => 3;

    public override bool TellsTheAnswer => false;

    public override string FeedbackHeading => "The argument";

    public string RoomPrompt => "Which step goes wrong?";

    public override string Shown(Exercise exercise, string answerText)
    {
        FindTheSlipTask task = (FindTheSlipTask)Of(exercise).Task;
        if (SlipAnswer.Read(answerText) is not { Step: { } step, Reason: { } reason }) return answerText;
        // The exercise may have lost steps since.
        return task.Steps.ElementAtOrDefault(step - 1) is { } said && task.Reasons.ElementAtOrDefault(reason - 1) is { } why
            ? $"Step {step}: {said.Say}\nReason {SlipAnswer.Letter(reason)}: {why}"
            : answerText;
    }

    public override string? RightAnswer(Exercise exercise) =>
        Key(exercise) is { } step ? new SlipAnswer(step, ((FindTheSlipTask)exercise.Task).RightReason).ToString() : null;

    /// <summary>The right step for another reason, and the other steps.</summary>
    public override IEnumerable<string> WrongAnswers(Exercise exercise, string? right)
    {
        FindTheSlipTask task = (FindTheSlipTask)Of(exercise).Task;
        if (SlipAnswer.Read(right ?? "") is not { Step: { } slip, Reason: { } because }) return [];
        IEnumerable<SlipAnswer> reasons = Enumerable.Range(1, task.Reasons.Length).Where(r => r != because).Select(r => new SlipAnswer(slip, r));
        IEnumerable<SlipAnswer> steps = Enumerable.Range(1, task.Steps.Length).Where(s => s != slip).Select(s => new SlipAnswer(s, because));
        return reasons.Concat(steps).Select(a => a.ToString());
    }

    public ImmutableArray<string> RoomChoices(Exercise exercise) =>
        [.. ((FindTheSlipTask)Of(exercise).Task).Steps.Select((s, i) => FormattableString.Invariant($"{i + 1}. {s.Say}"))];

    public (string Choice, Feedback Feedback)? RoomAnswer(Exercise exercise) =>
        Key(exercise) is { } step && RightAnswer(exercise) is { } right && Grader.Grade(exercise, right, 0).Feedback is { } feedback
            ? (RoomChoices(exercise)[step - 1], feedback)
            : null;

    internal override ImmutableArray<string> Keys => ["steps", "slip", "reasons", "instead", "change"];

    internal override bool AnswerHasNames => true;

    internal override ExerciseTask? Read(TaskReading reading) => SlipReader.Read(reading);

    internal override GradeResult Grade(Exercise exercise, string answerText, int failedAttempts, GradeOptions options) =>
        SlipGrader.Grade(exercise, answerText, failedAttempts, options);

    internal override ConditionScope Scope(ExerciseTask task, Recipe? given) => base.Scope(task, given) with { HasStart = task.ChangedRecipe is not null };

    /// <summary>A claim is about the fly, not about what somebody answered.</summary>
    internal ConditionScope ClaimScope(FindTheSlipTask task, Recipe? given) => Scope(task, given) with { Choices = [] };

    internal override IEnumerable<CheckComplaint> Check(Exercise exercise) => SlipChecker.Check(exercise);

    internal override IEnumerable<string> Missed(Exercise exercise, GradeResult result) => result.Feedback!.Goals switch
    {
        [{ Met: false }, ..] => ["step"],
        [_, { Met: false }] => ["reason"],
        _ => [],
    };

    private static int? Key(Exercise exercise) => SlipKey.Of(Of(exercise)).Step(SlipKey.Fly(exercise, null));
}
