using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;
using TyingClass.Drawing.Words;
using TyingClass.Telling.Figures;

namespace TyingClass.Drawing.Plots;

/// <summary>
/// The paper a curve is drawn on: 320 units wide, so that letters are 11 px where a phone 390 px wide leaves 280 px for it. Series differ by dash and marker,
/// areas by hatching, never by color alone.
/// </summary>
internal sealed class Plot : IDisposable
{
    public const double Width = 320;
    public const double Letter = 12.8;

    private readonly SvgCanvas _canvas = new();
    private readonly string _prefix;

    public Plot(DrawingOptions options, string kind, string title, string description, double height = 240)
    {
        _prefix = options.Checked().IdPrefix;
        _canvas.Open("svg",
            ("viewBox", $"0 0 {SvgCanvas.N(Width)} {SvgCanvas.N(height)}"),
            ("width", SvgCanvas.N(options.WidthPx)), ("height", SvgCanvas.N(options.WidthPx * height / Width)),
            ("class", $"fly-curve fly-curve-{kind}"), ("role", "img"), ("aria-labelledby", $"{_prefix}-title {_prefix}-desc"),
            ("font-family", "Georgia, 'Times New Roman', serif"), ("font-size", SvgCanvas.N(Letter)),
            ("fill", "none"), ("stroke", "currentColor"), ("stroke-linecap", "round"), ("stroke-linejoin", "round"));
        _canvas.Words("title", title, ("id", _prefix + "-title"));
        _canvas.Words("desc", description, ("id", _prefix + "-desc"));
    }

    public Box Area { get; set; } = new(46, 40, 308, 196);

    public Scale X { get; set; } = Scale.Exact(0, 1, 1, 46, 308);

    public Scale Y { get; set; } = Scale.Exact(0, 1, 1, 196, 40);

    public Point At(double x, double y) => new(X.At(x), Y.At(y));

    /// <summary>Ticks, figures, faint rulings and the axis words.</summary>
    /// <param name="floor">The y value whose line is drawn as the strong axis.</param>
    public void Axes(string xWords, string yWords, double floor = double.NaN)
    {
        _canvas.Open("g", ("class", "fly-axis"));
        foreach (double v in X.Ticks)
        {
            Line(new Point(X.At(v), Area.Bottom), new Point(X.At(v), Area.Bottom + 4), "fly-tick", 0.8);
            Text(Numbers.Write(v, X.Decimals), new Point(X.At(v), Area.Bottom + 16), "middle");
        }

        foreach (double v in Y.Ticks)
        {
            Line(new Point(Area.Left, Y.At(v)), new Point(Area.Right, Y.At(v)), "fly-ruling", 0.5, opacity: 0.25);
            Text(Numbers.Write(v, Y.Decimals), new Point(Area.Left - 6, Y.At(v) + 4), "end");
        }

        Line(new Point(Area.Left, Area.Top), new Point(Area.Left, Area.Bottom), "fly-axis-line", 0.9);
        Line(new Point(Area.Left, Area.Bottom), new Point(Area.Right, Area.Bottom), "fly-axis-line", 0.9);
        if (floor >= Math.Min(Y.Low, Y.High) && floor <= Math.Max(Y.Low, Y.High))
            Line(new Point(Area.Left, Y.At(floor)), new Point(Area.Right, Y.At(floor)), "fly-axis-line", 1.3);
        Text(xWords, new Point((Area.Left + Area.Right) / 2, Area.Bottom + 34), "middle", italic: true);
        Text(yWords, new Point(2, 13), "start", italic: true);
        _canvas.Close();
    }

    public void Line(Point a, Point b, string css, double width, string dash = "", double opacity = 1)
    {
        List<(string, string)> attributes =
        [
            ("class", css), ("x1", SvgCanvas.N(a.X)), ("y1", SvgCanvas.N(a.Y)), ("x2", SvgCanvas.N(b.X)), ("y2", SvgCanvas.N(b.Y)),
            ("stroke-width", SvgCanvas.N(width)),
        ];
        if (dash.Length > 0)
            attributes.Add(("stroke-dasharray", dash));
        if (opacity < 1)
            attributes.Add(("stroke-opacity", SvgCanvas.N(opacity)));
        _canvas.Element("line", [.. attributes]);
    }

    public void Curve(IReadOnlyList<Point> points, string css, double width, string dash = "")
    {
        if (points.Count < 2)
            return;
        string d = new PathText().Polyline(points).ToString();
        if (dash.Length > 0)
            _canvas.Element("path", ("class", css), ("d", d), ("stroke-width", SvgCanvas.N(width)), ("stroke-dasharray", dash));
        else
            _canvas.Element("path", ("class", css), ("d", d), ("stroke-width", SvgCanvas.N(width)));
    }

    public void Patch(IReadOnlyList<Point> outline, string css, string fill)
    {
        if (outline.Count > 2)
            _canvas.Element("path", ("class", css), ("d", new PathText().Polyline(outline, closed: true).ToString()), ("fill", fill), ("stroke", "none"));
    }

    public void Bar(Box box, string css, string fill, string name) => _canvas.Element(
        "rect", ("class", css), ("x", SvgCanvas.N(box.Left)), ("y", SvgCanvas.N(box.Top)), ("width", SvgCanvas.N(box.Width)),
        ("height", SvgCanvas.N(box.Height)), ("fill", fill), ("stroke-width", "0.9"), ("data-name", name));

    public void Marker(Point at, MarkerKind kind, bool filled, string data = "")
    {
        string css = filled ? "fly-point fly-point-filled" : "fly-point fly-point-open";
        string fill = filled ? "currentColor" : "none";
        const double r = 3.4;
        if (kind == MarkerKind.Round)
            _canvas.Element("circle", ("class", css), ("cx", SvgCanvas.N(at.X)), ("cy", SvgCanvas.N(at.Y)), ("r", "3.2"), ("fill", fill),
                ("stroke-width", "1.1"), ("data-value", data));
        else
        {
            PathText d = kind == MarkerKind.Diamond
                ? new PathText().Polyline([at + new Point(0, -r - 0.8), at + new Point(r + 0.8, 0), at + new Point(0, r + 0.8), at + new Point(-r - 0.8, 0)],
                closed: true)
                : new PathText().Move(at + new Point(-r, -r)).Line(at + new Point(r, r)).Move(at + new Point(-r, r)).Line(at + new Point(r, -r));
            _canvas.Element("path", ("class", css), ("d", d.ToString()), ("fill", kind == MarkerKind.Cross ? "none" : fill),
                ("stroke-width", kind == MarkerKind.Cross ? "1.8" : "1.1"), ("data-value", data));
        }
    }

    public void Text(string words, Point at, string anchor, bool italic = false, string css = "fly-words", double size = Letter)
    {
        _canvas.Words("text", words, ("class", css), ("x", SvgCanvas.N(at.X)), ("y", SvgCanvas.N(at.Y)), ("text-anchor", anchor),
            ("font-style", italic ? "italic" : "normal"), ("font-size", SvgCanvas.N(size)), ("fill", "currentColor"), ("stroke", "none"));
    }

    /// <summary>Italic words at the first of the places where no curve runs through them; at the first of all when none is free.</summary>
    public void TextWhereFree(string words, IReadOnlyCollection<Point[]> curves, IEnumerable<(Point At, string Anchor)> places)
    {
        (Point At, string Anchor)[] all = [.. places];
        (Point At, string Anchor)[] free = [.. all.Where(p => !curves.Any(c => Runs(c, BoxOf(words, p.At, p.Anchor))))];
        (Point at, string anchor) = free is [var first, ..] ? first : all[0];
        Text(words, at, anchor, italic: true);

        static Box BoxOf(string words, Point at, string anchor)
        {
            double width = TextSize.WidthEm(words) * Letter, left = at.X - anchor switch { "end" => width, "middle" => width / 2, _ => 0 };
            return new Box(left, at.Y - Letter, left + width, at.Y + 0.3 * Letter).Grown(2);
        }

        static bool Runs(Point[] curve, Box box) => curve.Zip(curve.Skip(1)).Any(s => box.Meets(s.First, s.Second)) || curve.Any(p => box.Grown(4).Holds(p));
    }

    /// <summary>Slanted pen strokes for an area; wider spacing reads lighter in print. Gives the fill to use.</summary>
    public string Hatching(string name, double spacing, bool crossed = false)
    {
        string id = $"{_prefix}-{name}";
        string s = SvgCanvas.N(spacing);
        _canvas.Open("pattern", ("id", id), ("width", s), ("height", s), ("patternUnits", "userSpaceOnUse"), ("patternTransform", "rotate(45)"));
        _canvas.Element("path", ("class", "fly-hatch"), ("d", crossed ? $"M0 0V{s}M0 0H{s}" : $"M0 0V{s}"), ("stroke-width", "1"));
        _canvas.Close();
        return $"url(#{id})";
    }

    public string Finish()
    {
        _canvas.Close();
        return _canvas.Finish();
    }

    public void Dispose() => _canvas.Dispose();
}
