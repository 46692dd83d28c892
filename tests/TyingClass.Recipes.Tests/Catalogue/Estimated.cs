using TyingClass.Recipes.Catalogue;

namespace TyingClass.Recipes.Tests.Catalogue;

/// <summary>Whether a figure says of itself that it has no source.</summary>
internal static class Estimated
{
    extension(Figure figure)
    {
        public bool IsEstimate => figure.Source.StartsWith(Figure.Estimate, StringComparison.Ordinal);
    }
}
