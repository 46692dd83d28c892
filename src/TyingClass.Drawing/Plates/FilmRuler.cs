using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;
using TyingClass.Telling.Figures;

namespace TyingClass.Drawing.Plates;

/// <summary>The depths that a film strip is ruled with, and the depth that is asked for.</summary>
/// <param name="bottomMm">Down to where it is ruled, on the page.</param>
/// <param name="startMm">Depth of the page's origin.</param>
internal sealed class FilmRuler(Box window, double bottomMm, double startMm, double letterMm, DrawingOptions options)
{
    // Round depths in the reader's units, where they stand, and how they are written.
    private readonly (double Tick, double Y, int Decimals)[] _depths = [.. Depths(window.Top + 0.4 * letterMm, bottomMm, startMm, options)];

    /// <summary>Where it is ruled, on the page.</summary>
    public IReadOnlyList<double> LevelsMm => [.. _depths.Select(d => d.Y)];

    public void Draw(Ink ink, FilmWords words)
    {
        SvgCanvas canvas = ink.Canvas;
        canvas.Open("g", ("class", "fly-depths"), ("data-mark", "depth"));
        foreach ((double tick, double y, int decimals) in _depths)
        {
            canvas.Element("line", ("class", tick == 0 ? "fly-flow" : "fly-ruling"), ("x1", SvgCanvas.N(window.Left)), ("x2", SvgCanvas.N(window.Right)),
                ("y1", SvgCanvas.N(y)), ("y2", SvgCanvas.N(y)), ("stroke-width", SvgCanvas.Exact((tick == 0 ? 1.6 : 0.6) * ink.PenMm)),
                ("stroke-opacity", tick == 0 ? "1" : "0.35"));
            string depth = tick == 0 ? "surface" : $"{Numbers.Write(tick, decimals)} {Magnitudes.Depth.Symbol(options.Units)} deep";
            if (words.AtMargin(depth, y) is { } place) Plate.Say(canvas, depth, place, "start", "depth");
        }

        canvas.Close();
    }

    public void DrawGoal(Ink ink, FilmWords words)
    {
        if (options.DepthGoal is not { } goal) return;
        double y = 1e3 * goal.DepthM - startMm;
        Point left = new(window.Left, y), right = new(window.Right, y);
        LineArt.Rule(ink, new Ruling("fly-pull", "goal", 1.4, LineArt.Dashes(letterMm)), left, right);
        if (words.AtMargin(goal.Words, y) is { } place) Plate.Say(ink.Canvas, goal.Words, place, "start", "goal");
        words.KeepOff([[left, right]]);
    }

    private static IEnumerable<(double Tick, double Y, int Decimals)> Depths(double topMm, double bottomMm, double startMm, DrawingOptions options)
    {
        double low = Math.Max(0, 1e-3 * (topMm + startMm)), high = 1e-3 * (bottomMm + startMm), per = Magnitudes.Depth.Shown(1, options.Units);
        Plots.Scale scale = Plots.Scale.Round(low * per, high * per, 4, 0, 1);
        return scale.Ticks.Select(tick => (tick, 1e3 * tick / per - startMm, Math.Max(scale.Decimals, 1)))
            .Where(d => d.Item2 >= topMm && d.Item2 <= bottomMm);
    }
}
