namespace TyingClass.Drawing.Geometry;

/// <summary>Convex hull by Andrew's monotone chain (Inf. Process. Lett. 9, 1979, 216).</summary>
internal static class Hull
{
    public static IReadOnlyList<Point> Of(IEnumerable<Point> points)
    {
        Point[] sorted = [.. points.Distinct().OrderBy(p => p.X).ThenBy(p => p.Y)];
        if (sorted.Length < 3)
            return sorted;
        List<Point> hull = [];
        Chain(sorted);
        int lower = hull.Count - 1;
        hull.RemoveAt(lower);
        List<Point> first = hull;
        hull = [];
        Chain(sorted.Reverse());
        hull.RemoveAt(hull.Count - 1);
        return [.. first, .. hull];

        void Chain(IEnumerable<Point> run)
        {
            foreach (Point p in run)
            {
                while (hull.Count >= 2 && Point.Cross(hull[^1] - hull[^2], p - hull[^1]) <= 0)
                    hull.RemoveAt(hull.Count - 1);
                hull.Add(p);
            }
        }
    }
}
