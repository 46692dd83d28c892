using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Reasons;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Text;
using TyingClass.Telling;
using TyingClass.Telling.Replies;

namespace TyingClass.Lessons.Kinds.Sort;

/// <summary>Sort: the answer lists every fly by name, one to a line or with commas between.</summary>
internal static class SortGrader
{
    public static GradeResult Grade(Exercise exercise, string answerText, int failedAttempts, GradeOptions options)
    {
        SortTask task = (SortTask)exercise.Task;
        string[] order = [.. answerText.Split(['\n', '\r', ',', ';', '>'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];
        if (Complaint(task, order) is { } complaint)
            return GradeResult.Refused(new AnswerProblem(0, 0, PlaceOf(task, answerText, order), complaint));
        QuantityQuery query = task.Query;
        Dictionary<string, double?> values = Values(task, query, options);
        if (values.Values.Any(v => v is null))
            return GradeResult.Refused("The engine has no such figure for one of the flies, so your answer was not marked. Please tell your instructor.");
        string[] given = [.. order.Select(o => task.Items.First(i => Same(i.Name, o)).Name)];
        GoalResult[] pairs = [.. given.Zip(given.Skip(1), (a, b) => Pair(a, b))];
        bool passed = pairs.All(p => p.Met);
        string largest = task.LargestFirst ? "largest first" : "smallest first";
        string key = string.Join(", ", Key(task, values).Select(n => $"{n} ({query.Say(values[n], options.Units)})"));
        AnswerReason reason = SortReason.Of(task, given, passed ? null : Array.FindIndex(pairs, p => !p.Met), options);
        return new GradeResult
        {
            Passed = passed,
            Why = reason.Reasons,
            ExerciseVersion = exercise.Version,
            Figures = [.. task.Items.Select(i => new GradedFigure($"{query.Name} of {i.Name}", values[i.Name]))],
            Feedback = new Feedback
            {
                Reply = InShort(),
                First = reason.First,
                Picture = reason.Picture,
                WhatItWouldDo =
                    $"{Grammar.Capital(query.Heading(options.Units))}: {query.Quantity.Meaning}. You were asked for the {largest}."
                    + (passed ? $" In order: {key}." : ""),
                Goals = [.. pairs],
                Why = reason.Why,
                WhereToLook = passed ? null : HintLadder.Next(exercise, failedAttempts, () => $"In order: {key}."),
                Cautions = [.. task.Items.SelectMany(i => Cautions.For(GivenFly.Of(i.RecipeText))).DistinctBy(c => c.Code).Select(c => c.Text)],
            },
        };

        string InShort()
        {
            int[] wrong = [.. Enumerable.Range(0, pairs.Length).Where(i => !pairs[i].Met)];
            if (wrong.Length == 0) return OrderReply.Right(query.Quantity.Name, task.LargestFirst, given);
            if (wrong.Length == pairs.Length && pairs.Length > 1) return OrderReply.Backward(query.Quantity.Name, task.LargestFirst);
            if (wrong is not [var only]) return OrderReply.Pairs(wrong.Length, pairs.Length);
            // Set right, that pair may still stand wrong to the rest.
            string[] mended = [.. given];
            (mended[only], mended[only + 1]) = (given[only + 1], given[only]);
            return OrderReply.OnePair(given[only], given[only + 1], Enumerable.Range(1, mended.Length - 1).All(i => IsRight(mended[i - 1], mended[i])));
        }

        bool IsRight(string a, string b) => task.LargestFirst ? values[a] >= values[b] : values[a] <= values[b];

        GoalResult Pair(string a, string b)
        {
            bool right = IsRight(a, b);
            return new GoalResult($"{a} before {b}", right ? "the right way round" : "the wrong way round", right);
        }
    }

    public static Dictionary<string, double?> Values(SortTask task, QuantityQuery query, GradeOptions options) =>
        task.Items.ToDictionary(i => i.Name, i => query.Of(Fly(i, options)));

    public static ImmutableArray<string> Key(SortTask task, Dictionary<string, double?> values) => task.LargestFirst
        ? [.. task.Items.Select(i => i.Name).OrderByDescending(n => values[n])]
        : [.. task.Items.Select(i => i.Name).OrderBy(n => values[n])];

    private static FlyFigures Fly(SortItem item, GradeOptions options) => new(GivenFly.Of(item.RecipeText), null, options.Report);

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);

    private static string? Complaint(SortTask task, string[] order)
    {
        string names = string.Join(", ", task.Items.Select(i => i.Name));
        if (order.Length == 0) return $"Put the flies in order first: {names}.";
        if (order.FirstOrDefault(o => !task.Items.Any(i => Same(i.Name, o))) is { } unknown)
            return $"“{Clip(unknown)}” is not one of the flies.{Nearest.Hint(unknown, task.Items.Select(i => i.Name))} They are {names}.";
        if (order.GroupBy(o => o, StringComparer.OrdinalIgnoreCase).FirstOrDefault(g => g.Count() > 1) is { } twice)
            return $"{twice.Key} stands in your order twice.";
        return order.Length < task.Items.Length
            ? $"Your order leaves out {Grammar.And(task.Items.Where(i => !order.Any(o => Same(i.Name, o))).Select(i => i.Name))}."
            : null;
    }

    // Where to mend it, in a form with a place for each fly: the one that stands there twice, or the first that is empty.
    private static string PlaceOf(SortTask task, string answerText, string[] order)
    {
        string[] places = answerText.Split('\n', StringSplitOptions.TrimEntries);
        int twice = order.Length == order.Distinct(StringComparer.OrdinalIgnoreCase).Count() ? -1
            : Array.FindIndex(places, p => p.Length > 0 && places.Count(o => Same(o, p)) > 1);
        if (twice >= 0) twice = Array.FindLastIndex(places, p => Same(p, places[twice]));
        int empty = Array.FindIndex(places, p => p.Length == 0);
        int at = twice >= 0 ? twice : empty >= 0 ? empty : Math.Min(places.Length, task.Items.Length - 1);
        return SortTask.Place(Math.Min(at, task.Items.Length - 1) + 1);
    }

    private static string Clip(string text) => text.Length <= 40 ? text : text[..40] + "…";
}
