using System.Collections.Immutable;
using TyingClass.Recipes.Catalogue;

namespace TyingClass.Recipes.Tests.Catalogue;

/// <summary>
/// Every estimate of the model in one table: what is guessed, for want of a source or a measurement, and how far it may be off. What a tyer or a fisher
/// chooses, as turns of wire or the speed, is no estimate and has no row. A fly is built of these by <see cref="Guesses"/>, so that any can be drawn otherwise.
/// </summary>
/// <remarks>docs/estimates.md lists them; a test holds it to this table.</remarks>
internal static class Estimates
{
    public static ImmutableArray<Figure> All { get; } =
    [
        .. CatalogueFigures.All.Select(f => f.Figure).Where(f => f.Name is not null),
        .. Materials.All.SelectMany(m => m.Figures).Select(f => f.Figure).Where(f => f.Name is not null),
    ];
}
