namespace TyingClass.Drawing.Geometry;

/// <summary>A place on the page, mm, y downward.</summary>
internal readonly record struct Point(double X, double Y)
{
    public double Length => Math.Sqrt(X * X + Y * Y);

    public static Point operator +(Point a, Point b) => new(a.X + b.X, a.Y + b.Y);

    public static Point operator -(Point a, Point b) => new(a.X - b.X, a.Y - b.Y);

    public static Point operator *(Point a, double s) => new(a.X * s, a.Y * s);

    public static double Dot(Point a, Point b) => a.X * b.X + a.Y * b.Y;

    public static double Cross(Point a, Point b) => a.X * b.Y - a.Y * b.X;

    /// <summary>A quarter turn, right of the direction of travel on a page.</summary>
    public Point Turned() => new(-Y, X);

    public Point Unit() => Length > 1e-12 ? this * (1 / Length) : new Point(1, 0);
}

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

    public bool Holds(Point p) => p.X >= Left && p.X <= Right && p.Y >= Top && p.Y <= Bottom;

    public bool Holds(Box b) => b.Left >= Left && b.Right <= Right && b.Top >= Top && b.Bottom <= Bottom;

    public double Overlap(Box b) =>
        Math.Max(0, Math.Min(Right, b.Right) - Math.Max(Left, b.Left)) * Math.Max(0, Math.Min(Bottom, b.Bottom) - Math.Max(Top, b.Top));
}
