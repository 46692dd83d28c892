using TyingClass.Balance.Reports;
using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Reasons;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Replies;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Kinds.FindTheSlip;

/// <summary>Find the slip: the answer is a step and a reason. The reason is looked at only where the step is the right one.</summary>
internal static class SlipGrader
{
    public static GradeResult Grade(Exercise exercise, string answerText, int failedAttempts, GradeOptions options)
    {
        FindTheSlipTask task = (FindTheSlipTask)exercise.Task;
        if (Complaint(task, answerText, out int step, out int reason) is { } problem) return GradeResult.Refused(problem);
        SlipKey key = SlipKey.Of(exercise);
        FlyFigures? fly = SlipKey.Fly(exercise, options.Report);
        if (key.Step(fly) is not { } slip)
            return GradeResult.Refused(
                "The engine does not find just this one step wrong for this fly, so your answer was not marked. Please tell your instructor.");
        bool found = step == slip, passed = found && reason == task.RightReason;
        Misreading? misreading = passed ? null : MisreadingCheck.Find(exercise, fly?.Recipe, new ConditionFacts(fly, fly?.Start)
        {
            AnswerParts = [FindTheSlipTask.StepWord(step), FindTheSlipTask.ReasonWord(reason)],
        });
        AnswerReason why = SlipReason.Of(key, (step, found, passed), fly, options.Units);
        return new GradeResult
        {
            Passed = passed,
            Why = why.Reasons,
            ExerciseVersion = exercise.Version,
            Figures = fly is null ? []
                : [.. Enumerable.Range(1, task.Steps.Length).SelectMany(key.Quantities).DistinctBy(q => q.Name)
                .Select(q => new GradedFigure(q.Name, q.Of(fly)))],
            Feedback = new Feedback
            {
                Reply = passed ? StepReply.IsTheSlip(step) : found ? StepReply.HasAnotherReason(step)
                    : StepReply.Holds(step, Found(key, step, fly, options.Units)),
                First = why.First,
                Picture = why.Picture,
                WhatItWouldDo = $"{Verdict(task, step, found, passed)}{Computed(key, step, fly, options.Units)}",
                Goals = [StepGoal(step, found), ReasonGoal(task, reason, found, passed)],
                Why = why.Why,
                WhereToLook = passed ? null : Hint(exercise, failedAttempts, new SlipAnswer(step, reason), slip),
                Misreading = misreading?.AsMisreading,
                Remark = misreading?.AsRemark,
                MisreadConcept = misreading is { IsHalfway: false } ? misreading.Concept : null,
                Cautions = fly is null ? [] : [.. Cautions.For(fly.Recipe).Select(c => c.Text)],
            },
        };
    }

    private static string Verdict(FindTheSlipTask task, int step, bool found, bool passed)
    {
        if (!found) return $"Step {step} holds: the argument goes wrong at another one.";
        if (!passed) return $"Step {step} is the one that goes wrong, and it has another reason than yours.";
        return $"Step {step} is the one that goes "
            + $"wrong. {task.Reasons[task.RightReason - 1]}{(task.Instead is { } instead ? $" It should read: “{instead}”" : "")}";
    }

    // What the engine finds of the very thing the step speaks of.
    private static string Computed(SlipKey key, int step, FlyFigures? fly, UnitSystem units)
    {
        if (fly is null || key.Quantities(step).DistinctBy(q => q.Name).ToArray() is not { Length: > 0 } asked) return "";
        string found = fly.Start is { } start
            ? FigureSentence.WithTheChange(asked.Select(q => Change(q, start, fly, units)))
            : FigureSentence.ByTheEngine(QuantityQuery.Figures(fly, asked, units));
        // A fly that rides otherwise is drawn as it rides, and these figures are of the way it was meant.
        bool otherwise = asked.Any(q => q.Quantity.IsOfTheWayMeant)
            && fly.Report.Verdict.Kind is not (VerdictKind.RidesAsIntended or VerdictKind.Tilts);
        return otherwise ? $" {found} {FigureSentence.HeldAsMeant(fly.Report.Intent)}" : $" {found}";
    }

    // The figure that the step speaks of, in its own words.
    private static string? Found(SlipKey key, int step, FlyFigures? fly, UnitSystem units)
    {
        if (fly is null || key.Quantities(step).DistinctBy(q => q.Name).ToArray() is not [var query, ..] asked || query.Of(fly) is not { } now) return null;
        // A step that sets one figure of two parts side by side is about the two, not about what changed.
        if (asked is [{ Part: not null } one, { Part: not null } other] && one.Quantity == other.Quantity && one.Part != other.Part)
            return QuantityQuery.Figures(fly, asked, units).ToArray() is [var a, var b] ? StepReply.Beside(a, b) : null;
        if (fly.Start is not { } start || query.Of(start) is not { } was) return StepReply.Is(query.Phrase(units), query.SayApart(units, now)[0]);
        if (query.SayApart(units, was, now) is not [var before, var after]) return null;
        return Math.Abs(now - was) < query.Quantity.NoticeableSi ? StepReply.Stays(query.Phrase(units), after)
            : query.Part is null ? StepReply.Does(query.Quantity.Name, now > was, after, before) : StepReply.Of(query.Phrase(units), after, before);
    }

    private static string Change(QuantityQuery query, FlyFigures before, FlyFigures after, UnitSystem units) =>
        query.SayApart(units, query.Of(before), query.Of(after)) is [var was, var now]
            ? FigureSentence.Change(query.Phrase(units), was, now)
            : throw new InvalidOperationException("Two figures are told as two.");

    private static GoalResult StepGoal(int step, bool found) =>
        new("the step that goes wrong", found ? $"you said step {step}, and so it is" : $"you said step {step}; that one holds", found);

    private static GoalResult ReasonGoal(FindTheSlipTask task, int reason, bool found, bool passed)
    {
        string said = $"you said “{task.Reasons[reason - 1].TrimEnd('.')}”";
        return new GoalResult("why it goes wrong",
            passed ? $"{said}, and so it is" : found ? $"{said}; that is not what is wrong with it" : "looked at once the step is found", passed);
    }

    // The author's hints lead to the step; whoever stands on it needs another. Neither step nor reason is ever given away: it is chosen from two.
    private static string? Hint(Exercise exercise, int failedAttempts, SlipAnswer said, int slip)
    {
        FindTheSlipTask task = (FindTheSlipTask)exercise.Task;
        if (said.Step != slip)
            return HintLadder.Next(exercise, failedAttempts, () => Pair(task.Steps.Length, slip, said.Step) is var (first, second)
                ? $"One of these two goes wrong: step {first} or step {second}. Hold each against what the engine finds of it."
                : $"One step is left, step {slip}. What does it take for granted?");
        if (failedAttempts < exercise.Hints.Length)
            return $"You have the step. Hold each reason against step {slip} alone: one of them says what that step takes for granted.";
        return Pair(task.Reasons.Length, task.RightReason, said.Reason) is var (one, other)
            ? $"You have the step. It is reason {SlipAnswer.Letter(one)} or reason {SlipAnswer.Letter(other)}. Which of them speaks of what step {slip} says?"
            : $"You have the step, and one reason is left. Read it beside step {slip}.";
    }

    // The right one and the first that is neither right nor was just said, in their order.
    private static (int, int)? Pair(int count, int right, int? said)
    {
        int other = Enumerable.Range(1, count).FirstOrDefault(n => n != right && n != said);
        return other == 0 ? null : (Math.Min(right, other), Math.Max(right, other));
    }

    private static AnswerProblem? Complaint(FindTheSlipTask task, string answerText, out int step, out int reason)
    {
        SlipAnswer? answer = SlipAnswer.Read(answerText);
        (step, reason) = (answer?.Step ?? 0, answer?.Reason ?? 0);
        return answer switch
        {
            null => Problem("step", "Write the number of the step and of the reason, as in “3; reason B”."),
            (null, null) => Problem("step", "Choose the step that goes wrong and the reason first."),
            (null, _) => Problem("step", "Choose the step that goes wrong too."),
            ({ } s, _) when s < 1 || s > task.Steps.Length => Problem("step", $"There is no step {s}: the argument has {task.Steps.Length}."),
            (_, null) => Problem("reason", "Choose the reason too: what is wrong with that step?"),
            (_, { } r) when r < 1 || r > task.Reasons.Length =>
                Problem("reason", $"There is no reason {SlipAnswer.Letter(r)}: there are {task.Reasons.Length} to choose from."),
            _ => null,
        };
    }

    private static AnswerProblem Problem(string field, string text) => new(0, 0, field, text);
}
