using System.Globalization;
using System.Text;
using TyingClass.Drawing.Geometry;

namespace TyingClass.Drawing.Svg;

/// <summary>
/// Builds the d attribute of a path, in hundredths and relative to the last place, which keeps a fly of a thousand hairs small. Rounding never adds up: each
/// step starts from the place as written.
/// </summary>
internal sealed class PathText
{
    private const int Hundred = 100;

    private readonly StringBuilder _d = new();
    private (long X, long Y) _pen, _start;

    public bool IsEmpty => _d.Length == 0;

    public PathText Move(Point p)
    {
        (long X, long Y) to = Whole(p);
        _d.Append('M');
        Write(to.X, to.Y, first: true);
        _pen = _start = to;
        return this;
    }

    public PathText Line(Point p)
    {
        _d.Append('l');
        Step(p, _pen, first: true);
        _pen = Whole(p);
        return this;
    }

    public PathText Cubic(Point a, Point b, Point end)
    {
        _d.Append('c');
        Step(a, _pen, first: true);
        Step(b, _pen, first: false);
        Step(end, _pen, first: false);
        _pen = Whole(end);
        return this;
    }

    public PathText Close()
    {
        _d.Append('z');
        _pen = _start;
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

    public override string ToString() => _d.ToString();

    private static (long X, long Y) Whole(Point p) => ((long)Math.Round(p.X * Hundred), (long)Math.Round(p.Y * Hundred));

    private void Step(Point p, (long X, long Y) from, bool first)
    {
        (long x, long y) = Whole(p);
        Write(x - from.X, y - from.Y, first);
    }

    private void Write(long x, long y, bool first)
    {
        Number(x, first);
        Number(y, false);
    }

    // ".4-1.25 3": a sign parts two numbers as well as a space does.
    private void Number(long hundredths, bool first)
    {
        if (!first && hundredths >= 0)
            _d.Append(' ');
        if (hundredths < 0)
            _d.Append('-');
        (long whole, long rest) = Math.DivRem(Math.Abs(hundredths), Hundred);
        if (whole > 0 || rest == 0)
            _d.Append(whole.ToString(CultureInfo.InvariantCulture));
        if (rest == 0)
            return;
        _d.Append('.').Append((char)('0' + rest / 10));
        if (rest % 10 != 0)
            _d.Append((char)('0' + rest % 10));
    }
}
