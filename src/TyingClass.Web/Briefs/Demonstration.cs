using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Text;
using TyingClass.Web.Editing;
using TyingClass.Web.Patterns;

namespace TyingClass.Web.Briefs;

/// <summary>What to show a class that believes otherwise.</summary>
/// <param name="Words">One or two sentences: what to tie, what to do with it.</param>
/// <param name="First">The fly it begins with; null where the exercise has none, and it is worked at the board.</param>
/// <param name="Second">The fly beside it; null for one fly alone.</param>
public sealed record Demonstration(string Words, string? First, string? Second)
{
    /// <summary>What stands over each of two.</summary>
    public (string First, string Second) Names { get; init; } = ("first", "second");

    // More changes than these are no demonstration of one thing.
    private const int MostChanges = 3;

    /// <param name="theirs">A recipe of theirs; null where their answer is none.</param>
    public static Demonstration Of(Exercise exercise, string? theirs)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        if (AskedRecipes.Change(exercise) is var (before, after) && Changes(before, after) is { } change)
            return new Demonstration($"Tie {NameOf(before)} twice: as it is, and with {change}. Let them say first, then pull both.", before, after)
            {
                Names = ("as it is", "changed"),
            };
        ImmutableArray<string> asked = [.. AskedRecipes.Of(exercise)];
        if (asked is [var first, var second, ..])
            return new Demonstration($"Tie {NameOf(first)} and {NameOf(second)}. Let them say first, then drop both together.", first, second)
            {
                Names = (NameOf(first), NameOf(second)),
            };
        if (exercise.Kind.AnswerIsRecipe && theirs is not null && exercise.ModelAnswer is { } model && Changes(theirs, model) is { } mended)
            return new Demonstration($"Tie one of theirs, and beside it the same with {mended}. Pull both through the tub.", theirs, model)
            {
                Names = ("one of theirs", "mended"),
            };
        return asked is [var only]
            ? new Demonstration($"Tie {NameOf(only)}. Let them say first, then put it in the tub.", only, null)
            : new Demonstration($"Work “{exercise.Title}” at the board with them, one step at a time.", null, null);
    }

    private static string Say(RecipeChange change) => change switch
    {
        { IsWholePart: true, After: null, Before: { } taken } => $"the {taken} taken out",
        { IsWholePart: true, After: { } put } => $"a {put} put in",
        _ => RevisionWords.Say(change),
    };

    private static string NameOf(string recipeText) => RecipeParser.Parse(recipeText).Value?.Name ?? "the fly";

    private static string? Changes(string before, string after)
    {
        if (RecipeParser.Parse(before).Value is not { } from || RecipeParser.Parse(after).Value is not { } to) return null;
        string[] said = [.. ChangeList.Between(from, to).Take(MostChanges).Select(Say)];
        return said.Length == 0 ? null : string.Join("; ", said);
    }
}
