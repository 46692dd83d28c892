using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Grading;

/// <summary>The last hint: the adviser's smallest change, inside what the exercise allows.</summary>
public sealed class LastHint
{
    private readonly Exercise _exercise;
    private readonly AdviserCall _adviser;
    private readonly TriedFlies _tried;

    private LastHint(Exercise exercise, AdviserCall? adviser)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        (_exercise, _tried) = (exercise, new TriedFlies(exercise));
        _adviser = adviser ?? ((recipe, reached, allowed) => Adviser.Search(recipe, reached, allowed));
    }

    /// <summary>Changes that make <paramref name="from"/> pass the exercise, least added mass first.</summary>
    public static ImmutableArray<Proposal> Proposals(Exercise exercise, Recipe from, AdviserCall? adviser = null) =>
        [.. new LastHint(exercise, adviser).Passing(from)];

    /// <summary>Whether any single change makes <paramref name="from"/> pass.</summary>
    internal static bool Exists(Exercise exercise, Recipe from)
    {
        LastHint hint = new(exercise, null);
        return hint.Search(exercise.Goals, from).Any();
    }

    internal static string Say(Exercise exercise, Recipe answer, UnitSystem units, AdviserCall? adviser)
    {
        LastHint hint = new(exercise, adviser);
        if (hint.Passing(answer).FirstOrDefault() is { } best) return HintSentence.Smallest(best, units);
        if (hint._tried.Given is { } given && hint.Passing(given).FirstOrDefault() is { } other) return HintSentence.FromTheFlyGiven(other, units);
        return hint.FirstStep(answer) is { } first
            ? HintSentence.FirstStep(first.Step, [.. first.Left.Select(g => GoalCheck.Query(g).Asked(g, units))], units)
            : HintSentence.NoSingleChange;
    }

    // Only as many are solved in full as are asked for.
    private IEnumerable<Proposal> Passing(Recipe from) => Smallest(Search(_exercise.Goals, from), AskedAbout())
        .Where(p => !GoalCheck.IsLeftToTheCast(_exercise, () => p.Solved.Report));

    // Where no single change does it all: the smallest one that meets one goal more and gives none away, and the goals it leaves unmet.
    private (Proposal Step, ImmutableArray<Goal> Left)? FirstStep(Recipe from)
    {
        FlyFigures here = _tried.Of(from);
        Goal[] met = [.. _exercise.Goals.Where(g => GoalCheck.IsMet(g, here))];
        foreach (Goal missed in _exercise.Goals.Except(met))
        {
            Goal[] wanted = [.. met, missed];
            if (Smallest(Search(wanted, from), null).FirstOrDefault() is not { } step) continue;
            FlyFigures there = _tried.Of(step.Recipe);
            return (step, [.. _exercise.Goals.Where(g => !GoalCheck.IsMet(g, there))]);
        }

        return null;
    }

    // Least added mass first, but before all others what the exercise is about.
    private static IEnumerable<Proposal> Smallest(IEnumerable<Proposal> found, string? about) =>
        found.OrderByDescending(p => about is not null && p.Path.StartsWith(about, StringComparison.Ordinal)).ThenBy(p => p.AddedMassG)
            .ThenBy(p => p.Path, StringComparer.Ordinal);

    // "parts[0]", "hook", "fishing": where the author's own answer changes one thing; null where it changes several, or none is known.
    private string? AskedAbout()
    {
        if (_tried.Given is not { } given || _exercise.ModelAnswer is not { } text || RecipeParser.Parse(text).Value is not { } model) return null;
        string[] places = [.. ChangeList.Between(given, model).Select(c => c.Path.Split('.')[0]).Distinct()];
        return places is [var only] ? only : null;
    }

    private IEnumerable<Proposal> Search(IReadOnlyCollection<Goal> goals, Recipe from) => _adviser(
        from,
        (recipe, options) => _tried.Reaches(goals, recipe, options),
        (change, steps) => _tried.IsAllowed(change.At(steps)));
}
