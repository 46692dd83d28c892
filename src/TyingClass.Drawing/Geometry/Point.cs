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
