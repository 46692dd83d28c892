namespace TyingClass.Drawing.Geometry;

/// <summary>An upright rectangle on the page, mm.</summary>
internal readonly record struct Box(double Left, double Top, double Right, double Bottom)
{
    public static readonly Box Empty = new(double.MaxValue, double.MaxValue, double.MinValue, double.MinValue);

    public double Width => Right - Left;

    public double Height => Bottom - Top;

    public Point Center => new((Left + Right) / 2, (Top + Bottom) / 2);

    public static Box Around(Point center, double width, double height) =>
        new(center.X - width / 2, center.Y - height / 2, center.X + width / 2, center.Y + height / 2);

    public Box With(Point p) => new(Math.Min(Left, p.X), Math.Min(Top, p.Y), Math.Max(Right, p.X), Math.Max(Bottom, p.Y));

    public Box With(Box b) => new(Math.Min(Left, b.Left), Math.Min(Top, b.Top), Math.Max(Right, b.Right), Math.Max(Bottom, b.Bottom));

    public Box Grown(double by) => new(Left - by, Top - by, Right + by, Bottom + by);

    public bool Meets(Box b) => Left < b.Right && b.Left < Right && Top < b.Bottom && b.Top < Bottom;

    /// <summary>Whether a straight line between two places passes through (the slab test).</summary>
    public bool Meets(Point a, Point b)
    {
        double from = 0, to = 1;
        return Slab(a.X, b.X - a.X, Left, Right, ref from, ref to) && Slab(a.Y, b.Y - a.Y, Top, Bottom, ref from, ref to);
    }

    public bool Holds(Point p) => p.X >= Left && p.X <= Right && p.Y >= Top && p.Y <= Bottom;

    public bool Holds(Box b) => b.Left >= Left && b.Right <= Right && b.Top >= Top && b.Bottom <= Bottom;

    private static bool Slab(double start, double run, double low, double high, ref double from, ref double to)
    {
        if (Math.Abs(run) < 1e-12)
            return start >= low && start <= high;
        double a = (low - start) / run, b = (high - start) / run;
        from = Math.Max(from, Math.Min(a, b));
        to = Math.Min(to, Math.Max(a, b));
        return from <= to;
    }
}
