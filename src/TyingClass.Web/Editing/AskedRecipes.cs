using Microsoft.AspNetCore.Html;
using TyingClass.Lessons.Exercises;
using TyingClass.Telling.Reasons;
using TyingClass.Web.Pictures;

namespace TyingClass.Web.Editing;

/// <summary>The flies a question is about, in the order shown.</summary>
internal static class AskedRecipes
{
    /// <summary>The fly before and after, where the question is what a change does; null for any other.</summary>
    public static (string Before, string After)? Change(Exercise exercise) =>
        exercise is { Task.ChangedRecipe: { } after, RecipeText: { } before } ? (before, after) : null;

    /// <summary>Those flies as the question asks to see them; null where that is no one picture.</summary>
    public static IHtmlContent? Picture(Exercise exercise, AskedPicture asked, FlyPictures pictures) => Change(exercise) is { } change
        ? pictures.Asked(asked, change.Before, change.After)
        : Of(exercise).ToArray() switch
        {
            [var only] => pictures.Asked(asked, only),
            [var first, var second] when asked.Pair == FlyPair.Change =>
                pictures.Asked(asked, first, second, (RecipeCard.Of(first)?.Name ?? "", RecipeCard.Of(second)?.Name ?? "")),
            _ => null,
        };

    public static IEnumerable<string> Of(Exercise exercise) =>
        new[] { exercise.RecipeText }.OfType<string>().Concat(exercise.Task.OtherRecipes);
}
