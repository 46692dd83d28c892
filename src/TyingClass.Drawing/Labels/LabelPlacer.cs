using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Words;

namespace TyingClass.Drawing.Labels;

/// <summary>Puts words near their marks, off the fly, never over one another. Every label looks through places round its mark and in rows above and below the fly, and takes the cheapest given where the others are; a few rounds settle it.</summary>
internal sealed class LabelPlacer(Box fly, double left, double right, double letterMm, Occupancy occupancy, IReadOnlyList<Box> kept)
{
    private const int Rounds = 4, Angles = 36, Rows = 7;

    private static readonly double[] Reaches = [0.9, 1.5, 2.3, 3.2, 4.4, 5.8, 7.5, 9.5, 12];

    public IReadOnlyList<Label> Place(IReadOnlyList<LabelWish> wishes)
    {
        Label?[] placed = new Label?[wishes.Count];
        Label[][] choices = [.. wishes.Select(w => Choices(w).ToArray())];
        double[][] alone = [.. choices.Select(set => set.Select(l => CostAlone(l, wishes)).ToArray())];
        for (int round = 0; round < Rounds; round++)
        {
            bool moved = false;
            for (int i = 0; i < wishes.Count; i++)
            {
                int best = 0;
                double bestCost = double.MaxValue;
                for (int k = 0; k < choices[i].Length; k++)
                {
                    double cost = alone[i][k];
                    for (int j = 0; j < placed.Length && cost < bestCost; j++)
                        cost += j != i && placed[j] is { } other ? CostBeside(choices[i][k], other) : 0;
                    if (cost < bestCost)
                        (best, bestCost) = (k, cost);
                }

                moved |= placed[i] != choices[i][best];
                placed[i] = choices[i][best];
            }

            if (!moved)
                break;
        }

        return [.. placed.OfType<Label>()];
    }

    private IEnumerable<Label> Choices(LabelWish wish)
    {
        double width = TextSize.WidthEm(wish.Text) * letterMm, height = 1.15 * letterMm;
        foreach (double reach in Reaches)
        {
            for (int k = 0; k < Angles; k++)
            {
                (double sin, double cos) = Math.SinCos(k * 2 * Math.PI / Angles);
                double r = wish.ClearMm + reach * letterMm;
                Point edge = wish.Anchor + new Point(cos, sin) * r;
                // The words hang on the far side of the place the line points to.
                yield return new Label(wish, Box.Around(edge + new Point(cos * width / 2, sin * height / 2), width, height));
            }
        }

        double x = Math.Clamp(wish.Anchor.X, left + width / 2, Math.Max(right - width / 2, left + width / 2));
        for (int row = 0; row < Rows; row++)
        {
            foreach (double slide in (double[])[0, -6, 6, -12, 12])
            {
                yield return new Label(wish, Box.Around(new Point(x + slide * letterMm, fly.Top - (0.8 + 1.35 * row) * letterMm), width, height));
                yield return new Label(wish, Box.Around(new Point(x + slide * letterMm, fly.Bottom + (0.8 + 1.35 * row) * letterMm), width, height));
            }
        }
    }

    private double CostAlone(Label label, IReadOnlyList<LabelWish> wishes)
    {
        double line = (label.Foot - label.Wish.Anchor).Length / letterMm;
        double cost = line + 40 * occupancy.Share(label.Box.Grown(0.15 * letterMm));
        if (label.Box.Left < left || label.Box.Right > right)
            cost += 1000;
        double beyond = Math.Max(0, fly.Top - label.Box.Top) + Math.Max(0, label.Box.Bottom - fly.Bottom);
        cost += 0.5 * beyond / letterMm;
        foreach (Box box in kept)
            cost += label.Box.Grown(0.25 * letterMm).Meets(box) ? 300 : Crosses(label.Head, label.Foot, box) ? 6 : 0;
        foreach (LabelWish other in wishes)
        {
            if (ReferenceEquals(other, label.Wish))
                continue;
            Box mark = Box.Around(other.Anchor, 2 * other.ClearMm, 2 * other.ClearMm);
            cost += label.Box.Meets(mark) ? 200 : Crosses(label.Head, label.Foot, mark.Grown(-0.3 * other.ClearMm)) ? 12 : 0;
        }

        return cost;
    }

    private double CostBeside(Label a, Label b)
    {
        if (a.Box.Grown(0.3 * letterMm).Meets(b.Box))
            return 500;
        double cost = Crosses(a.Head, a.Foot, b.Box) || Crosses(b.Head, b.Foot, a.Box) ? 60 : 0;
        return cost + (Cross(a.Head, a.Foot, b.Head, b.Foot) ? 25 : 0);
    }

    private static bool Crosses(Point a, Point b, Box box)
    {
        for (int i = 0; i <= 12; i++)
        {
            if (box.Holds(a + (b - a) * (i / 12.0)))
                return true;
        }

        return false;
    }

    private static bool Cross(Point a, Point b, Point c, Point d)
    {
        static double Side(Point p, Point q, Point r) => Point.Cross(q - p, r - p);
        return Side(a, b, c) * Side(a, b, d) < 0 && Side(c, d, a) * Side(c, d, b) < 0;
    }
}
