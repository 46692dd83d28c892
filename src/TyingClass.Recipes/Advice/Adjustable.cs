using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Advice;

/// <summary>One thing a tyer can change by itself, on a grid of steps worth measuring at the bench.</summary>
/// <param name="Path">Where it stands in the recipe: "hook.gape", "parts[0].size".</param>
/// <param name="Kind">The kind of change, for choosing the smallest of each: "heavier bead", "straighter eye".</param>
/// <param name="Steps">How many steps there are, 1 or more.</param>
/// <param name="At">The recipe after so many steps, 1 to <paramref name="Steps"/>.</param>
/// <param name="Advise">What the tyer is to do then.</param>
public sealed record Adjustable(string Path, string Kind, int Steps, Func<int, Recipe> At, Func<int, Advised> Advise)
{
    /// <summary>What comes of it grows or falls from step to step and never turns back: few steps need not be tried one by one.</summary>
    public bool IsEven { get; init; }
}
