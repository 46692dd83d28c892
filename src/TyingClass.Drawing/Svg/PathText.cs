using System.Text;
using TyingClass.Drawing.Geometry;

namespace TyingClass.Drawing.Svg;

/// <summary>Builds the d attribute of a path.</summary>
internal sealed class PathText
{
    private readonly StringBuilder d = new();

    public bool IsEmpty => d.Length == 0;

    public PathText Move(Point p) => Add('M', p);

    public PathText Line(Point p) => Add('L', p);

    public PathText Cubic(Point a, Point b, Point end)
    {
        Add('C', a);
        d.Append(' ').Append(SvgCanvas.N(b.X)).Append(' ').Append(SvgCanvas.N(b.Y)).Append(' ').Append(SvgCanvas.N(end.X)).Append(' ').Append(SvgCanvas.N(end.Y));
        return this;
    }

    public PathText Close()
    {
        d.Append('Z');
        return this;
    }

    public PathText Polyline(IReadOnlyList<Point> points, bool closed = false)
    {
        if (points.Count < 2)
            return this;
        Move(points[0]);
        for (int i = 1; i < points.Count; i++)
            Line(points[i]);
        return closed ? Close() : this;
    }

    /// <summary>A smooth curve through the points (Catmull-Rom, as cubics).</summary>
    public PathText Smooth(IReadOnlyList<Point> p, bool closed = false)
    {
        int n = p.Count;
        if (n < 3)
            return Polyline(p, closed);
        Point At(int i) => closed ? p[(i % n + n) % n] : p[Math.Clamp(i, 0, n - 1)];
        Move(p[0]);
        for (int i = 0; i < (closed ? n : n - 1); i++)
            Cubic(At(i) + (At(i + 1) - At(i - 1)) * (1 / 6.0), At(i + 1) - (At(i + 2) - At(i)) * (1 / 6.0), At(i + 1));
        return closed ? Close() : this;
    }

    public override string ToString() => d.ToString();

    private PathText Add(char command, Point p)
    {
        d.Append(command).Append(SvgCanvas.N(p.X)).Append(' ').Append(SvgCanvas.N(p.Y));
        return this;
    }
}
