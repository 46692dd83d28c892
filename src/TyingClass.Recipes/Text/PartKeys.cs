using System.Collections.Immutable;

namespace TyingClass.Recipes.Text;

/// <summary>The keys of parts, in the order they are written.</summary>
public static class PartKeys
{
    /// <summary>Every key any part takes.</summary>
    public static ImmutableArray<string> All { get; } =
        ["part", "material", "density", "size", "diameter", "turns", "balls", "loops", "length", "mass", "at", "to", "side", "tied", "side offset", "clocked"];

    /// <summary>A kind's own keys together with those of every part.</summary>
    internal static ImmutableArray<string> Sorted(ImmutableArray<string> own) =>
        [.. All.Where(k => k is "part" or "material" or "density" or "at" or "side offset" or "clocked" || own.Contains(k))];
}
