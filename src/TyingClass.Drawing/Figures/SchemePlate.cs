using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Labels;
using TyingClass.Drawing.Plates;

namespace TyingClass.Drawing.Figures;

/// <summary>A picture with words and no foot: a scheme beside a fly, or a fly seen in a way of its own.</summary>
internal abstract class SchemePlate(DrawingOptions options) : Plate(options)
{
    /// <summary>Frames the content, a little wider than it, and puts the words round it.</summary>
    /// <param name="covered">Outlines that words keep off.</param>
    /// <param name="share">Share of the width that the content takes.</param>
    protected void Compose(Box content, IEnumerable<IReadOnlyList<Point>> covered, IReadOnlyList<LabelWish> wishes, IReadOnlyList<Box> kept, double share = 0.8)
    {
        double width = Math.Max(content.Width / share, 0.9 * content.Height), left = content.Center.X - width / 2, letter = LetterShare * width;
        Occupancy occupancy = new(content.Grown(letter), 0.4 * letter, covered);
        Box page = new(left + 0.3 * letter, content.Top - 8 * letter, left + width - 0.3 * letter, content.Bottom + 8 * letter);
        Labels = new LabelPlacer(content, page, letter, occupancy, kept).Place(wishes);
        Box all = Labels.Aggregate(content, (box, l) => box.With(l.Box));
        Window = new Box(left, all.Top - 0.8 * letter, left + width, all.Bottom + 0.8 * letter);
    }

    protected static IEnumerable<Box> Along(Point a, Point b, double letterMm)
    {
        int steps = Math.Max(2, (int)((b - a).Length / letterMm));
        for (int i = 0; i <= steps; i++)
            yield return Box.Around(a + (b - a) * ((double)i / steps), 0.5 * letterMm, 0.5 * letterMm);
    }
}
