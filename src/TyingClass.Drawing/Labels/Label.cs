using TyingClass.Drawing.Geometry;

namespace TyingClass.Drawing.Labels;

/// <summary>Words wanted beside a place.</summary>
/// <param name="ClearMm">Radius round the place that its own mark takes up.</param>
internal sealed record LabelWish(string Text, string Name, Point Anchor, double ClearMm)
{
    /// <summary>Another place that would do as well.</summary>
    public Point? OrAnchor { get; init; }
}

/// <summary>Words with a place of their own.</summary>
/// <param name="Anchor">The place it points to.</param>
internal sealed record Label(LabelWish Wish, Point Anchor, Box Box)
{
    /// <summary>Where the pointing line leaves the words: the nearest place on their edge.</summary>
    public Point Foot => new(Math.Clamp(Anchor.X, Box.Left, Box.Right), Math.Clamp(Anchor.Y, Box.Top, Box.Bottom));

    /// <summary>Where it meets the mark.</summary>
    public Point Head => Anchor + (Foot - Anchor).Unit() * Math.Min(Wish.ClearMm, (Foot - Anchor).Length);
}
