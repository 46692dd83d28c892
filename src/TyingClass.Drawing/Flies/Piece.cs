using TyingClass.Drawing.Geometry;

namespace TyingClass.Drawing.Flies;

/// <summary>A bit of the fly drawn in one go. Pieces are laid down far to near, equal ones in tying order.</summary>
/// <param name="DepthMm">Nearness to the onlooker.</param>
/// <param name="Part">What it belongs to, as the ledger names it.</param>
/// <param name="Outline">Points that the piece covers, enough to keep words off it and to frame it.</param>
internal sealed record Piece(double DepthMm, string Part, IReadOnlyList<Point> Outline, Action<Ink> Draw)
{
    /// <summary>A line round free paper rather than a shape: words may stand within it.</summary>
    public bool IsOpen { get; init; }

    /// <summary>What words must keep off.</summary>
    public IEnumerable<IReadOnlyList<Point>> Covered => IsOpen ? Outline.Zip(Outline.Skip(1), (a, b) => (IReadOnlyList<Point>)[a, b]) : [Outline];
}
