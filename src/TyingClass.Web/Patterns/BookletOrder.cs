using System.Collections.Immutable;

namespace TyingClass.Web.Patterns;

/// <summary>How pages lie on sheets that are printed on both sides and folded once.</summary>
public static class BookletOrder
{
    /// <returns>Side by side of each sheet, front then back; a page beyond the last is left white.</returns>
    public static ImmutableArray<(int Left, int Right)> Of(int pages)
    {
        int all = (pages + 3) / 4 * 4;
        // The outermost sheet holds the last page and the first, its back the second and the last but one, and so inward.
        return [.. Enumerable.Range(0, all / 2).Select(i => i % 2 == 0 ? (all - i, i + 1) : (i + 1, all - i))];
    }
}
