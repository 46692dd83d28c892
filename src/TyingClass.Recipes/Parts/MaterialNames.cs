using System.Collections.Immutable;

namespace TyingClass.Recipes.Parts;

/// <summary>Materials that several kinds of part are made of.</summary>
internal static class MaterialNames
{
    /// <summary>What weights are turned or wound of.</summary>
    public static readonly ImmutableArray<string> Metals = ["lead", "tin", "copper", "brass", "steel", "tungsten", "aluminum"];
}
