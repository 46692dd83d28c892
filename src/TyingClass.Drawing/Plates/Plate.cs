using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Labels;
using TyingClass.Drawing.Svg;
using TyingClass.Drawing.Words;

namespace TyingClass.Drawing.Plates;

/// <summary>A finished picture: a window on the page in mm, what it says in words, and how it is drawn.</summary>
internal abstract class Plate
{
    /// <summary>Letters against the width of the plate: 11 px where a phone 390 px wide leaves 280 px for it.</summary>
    public const double LetterShare = 0.04;

    /// <summary>A mark's radius in letters.</summary>
    public const double MarkShare = 0.38;

    protected Plate(DrawingOptions options) => Options = options.Checked();

    public DrawingOptions Options { get; }

    public abstract string Kind { get; }

    public abstract string Title { get; }

    public abstract string Description { get; }

    /// <summary>mm on the page, the tow point at the origin.</summary>
    public Box Window { get; protected set; }

    public double LetterMm => LetterShare * Window.Width;

    public double PenMm => Window.Width / 400;

    public IReadOnlyList<Label> Labels { get; protected set; } = [];

    /// <summary>Everything inside the svg element.</summary>
    public abstract void DrawInside(SvgCanvas canvas);

    public string ToSvg()
    {
        using SvgCanvas canvas = new();
        Open(canvas, Options, Kind, Window, Title, Description);
        DrawInside(canvas);
        canvas.Close();
        return canvas.Finish();
    }

    public static void Open(SvgCanvas canvas, DrawingOptions options, string kind, Box window, string title, string description)
    {
        double scale = options.WidthPx / window.Width;
        canvas.Open("svg",
            ("viewBox", ViewBox(window)), ("width", SvgCanvas.N(options.WidthPx)), ("height", SvgCanvas.N(window.Height * scale)),
            ("class", "fly-plate fly-" + kind), ("role", "img"), ("aria-labelledby", $"{options.IdPrefix}-title {options.IdPrefix}-desc"),
            ("data-px-per-mm", SvgCanvas.Exact(scale)));
        canvas.Words("title", title, ("id", options.IdPrefix + "-title"));
        canvas.Words("desc", description, ("id", options.IdPrefix + "-desc"));
    }

    public static string ViewBox(Box window) =>
        $"{SvgCanvas.N(window.Left)} {SvgCanvas.N(window.Top)} {SvgCanvas.N(window.Width)} {SvgCanvas.N(window.Height)}";

    /// <summary>The group that carries the pen and the letters of a whole plate.</summary>
    protected void OpenPage(SvgCanvas canvas) => canvas.Open("g",
        ("class", "fly-page"), ("fill", "none"), ("stroke", "currentColor"), ("stroke-linecap", "round"), ("stroke-linejoin", "round"),
        ("stroke-width", SvgCanvas.Exact(PenMm)), ("font-family", "Georgia, 'Times New Roman', serif"), ("font-size", SvgCanvas.Exact(LetterMm)));

    protected void DrawLabels(SvgCanvas canvas)
    {
        canvas.Open("g", ("class", "fly-labels"), ("font-style", "italic"));
        foreach (Label label in Labels)
        {
            if ((label.Foot - label.Head).Length > 0.25 * LetterMm)
            {
                string d = new PathText().Move(label.Head).Line(label.Foot).ToString();
                canvas.Element("path", ("class", "fly-halo"), ("d", d), ("stroke", Tone.Paper.Color), ("stroke-width", SvgCanvas.Exact(2.4 * PenMm)),
                    ("stroke-opacity", "0.7"));
                canvas.Element("path", ("class", "fly-pointer"), ("d", d), ("stroke-width", SvgCanvas.Exact(0.6 * PenMm)));
            }

            // The words hug the end of their pointing line, however wide the reader's letters come out.
            (string anchor, double x) = label.Foot.X <= label.Box.Left + 0.01 ? ("start", label.Box.Left + 0.15 * LetterMm)
                : label.Foot.X >= label.Box.Right - 0.01 ? ("end", label.Box.Right - 0.15 * LetterMm)
                : ("middle", (label.Box.Left + label.Box.Right) / 2);
            canvas.Words("text", label.Wish.Text,
            [
                .. Lettering(new Point(x, label.Box.Bottom - 0.32 * LetterMm), anchor, label.Wish.Name, "fly-label fly-halo"),
                // Clears the paper round the letters: they may have to lie on the fly.
                ("stroke", Tone.Paper.Color), ("stroke-width", "0.25em"), ("paint-order", "stroke"),
            ]);
        }

        canvas.Close();
    }

    internal static void Say(SvgCanvas canvas, string words, Point at, string anchor, string name, string css = "fly-label") =>
        canvas.Words("text", words, [.. Lettering(at, anchor, name, css), ("stroke", "none")]);

    private static (string, string)[] Lettering(Point at, string anchor, string name, string css) =>
    [
        ("class", css), ("x", SvgCanvas.N(at.X)), ("y", SvgCanvas.N(at.Y)), ("text-anchor", anchor), ("data-label", name), ("fill", "currentColor"),
    ];

    /// <summary>In as few lines as hold it, broken after commas.</summary>
    protected static IReadOnlyList<string> Wrapped(string text, double widthEm)
    {
        List<string> lines = [""];
        foreach (string phrase in text.Split(", "))
        {
            string longer = lines[^1].Length == 0 ? phrase : $"{lines[^1]}, {phrase}";
            if (lines[^1].Length == 0 || TextSize.WidthEm(longer) <= widthEm)
            {
                lines[^1] = longer;
                continue;
            }

            lines[^1] += ",";
            lines.Add(phrase);
        }

        return [.. lines.Select(l => Fitted(l, widthEm))];
    }

    protected static string Fitted(string text, double widthEm)
    {
        if (TextSize.WidthEm(text) <= widthEm)
            return text;
        int keep = text.Length;
        while (keep > 1 && TextSize.WidthEm(text[..keep]) > widthEm - 1)
            keep--;
        if (char.IsHighSurrogate(text[keep - 1]))
            keep--;
        return text[..keep].TrimEnd() + "…";
    }
}
