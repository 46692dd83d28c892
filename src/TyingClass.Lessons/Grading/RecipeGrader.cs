using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Kinds;
using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Reasons;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Grading;

/// <summary>Repair and compose: the answer is a recipe.</summary>
internal static class RecipeGrader
{
    private const int MostBytes = 64 * 1024;

    public static GradeResult Grade(Exercise exercise, string answerText, int failedAttempts, GradeOptions options)
    {
        if (string.IsNullOrWhiteSpace(answerText)) return GradeResult.Refused("There is no recipe here yet. Fill in the fly and submit it again.");
        if (System.Text.Encoding.UTF8.GetByteCount(answerText) > MostBytes)
            return GradeResult.Refused("The recipe is longer than 64 KB. A fly fits on a page; shorten it.");
        ParseResult<Recipe> parsed = options.Draft is { } draft ? RecipeParser.Parse(draft) : RecipeParser.Parse(answerText);
        if (parsed.Value is not { } recipe)
            return GradeResult.Refused([.. parsed.Errors.Select(e => new AnswerProblem(e.Line, e.Column, e.Path, e.Text))]);
        (string Path, string Text)[] questions = [.. PlausibleFly.Questions(recipe, options.Units)];
        if (questions.Length > 0) return GradeResult.Refused([.. questions.Select(q => Place(answerText, q.Path, q.Text))]);
        Recipe? given = exercise.RecipeText is { } text ? RecipeParser.Parse(text).Value : null;
        ImmutableArray<(string Path, string Text)> violations = Violations(exercise, given, recipe);
        if (!violations.IsEmpty)
            return GradeResult.Refused([.. violations.Select(v => Place(answerText, v.Path, v.Text))]);

        // Nothing was tried, so nothing is charged: the page has said already what the fly given does.
        if (exercise.Task is RecipeTask { ChangesGiven: true } && given is not null && ChangeList.Between(given, recipe).IsEmpty)
            return GradeResult.Refused(RefusalSentence.Unchanged);
        FlyFigures? start = given is null ? null : new FlyFigures(given, null, options.Report);
        FlyFigures fly;
        try
        {
            fly = new FlyFigures(recipe, start, options.Report);
        }
        catch (ArgumentException e)
        {
            return GradeResult.Refused($"This fly cannot be built: {e.Message}");
        }

        BalanceReport report = fly.Report;
        ImmutableArray<GoalResult> goals = GoalCheck.Results(exercise, fly, report.Verdict.Kind, options.Units);
        bool passed = goals.All(g => g.Met);
        ConditionFacts facts = new(fly, ExerciseReader.ScopeOf(exercise, given).HasStart ? start : null);
        Misreading? misreading = passed ? null : MisreadingCheck.Find(exercise, given, facts);
        AnswerReason reason = RecipeReason.Of(exercise, fly, exercise.Task is RecipeTask { ChangesGiven: true } ? start : null, options.Units);
        return new GradeResult
        {
            Passed = passed,
            Why = reason.Reasons,
            Fly = fly.Solved,
            ExerciseVersion = exercise.Version,
            Figures = GoalCheck.Figures(exercise, fly),
            Feedback = new Feedback
            {
                Reply = GoalsInShort.Of(exercise, fly, exercise.Task is RecipeTask { ChangesGiven: true } ? start : null, goals, options.Units),
                First = reason.First,
                Picture = reason.Picture,
                WhatItWouldDo = RecipeReason.WhatItWouldDo(exercise, fly, options.Units),
                Goals = goals,
                Why = reason.Why,
                WhereToLook =
                    passed ? null : HintLadder.Next(
                        exercise, failedAttempts, () => LastHint.Say(exercise, recipe, options.Units, options.Adviser), (given, facts)),
                Misreading = misreading?.AsMisreading,
                Remark = misreading?.AsRemark,
                MisreadConcept = misreading is { IsHalfway: false } ? misreading.Concept : null,
                Cautions = [.. Cautions.For(recipe, fly.Body).Select(c => c.Text)],
            },
        };
    }

    /// <summary>What the answer does that its exercise does not allow.</summary>
    public static ImmutableArray<(string Path, string Text)> Violations(Exercise exercise, Recipe? given, Recipe answer) =>
        [.. ((RecipeKind)exercise.Kind).Violations(exercise, given, answer)];

    private static AnswerProblem Place(string answerText, string path, string text)
    {
        (int line, int column) = AnswerPlaces.Find(answerText, path);
        return new AnswerProblem(line, column, path, text);
    }
}
