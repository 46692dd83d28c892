using TyingClass.Drawing.Geometry;

namespace TyingClass.Drawing.Labels;

/// <summary>Which parts of the page the fly covers, on a coarse grid.</summary>
internal sealed class Occupancy(double cellMm)
{
    private readonly HashSet<(int, int)> taken = [];

    public void Add(IReadOnlyList<Point> outline)
    {
        if (outline.Count == 0)
            return;
        Point middle = outline.Aggregate(new Point(0, 0), (sum, p) => sum + p) * (1.0 / outline.Count);
        foreach (Point p in outline)
        {
            Point way = middle - p;
            int steps = Math.Max(1, (int)(way.Length / cellMm));
            for (int i = 0; i <= steps; i++)
                taken.Add(Cell(p + way * ((double)i / steps)));
        }
    }

    /// <summary>Share of a rectangle that is covered, 0 to 1.</summary>
    public double Share(Box box)
    {
        (int left, int top) = Cell(new Point(box.Left, box.Top));
        (int right, int bottom) = Cell(new Point(box.Right, box.Bottom));
        int hits = 0;
        for (int x = left; x <= right; x++)
        {
            for (int y = top; y <= bottom; y++)
                hits += taken.Contains((x, y)) ? 1 : 0;
        }

        return (double)hits / ((right - left + 1) * (bottom - top + 1));
    }

    private (int, int) Cell(Point p) => ((int)Math.Floor(p.X / cellMm), (int)Math.Floor(p.Y / cellMm));
}
