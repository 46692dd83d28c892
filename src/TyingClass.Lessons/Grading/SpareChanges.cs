using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;

namespace TyingClass.Lessons.Grading;

/// <summary>Of the changes somebody made, the fewest that do all that was asked, and those that can be put back.</summary>
/// <param name="BackSaid">What to put back, in words: "the size of the cone", or the whole part where several of its fields were changed.</param>
internal sealed record SpareChanges(ImmutableArray<RecipeChange> Kept, ImmutableArray<string> BackSaid)
{
    // Each try is a fly solved, and some of them a thousand.
    private const int MostChanges = 4;

    /// <returns>Null where all are needed, or where there are too many to try.</returns>
    public static SpareChanges? Of(Exercise exercise, FlyFigures fly, FlyFigures start)
    {
        ImmutableArray<RecipeChange> all = ChangeList.Between(start.Recipe, fly.Recipe);
        if (all.Length is 0 or > MostChanges || all.Any(c => c.IsWholePart)) return null;
        RecipeDraft draft = RecipeDraft.Of(start.Recipe);
        foreach (uint mask in Enumerable.Range(1, (1 << all.Length) - 2).Select(m => (uint)m).OrderBy(BitOperations.PopCount))
        {
            RecipeChange[] kept = [.. all.Where((_, i) => (mask & 1u << i) != 0)];
            if (RecipeParser.Parse(kept.Aggregate(draft, (d, c) => d.With(c.Path, c.After))).Value is { } recipe
                && FlyFigures.TryBuild(recipe, start) is { } lesser && GoalCheck.AllMet(exercise, lesser))
                return new SpareChanges([.. kept], [.. Said(all.Except(kept), start)]);
        }

        return null;
    }

    private static IEnumerable<string> Said(IEnumerable<RecipeChange> changes, FlyFigures start) =>
        changes.GroupBy(c => c.Path[..Math.Max(0, c.Path.LastIndexOf('.'))])
            .SelectMany(g => g.Count() > 1 && PartAt(g.Key, start) is { } part ? [$"the {part}"] : g.Select(c => c.Said));

    private static string? PartAt(string path, FlyFigures start) =>
        path.StartsWith("parts[", StringComparison.Ordinal) && int.TryParse(path["parts[".Length..^1], CultureInfo.InvariantCulture, out int at)
            ? new Thing(ThingKind.Part, FlyBuilder.Names(start.Recipe.Parts)[at]).Word : null;
}
