using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Words;

namespace TyingClass.Drawing.Labels;

/// <summary>Words wanted beside a place.</summary>
/// <param name="ClearMm">Radius round the place that its own mark takes up.</param>
internal sealed record LabelWish(string Text, string Name, Point Anchor, double ClearMm);

/// <summary>Words with a place of their own.</summary>
internal sealed record Label(LabelWish Wish, Box Box)
{
    /// <summary>Where the pointing line leaves the words: the nearest place on their edge.</summary>
    public Point Foot => new(Math.Clamp(Wish.Anchor.X, Box.Left, Box.Right), Math.Clamp(Wish.Anchor.Y, Box.Top, Box.Bottom));

    /// <summary>Where it meets the mark.</summary>
    public Point Head => Wish.Anchor + (Foot - Wish.Anchor).Unit() * Math.Min(Wish.ClearMm, (Foot - Wish.Anchor).Length);

    public static Box BoxFor(string text, Point center, double letterMm) =>
        Box.Around(center, TextSize.WidthEm(text) * letterMm, 1.15 * letterMm);
}
