using System.Collections.Immutable;
using TyingClass.Recipes.Yaml;

namespace TyingClass.Recipes.Text.Yaml;

/// <summary>Gathers mistakes and hands them back in the order of the text.</summary>
internal sealed class ErrorList
{
    /// <summary>A page of more mistakes than this helps nobody.</summary>
    public const int Most = 200;

    private readonly List<RecipeError> _errors = [];

    public int Count => _errors.Count;

    public void Add(YamlNode at, string? path, string text) => Add(at.Line, at.Column, path, text);

    public void Add(int line, int column, string? path, string text) => _errors.Add(new RecipeError(line, column, path, text));

    public ImmutableArray<RecipeError> InOrder()
    {
        RecipeError[] sorted = [.. _errors.OrderBy(e => e.Line).ThenBy(e => e.Column)];
        if (sorted.Length <= Most) return [.. sorted];
        RecipeError next = sorted[Most];
        return [.. sorted[..Most],
            next with { Path = null, Text = $"There are {sorted.Length - Most} more mistakes from here on. Mend the ones above first." }];
    }
}
