using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;

namespace TyingClass.Lessons.Kinds.FindTheSlip;

/// <summary>The claims of an argument, ready to be held against flies.</summary>
/// <param name="Claims">One for each step; null where a step makes none.</param>
internal sealed record SlipKey(FindTheSlipTask Task, ImmutableArray<Condition?> Claims)
{
    public static SlipKey Of(Exercise exercise)
    {
        FindTheSlipTask task = (FindTheSlipTask)exercise.Task;
        ConditionScope scope = FindTheSlipKind.Instance.ClaimScope(task, exercise.RecipeText is { } text ? GivenFly.Of(text) : null);
        return new SlipKey(task, [.. task.Steps.Select(s => s.Claim is { } claim ? ConditionParser.Parse(claim, scope).Condition : null)]);
    }

    /// <summary>The fly that the claims are about; null where the argument is about none.</summary>
    public static FlyFigures? Fly(Exercise exercise, ReportOptions? options)
    {
        if (exercise.RecipeText is not { } text) return null;
        FlyFigures given = new(GivenFly.Of(text), null, options);
        return ((FindTheSlipTask)exercise.Task).Proposed is { } proposed ? new FlyFigures(GivenFly.Of(proposed), given, options) : given;
    }

    /// <summary>The step that goes wrong, from 1; null where author and engine do not agree on one.</summary>
    public int? Step(FlyFigures? fly)
    {
        int[] fails = [.. Enumerable.Range(1, Claims.Length).Where(n => Holds(n, fly) == false)];
        if (Task.Slip is not { } slip) return fails is [var only] ? only : null;
        return Holds(slip, fly) != true && fails.All(n => n == slip) ? slip : null;
    }

    /// <summary>Whether what a step states is so; null where nothing of it can be computed.</summary>
    public bool? Holds(int step, FlyFigures? fly) => Claims[step - 1]?.Holds(new ConditionFacts(fly, fly?.Start));

    public IEnumerable<QuantityQuery> Quantities(int step) => Claims[step - 1]?.Quantities ?? [];
}
