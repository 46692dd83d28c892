using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Revisions;
using TyingClass.Recipes.Text;
using TyingClass.Telling;
using TyingClass.Telling.Figures;
using TyingClass.Web.Editing;

namespace TyingClass.Web.Briefs;

/// <summary>What to show a class that believes otherwise. Two flies differ in one thing and no more: else nobody can say what it was that did it.</summary>
/// <param name="Words">One or two sentences: what to tie, what to do with it.</param>
/// <param name="First">The fly it begins with; null where the exercise has none, and it is worked at the board.</param>
/// <param name="Second">The same with one thing changed; null for one fly alone.</param>
public sealed record Demonstration(string Words, string? First, string? Second)
{
    /// <summary>What stands over each of two.</summary>
    public (string First, string Second) Names { get; init; } = ("first", "second");

    /// <param name="theirs">A recipe of theirs; null where their answer is none.</param>
    public static Demonstration Of(Exercise exercise, string? theirs)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        if (AskedRecipes.Change(exercise) is var (before, after) && Pair(exercise, before, after) is { } pair) return pair;
        ImmutableArray<string> asked = [.. AskedRecipes.Of(exercise)];
        if (asked is [var first, var second, ..] && Pair(exercise, first, second) is { } two) return two;
        if (exercise.Kind.AnswerIsRecipe && theirs is not null && exercise.ModelAnswer is { } model && Change(exercise, theirs, model) is { } mended)
            return new Demonstration(
                $"Tie one of theirs, and beside it the same with {Said(mended)}. Pull both through the tub."
                    + (mended.Settles ? "" : " It takes more than that to mend it, but one thing at a time shows what each does."),
                theirs, RecipeWriter.Write(mended.Changed))
            {
                Names = ("one of theirs", $"with {Said(mended)}"),
            };
        return asked is [var only, ..]
            ? new Demonstration($"Tie {NameOf(only)}. Let them say first, then put it in the tub.", only, null)
            : new Demonstration($"Work “{exercise.Title}” at the board with them, one step at a time.", null, null);
    }

    private static Demonstration? Pair(Exercise exercise, string before, string after) => Change(exercise, before, after) is { } change
        ? new Demonstration(
            $"Tie {NameOf(before)} twice: as it is, and with {Said(change)}. Let them say first, then pull both.", before, RecipeWriter.Write(change.Changed))
        {
            Names = ("as it is", $"with {Said(change)}"),
        }
        : null;

    private static OneChange? Change(Exercise exercise, string before, string after) =>
        RecipeParser.Parse(before).Value is { } from && RecipeParser.Parse(after).Value is { } to ? OneChange.Of(exercise, from, to) : null;

    private static string Said(OneChange change) => string.Join(" and ", change.Lines.Select(Say));

    private static string Say(RecipeChange change) => change switch
    {
        { IsWholePart: true, After: null, Before: { } taken } => $"the {taken} taken out",
        { IsWholePart: true, After: { } put } => $"{Grammar.A(put)} put in",
        // Kept in the plan of an evening, which is read in either system.
        { Before: { } before, After: { } after } => Instead(change.Said, WrittenFigures.Apart(before, after, UnitSystem.Metric)),
        // A recipe that does not say it leaves the usual one.
        { After: { } after } => $"{change.Said} {WrittenFigures.Restate(after, UnitSystem.Metric)} instead of the usual one",
        _ => $"{change.Said} as usual instead of {WrittenFigures.Restate(change.Before ?? "", UnitSystem.Metric)}",
    };

    private static string Instead(string said, (string Before, string After) figures) => $"{said} {figures.After} instead of {figures.Before}";

    private static string NameOf(string recipeText) => RecipeParser.Parse(recipeText).Value?.Name ?? "the fly";
}
