using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Words;

namespace TyingClass.Drawing.Labels;

/// <summary>
/// Puts words near their marks, off the fly, never over one another. Each label has places round its mark and in rows above and below the fly; labels take
/// turns at the cheapest place given the others until none moves, from several starting orders, and the best end is kept.
/// </summary>
/// <param name="fly">What is drawn, before words.</param>
/// <param name="page">Words stay inside.</param>
/// <param name="kept">Places that no words may cover.</param>
internal sealed class LabelPlacer(Box fly, Box page, double letterMm, Occupancy occupancy, IReadOnlyList<Box> kept)
{
    private const int Rounds = 6, Angles = 24, Rows = 7, Shortlist = 90;
    private const double Collision = 500, OnTheFly = 7;

    private static readonly double[] Reaches = [0.5, 1, 1.6, 2.3, 3.2, 4.4, 5.8, 7.5, 9.5, 12];

    public IReadOnlyList<Label> Place(IReadOnlyList<LabelWish> wishes)
    {
        if (wishes.Count == 0)
            return [];
        (Label Label, double Cost)[][] choices = [.. wishes.Select(w => Choices(w, w.Anchor).Concat(w.OrAnchor is { } or ? Choices(w, or) : [])
            .Select(l => (l, CostAlone(l, wishes))).OrderBy(c => c.Item2).Take(Shortlist).ToArray())];
        Label[]? best = null;
        double bestCost = double.MaxValue;
        // Every label gets to choose first once; the order then runs on round the circle.
        for (int start = 0; start < wishes.Count; start++)
        {
            (Label[] placed, double cost) = Settle(choices, start);
            if (cost < bestCost)
                (best, bestCost) = (placed, cost);
        }

        return best!;
    }

    private (Label[] Placed, double Cost) Settle((Label Label, double Cost)[][] choices, int start)
    {
        int n = choices.Length;
        Label?[] placed = new Label?[n];
        double[] costs = new double[n];
        for (int round = 0; round < Rounds; round++)
        {
            bool moved = false;
            for (int turn = 0; turn < n; turn++)
            {
                int i = (start + turn) % n;
                (Label? found, costs[i]) = Cheapest(choices[i], placed, i);
                moved |= !ReferenceEquals(placed[i], found);
                placed[i] = found;
            }

            if (!moved)
                break;
        }

        double total = 0;
        for (int i = 0; i < n; i++)
            total += costs[i];
        return ([.. placed.OfType<Label>()], total);
    }

    private (Label? Label, double Cost) Cheapest((Label Label, double Cost)[] choices, Label?[] placed, int self)
    {
        Label? best = null;
        double bestCost = double.MaxValue;
        foreach ((Label label, double alone) in choices)
        {
            // Sorted by cost alone: none after this can do better.
            if (alone >= bestCost)
                break;
            double cost = alone;
            for (int j = 0; j < placed.Length && cost < bestCost; j++)
                cost += j != self && placed[j] is { } other ? CostBeside(label, other) : 0;
            if (cost < bestCost)
                (best, bestCost) = (label, cost);
        }

        return (best, bestCost);
    }

    private IEnumerable<Label> Choices(LabelWish wish, Point anchor)
    {
        double width = TextSize.WidthEm(wish.Text) * letterMm, height = 1.15 * letterMm;
        foreach (double reach in Reaches)
        {
            for (int k = 0; k < Angles; k++)
            {
                (double sin, double cos) = Math.SinCos(k * 2 * Math.PI / Angles);
                double r = wish.ClearMm + reach * letterMm;
                Point edge = anchor + new Point(cos, sin) * r;
                // The words hang on the far side of the place the line points to.
                yield return new Label(wish, anchor, Box.Around(edge + new Point(cos * width / 2, sin * height / 2), width, height));
            }
        }

        double x = Math.Clamp(anchor.X, page.Left + width / 2, Math.Max(page.Right - width / 2, page.Left + width / 2));
        for (int row = 0; row < Rows; row++)
        {
            foreach (double slide in (double[])[0, -3, 3, -6, 6, -12, 12])
            {
                yield return new Label(wish, anchor, Box.Around(new Point(x + slide * letterMm, fly.Top - (0.8 + 1.35 * row) * letterMm), width, height));
                yield return new Label(wish, anchor, Box.Around(new Point(x + slide * letterMm, fly.Bottom + (0.8 + 1.35 * row) * letterMm), width, height));
            }
        }
    }

    private double CostAlone(Label label, IReadOnlyList<LabelWish> wishes)
    {
        // A corner on the fly's outline is as hard to read as much more of it.
        double covered = occupancy.Share(label.Box.Grown(0.15 * letterMm));
        double cost = (label.Foot - label.Anchor).Length / letterMm + (covered > 0 ? OnTheFly + 90 * covered : 0);
        if (!page.Holds(label.Box))
            cost += 4 * Collision;
        double beyond = Math.Max(0, fly.Top - label.Box.Top) + Math.Max(0, label.Box.Bottom - fly.Bottom);
        cost += 0.5 * beyond / letterMm;
        foreach (Box box in kept)
            cost += label.Box.Grown(0.25 * letterMm).Meets(box) ? 300 : !box.Grown(0.3 * letterMm).Holds(label.Anchor) && box.Meets(label.Head, label.Foot) ? 6
                : 0;
        foreach (LabelWish other in wishes)
        {
            if (ReferenceEquals(other, label.Wish))
                continue;
            Box mark = Box.Around(other.Anchor, 2 * other.ClearMm, 2 * other.ClearMm);
            cost += label.Box.Meets(mark) ? 200 : mark.Grown(-0.3 * other.ClearMm).Meets(label.Head, label.Foot) ? 8 : 0;
        }

        return cost;
    }

    private double CostBeside(Label a, Label b)
    {
        if (a.Box.Grown(0.3 * letterMm).Meets(b.Box))
            return Collision;
        double cost = b.Box.Meets(a.Head, a.Foot) || a.Box.Meets(b.Head, b.Foot) ? 60 : 0;
        return cost + (Cross(a.Head, a.Foot, b.Head, b.Foot) ? 15 : 0);
    }

    private static bool Cross(Point a, Point b, Point c, Point d)
    {
        static double Side(Point p, Point q, Point r) => Point.Cross(q - p, r - p);
        return Side(a, b, c) * Side(a, b, d) < 0 && Side(c, d, a) * Side(c, d, b) < 0;
    }
}
