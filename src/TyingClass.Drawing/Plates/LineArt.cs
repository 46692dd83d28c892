using TyingClass.Balance.Bodies;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Reports;

namespace TyingClass.Drawing.Plates;

/// <summary>A straight broken line with a name.</summary>
/// <param name="Weight">In pens.</param>
internal readonly record struct Ruling(string Css, string Name, double Weight, string Dashes);

/// <summary>The leader and its knot, from the tow point (the origin) toward the rod.</summary>
internal static class LineArt
{
    /// <summary>The knot's reach from the tow point.</summary>
    public static double KnotMm(SolvedFly fly) => 1e3 * fly.Built.Hook.WireM * (fly.Built.Conditions.Knot == Knot.Loop ? 6 : 1.2);

    /// <summary>Half the width of the loop as drawn.</summary>
    public static double LoopHalfMm(SolvedFly fly) => fly.Built.Conditions.Knot == Knot.Loop ? 0.3 * KnotMm(fly) : 0.3;

    public static void Draw(Ink ink, SolvedFly fly, Point pull, double lengthMm)
    {
        double gauge = Math.Max(fly.Built.Conditions.Leader.DiameterM * 1e3, 0.8 * ink.PenMm), wire = fly.Built.Hook.WireM * 1e3, reach = KnotMm(fly);
        Point side = pull.Turned() * (0.22 * reach), knot = pull * reach;
        PathText leader = new();
        if (fly.Built.Conditions.Knot == Knot.Loop)
        {
            leader.Move(knot).Cubic(knot * 0.75 + side * 1.4, side * 1.6 + knot * 0.1, pull * (-0.35 * wire))
                .Cubic(side * -1.6 + knot * 0.1, knot * 0.75 - side * 1.4, knot).Line(pull * lengthMm);
        }
        else
        {
            leader.Move(new Point(0, 0)).Line(pull * lengthMm);
        }

        ink.Canvas.Element("path", ("class", "fly-leader"), ("data-mark", "leader"), ("d", leader.ToString()), ("stroke-width", SvgCanvas.Exact(gauge)));
        string turns = new PathText().Move(knot - pull * (0.5 * wire)).Line(knot + pull * (1.1 * wire)).ToString();
        ink.Canvas.Element("path", ("class", "fly-knot"), ("d", turns), ("stroke-width", SvgCanvas.Exact(2.6 * gauge)));
    }

    /// <summary>Places along the line that words keep off.</summary>
    public static IEnumerable<Box> Kept(SolvedFly fly, Point pull, double lengthMm, double letterMm)
    {
        for (int i = 0; i < 16; i++)
            yield return Box.Around(pull * (lengthMm * (i + 0.5) / 16), 0.4 * letterMm, 0.4 * letterMm);
        double loop = 2 * LoopHalfMm(fly);
        for (int i = 1; i < 4; i++)
            yield return Box.Around(pull * (KnotMm(fly) * i / 4), loop, loop);
    }

    public static string Dashes(double letterMm) =>
        $"{SvgCanvas.N(1.1 * letterMm)} {SvgCanvas.N(0.35 * letterMm)} {SvgCanvas.N(0.15 * letterMm)} {SvgCanvas.N(0.35 * letterMm)}";

    public static void Rule(Ink ink, Ruling line, Point a, Point b) => ink.Canvas.Element(
        "line", ("class", line.Css), ("data-mark", line.Name), ("x1", SvgCanvas.Exact(a.X)), ("y1", SvgCanvas.Exact(a.Y)), ("x2", SvgCanvas.Exact(b.X)),
        ("y2", SvgCanvas.Exact(b.Y)),
        ("stroke-width", SvgCanvas.Exact(line.Weight * ink.PenMm)), ("stroke-dasharray", line.Dashes));

    /// <summary>The line a fly rolls about, set off from the dressing it crosses.</summary>
    public static void Hinge(Ink ink, string name, Point a, Point b, double letterMm)
    {
        ink.Canvas.Element("line", ("class", "fly-halo"), ("x1", SvgCanvas.Exact(a.X)), ("y1", SvgCanvas.Exact(a.Y)), ("x2", SvgCanvas.Exact(b.X)),
            ("y2", SvgCanvas.Exact(b.Y)), ("stroke", Tone.Paper.Color), ("stroke-width", SvgCanvas.Exact(3 * ink.PenMm)));
        Rule(ink, new Ruling("fly-pull", name, 1.2, Dashes(letterMm)), a, b);
    }

    /// <summary>An arc about a center from one direction to another, with its words' place: angles on the page.</summary>
    public static void Arc(Ink ink, string name, Point center, double radiusMm, Point from, Point to)
    {
        double a = Math.Atan2(from.Y, from.X), turn = Math.Atan2(Point.Cross(from, to), Point.Dot(from, to));
        Point[] along = [.. Enumerable.Range(0, 13).Select(i => center + new Point(Math.Cos(a + turn * i / 12), Math.Sin(a + turn * i / 12)) * radiusMm)];
        ink.Canvas.Element("path", ("class", "fly-arc"), ("data-mark", name), ("data-angle-deg", SvgCanvas.Exact(double.RadiansToDegrees(Math.Abs(turn)))),
            ("d", new PathText().Smooth(along).ToString()), ("stroke-width", SvgCanvas.Exact(0.9 * ink.PenMm)));
    }
}
