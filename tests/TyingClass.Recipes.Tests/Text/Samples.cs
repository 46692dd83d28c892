namespace TyingClass.Recipes.Tests.Text;

internal static class Samples
{
    public const string Minimal = "recipe: Slate Minnow\nintent: point down\nhook:\n  size: 8\n  shank: 25 mm\n";

    /// <summary>Every text of the specification files.</summary>
    public static string[] All { get; } = [.. SpecificationFile.All.Values.Select(c => c.RecipeText)];
}
