using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Grading;

/// <summary>Whoever looks for the smallest single change; see <see cref="Adviser.Search"/>.</summary>
public delegate IEnumerable<Proposal> AdviserCall(Recipe recipe, Func<Recipe, ReportOptions, bool> reached, Func<Adjustable, int, bool> allowed);

/// <summary>The last hint: the adviser's smallest change, inside what the exercise allows.</summary>
public static class LastHint
{
    /// <summary>Changes that make <paramref name="from"/> pass the exercise, least added mass first.</summary>
    public static ImmutableArray<Proposal> Proposals(Exercise exercise, Recipe from, AdviserCall? adviser = null) =>
        [.. Search(exercise, from, adviser).OrderBy(p => p.AddedMassG).ThenBy(p => p.Path, StringComparer.Ordinal)];

    /// <summary>Whether any single change makes <paramref name="from"/> pass.</summary>
    internal static bool Exists(Exercise exercise, Recipe from) => Search(exercise, from, null).Any();

    private static IEnumerable<Proposal> Search(Exercise exercise, Recipe from, AdviserCall? adviser)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        Recipe? given = exercise.RecipeText is { } text ? RecipeParser.Parse(text).Value : null;
        FlyFigures? start = given is null ? null : new FlyFigures(given);
        adviser ??= (recipe, reached, allowed) => Adviser.Search(recipe, reached, allowed);
        return adviser(from, Reached, (change, steps) => Allowed(change.At(steps)));

        bool Reached(Recipe recipe, ReportOptions options) => GoalCheck.AllMet(exercise, new FlyFigures(recipe, start, options));

        // What is proposed must also be a recipe that the student can type.
        bool Allowed(Recipe recipe) => RecipeGrader.Violations(exercise, given, recipe).IsEmpty && RecipeParser.Parse(RecipeWriter.Write(recipe)).Success;
    }

    internal static string Say(Exercise exercise, Recipe answer, Recipe? given, UnitSystem units, AdviserCall? adviser)
    {
        if (Proposals(exercise, answer, adviser) is [var best, ..]) return $"The smallest change that does it: {best.Text}.{Cost(best)}";
        if (given is not null && Proposals(exercise, given, adviser) is [var other, ..]) return $"Go back to the fly given, and from there: {other.Text}.{Cost(other)}";
        return "No single change reaches every goal from here. Take the goal you miss by most, change one thing that bears on it, and try again.";

        string Cost(Proposal p) => Math.Abs(p.AddedMassG) < 0.0005 ? " It adds no mass." : $" It {(p.AddedMassG > 0 ? "adds" : "takes off")} {Units.Format(1e-3 * Math.Abs(p.AddedMassG), Dimension.Mass, units)}.";
    }
}
