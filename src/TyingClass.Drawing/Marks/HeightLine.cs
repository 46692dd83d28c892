using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;

namespace TyingClass.Drawing.Marks;

/// <summary>A height on a dimension line of engineering drawings: from one level to another, with thin lines out to both.</summary>
/// <param name="From">The place measured from; the height is taken straight up (negative: down) from it.</param>
/// <param name="ColumnX">Where the dimension line stands.</param>
internal sealed record HeightLine(string Name, Point From, double HeightMm, double ColumnX)
{
    private const double HeadShare = 0.55;

    public double TopY => Math.Min(From.Y, From.Y - HeightMm);

    public double BottomY => Math.Max(From.Y, From.Y - HeightMm);

    public Box Box => new(Math.Min(ColumnX, From.X), TopY, Math.Max(ColumnX, From.X), BottomY);

    /// <summary>Whether both arrow heads fit between the levels.</summary>
    public bool IsRoomy(double letterMm) => BottomY - TopY > 2.4 * HeadShare * letterMm;

    public void Draw(Ink ink, double letterMm)
    {
        SvgCanvas canvas = ink.Canvas;
        double over = ColumnX + Math.Sign(ColumnX - From.X) * 0.35 * letterMm, head = HeadShare * letterMm;
        canvas.Open("g", ("class", "fly-dimension"), ("data-mark", Name), ("data-height-mm", SvgCanvas.Exact(HeightMm)));
        PathText thin =
            new PathText().Move(From).Line(new Point(over, From.Y)).Move(new Point(From.X, From.Y - HeightMm)).Line(new Point(over, From.Y - HeightMm));
        Rule(canvas, thin, 0.5 * ink.PenMm);
        bool roomy = IsRoomy(letterMm);
        double reach = roomy ? 0 : 2 * head;
        canvas.Element("line", ("class", "fly-dimension-line"), ("x1", E(ColumnX)), ("x2", E(ColumnX)), ("y1", E(TopY)), ("y2", E(BottomY)),
            ("stroke-width", E(0.9 * ink.PenMm)));
        if (!roomy)
            Rule(canvas, new PathText().Move(new(ColumnX, TopY)).Line(new(ColumnX, TopY - reach)).Move(new(ColumnX, BottomY))
                .Line(new(ColumnX, BottomY + reach)), 0.9 * ink.PenMm);
        // Arrow tips touch the levels: from within when there is room, from outside when not.
        Tip(ink, TopY, roomy ? head : -head);
        Tip(ink, BottomY, roomy ? -head : head);
        canvas.Close();
    }

    private static string E(double v) => SvgCanvas.Exact(v);

    private static void Rule(SvgCanvas canvas, PathText path, double width) =>
        canvas.Element("path", ("class", "fly-extension"), ("d", path.ToString()), ("stroke-width", E(width)));

    private void Tip(Ink ink, double y, double back) => ink.Solid(
        new PathText().Polyline([new(ColumnX, y), new(ColumnX - 0.3 * Math.Abs(back), y + back), new(ColumnX + 0.3 * Math.Abs(back), y + back)], closed: true));
}
