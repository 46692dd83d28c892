using TyingClass.Drawing.Geometry;

namespace TyingClass.Drawing.Labels;

/// <summary>Which parts of the page the fly covers, on a coarse grid, summed once so that any rectangle is asked in four look-ups.</summary>
internal sealed class Occupancy
{
    private readonly Box _area;
    private readonly double _cellMm;
    private readonly int[,] _sums;

    /// <param name="area">Beyond it the page is taken to be free.</param>
    public Occupancy(Box area, double cellMm, IEnumerable<IReadOnlyList<Point>> outlines)
    {
        (_area, _cellMm) = (area, cellMm);
        int across = (int)(area.Width / cellMm) + 1, down = (int)(area.Height / cellMm) + 1;
        bool[,] taken = new bool[across, down];
        foreach (IReadOnlyList<Point> outline in outlines.Where(o => o.Count > 0))
        {
            // Filled by spokes from the middle: outlines here are round or radiate from one place.
            Point middle = outline.Aggregate(new Point(0, 0), (sum, p) => sum + p) * (1.0 / outline.Count);
            foreach (Point p in outline)
            {
                int steps = Math.Max(1, (int)((middle - p).Length / cellMm));
                for (int i = 0; i <= steps; i++)
                {
                    Point at = p + (middle - p) * ((double)i / steps);
                    int x = (int)((at.X - area.Left) / cellMm), y = (int)((at.Y - area.Top) / cellMm);
                    if (x >= 0 && y >= 0 && x < across && y < down)
                        taken[x, y] = true;
                }
            }
        }

        _sums = new int[across + 1, down + 1];
        for (int x = 0; x < across; x++)
        {
            for (int y = 0; y < down; y++)
                _sums[x + 1, y + 1] = (taken[x, y] ? 1 : 0) + _sums[x, y + 1] + _sums[x + 1, y] - _sums[x, y];
        }
    }

    /// <summary>Share of a rectangle that is covered, 0 to 1.</summary>
    public double Share(Box box)
    {
        int left = Column(box.Left), right = Column(box.Right) + 1, top = Row(box.Top), bottom = Row(box.Bottom) + 1;
        right = Math.Min(right, _sums.GetLength(0) - 1);
        bottom = Math.Min(bottom, _sums.GetLength(1) - 1);
        int hits = _sums[right, bottom] - _sums[left, bottom] - _sums[right, top] + _sums[left, top];
        double cells = Math.Max(1, (Math.Floor(box.Width / _cellMm) + 1) * (Math.Floor(box.Height / _cellMm) + 1));
        return Math.Min(1, hits / cells);
    }

    private int Column(double x) => Math.Clamp((int)((x - _area.Left) / _cellMm), 0, _sums.GetLength(0) - 1);

    private int Row(double y) => Math.Clamp((int)((y - _area.Top) / _cellMm), 0, _sums.GetLength(1) - 1);
}
