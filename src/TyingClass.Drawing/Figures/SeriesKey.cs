using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Plots;

namespace TyingClass.Drawing.Figures;

/// <summary>Several lines in one plot: each has a dash and a marker of its own, and a row of the legend.</summary>
internal static class SeriesKey
{
    public const int Most = 4;

    private const double Row = 17, FirstRow = 30;
    private const int Markers = 5;

    private static readonly (string Dash, double Width, MarkerKind Kind, bool Filled)[] Looks =
    [
        ("", 2, MarkerKind.Round, true), ("7 4", 1.6, MarkerKind.Round, false), ("2 3", 1.8, MarkerKind.Diamond, true), ("9 3 2 3", 1.4, MarkerKind.Cross,
            false),
    ];

    /// <summary>What a legend of so many rows adds to a plot.</summary>
    public static double Height(int rows) => Row * (rows - 1);

    public static Box Area(int rows) => new(46, 40 + Height(rows), 308, 196 + Height(rows));

    public static void Draw(Plot plot, int index, string name, IReadOnlyList<Point> points)
    {
        (string dash, double width, MarkerKind kind, bool filled) = Looks[index % Most];
        plot.Curve(points, $"fly-line fly-series-{index + 1}", width, dash);
        // A few markers only: they tell the lines apart, and would hide a close row of points.
        int step = Math.Max(1, (points.Count - 1) / Markers), shift = Math.Min(index, Math.Max(0, step - 1));
        for (int i = shift; i < points.Count; i += step) plot.Marker(points[i], kind, filled);
        double y = FirstRow + Row * index - 4, left = plot.Area.Left;
        plot.Line(new Point(left, y), new Point(left + 34, y), $"fly-line fly-series-{index + 1}", width, dash);
        plot.Marker(new Point(left + 17, y), kind, filled);
        plot.Text(name, new Point(left + 41, y + 4), "start");
    }
}
