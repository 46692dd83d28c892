using System.Collections.Immutable;
using System.Globalization;
using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Reasons;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;
using TyingClass.Telling.Replies;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Kinds.Predict;

/// <summary>Predict: the answer is one of the choices, by its words or its number.</summary>
internal static class PredictGrader
{
    public static GradeResult Grade(Exercise exercise, string answerText, int failedAttempts, GradeOptions options)
    {
        if (PredictAnswer.Read(answerText) is { } answer) return Fresh(exercise, answer, failedAttempts, options);
        // Whoever has seen the fly would only vote among what is left. Where no fresh fly can be drawn, that is all there is.
        if (failedAttempts == 0 || FreshProblem.Of(exercise, failedAttempts) is null) return WithReason(exercise, Vote(exercise, answerText, options), options);
        return string.IsNullOrWhiteSpace(answerText) ? Fresh(exercise, new PredictAnswer(0, 0, ""), failedAttempts, options)
            : Chosen(exercise, answerText) is not null ? GradeResult.Refused(ReasonOffer.AlreadyShown)
            : Vote(exercise, answerText, options);
    }

    // Nobody is asked for the reason after a right first vote. So that it was no mere guess, the author's own is told then; else it is asked next.
    private static GradeResult WithReason(Exercise exercise, GradeResult vote, GradeOptions options)
    {
        if (vote.Feedback is not { } feedback || exercise.Task is not PredictTask { Because: { } because }) return vote;
        if (vote.Passed) return feedback.Remark is null ? vote with { Feedback = feedback with { Remark = ReasonOffer.Holding(because) } } : vote;
        if (!options.GoesOnFresh || FreshProblem.Of(exercise, 1) is null) return vote;
        // The figure first, where the reason begins with it.
        string does = feedback.WhatItWouldDo, why = feedback.Why;
        bool begins = why.StartsWith(does, StringComparison.Ordinal);
        why = begins ? $"{does} {ReasonOffer.ReasonIsAsked}{why[does.Length..]}" : $"{ReasonOffer.ReasonIsAsked} {why}".TrimEnd();
        return vote with { Feedback = feedback with { Why = why } };
    }

    private static GradeResult Fresh(Exercise exercise, PredictAnswer answer, int failedAttempts, GradeOptions options)
    {
        OfferedReasons? offered = OfferedReasons.Of(exercise);
        string? why = offered?.At(answer.Reason);
        List<AnswerProblem> missing = [];
        if (offered is not null && why is null) missing.Add(new AnswerProblem(0, 0, PredictAnswer.ReasonLine, ReasonOffer.ChooseReason));
        if (answer.Fresh == 0)
            missing.Add(new AnswerProblem(0, 0, PredictAnswer.FreshLine(Math.Max(failedAttempts, 1)), ReasonOffer.ChooseFresh));
        if (missing.Count > 0) return GradeResult.Refused([.. missing]);
        if (failedAttempts > 0 && answer.Fresh != failedAttempts) return GradeResult.Refused(ReasonOffer.AnotherFresh);
        if (FreshProblem.Of(exercise, answer.Fresh) is not { } fresh) return Vote(exercise, answer.Choice, options);
        GradeResult grade = Vote(fresh, answer.Choice, options);
        if (grade.Feedback is not { } feedback) return grade;
        if (offered is null || why is null) return grade with { ExerciseVersion = exercise.Version };
        // Whoever has the right answer for a wrong reason has guessed it. Which reason holds is not told: it is asked again.
        bool understood = offered.IsRight(answer.Reason);
        string first = FirstShown.NameOf(exercise);
        return grade with
        {
            ExerciseVersion = exercise.Version,
            Passed = grade.Passed && understood,
            Feedback = feedback with
            {
                Reply = feedback.Reply is { } reply ? VoteReply.WithReason(reply, understood) : null,
                Remark = understood ? ReasonOffer.RightReason(first, why) : ReasonOffer.WrongReason(first, why, grade.Passed),
                Goals =
                [
                    new GoalResult(ReasonOffer.ReasonAsked(first), ReasonOffer.ReasonSaid(why, understood), understood),
                    .. feedback.Goals.Select(g => g with { Asked = ReasonOffer.OfFresh(g.Asked) }),
                ],
                WhereToLook = understood ? feedback.WhereToLook : ReasonOffer.LookForReason,
            },
        };
    }

    private static GradeResult Vote(Exercise exercise, string answerText, GradeOptions options)
    {
        if (Chosen(exercise, answerText) is not { } choice)
            return GradeResult.Refused(
                string.IsNullOrWhiteSpace(answerText) ? "Choose one of the answers first." : $"Choose one of these: {string.Join("; ", exercise.Choices)}.");
        AskedFlies flies = AskedFlies.Of(exercise, options.Report);
        if (PredictKey.Of(exercise, flies) is not { } key)
            return GradeResult.Refused("This question has no single right answer for this fly, so your answer was not marked. Please tell your instructor.");
        bool passed = choice == key;
        Misreading? misreading = passed ? null : MisreadingCheck.Find(exercise, flies.Fly.Recipe, new ConditionFacts(flies.Fly, null, choice));
        AnswerReason reason = PredictReason.Of(exercise, flies, key, choice, options.Units);
        return new GradeResult
        {
            Passed = passed,
            Why = reason.Reasons,
            ExerciseVersion = exercise.Version,
            Figures = Figures(exercise, flies),
            Feedback = new Feedback
            {
                Reply = PredictOutcome.Of(exercise, flies, key, choice, options.Units),
                First = reason.First,
                Picture = reason.Picture,
                WhatItWouldDo = What(exercise, flies, key, options.Units),
                Goals =
                [
                    new GoalResult(
                        Asked(exercise, options.Units),
                        passed ? $"you said “{choice}”, and so it is" : $"you said “{choice}”; it is “{key}”", passed),
                ],
                Why = reason.Why,
                WhereToLook = passed ? null : options.GoesOnFresh ? ReasonOffer.WhereNext : ReasonOffer.WhereNextAlone,
                Misreading = misreading?.AsMisreading,
                Remark = misreading?.AsRemark,
                MisreadConcept = misreading is { IsHalfway: false } ? misreading.Concept : null,
                Cautions = [.. Cautions.For(flies.Fly.Recipe).Select(c => c.Text)],
            },
        };
    }

    /// <summary>The choice meant by an answer, or null.</summary>
    public static string? Chosen(Exercise exercise, string answerText)
    {
        string answer = answerText.Trim();
        return int.TryParse(answer, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number >= 1 && number <= exercise.Choices.Length
            ? exercise.Choices[number - 1]
            : exercise.Choices.FirstOrDefault(c => string.Equals(c, answer, StringComparison.OrdinalIgnoreCase));
    }

    private static ImmutableArray<GradedFigure> Figures(Exercise exercise, AskedFlies flies) => ((PredictTask)exercise.Task).Question switch
    {
        WhichHasMore or ChangeIn => [Figure(exercise, flies.Fly), Figure(exercise, flies.Other!)],
        WhereTheNosePoints => [Figure(exercise, flies.Fly)],
        _ => [new GradedFigure("lean", flies.Fly.Report.Soaked.AtFishingSpeed.LeanDeg * Math.PI / 180),
            new GradedFigure("rides as intended", flies.Fly.Report.Soaked.Tolerance.AsIntended)],
    };

    private static string Asked(Exercise exercise, UnitSystem units) => ((PredictTask)exercise.Task).Question switch
    {
        WhichWayUp => "which way up it rides",
        WhereTheNosePoints => "where the nose points",
        WhichHasMore => ReasonOffer.WhichOfTwo(PredictKey.Query(exercise).More(units)),
        ChangeIn => $"what happens to the {PredictKey.Query(exercise).Phrase(units)}",
        _ => "your choice",
    };

    private static string What(Exercise exercise, AskedFlies flies, string key, UnitSystem units)
    {
        if (((PredictTask)exercise.Task).Question is WhichHasMore more)
            return $"{more.FirstName}: {Say(flies.Fly)}. {more.SecondName}: {Say(flies.Other!)} ({PredictKey.Query(exercise).Heading(units)}).";
        if (((PredictTask)exercise.Task).Question is ChangeIn)
        {
            QuantityQuery query = PredictKey.Query(exercise);
            return WhySentence.Goes(query.Phrase(units), query.SayApart(units, query.Of(flies.Fly), query.Of(flies.Other!)));
        }

        // All that the choices speak of would be a list: what the right one turns on is enough.
        if (((PredictTask)exercise.Task).Question is OwnChoices own && PredictReason.Asked(exercise, own, flies.Fly, key) is { IsEmpty: false } asked)
            return QuantityQuery.Sentence(flies.Fly, asked, units);
        return VerdictSentence.Of(flies.Fly.Report, units);

        string Say(FlyFigures fly) => PredictKey.Query(exercise).Say(PredictKey.Query(exercise).Of(fly), units);
    }

    private static GradedFigure Figure(Exercise exercise, FlyFigures fly) => new(((PredictTask)exercise.Task).Quantity!, PredictKey.Query(exercise).Of(fly));
}
