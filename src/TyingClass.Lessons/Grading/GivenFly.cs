using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Grading;

/// <summary>The recipe of an exercise.</summary>
internal static class GivenFly
{
    public static Recipe Of(string text) =>
        RecipeParser.Parse(text).Value ?? throw new InvalidOperationException("The exercise's recipe was checked when its lesson was loaded.");
}
