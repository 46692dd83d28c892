using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Reasons;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Text;
using TyingClass.Telling;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Replies;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Kinds.Measure;

/// <summary>Measure: the answer is a number with a unit.</summary>
internal static class MeasureGrader
{
    private static readonly double MmPerInch = 1e3 * Units.ToSi(1, Dimension.Length, "in");

    // Mistakes worth naming: a decimal place, thousandths, inches for millimeters.
    private static readonly (double Ratio, string Say)[] Mistakes =
    [
        (10, "Your figure is ten times too large: look at the decimal point."), (0.1, "Your figure is ten times too small: look at the decimal point."),
        (1000, "Your figure is a thousand times too large: look at the unit."), (0.001, "Your figure is a thousand times too small: look at the unit."),
        (MmPerInch, $"Your figure is {Numbers.Write(MmPerInch, 1)} times too large: that is the number of millimeters in an inch."),
        (1 / MmPerInch, $"Your figure is {Numbers.Write(MmPerInch, 1)} times too small: that is the number of millimeters in an inch."),
        (-1, "Your figure has the right size but the wrong sign."),
    ];

    public static GradeResult Grade(Exercise exercise, string answerText, int failedAttempts, GradeOptions options)
    {
        MeasureTask task = (MeasureTask)exercise.Task;
        QuantityQuery query = task.Query;
        if (string.IsNullOrWhiteSpace(answerText))
            return GradeResult.Refused($"Write a number with its unit first{(query.Quantity.Dimension is { } d ? $", such as {Units.Example(d)}" : "")}.");
        if (answerText.Length > 200) return GradeResult.Refused("Write the number and its unit, and nothing else.");
        if (!GoalReader.TryRead(query.Quantity, answerText.Trim(), out double answer, out string error)) return GradeResult.Refused(error);
        if (Plausible.Question(query, answer, answerText.Trim(), options.Units) is { } question) return GradeResult.Refused(question);
        FlyFigures fly = MeasureTask.Measured(exercise, options.Report);
        if (query.Of(fly) is not { } key)
            return GradeResult.Refused("The engine has no such figure for this fly, so your answer was not marked. Please tell your instructor.");
        double tolerance = task.ToleranceSi;
        bool passed = Math.Abs(answer - key) <= tolerance * (1 + 1e-9);
        Misreading? misreading = passed ? null : MisreadingCheck.Find(exercise, fly.Recipe, new ConditionFacts(fly, null, null, answer, tolerance));
        string found = $"The engine finds {query.Say(key, options.Units)}.";
        bool hintsUsedUp = failedAttempts >= exercise.Hints.Length;
        string? beside = passed ? null : ComparisonWords.Beside(answer, key);
        AnswerReason reason = beside is not null && !hintsUsedUp && task.Sum is [var line, ..]
            ? MeasureReason.OfSum(query, fly, line.What, beside)
            : task.Done is null
            ? MeasureReason.Of(query, fly, beside, passed || hintsUsedUp, options.Units)
            : MeasureReason.OfChange(query, (new FlyFigures(GivenFly.Of(exercise.RecipeText!), null, options.Report), fly), beside, passed || hintsUsedUp,
                options.Units);
        return new GradeResult
        {
            Passed = passed,
            Why = reason.Reasons,
            ExerciseVersion = exercise.Version,
            Figures = [new GradedFigure(query.Name, key)],
            Feedback = new Feedback
            {
                Reply = InShort(
                    query, fly, (query.SayTyped(answerText, answer, options.Units), answer, key, tolerance), (passed, hintsUsedUp), options.Units),
                First = reason.First,
                Picture = reason.Picture,
                WhatItWouldDo = $"{Grammar.Capital(query.Heading(options.Units))}: {query.Quantity.Meaning}.{(passed ? " " + found : "")}",
                Goals =
                [
                    new GoalResult(
                        $"{query.Phrase(options.Units)}, within {query.SayStated(tolerance, options.Units)}",
                        Reached(query.SayTyped(answerText, answer, options.Units), answer, key, passed), passed),
                ],
                Why = reason.Why,
                WhereToLook = passed ? null : HintLadder.Next(exercise, failedAttempts, () => found),
                Remark = misreading?.AsRemark,
                Misreading = misreading is not null ? misreading.AsMisreading : (passed || hintsUsedUp ? null : Mistake(answer, key, tolerance)),
                MisreadConcept = misreading is { IsHalfway: false } ? misreading.Concept : null,
                Cautions = [.. Cautions.For(fly.Recipe).Select(c => c.Text)],
            },
        };
    }

    private static string Reached(string typed, double answer, double key, bool passed) =>
        $"your {typed} {(passed ? "agrees" : ComparisonWords.Beside(answer, key))}";

    private static string InShort(
        QuantityQuery query, FlyFigures fly, (string Typed, double Answer, double Key, double Tolerance) said, (bool Passed, bool Told) stand,
        UnitSystem units)
    {
        string answer = said.Typed, right = query.Say(said.Key, units), beside = ComparisonWords.Beside(said.Answer, said.Key);
        if (stand.Passed) return FigureReply.Right(answer, right, query.Say(said.Answer, units) == right);
        if (stand.Told) return FigureReply.Told(answer, beside, right);
        if (Mistake(said.Answer, said.Key, said.Tolerance)?.Split(':')[0] is { } mistake && mistake.StartsWith(YourFigureIs, StringComparison.Ordinal))
            return FigureReply.Times(answer, mistake[YourFigureIs.Length..].TrimEnd('.'));
        return TakenFor.Of(query, fly, said.Answer) is { } another
            ? FigureReply.Another(answer, another.Phrase(units), query.Phrase(units)) : FigureReply.Wrong(answer, beside, query.Phrase(units));
    }

    private const string YourFigureIs = "Your figure is ";

    private static string? Mistake(double answer, double key, double tolerance) =>
        Mistakes.Where(s => Math.Abs(answer / s.Ratio - key) <= tolerance && Math.Abs(key) > 2 * tolerance).Select(s => s.Say).FirstOrDefault();
}
