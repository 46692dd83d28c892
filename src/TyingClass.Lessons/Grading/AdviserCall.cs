using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Grading;

/// <summary>Whoever looks for the smallest single change; see <see cref="Adviser.Search"/>.</summary>
public delegate IEnumerable<Proposal> AdviserCall(Recipe recipe, Func<Recipe, ReportOptions, bool> reached, Func<Adjustable, int, bool> allowed);

/// <summary>The last hint: the adviser's smallest change, inside what the exercise allows.</summary>
public static class LastHint
{
    /// <summary>Changes that make <paramref name="from"/> pass the exercise, least added mass first.</summary>
    public static ImmutableArray<Proposal> Proposals(Exercise exercise, Recipe from, AdviserCall? adviser = null) =>
        Smallest(Search(exercise, from, adviser).Where(p => !GoalCheck.IsLeftToTheCast(exercise, p.Solved.Report)));

    /// <summary>Whether any single change makes <paramref name="from"/> pass.</summary>
    internal static bool Exists(Exercise exercise, Recipe from) => Search(exercise, from, null).Any();

    /// <summary>Where no single change does it all: the smallest one that meets one goal more and gives none away.</summary>
    /// <returns>The change, and the goals it leaves unmet; null when there is none.</returns>
    internal static (Proposal Step, ImmutableArray<Goal> Left)? FirstStep(Exercise exercise, Recipe from, AdviserCall? adviser = null)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        FlyFigures here = new(from, Start(exercise));
        Goal[] met = [.. exercise.Goals.Where(g => GoalCheck.IsMet(g, here))];
        foreach (Goal missed in exercise.Goals.Except(met))
        {
            Goal[] wanted = [.. met, missed];
            if (Smallest(Search(exercise, wanted, from, adviser)) is not [var step, ..]) continue;
            FlyFigures there = new(step.Recipe, Start(exercise));
            return (step, [.. exercise.Goals.Where(g => !GoalCheck.IsMet(g, there))]);
        }

        return null;
    }

    private static IEnumerable<Proposal> Search(Exercise exercise, Recipe from, AdviserCall? adviser) => Search(exercise, exercise.Goals, from, adviser);

    private static ImmutableArray<Proposal> Smallest(IEnumerable<Proposal> found) =>
        [.. found.OrderBy(p => p.AddedMassG).ThenBy(p => p.Path, StringComparer.Ordinal)];

    private static Recipe? Given(Exercise exercise) => exercise.RecipeText is { } text ? RecipeParser.Parse(text).Value : null;

    private static FlyFigures? Start(Exercise exercise) => Given(exercise) is { } given ? new FlyFigures(given) : null;

    private static IEnumerable<Proposal> Search(Exercise exercise, IReadOnlyCollection<Goal> goals, Recipe from, AdviserCall? adviser)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        Recipe? given = Given(exercise);
        FlyFigures? start = Start(exercise);
        adviser ??= (recipe, reached, allowed) => Adviser.Search(recipe, reached, allowed);
        return adviser(from, Reached, (change, steps) => Allowed(change.At(steps)));

        bool Reached(Recipe recipe, ReportOptions options) => GoalCheck.AllMet(goals, new FlyFigures(recipe, start, options));

        // What is proposed must also be a recipe that the student can type.
        bool Allowed(Recipe recipe) => RecipeGrader.Violations(exercise, given, recipe).IsEmpty && RecipeParser.Parse(RecipeWriter.Write(recipe)).Success;
    }

    internal static string Say(Exercise exercise, Recipe answer, Recipe? given, UnitSystem units, AdviserCall? adviser)
    {
        if (Proposals(exercise, answer, adviser) is [var best, ..]) return HintSentence.Smallest(best, units);
        if (given is not null && Proposals(exercise, given, adviser) is [var other, ..]) return HintSentence.FromTheFlyGiven(other, units);
        return FirstStep(exercise, answer, adviser) is { } first
            ? HintSentence.FirstStep(first.Step, [.. first.Left.Select(g => GoalCheck.Query(g).Asked(g, units))], units)
            : HintSentence.NoSingleChange;
    }
}
